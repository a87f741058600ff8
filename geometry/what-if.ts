import { build } from './build.ts';
import { fieldAt, getAt, setAt } from './fields.ts';
import type { Job } from './job.ts';
import { type LengthUnit, MM_PER_INCH, type QuantityKind, type ShowUnits, unitFor } from './units.ts';

/** How much a person turns a length or a radius by in each unit, mm. */
const lengthSteps: Readonly<Record<'length' | 'radius' | 'gauge', Readonly<Record<LengthUnit, number>>>> = {
  length: { mm: 0.1, in: MM_PER_INCH / 200, fraction: MM_PER_INCH / 64 },
  radius: { mm: 10, in: MM_PER_INCH / 2, fraction: MM_PER_INCH / 2 },
  gauge: { mm: 0.01, in: MM_PER_INCH / 1000, fraction: MM_PER_INCH / 1000 },
};

/** How much a person turns any other number by, in stored units. */
const steps: Readonly<Record<Exclude<QuantityKind, keyof typeof lengthSteps>, number>> = {
  angle: 1,
  force: 1,
  frequency: 1,
  count: 1,
  slope: 0.001,
  cents: 1,
  share: 0.01,
  moment: 100,
  stress: 0.01,
};

const stepOf = (kind: QuantityKind, show: ShowUnits): number =>
  kind === 'length' || kind === 'radius' || kind === 'gauge' ? lengthSteps[kind][unitFor(kind, show)] : steps[kind];

export interface WhatIf {
  /** The step that the changes are for, in the field's stored unit. */
  readonly step: number;
  /** By how much each string's exposure (mm) and break angle (degrees) move for one step up. */
  readonly strings: readonly { readonly id: string; readonly exposure: number; readonly breakAngle: number }[];
}

/**
 * How exposure and break angle of every string move when one number of the job grows by a step (`change`, or what a person would turn it by): half of what lies between the job solved a step
 * higher and a step lower, or, where one of them is beyond a limit or cannot be built, what lies between the other and the job as it is. The same solver, not a second formula. Undefined where the
 * field holds no number, or neither side can be solved. Throws a RangeError for a step that is not more than 0.
 */
export const whatIf = (job: Job, path: string, change?: number): WhatIf | undefined => {
  const field = fieldAt(path);
  const now = getAt(job, path);
  if (field === undefined || field.kind === 'word' || field.kind === 'text' || typeof now !== 'number')
    return undefined;
  const step = change ?? stepOf(field.kind, job.show);
  if (!(step > 0)) throw new RangeError(`A step of ${step} leads nowhere; it must be more than 0.`);
  const at = (value: number) => {
    if (value < (field.min ?? Number.NEGATIVE_INFINITY) || value > (field.max ?? Number.POSITIVE_INFINITY))
      return undefined;
    const solved = build(setAt(job, path, value));
    return solved.ok ? solved.design.strings : undefined;
  };
  const up = at(now + step);
  const down = at(now - step);
  const [to, from] = [up ?? at(now), down ?? at(now)];
  if ((up === undefined && down === undefined) || to === undefined || from === undefined) return undefined;
  const between = up !== undefined && down !== undefined ? 2 : 1;
  return {
    step,
    strings: to.flatMap((string, k) => {
      const other = from[k];
      if (other === undefined) return [];
      return [
        {
          id: string.id,
          exposure: (string.exposure - other.exposure) / between,
          breakAngle: (string.breakAngle - other.breakAngle) / between,
        },
      ];
    }),
  };
};
