import { useLayoutEffect, useRef } from 'react';
import { putWreck, type Wrecked } from './put-wreck.ts';

/** Stands in the place of the whole page when it cannot go on. */
export const Wreck = ({ error, job, flush }: Wrecked) => {
  const place = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    if (place.current) putWreck(place.current, { error, job, flush });
  }, [error, job, flush]);
  return <div ref={place} />;
};
