/*
 * What changed from one plain value to another, as a list of small changes that can be put on a third one. Lists are followed by their items' `id`, never by position, so that two people
 * who change different numbers of one job both keep theirs.
 */

type Bag = Readonly<Record<string, unknown>>;
type Item = Bag & { readonly id: string };

/** One place that changed: keys of groups and ids of lists' items from the top down. What is undefined was not, or is no longer, there. */
export interface Change {
  readonly path: readonly string[];
  readonly before?: unknown;
  readonly after?: unknown;
  /** Of a list: the order of its items' ids. */
  readonly order?: { readonly before: readonly string[]; readonly after: readonly string[] };
}

const isBag = (value: unknown): value is Bag => typeof value === 'object' && value !== null && !Array.isArray(value);

/** A list whose items can be told apart by their ids. */
const isKeyed = (value: unknown): value is readonly Item[] =>
  Array.isArray(value) &&
  value.every((item) => isBag(item) && typeof item.id === 'string') &&
  new Set(value.map(({ id }) => id)).size === value.length;

const idsOf = (list: readonly Item[]): readonly string[] => list.map(({ id }) => id);
const sameOrder = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((id, k) => id === b[k]);

/** Whether two plain values say the same, whatever the order of their keys. */
export const isSame = (a: unknown, b: unknown): boolean => {
  if (Object.is(a, b)) return true;
  if (Array.isArray(a) || Array.isArray(b))
    return Array.isArray(a) && Array.isArray(b) && a.length === b.length && a.every((part, k) => isSame(part, b[k]));
  if (!isBag(a) || !isBag(b)) return false;
  const keys = Object.keys(a);
  return keys.length === Object.keys(b).length && keys.every((key) => Object.hasOwn(b, key) && isSame(a[key], b[key]));
};

const own = (bag: Bag, key: string): unknown => (Object.hasOwn(bag, key) ? bag[key] : undefined);

/** Every change that leads from one plain value to another. `applyChanges` of them to the first gives the second. */
export const changesBetween = (a: unknown, b: unknown, path: readonly string[] = []): readonly Change[] => {
  if (Object.is(a, b)) return [];
  if (isKeyed(a) && isKeyed(b)) {
    const [before, after] = [idsOf(a), idsOf(b)];
    const of = (list: readonly Item[], id: string) => list.find((item) => item.id === id);
    const parts = [...new Set([...before, ...after])].flatMap((id) =>
      changesBetween(of(a, id), of(b, id), [...path, id]),
    );
    return sameOrder(before, after) ? parts : [...parts, { path, order: { before, after } }];
  }
  if (isBag(a) && isBag(b))
    return [...new Set([...Object.keys(a), ...Object.keys(b)])].flatMap((key) =>
      changesBetween(own(a, key), own(b, key), [...path, key]),
    );
  if (isSame(a, b)) return [];
  return [{ path, ...(a !== undefined && { before: a }), ...(b !== undefined && { after: b }) }];
};

/** The items in the order of the ids given; those that it does not name stay behind the one they stand behind now. */
const ordered = (list: readonly Item[], ids: readonly string[]): readonly Item[] => {
  const named = list.filter(({ id }) => ids.includes(id)).sort((p, q) => ids.indexOf(p.id) - ids.indexOf(q.id));
  const made = [...named];
  list.forEach((item, k) => {
    if (ids.includes(item.id)) return;
    const behind = list[k - 1];
    made.splice(behind === undefined ? 0 : made.findIndex(({ id }) => id === behind.id) + 1, 0, item);
  });
  return made;
};

/** A value with one change put on it; as it was where the change finds no place in it, as when an item that it is about is gone. */
const applied = (value: unknown, { path, after, order }: Change, depth: number): unknown => {
  const key = path[depth];
  if (key === undefined) {
    if (order !== undefined) return isKeyed(value) ? ordered(value, order.after) : value;
    return after;
  }
  const isLast = depth === path.length - 1 && order === undefined;
  const change = { path, after, order } as Change;
  if (isKeyed(value)) {
    const at = value.findIndex(({ id }) => id === key);
    if (at < 0) return isLast && isBag(after) && after.id === key ? [...value, after] : value;
    if (isLast && after === undefined) return value.filter((_, k) => k !== at);
    return value.map((item, k) => (k === at ? applied(item, change, depth + 1) : item));
  }
  if (!isBag(value) || key === '__proto__') return value;
  if (!isLast && !Object.hasOwn(value, key)) return value;
  const made = applied(own(value, key), change, depth + 1);
  if (made !== undefined) return { ...value, [key]: made };
  const { [key]: _, ...others } = value;
  return others;
};

/** A value with changes put on it, one after another; what they find no place for is left out. All else is shared with the value given. */
export const applyChanges = <T>(value: T, changes: readonly Change[]): T =>
  changes.reduce<unknown>((made, change) => applied(made, change, 0), value) as T;

/** The changes that take back what `changesBetween` told. They do not meet each other, but for a list's order, which comes after its items in both directions. */
export const inverse = (changes: readonly Change[]): readonly Change[] =>
  changes.map(({ path, before, after, order }) => ({
    path,
    ...(after !== undefined && { before: after }),
    ...(before !== undefined && { after: before }),
    ...(order !== undefined && { order: { before: order.after, after: order.before } }),
  }));

/** Whether a value read from elsewhere is a list of changes. */
export const areChanges = (value: unknown): value is readonly Change[] =>
  Array.isArray(value) &&
  value.every(
    (change) => isBag(change) && Array.isArray(change.path) && change.path.every((key) => typeof key === 'string'),
  );
