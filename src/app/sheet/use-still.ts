import { useMemo } from 'react';
import type { State } from '../state.ts';
import { useBenchState } from '../use-bench.ts';

/** Something of the bench's state; while a hand holds a number on the drawing, as it was when it was taken hold of, and no new rendering. */
export const useStill = <T>(select: (state: State) => T): T => {
  const last = useMemo((): { kept?: { readonly value: T } } => ({}), []);
  return useBenchState((state) => {
    if (state.held === undefined || last.kept === undefined) last.kept = { value: select(state) };
    return last.kept.value;
  });
};
