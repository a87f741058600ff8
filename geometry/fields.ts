import type { z } from 'zod/mini';
import { type FieldWords, type Job, jobSchema, words } from './job.ts';
import { onceForText } from './once.ts';
import { alikeIn, formatQuantity, type QuantityKind, roundIn, type ShowUnits, unitFor } from './units.ts';

/** One field of a job: its path and its words. In the path of a field of a list's item, such as a string's, `*` stands for the item's key. */
export interface FieldInfo extends FieldWords {
  readonly path: string;
}

export interface FieldGroup {
  readonly id: string;
  readonly title: string;
  readonly fields: readonly FieldInfo[];
}

type Schema = z.core.$ZodType;

/** Whether this may be left out. */
export const isOptional = (schema: Schema): boolean => (schema as z.core.$ZodTypes)._zod.def.type === 'optional';

/** What may be left out, as if it were there. */
function present(schema: Schema | undefined): Schema | undefined {
  const def = (schema as z.core.$ZodTypes | undefined)?._zod.def;
  return def?.type === 'optional' ? (def as z.core.$ZodOptionalDef).innerType : schema;
}

/** The schemas of an object's keys, whether they may be left out or not; undefined for anything but an object. */
export function shapeOf(schema: Schema | undefined): Readonly<Record<string, Schema>> | undefined {
  const def = (present(schema) as z.core.$ZodTypes | undefined)?._zod.def;
  return def?.type === 'object' ? (def as z.core.$ZodObjectDef).shape : undefined;
}

/** The schema of a list's items; undefined for anything but a list. */
export function itemOf(schema: Schema | undefined): Schema | undefined {
  const def = (schema as z.core.$ZodTypes | undefined)?._zod.def;
  return def?.type === 'array' ? (def as z.core.$ZodArrayDef).element : undefined;
}

/** The schema at a path of a job (or of what else `root` describes), where the key of a list's item or `*` stands for any of its kind; undefined if there is none. */
export function schemaAt(path: string, root: Schema = jobSchema): Schema | undefined {
  let at: Schema | undefined = root;
  for (const key of path.split('.')) {
    const shape = shapeOf(at);
    at = shape === undefined ? itemOf(at) : Object.hasOwn(shape, key) ? present(shape[key]) : undefined;
  }
  return at;
}

function* walk(schema: Schema, path: string): Generator<FieldInfo> {
  const said = words.get(present(schema) ?? schema);
  if (said !== undefined) yield { path, ...said };
  const join = (key: string) => (path === '' ? key : `${path}.${key}`);
  for (const [key, part] of Object.entries(shapeOf(schema) ?? {})) yield* walk(part, join(key));
  const item = itemOf(schema);
  if (item !== undefined) yield* walk(item, join('*'));
}

/** Every field of what a schema describes, in its order. */
export const fieldsOf = (root: Schema): readonly FieldInfo[] => [...walk(root, '')];

const allFields = fieldsOf(jobSchema);

/** The order of the bench. Each group claims fields by their path or by a beginning of it; the longest claim wins. */
const order: readonly (readonly [id: string, title: string, claims: readonly string[]])[] = [
  ['job', 'The job', ['name', 'date', 'hand', 'show', 'work']],
  ['strung', 'Before it comes apart', ['strung']],
  [
    'measured',
    'Measured on the guitar',
    [
      'guitar.scale',
      'guitar.measured',
      'guitar.boardRadiusNut',
      'guitar.boardRadiusEnd',
      'guitar.frets',
      'guitar.bodyJoint',
      'guitar.nutSpread',
      'guitar.boardWidth',
      'strings.spread',
      'strings.spacing',
      'guitar.neckPlaneHeight',
      'guitar.rise',
      'guitar.topRadius',
      'top.radiusAlong',
      'guitar.heelDepth',
      'guitar.relief',
      'guitar',
    ],
  ],
  ['scar', 'What is there already', ['scar', 'top.holes', 'top.rises', 'top.braces']],
  ['action', 'Wanted action', ['action']],
  // Where the slot lies is taken before the bridge around it.
  ['bridge', 'The bridge', ['slot.fromNut', 'slot.slant', 'bridge']],
  ['sections', 'Sections drawn', ['show.sectionAcross', 'show.sectionAlong']],
  ['slot', 'The slot', ['slot.line', 'slot']],
  ['saddle', 'The saddle', ['saddle']],
  ['pins', 'The pins', ['pins']],
  ['plate', 'The bridge plate', ['plate']],
  ['stock', 'The stock', ['stock']],
  ['strings', 'The strings', ['strings.setbacks', 'strings.finger', 'strings']],
  ['setup', 'Set-up', ['setup']],
  ['limits', 'Ranges of this job', ['limits']],
];

