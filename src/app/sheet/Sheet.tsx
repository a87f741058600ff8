import { useMemo, useRef, useState } from 'react';
import { useBenchState } from '../use-bench.ts';
import { roomy, useMedia, wide } from '../use-media.ts';
import { words } from '../words.ts';
import { type HeightStep, Heights } from './Heights.tsx';
import { Problems } from './Problems.tsx';
import { Refused } from './Refused.tsx';
import { ThreeViews } from './ThreeViews.tsx';
import { useRoom } from './use-room.ts';
import { ViewStrip } from './ViewStrip.tsx';

/** Text height in a drawing, px: at arm's length, and where there is less room. */
const large = 13.5;
const small = 13;

/** The sheet: the drawing of the last numbers that could be built, and above it what keeps these from being built. */
export const Sheet = () => {
  const paper = useRef<HTMLDivElement>(null);
  const { width, height } = useRoom(paper);
  const isRoomy = useMedia(roomy);
  const isWide = useMedia(wide);
  const built = useBenchState((state) => state.built);
  const stale = useBenchState((state) => !state.solved.ok);
  const focus = useBenchState((state) => state.focus);
  const [heights, setHeights] = useState<HeightStep>(3);
  const room = useMemo(
    () => ({ width, height: isRoomy ? height : Math.max(380, Math.round(window.innerHeight * 0.56)) }),
    [width, height, isRoomy],
  );
  const shown = built && { built, heights, focus, text: isRoomy ? large : small };
  return (
    <section className="sheet" aria-label={words.sheet.label} data-stale={stale}>
      <Problems />
      <Refused />
      {stale && built && <p className="stale">{words.sheet.stale}</p>}
      <div className="paper" ref={paper}>
        {built === undefined && <p className="none">{words.sheet.none}</p>}
        {shown && isWide && <ThreeViews {...shown} room={room} />}
        {shown && !isWide && <ViewStrip {...shown} width={width} onHeights={setHeights} />}
        {built && <p className="lengths">{words.sheet.lengths(built.job.show.length)}</p>}
        {built && isWide && <Heights value={heights} onChange={setHeights} />}
      </div>
    </section>
  );
};
