import { useStore } from 'zustand';
import type { Finding } from '../../../geometry/checks/check.ts';
import { swiftOf } from '../swift/hand.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { findingsOf } from './findings-of.ts';

const none: readonly Finding[] = [];

/** What the checks find in the last numbers that could be built; where a hand drags one of them, of where it is now, unless nobody sees it. */
export const useFindings = (isSeen = true): readonly Finding[] => {
  const ahead = useStore(swiftOf(useBench()).ahead, ({ findings }) => (isSeen ? findings : undefined));
  const findings = useBenchState(({ built }) => (built === undefined ? none : findingsOf(built)));
  return ahead ?? findings;
};
