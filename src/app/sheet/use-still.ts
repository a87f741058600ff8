import { useState } from 'react';
import { useBenchState } from '../use-bench.ts';

/** What stood here when a hand took hold of a number on the drawing, for as long as it holds it; else the value itself. */
export const useStill = <T>(value: T): T => {
  const isHeld = useBenchState(({ held }) => held !== undefined);
  const [kept, setKept] = useState(value);
  if (!isHeld && kept !== value) setKept(value);
  return isHeld ? kept : value;
};
