import { useEffect, useEffectEvent, useMemo, useRef, useState } from 'react';
import { sayWith } from '../../../geometry/layout.ts';
import { views } from '../../../geometry/views/index.ts';
import { stretched } from '../../../geometry/views/stretch.ts';
import { Steps } from '../numbers/Steps.tsx';
import { words } from '../words.ts';
import { fitRoom, type Room } from './fit.ts';
import { type HeightStep, HeightsSelect } from './Heights.tsx';
import { Picture } from './Picture.tsx';
import { sayViews } from './says.ts';
import type { Shown } from './shown.ts';

type ViewName = keyof typeof views;
const names = Object.keys(views) as ViewName[];

interface StripShown extends Shown {
  readonly room: Room;
  readonly onHeights: (step: HeightStep) => void;
}

/** One view at a time, swiped or chosen by its name. */
export const ViewStrip = ({ built, room, text, heights, focus, onHeights }: StripShown) => {
  const strip = useRef<HTMLDivElement>(null);
  const [at, setAt] = useState(0);
  const { job, design } = built;
  const fitted = useMemo(() => {
    const say = sayWith(job.show);
    return names.map((name) => {
      const view = views[name](job, design);
      const { marks } = name === 'above' ? view : stretched(view, heights);
      return fitRoom({ marks: () => marks, say, room, text });
    });
  }, [job, design, room, text, heights]);
  const says = useMemo(() => sayViews({ job, design }), [job, design]);

  const show = (index: number) => {
    const box = strip.current;
    // The style says whether it glides there.
    if (box) box.scrollLeft = index * box.clientWidth;
    setAt(index);
  };

  /**
   * A field in focus brings the view that shows it, and what it lights there; the view that is shown has the first say. What stands nowhere, such as the
   * action, is seen where it moves the gaps.
   */
  const showLit = useEffectEvent(() => {
    const has = (index: number) => fitted[index]?.primitives.some(({ jobPath }) => jobPath === focus) ?? false;
    if (focus === undefined) return;
    const moves = /^(guitar|action|strings)\./.test(focus) ? names.indexOf('tail') : at;
    const index = [at, ...names.keys()].find(has) ?? moves;
    if (index !== at) show(index);
    const box = strip.current?.parentElement;
    const lit = strip.current?.querySelector(
      `[data-view="${names[index]}"] text.lit, [data-view="${names[index]}"] .lit`,
    );
    if (!box || !lit) return;
    const mark = lit.getBoundingClientRect();
    const seen = box.getBoundingClientRect();
    const head = strip.current?.offsetTop ?? 0;
    if (mark.top < seen.top + head || mark.bottom > seen.bottom) {
      box.scrollTop += (mark.top + mark.bottom) / 2 - (seen.top + head + seen.bottom) / 2;
    }
  });
  // biome-ignore lint/correctness/useExhaustiveDependencies: only when another field takes the focus
  useEffect(showLit, [focus]);

  return (
    <>
      <div className="strip-head">
        <nav className="view-names" aria-label={words.sheet.views}>
          {names.map((name, index) => (
            <button key={name} type="button" aria-pressed={index === at} onClick={() => show(index)}>
              {words.sheet[name]}
            </button>
          ))}
        </nav>
        <Steps isShort />
        <HeightsSelect value={heights} onChange={onHeights} />
      </div>
      <section
        className="view-strip"
        ref={strip}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by the keyboard
        tabIndex={0}
        aria-label={words.sheet.views}
        onScroll={({ currentTarget: box }) => setAt(Math.round(box.scrollLeft / box.clientWidth))}
      >
        {names.map((name, index) => {
          const picture = fitted[index];
          return (
            picture && (
              <div className="view" key={name}>
                <Picture name={name} fitted={picture} title={words.sheet[name]} says={says[name]} focus={focus} />
              </div>
            )
          );
        })}
      </section>
    </>
  );
};