/** The place of the longest claim to this path: the group's, then the claim's own. */
function placeOf(path: string): { readonly group: number; readonly claim: number } | undefined {
  let best: { group: number; claim: number } | undefined;
  let longest = 0;
  order.forEach(([, , claims], group) => {
    claims.forEach((begin, claim) => {
      if (
        begin.length > longest &&
        path.startsWith(begin) &&
        (path.length === begin.length || path[begin.length] === '.')
      ) {
        best = { group, claim };
        longest = begin.length;
      }
    });
  });
  return best;
}

const isKey = (path: string): boolean => path.endsWith('.*.id');

/** Each field that a person can set, and its place. */
const placed = allFields.flatMap((field) => (isKey(field.path) ? [] : [{ field, place: placeOf(field.path) }]));

/**
 * Every field a person can set, in the order in which it is taken on the bench. Read from the schema: a new field shows up
 * in the group that claims its path. The keys of lists' items are left out, as nobody types them.
 */
export const fieldGroups: readonly FieldGroup[] = order.map(([id, title], group) => ({
  id,
  title,
  fields: placed
    .flatMap(({ field, place }) => (place?.group === group ? [{ field, place }] : []))
    .sort((a, b) => a.place.claim - b.place.claim)
    .map(({ field }) => field),
}));

/** A path with `*` in place of the keys of lists' items: the same for every string; undefined where it leads nowhere. */
export function patternOf(path: string): string | undefined {
  const keys: string[] = [];
  let at: Schema | undefined = jobSchema;
  for (const key of path.split('.')) {
    const item = itemOf(at);
    keys.push(item === undefined ? key : '*');
    const shape = shapeOf(at);
    at = item ?? (shape !== undefined && Object.hasOwn(shape, key) ? present(shape[key]) : undefined);
    if (at === undefined) return undefined;
  }
  return keys.join('.');
}

const inOrder: ReadonlyMap<string, number> = new Map(
  fieldGroups.flatMap(({ fields }) => fields).map(({ path }, place) => [path, place]),
);

/** The place of a path's field in the order of the bench, from 0; behind all others where no field is. */
export const benchOrder = onceForText((path) => inOrder.get(patternOf(path) ?? path) ?? inOrder.size);

/** The most items that a list of a job (or of what else `root` describes) may hold; undefined where no list is, or one that may be of any length. */
export function mostItems(path: string, root: Schema = jobSchema): number | undefined {
  const def = (schemaAt(path, root) as z.core.$ZodTypes | undefined)?._zod.def;
  if (def?.type !== 'array') return undefined;
  const limit = def.checks?.map((check) => check._zod.def).find(({ check }) => check === 'max_length');
  return (limit as z.core.$ZodCheckMaxLengthDef | undefined)?.maximum;
}

/** The field at a path of a job (or of what else `root` describes), such as `bridge.thickness` or `strings.list.E2.gauge`; undefined where no field is. */
export function fieldAt(path: string, root: Schema = jobSchema): FieldInfo | undefined {
  return root === jobSchema ? fieldOfJob(path) : fieldOf(path, root);
}

const fieldOf = (path: string, root: Schema): FieldInfo | undefined => {
  const schema = schemaAt(path, root);
  const said = schema && words.get(schema);
  return said && { path, ...said };
};
const fieldOfJob = onceForText((path) => fieldOf(path, jobSchema));

