import { useStore } from 'zustand';
import type { Finding } from '../../../geometry/checks/check.ts';
import { swiftOf } from '../swift/hand.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { findingsOf } from './findings-of.ts';
import type { HeldFindings } from './held-findings.ts';

const none: readonly Finding[] = [];

/** What is found while a hand drags a number, as far as that is more than other strings; unless nobody sees it. */
export const useHeldFindings = (isSeen = true): HeldFindings | undefined =>
  useStore(swiftOf(useBench()).ahead, ({ found }) => (isSeen ? found : undefined));

/** What the checks find in the last numbers that could be built; where a hand drags one of them, of where it is now, unless nobody sees it. */
export const useFindings = (isSeen = true): readonly Finding[] => {
  const held = useHeldFindings(isSeen);
  const findings = useBenchState(({ built }) => (built === undefined ? none : findingsOf(built)));
  return held?.findings ?? findings;
};
