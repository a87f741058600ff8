import { useLayoutEffect, useMemo, useRef } from 'react';
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

/** A value; while a hand holds a number, the one from before. */
export const useWhileHeld = <T>(value: T): T => {
  const isHeld = useBenchState(({ held }) => held !== undefined);
  const before = useRef(value);
  useLayoutEffect(() => {
    if (!isHeld) before.current = value;
  });
  return isHeld ? before.current : value;
};
