import { fieldGroups, getAt, setAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import { MM_PER_INCH, unitFor } from '../../../geometry/units.ts';

/** From so many inches on, a length is set by marks so many inches apart; what is thinner is felt with feelers or bought by thousandths. [practice] */
const marks = [
  [1, 1 / 16],
  [1 / 4, 1 / 32],
  [1 / 16, 1 / 64],
  [0, 1 / 1000],
] as const;
/** From so many inches on, a radius is told in whole feet; below, in quarters of an inch. [practice] */
const [far, foot, quarter] = [96, 12, 1 / 4];

/** A length or radius, mm, at the nearest mark by which it is set on a bench that measures in inches. */
export const onInchRule = (value: number, kind: 'length' | 'radius'): number => {
  const inches = Math.abs(value) / MM_PER_INCH;
  const apart =
    kind === 'radius' ? (inches >= far ? foot : quarter) : (marks.find(([from]) => inches >= from)?.[1] ?? quarter);
  return Math.sign(value) * Math.round(inches / apart) * apart * MM_PER_INCH;
};

/** Pins and their holes belong together to less than a 64th. */
const asTheyAre = ['pins.pinDiameter', 'pins.hole'];

/** A job whose presets, thought of in mm, stand at marks of a rule in inches where lengths, or radii, are shown in inches. */
export const withInchRule = (job: Job): Job =>
  fieldGroups
    .flatMap(({ fields }) => fields)
    .reduce((so, { path, kind }) => {
      const value = getAt(so, path);
      if ((kind !== 'length' && kind !== 'radius') || typeof value !== 'number' || unitFor(kind, job.show) === 'mm')
        return so;
      return asTheyAre.includes(path) ? so : setAt(so, path, onInchRule(value, kind));
    }, job);
