import { applies, type FieldInfo, fieldGroups, getAt, itemFields } from './fields.ts';
import type { Alternative, Job } from './job.ts';
import { letters } from './schema/alternatives.ts';

export type Letter = Alternative['id'];

/** What is chosen, group by group; all else is measured on the guitar, or wanted of it, and is every design's. */
const groups = ['bridge', 'slot', 'saddle', 'pins', 'stock'] as const;
type Chosen = Pick<Alternative, (typeof groups)[number]>;

/** Where a slot lies that is cut already. */
const cutAlready: readonly string[] = ['slot.fromNut', 'slot.slant'];

/** What is chosen in this job: where the bridge stays, its numbers and its slot's are those that were measured, and the saddle alone is chosen. */
const chosenGroups = ({ work }: Pick<Job, 'work'>): readonly (typeof groups)[number][] =>
  work === 'saddle' ? ['saddle'] : groups;

/**
 * Whether each design has a value of its own at this path of the job (it is chosen), or one is every design's (it is measured, or wanted whatever the design): the bridge, its slot, saddle, pins and
 * wood are chosen; the guitar, its strings and top, the plate, the action wanted and the place of a slot that is cut already are not.
 */
export const isChosen = (job: Pick<Job, 'work'>, path: string): boolean =>
  !cutAlready.includes(path) && chosenGroups(job).some((group) => path === group || path.startsWith(`${group}.`));

const chosenOf = ({ bridge, slot, saddle, pins, stock }: Job): Chosen => {
  const { fromNut: _, slant: __, ...own } = slot;
  return { bridge, slot: own, saddle, pins, stock };
};

/** The job with another design in the present one's place; what is measured stays. */
export const jobOf = (job: Job, alternative: Chosen): Job => {
  const { bridge, slot, saddle, pins, stock } = alternative;
  if (job.work === 'saddle') return { ...job, saddle };
  return { ...job, bridge, slot: { ...slot, fromNut: job.slot.fromNut, slant: job.slot.slant }, saddle, pins, stock };
};

/** The letters that no alternative of the job goes by yet. */
export const freeLetters = ({ alternatives }: Job): readonly Letter[] =>
  letters.filter((letter) => !alternatives.list.some(({ id }) => id === letter));

/** The alternative that goes by this letter. */
export const alternativeAt = ({ alternatives }: Job, letter: string): Alternative | undefined =>
  alternatives.list.find(({ id }) => id === letter);

const withList = (job: Job, list: readonly Alternative[]): Job => ({
  ...job,
  alternatives: { ...job.alternatives, list: list.toSorted((a, b) => letters.indexOf(a.id) - letters.indexOf(b.id)) },
});

/** The job with one more alternative, made from the design given (the present one), under the first letter that is free. Throws a RangeError where none is. */
export const withAlternative = (job: Job, name: string, design: Job = job): Job => {
  const [id] = freeLetters(job);
  if (id === undefined) throw new RangeError(`A job has at most ${letters.length} alternatives; remove one first.`);
  return withList(job, [...job.alternatives.list, { id, name, ...chosenOf(design) }]);
};

export const withoutAlternative = (job: Job, letter: string): Job =>
  withList(
    job,
    job.alternatives.list.filter(({ id }) => id !== letter),
  );

/** The job with this alternative as the present design, and the present one in its place under its letter, each with its name: done twice, the job is as it was. Throws a RangeError for a letter that none goes by. */
export const asPresent = (job: Job, letter: string): Job => {
  const next = alternativeAt(job, letter);
  if (next === undefined) throw new RangeError(`No alternative goes by the letter ${letter}.`);
  const was = job.work === 'saddle' ? { saddle: job.saddle } : chosenOf(job);
  const { present } = job.alternatives;
  const list = job.alternatives.list.map((one) => (one === next ? { ...one, ...was, name: present } : one));
  return { ...jobOf(job, next), alternatives: { ...job.alternatives, present: next.name, list } };
};

/** One field in which the designs of a job differ. */
export interface Difference {
  /** The field, its path made out; `group` is the title of the group it stands in. */
  readonly field: FieldInfo;
  readonly group: string;
  /** The place of the outline's point whose field it is, from 1. */
  readonly point?: number;
  /** What stands there in the present design, then in each alternative; undefined where the field does not count in a design. */
  readonly values: readonly (number | string | undefined)[];
}

/** The fields of the points of free outlines, by the points' keys, in the order in which the designs have them. */
const pointFields = (designs: readonly Job[]): readonly { readonly field: FieldInfo; readonly point: number }[] => {
  const points = designs.flatMap(({ bridge }) =>
    bridge.footprint === 'free' ? bridge.points.map(({ id }, k) => ({ id, point: k + 1 })) : [],
  );
  const first = points.filter(({ id }, k) => points.findIndex((one) => one.id === id) === k);
  return first.flatMap(({ id, point }) => itemFields('bridge.points', id).map((field) => ({ field, point })));
};

/** Every field in which the present design and the alternatives differ, in the order of the bench, and none in which all are alike. */
export const differences = (job: Job): readonly Difference[] => {
  const designs = [job, ...job.alternatives.list.map((one) => jobOf(job, one))];
  const valueIn = (design: Job, field: FieldInfo) => {
    const isOfPoint = field.path.startsWith('bridge.points.');
    const counts = isOfPoint ? design.bridge.footprint === 'free' : applies(field, design);
    return counts ? (getAt(design, field.path) as number | string | undefined) : undefined;
  };
  return fieldGroups.flatMap(({ title: group, fields }) =>
    fields
      .filter(({ path }) => isChosen(job, path))
      .flatMap((field): readonly { readonly field: FieldInfo; readonly point?: number }[] => {
        if (!field.path.includes('*')) return [{ field }];
        return field.path === 'bridge.points.*.across' ? pointFields(designs) : [];
      })
      .map((one) => ({ ...one, group, values: designs.map((design) => valueIn(design, one.field)) }))
      .filter(({ values }) => values.some((value) => value !== values[0])),
  );
};
