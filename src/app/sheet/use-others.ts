import { useMemo } from 'react';
import { type LaidOver, nothingOver } from '../../../geometry/views/laid-over.ts';
import { jobAsRead } from '../decimal.ts';
import type { Built } from '../state.ts';
import { useBenchState } from '../use-bench.ts';
import { useParts } from '../use-parts.ts';

/** What is laid over the present design: every alternative that can be built and is not hidden; nothing yet in the first drawing. */
export const useOthers = (built: Built | undefined): LaidOver => {
  const job = useBenchState(jobAsRead);
  const folds = useBenchState((state) => state.folds);
  const othersOf = useParts()?.othersOf;
  return useMemo(
    () => (built === undefined || othersOf === undefined ? nothingOver : othersOf(built, job, folds)),
    [built, job, folds, othersOf],
  );
};
