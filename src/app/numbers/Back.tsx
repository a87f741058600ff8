import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';

/** The way back to a job that was put aside. */
export const Back = () => {
  const bench = useBench();
  const kept = useBenchState((state) => state.kept.at(-1));
  return (
    kept && (
      <button type="button" className="back" onClick={bench.back}>
        {words.bar.back(kept.name)}
      </button>
    )
  );
};
