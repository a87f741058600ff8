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
    const say = (value: number, unit: boolean) => formatQuantity(value, 'length', job.show, { unit });
    const scar =
      outline === 'none' ? [] : [says.scarSize(called(job, 'scar.outline'), say(length, false), say(depth, true))];
    const counts = (['holes', 'rises', 'braces'] as const).map(
      (key) => [job.top[key].length, ...says.countOf[key]] as const,
    );
    const listed = says.counts(counts);
    const found = [...scar, ...(listed === '' ? [] : [listed])];
    return { isUsed: found.length > 0, state: found.length === 0 ? says.notMeasured : found.join('; ') };
  },
  sections: (job) => {
    const { sectionAcross, sectionAlong } = job.show;
    const say = (value: number) => formatQuantity(value, 'length', job.show, { unit: true });
    return {
      isUsed: sectionAcross !== 0 || sectionAlong !== 'saddle',
      state: says.sectionsState(
        sectionAcross === 0 ? says.atMiddle : says.offMiddle(say(sectionAcross)),
        sectionAlong === 'saddle' ? says.atSaddle : says.behindFront(say(sectionAlong)),
      ),
    };
  },
  stock: (job) => ({
    isUsed: false,
    state: says.stockState(
      called(job, 'stock.wood'),
      formatQuantity(job.stock.allowance, 'length', job.show, { unit: true }),
    ),
  }),
  plate: (job) => {
    const { state, cap } = job.plate;
    const thick = cap === 'none' ? undefined : formatQuantity(cap, 'length', job.show, { unit: true });
    return { isUsed: state === 'worn' || cap !== 'none', state: says.plateState(called(job, 'plate.state'), thick) };
  },
};

/** How a group stands that not every job needs; undefined for one that each does. */
export const usageOf = (job: Job, group: FieldGroup): Usage | undefined => usages[group.id]?.(job, group);
