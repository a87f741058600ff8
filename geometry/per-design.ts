import type { Design } from './design.ts';
import type { Settled } from './settle.ts';

/** The same function of a job and its design, worked out once for a design however often it is asked; again where it is asked with another job. */
export const perDesign = <T>(of: (job: Settled, design: Design) => T): ((job: Settled, design: Design) => T) => {
  const known = new WeakMap<Design, { readonly job: Settled; readonly value: T }>();
  return (job, design) => {
    const before = known.get(design);
    if (before?.job === job) return before.value;
    const value = of(job, design);
    known.set(design, { job, value });
    return value;
  };
};
