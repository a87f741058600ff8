import { useEffect, useEffectEvent, useMemo, useRef, useState } from 'react';
import { sayWith } from '../../../geometry/layout.ts';
import { views } from '../../../geometry/views/index.ts';
import { stretched } from '../../../geometry/views/stretch.ts';
import { calm, useMedia } from '../use-media.ts';
import { words } from '../words.ts';
import { fitRoom } from './fit.ts';
import { type HeightStep, HeightsSelect } from './Heights.tsx';
import { Picture } from './Picture.tsx';
import { sayViews } from './says.ts';
import type { Shown } from './shown.ts';

type ViewName = keyof typeof views;
const names = Object.keys(views) as ViewName[];

interface StripShown extends Shown {
  readonly width: number;
  readonly onHeights: (step: HeightStep) => void;
}

/** One view at a time, swiped or chosen by its name. */
export const ViewStrip = ({ built, width, text, heights, focus, onHeights }: StripShown) => {
  const strip = useRef<HTMLDivElement>(null);
  const [at, setAt] = useState(0);
  const still = useMedia(calm);
  const { job, design } = built;
  const fitted = useMemo(() => {
    const say = sayWith(job.show);
    return names.map((name) => {
      const view = views[name](job, design);
      const { marks } = name === 'above' ? view : stretched(view, heights);
      return fitRoom({ marks: () => marks, say, room: { width }, text });
    });
  }, [job, design, width, text, heights]);
  const says = useMemo(() => sayViews({ job, design }), [job, design]);

  const show = (index: number) => {
    const box = strip.current;
    box?.scrollTo({ left: index * box.clientWidth, behavior: still ? 'auto' : 'smooth' });
    setAt(index);
  };

  // A number in focus is shown where it stands; one that stands nowhere, such as the action, where it moves the gap at each string.
  const inSight = useEffectEvent((path: string) => {
    const shows = fitted.map(({ primitives }) => primitives.some(({ jobPath }) => jobPath === path));
    const moves = /^(guitar|action|strings)\./.test(path) ? names.indexOf('tail') : at;
    if (!shows[at]) show(shows.includes(true) ? shows.indexOf(true) : moves);
  });
  useEffect(() => {
    if (focus !== undefined) inSight(focus);
  }, [focus]);

  return (
    <>
      <nav className="view-names" aria-label={words.sheet.views}>
        {names.map((name, index) => (
          <button key={name} type="button" aria-pressed={index === at} onClick={() => show(index)}>
            {words.sheet[name]}
          </button>
        ))}
        <HeightsSelect value={heights} onChange={onHeights} />
      </nav>
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
