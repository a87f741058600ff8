import { useId } from 'react';
import type { Fitted } from './fit.ts';
import { Primitives } from './Primitives.tsx';

/** A drawing laid out for the screen, with its equivalent in words. */
export const Picture = ({
  name,
  fitted,
  title,
  says,
  focus,
}: {
  name: string;
  fitted: Fitted;
  title: string;
  says: string;
  focus: string | undefined;
}) => {
  const id = useId();
  const { view, width, height, primitives } = fitted;
  return (
    <svg
      className="drawing"
      data-view={name}
      role="img"
      aria-labelledby={`${id}t ${id}d`}
      width={width}
      height={height}
      viewBox={`${view.left} ${view.top} ${view.width} ${view.height}`}
    >
      <title id={`${id}t`}>{title}</title>
      <desc id={`${id}d`}>{says}</desc>
      <Primitives primitives={primitives} focus={focus} />
    </svg>
  );
};
