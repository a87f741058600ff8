import { useLayoutEffect, useMemo, useRef, useState } from 'react';
import type { Text } from '../../../geometry/drawing.ts';
import { benchOrder, getAt } from '../../../geometry/fields.ts';
import type { Grip } from '../../../geometry/views/grips/index.ts';
import type { ViewName } from '../../../geometry/views/index.ts';
import { jobAsRead } from '../decimal.ts';
import { inShort } from '../in-short.ts';
import { type Built, barOf } from '../store.ts';
import { useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import type { Fitted } from './fit.ts';
import { Handle } from './grips/Handle.tsx';
import { gripsOn, linesOf } from './grips/on-drawing.ts';
import { Readout } from './grips/Readout.tsx';
import { AskSpot } from './typed/AskSpot.tsx';
import { askable } from './typed/askable.ts';
import { Spot } from './typed/Spot.tsx';
import { typable } from './typed/typable.ts';
import { useRowInSight } from './use-row-in-sight.ts';
import { useWhileHeld } from './use-still.ts';

interface HandsProps {
  readonly built: Built;
  readonly fitted: Fitted;
  readonly onHold: (view: ViewName) => void;
  /** A number is to be typed, over the element that this finds. */
  readonly onType: (path: string, over: string) => void;
}

/** The grip that is pointed at, in focus or held, and whether it was stopped at a limit. */
interface Active {
  readonly id: string;
  readonly isStopped: boolean;
}

/** What is read beside the grip in hand: its number's name and value, and what keeps it there. */
const useLines = (grip: Grip | undefined, isStopped: boolean): readonly string[] => {
  const job = useBenchState(jobAsRead);
  const bar = useBenchState((state) => barOf(state, grip?.jobPath));
  const problem = useBenchState(({ solved }) => (solved.ok ? undefined : solved.problems[0]));
  if (grip === undefined) return [];
  return [
    ...linesOf(grip, job),
    ...(isStopped ? [words.hands.atLimit] : []),
    ...(bar === undefined ? [] : [words.hands.barred(bar)]),
    ...(problem === undefined ? [] : [words.hands.notBuilt(inShort(problem))]),
  ];
};

/** What can be typed into and dragged on a drawing: the numbers, then the grips, each in the order of the bench. */
export const Hands = ({ built, fitted, onHold, onType }: HandsProps) => {
  useRowInSight();
  const job = useBenchState((state) => state.job);
  const [active, setActive] = useState<Active | undefined>();
  const { scale, places } = fitted;
  // What can be pressed, and is not seen, goes with its words once a hand lets go.
  const still = useWhileHeld(useMemo(() => ({ built, fitted }), [built, fitted]));
  const { primitives, marks } = still.fitted;
  const paths = useMemo(() => typable(marks, still.built.job), [marks, still]);
  const asks = useMemo(() => askable(marks, still.built, paths), [marks, still, paths]);
  const grips = useMemo(() => gripsOn(built, { places }), [built, places]);
  const held = grips.find(({ grip }) => grip.id === active?.id)?.grip;
  const lines = useLines(held, active?.isStopped ?? false);
  const spots = primitives.flatMap((p): { readonly text: Text; readonly path: string }[] => {
    const path = paths.get(p.id);
    return p.kind === 'text' && path !== undefined ? [{ text: p, path }] : [];
  });
  const withGrip = new Set(grips.map(({ grip }) => grip.jobPath));
  // What is told of a handle is always of the drawing as it is now, so that none is rendered anew while it stays where it is.
  const now = useRef({ grips, spots, onHold, onType });
  useLayoutEffect(() => {
    now.current = { grips, spots, onHold, onType };
  });
  const tell = useMemo(() => {
    const find = (id: string) => now.current.grips.find(({ grip }) => grip.id === id);
    const spotOf = (id: string) => `[data-spot="${id}"]`;
    return {
      latest: (id: string) => find(id)?.grip,
      onActive: (id: string, isActive: boolean, isStopped = false) =>
        setActive((was) => {
          if (!isActive) return was?.id === id ? undefined : was;
          return was?.id === id && was.isStopped === isStopped ? was : { id, isStopped };
        }),
      onHold: (id: string) => {
        const put = find(id);
        if (put) now.current.onHold(put.view);
      },
      /** A number is typed where it stands, or over its grip where it stands nowhere. */
      onType: (id: string) => {
        const path = find(id)?.grip.jobPath;
        const spot = now.current.spots.find((one) => one.path === path);
        if (path !== undefined) now.current.onType(path, spot ? spotOf(spot.text.id) : `[data-grip="${id}"]`);
      },
      onOpen: (path: string, spot: string) => now.current.onType(path, spotOf(spot)),
    };
  }, []);
  // Grips lie over all numbers, so that none is covered wherever a word has its place.
  const layer = ({ spot }: { readonly spot: unknown }): number => (spot === undefined ? 1 : 0);
  const parts = [
    ...spots.map((spot) => ({ path: spot.path, spot, put: undefined })),
    ...grips.map((put) => ({ path: put.grip.jobPath, spot: undefined, put })),
  ]
    // A drawing that stays may show what the job has no more, such as a point of the outline.
    .filter(({ path }) => getAt(job, path) !== undefined)
    .toSorted((a, b) => layer(a) - layer(b) || benchOrder(a.path) - benchOrder(b.path));
  return (
    <>
      {primitives.map((p) => {
        const asked = asks.get(p.id);
        return p.kind === 'text' && asked && <AskSpot key={p.id} text={p} asked={asked} scale={scale} />;
      })}
      {parts.map(({ path, spot, put }) =>
        spot ? (
          <Spot
            key={spot.text.id}
            text={spot.text}
            path={path}
            scale={scale}
            hasGrip={withGrip.has(path)}
            onOpen={tell.onOpen}
          />
        ) : (
          <Handle
            key={`grip ${put.grip.id}`}
            grip={put.grip}
            scale={scale}
            latest={tell.latest}
            onActive={tell.onActive}
            onHold={tell.onHold}
            onType={tell.onType}
          />
        ),
      )}
      {held && <Readout key={held.id} grip={held} lines={lines} fitted={fitted} />}
    </>
  );
};
