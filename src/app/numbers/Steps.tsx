import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';

/** Undo and redo, each named by what it takes back. */
export const Steps = () => {
  const bench = useBench();
  const last = useBenchState((state) => state.past.at(-1)?.name);
  const next = useBenchState((state) => state.future.at(-1)?.name);
  return (
    <div className="steps">
      <button type="button" disabled={last === undefined} onClick={bench.undo}>
        {words.bar.undo(last)}
      </button>
      <button type="button" disabled={next === undefined} onClick={bench.redo}>
        {words.bar.redo(next)}
      </button>
    </div>
  );
};