/** The fields of the item with this key in a list of the job, their paths made out; with `*` for the key those of any item. */
export const itemFields = (list: string, id: string): readonly FieldInfo[] =>
  allFields
    .filter(({ path }) => path.startsWith(`${list}.*.`) && !isKey(path))
    .map((field) => ({ ...field, path: field.path.replace('*', () => id) }));

/** The fields of the string with this key, their paths made out. */
export const stringFields = (id: string): readonly FieldInfo[] => itemFields('strings.list', id);

type Bag = Readonly<Record<string, unknown>>;
const isBag = (value: unknown): value is Bag => typeof value === 'object' && value !== null && !Array.isArray(value);
const hasId = (item: unknown, id: string): boolean => isBag(item) && item.id === id;

/** The value at a path of a job, or of what else is kept so; undefined where there is none. An item of a list is found by its `id`. */
export function getAt(job: object, path: string): unknown {
  return path.split('.').reduce<unknown>((at, key) => {
    if (Array.isArray(at)) return at.find((item) => hasId(item, key));
    return isBag(at) && Object.hasOwn(at, key) ? at[key] : undefined;
  }, job);
}

function withValue(at: unknown, keys: readonly string[], value: unknown, path: string): unknown {
  const [key, ...rest] = keys;
  if (key === undefined) return value;
  if (Array.isArray(at)) {
    if (!at.some((item) => hasId(item, key)))
      throw new RangeError(`${path}: the list has no item with the key ${key}.`);
    return at.map((item) => (hasId(item, key) ? withValue(item, rest, value, path) : item));
  }
  // A group that may be left out begins to be there with its first value; `undefined` takes a value out.
  if (at === undefined && schemaAt(path) !== undefined) return { [key]: withValue(undefined, rest, value, path) };
  if (!isBag(at) || key === '__proto__') throw new RangeError(`${path} is no place in a job.`);
  const { [key]: old, ...others } = at;
  const put = withValue(Object.hasOwn(at, key) ? old : undefined, rest, value, path);
  return put === undefined ? others : { ...at, [key]: put };
}

/**
 * A job, or what else is kept so, with the value at the path put in; all else is shared with the job given, which stays as it was. An item of a list is found by
 * its `id`. The value is not checked here (see `checkField`). Throws a RangeError if the path leads nowhere.
 */
export const setAt = <T extends object = Job>(job: T, path: string, value: unknown): T =>
  withValue(job, path.split('.'), value, path) as T;

/** A path whose `*` are made out by the keys that stand at the same places of another one. */
const madeOut = (path: string, by: string): string => {
  const keys = by.split('.');
  return path
    .split('.')
    .map((key, place) => (key === '*' ? (keys[place] ?? key) : key))
    .join('.');
};

/**
 * Whether the field counts in this job: the depth at a belly bridge's tips does not on a rectangular one. A field that hangs on another
 * counts only where that one does: the corners' radius, which hangs on the ends' shape, not where the ends have none to choose.
 */
export function applies(field: FieldInfo, job: object, root: Schema = jobSchema): boolean {
  const { only, path } = field;
  if (only === undefined) return true;
  return [only].flat().some((one) => {
    const at = madeOut(one.path, path);
    const value = getAt(job, at);
    const other = fieldAt(at, root);
    if ('is' in one ? value !== one.is : value === one.isNot) return false;
    return other === undefined || applies(other, job, root);
  });
}

/** The usual range [practice] in the units shown, in numbers that are round in them, such as `8.0 to 12.0 mm` or `5/16 to 15/32 in`; undefined where no range is usual. */
export function usualText(field: FieldInfo, show: ShowUnits): string | undefined {
  if (field.usual === undefined || field.kind === 'word' || field.kind === 'text') return undefined;
  const kind: QuantityKind = field.kind;
  const unit = unitFor(kind, show);
  const inUnit = field.usual.map((limit) => roundIn(limit, kind, unit));
  const units = kind === 'length' ? alikeIn(show, inUnit) : show;
  const [from, to] = units === show ? inUnit : field.usual.map((limit) => roundIn(limit, kind, 'in'));
  const say = (limit = 0, isLast = false) => formatQuantity(limit, kind, units, { unit: isLast });
  return `${say(from)} to ${say(to, true)}`;
}
