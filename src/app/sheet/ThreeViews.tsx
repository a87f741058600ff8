import { useEffect, useMemo, useRef } from 'react';
import { sayWith } from '../../../geometry/layout.ts';
import { threeViews } from '../../../geometry/views/index.ts';
import { words } from '../words.ts';
import { fitRoom, leastHeight, type Room } from './fit.ts';
import { Picture } from './Picture.tsx';
import { sayViews } from './says.ts';
import type { Shown } from './shown.ts';

/** The three views on one sheet, as large as the room lets them be. */
export const ThreeViews = ({
  built,
  room,
  text,
  heights,
  focus,
  onLeast,
}: Shown & { room: Room; onLeast: (height: number) => void }) => {
  const seed = useRef<number>(undefined);
  const { job, design } = built;
  const fit = useMemo(() => {
    const say = sayWith(job.show);
    return { marks: (em: number) => threeViews(job, design, em, say, heights).marks, say, text };
  }, [job, design, text, heights]);
  const fitted = useMemo(() => fitRoom({ ...fit, room, seed: seed.current }), [fit, room]);
  const least = useMemo(() => leastHeight(fit), [fit]);
  useEffect(() => onLeast(least), [least, onLeast]);
  useEffect(() => {
    seed.current = fitted.scale;
  }, [fitted]);
  const says = useMemo(() => Object.values(sayViews({ job, design })).join(' '), [job, design]);
  return <Picture name="three" fitted={fitted} title={words.sheet.drawing} says={says} focus={focus} />;
};
