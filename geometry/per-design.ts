import type { Design } from './design.ts';
import { once } from './once.ts';
import type { Settled } from './settle.ts';

/** The same function of a job and its design, worked out once for a design however often it is asked; again where it is asked with another job. */
export const perDesign = <T>(of: (job: Settled, design: Design) => T): ((job: Settled, design: Design) => T) => {
  const asked = once((design: Design, job: Settled) => of(job, design));
  return (job, design) => asked(design, job);
};
