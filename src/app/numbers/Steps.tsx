import { type RefObject, useRef } from 'react';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';

/** Undo and redo, each named by what it takes back, and the way back to a job that was put aside. */
export const Steps = () => {
  const bench = useBench();
  const back = useRef<HTMLButtonElement>(null);
  const forth = useRef<HTMLButtonElement>(null);
  const last = useBenchState((state) => state.past.at(-1)?.name);
  const next = useBenchState((state) => state.future.at(-1)?.name);
  const kept = useBenchState((state) => state.kept.at(-1));
  /** A button that is used up loses the focus: it goes to the other one, which has just come alive. */
  const step = (take: () => void, left: 'past' | 'future', other: RefObject<HTMLButtonElement | null>) => {
    take();
    if (bench.getState()[left].length === 0) requestAnimationFrame(() => other.current?.focus());
  };
  return (
    <div className="steps">
      <button type="button" ref={back} disabled={last === undefined} onClick={() => step(bench.undo, 'past', forth)}>
        {words.bar.undo(last)}
      </button>
      <button type="button" ref={forth} disabled={next === undefined} onClick={() => step(bench.redo, 'future', back)}>
        {words.bar.redo(next)}
      </button>
      {kept && (
        <button type="button" className="back" onClick={bench.back}>
          {words.bar.back(kept.name)}
        </button>
      )}
    </div>
  );
};
