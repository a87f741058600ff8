import type { Job } from './job.ts';
import type { DecimalMark, ShowUnits } from './units.ts';

/**
 * The job as someone reads it who writes decimals with this mark: built from it, all that is drawn and said shows its numbers so. For looking at only: the mark is the reader's, not the job's, and is never kept with it.
 */
export const readAs = <T extends Job>(job: T, decimal: DecimalMark): T => {
  const { decimal: already = 'point' }: ShowUnits = job.show;
  return already === decimal ? job : { ...job, show: { ...job.show, decimal } };
};
