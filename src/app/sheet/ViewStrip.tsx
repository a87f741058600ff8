import { useEffect, useEffectEvent, useLayoutEffect, useMemo, useRef } from 'react';
import type { ViewName } from '../../../geometry/views/index.ts';
import { litBy } from '../../../geometry/views/lit.ts';
import { firstWords as words } from '../first-words.ts';
import { fitRoom, type Room } from './fit.ts';
import { Glass, type Looked } from './Glass.tsx';
import { layingOf, viewNames as names } from './laying.ts';
import type { Look } from './look.ts';
import type { Shown } from './shown.ts';
import { useOthers } from './use-others.ts';
import { useSaid } from './use-said.ts';

interface StripShown extends Shown {
  readonly room: Room;
  /** The view in sight. */
  readonly name: ViewName;
  readonly onName: (name: ViewName) => void;
  readonly looks: Readonly<Partial<Record<ViewName, Look>>>;
  readonly onLook: Looked['onLook'];
  readonly over?: Looked['over'];
  readonly inSight: Looked['inSight'];
  readonly onTyping: Looked['onTyping'];
  /** Whether what looks closer and measures is in sight. */
  readonly hasTools: boolean;
  readonly onTools: (hasTools: boolean) => void;
}

/** One view at a time, swiped or chosen by its name. */
export const ViewStrip = ({
  built,
  room,
  text,
  heights,
  focus,
  name: shownName,
  onName,
  looks,
  onLook,
  over,
  inSight,
  onTyping,
  hasTools,
  onTools,
}: StripShown) => {
  const others = useOthers(built);
  const strip = useRef<HTMLDivElement>(null);
  const at = names.indexOf(shownName);
  const pictures = useMemo(
    () =>
      names.map((name) => {
        const laying = layingOf(name, built, heights, text, others);
        return { laying, fitted: fitRoom({ ...laying, room }) };
      }),
    [built, others, room, text, heights],
  );
  const says = useSaid(built);

  const setAt = (index: number) => onName(names[index] ?? shownName);
  const show = (index: number) => {
    const box = strip.current;
    // The style says whether it glides there.
    if (box) box.scrollLeft = index * box.clientWidth;
    setAt(index);
  };
  // A strip that is put up anew begins with the view that was in sight.
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when it is put up
  useLayoutEffect(() => {
    const box = strip.current;
    if (box) box.scrollLeft = at * box.clientWidth;
  }, []);

  /**
   * A field in focus brings the view that shows it, and what it lights there; the view that is shown has the first say. What stands nowhere, such as the
   * action, is seen where it moves the gaps.
   */
  const showLit = useEffectEvent(() => {
    // What is taken hold of on the drawing is in sight already.
    if (focus === undefined || strip.current?.contains(document.activeElement)) return;
    const isLit = litBy(focus, built.job);
    const has = (index: number) => pictures[index]?.fitted.primitives.some(isLit) ?? false;
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
        <button type="button" aria-expanded={hasTools} onClick={() => onTools(!hasTools)}>
          {words.sheet.tools}
        </button>
      </div>
      <section
        className="view-strip"
        ref={strip}
        aria-label={words.sheet.views}
        onScroll={({ currentTarget: box }) => setAt(Math.round(box.scrollLeft / box.clientWidth))}
      >
        {names.map((name, index) => {
          const picture = pictures[index];
          return (
            picture && (
              <div className="view" key={name}>
                <Glass
                  {...picture}
                  {...{ name, focus, built, onLook, over, inSight, onTyping }}
                  fit={{ name, heights, room, seed: undefined }}
                  title={words.sheet[name]}
                  says={says[name]}
                  look={looks[name]}
                  isShown={index === at}
                />
              </div>
            )
          );
        })}
      </section>
    </>
  );
};
