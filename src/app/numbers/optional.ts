import { type FieldGroup, fieldAt, getAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import { formatQuantity } from '../../../geometry/units.ts';
import { words } from '../words.ts';

const says = words.numbers;

/** How a group stands that not every job needs: whether anything of it is taken or used, and that in a few words. */
export interface Usage {
  readonly isUsed: boolean;
  readonly state: string;
}

/** What a choice is called where it stands. */
const called = (job: Job, path: string): string => {
  const value = String(getAt(job, path));
  return fieldAt(path)?.choices?.[value] ?? value;
};

const usages: Readonly<Record<string, (job: Job, group: FieldGroup) => Usage>> = {
  strung: (job, { fields }) => {
    const taken = fields.filter(({ path }) => typeof getAt(job, path) === 'number').length;
    return { isUsed: taken > 0, state: taken === 0 ? says.nothingTaken : says.taken(taken, fields.length) };
  },
  scar: (job) => {
    const { outline, length, depth } = job.scar;
    if (outline === 'none') return { isUsed: false, state: says.notMeasured };
    const say = (value: number, unit: boolean) => formatQuantity(value, 'length', job.show, { unit });
    return {
      isUsed: true,
      state: says.scarSize(called(job, 'scar.outline'), say(length, false), say(depth, true)),
    };
  },
  plate: (job) => {
    const { state, cap } = job.plate;
    const thick = cap === 'none' ? undefined : formatQuantity(cap, 'length', job.show, { unit: true });
    return { isUsed: state === 'worn' || cap !== 'none', state: says.plateState(called(job, 'plate.state'), thick) };
  },
};

/** How a group stands that not every job needs; undefined for one that each does. */
export const usageOf = (job: Job, group: FieldGroup): Usage | undefined => usages[group.id]?.(job, group);
