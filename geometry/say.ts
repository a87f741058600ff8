import type { Job } from './job.ts';
import { formatQuantity } from './units.ts';

/** Says a length (mm), or a radius, in the job's own unit for it. */
export interface Say {
  readonly mm: (value: number) => string;
  readonly radius: (value: number | 'flat') => string;
}

/** How a job's problems speak of its numbers: as its fields show them. */
export const sayFor = ({ show }: Job): Say => ({
  mm: (value) => formatQuantity(value, 'length', show, { unit: true }),
  radius: (value) => formatQuantity(value, 'radius', show, { unit: true }),
});
