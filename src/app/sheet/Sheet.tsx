import { type CSSProperties, useMemo, useRef, useState } from 'react';
import { Summary } from '../findings/Summary.tsx';
import { useBenchState } from '../use-bench.ts';
import { roomy, three, useMedia } from '../use-media.ts';
import { words } from '../words.ts';
import { type HeightStep, Heights } from './Heights.tsx';
import { Problems } from './Problems.tsx';
import { Refused } from './Refused.tsx';
import { ThreeViews } from './ThreeViews.tsx';
import { useRoom } from './use-room.ts';
import { useSeenHeight } from './use-seen.ts';
import { ViewStrip } from './ViewStrip.tsx';

/** Text height in a drawing, px: at arm's length, and where there is less room. */
const large = 13.5;
const small = 13;

/** The sheet: the drawing of the last numbers that could be built, and above it what keeps these from being built. */
export const Sheet = () => {
  const paper = useRef<HTMLDivElement>(null);
  const { width, height } = useRoom(paper);
  const isRoomy = useMedia(roomy);
  const hasThree = useMedia(three);
  const built = useBenchState((state) => state.built);
  const stale = useBenchState((state) => !state.solved.ok);
  const focus = useBenchState((state) => state.focus);
  const [heights, setHeights] = useState<HeightStep>(3);
  const [least, setLeast] = useState(0);
  const seen = useSeenHeight();
  const room = useMemo(
    () => ({ width, height: isRoomy ? height : Math.max(Math.round(seen * 0.56), Math.min(seen - 150, 260)) }),
    [width, height, isRoomy, seen],
  );
  const shown = built && { built, heights, focus, text: isRoomy ? large : small };
  return (
    <section className="sheet" aria-label={words.sheet.label} data-stale={stale}>
      <Problems />
      {built && (
        <div className="line">
          <p>{words.sheet.lengths(built.job.show.length)}</p>
          <Summary built={built} />
          <Refused />
        </div>
      )}
      <div className="paper" ref={paper} style={{ '--least': `${least}px` } as CSSProperties}>
        {built === undefined && <p className="none">{words.sheet.none}</p>}
        {shown && hasThree && <ThreeViews {...shown} room={room} onLeast={setLeast} />}
        {shown && !hasThree && <ViewStrip {...shown} room={room} onHeights={setHeights} />}
        {built && hasThree && <Heights value={heights} onChange={setHeights} />}
      </div>
    </section>
  );
};
