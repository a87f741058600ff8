import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';

/** Undo and redo, each named by what it takes back, and the way back to a job that was put aside. */
export const Steps = () => {
  const bench = useBench();
  const last = useBenchState((state) => state.past.at(-1)?.name);
  const next = useBenchState((state) => state.future.at(-1)?.name);
  const kept = useBenchState((state) => state.kept.at(-1));
  return (
    <div className="steps">
      <button type="button" disabled={last === undefined} onClick={bench.undo}>
        {words.bar.undo(last)}
      </button>
      <button type="button" disabled={next === undefined} onClick={bench.redo}>
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
