import type { Job } from './job.ts';
import { formatQuantity } from './units.ts';

/** Says a length (mm), or a radius, in the job's own unit for it. */
export interface Say {
  readonly mm: (value: number) => string;
  readonly radius: (value: number | 'flat') => string;
}

/** How a job's problems speak of its numbers. Where it is shown in inch fractions they are decimal, as a limit must not be rounded past itself. */
export const sayFor = ({ show }: Job): Say => {
  const exact = (unit: Job['show']['length']) => (unit === 'fraction' ? 'in' : unit);
  const units = { length: exact(show.length), radius: exact(show.radius), gauge: exact(show.gauge) };
  return {
    mm: (value) => formatQuantity(value, 'length', units, { unit: true }),
    radius: (value) => formatQuantity(value, 'radius', units, { unit: true }),
  };
};
