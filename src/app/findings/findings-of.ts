import type { Finding } from '../../../geometry/checks/check.ts';
import { findings } from '../../../geometry/checks/findings.ts';
import type { Built } from '../store.ts';

const known = new WeakMap<Built['design'], readonly Finding[]>();

/** What the checks find in a job that could be built: looked at once, however many parts of the page ask. */
export const findingsOf = ({ job, design }: Built): readonly Finding[] => {
  const found = known.get(design) ?? findings(job, design);
  known.set(design, found);
  return found;
};
