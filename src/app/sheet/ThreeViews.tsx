import { useEffect, useMemo, useRef } from 'react';
import { sayWith } from '../../../geometry/layout.ts';
import { threeViews } from '../../../geometry/views/index.ts';
import { words } from '../words.ts';
import { fitRoom, type Room } from './fit.ts';
import { Picture } from './Picture.tsx';
import { sayViews } from './says.ts';
import type { Shown } from './shown.ts';

/** The three views on one sheet, as large as the room lets them be. */
export const ThreeViews = ({ built, room, text, heights, focus }: Shown & { room: Room }) => {
  const seed = useRef<number>(undefined);
  const { job, design } = built;
  const fitted = useMemo(() => {
    const say = sayWith(job.show);
    return fitRoom({
      marks: (em) => threeViews(job, design, em, say, heights).marks,
      say,
      room,
      text,
      seed: seed.current,
    });
  }, [job, design, room, text, heights]);
  useEffect(() => {
    seed.current = fitted.scale;
  }, [fitted]);
  const says = useMemo(() => Object.values(sayViews({ job, design })).join(' '), [job, design]);
  return <Picture name="three" fitted={fitted} title={words.sheet.drawing} says={says} focus={focus} />;
};
