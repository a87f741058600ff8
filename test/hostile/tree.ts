/*
 * A JSON text as a tree that can say what a value read from it cannot: a key twice, a number as it was written, a text with any escape.
 */

/** A leaf is its own JSON text. */
export type Tree = string | readonly Tree[] | { readonly pairs: readonly (readonly [key: string, Tree])[] };

export const isGroup = (tree: Tree): tree is Exclude<Tree, string | readonly Tree[]> =>
  typeof tree === 'object' && !Array.isArray(tree);
export const isList = (tree: Tree): tree is readonly Tree[] => Array.isArray(tree);

/** The tree of a plain value. */
export const treeOf = (value: unknown): Tree => {
  if (Array.isArray(value)) return value.map(treeOf);
  if (typeof value === 'object' && value !== null)
    return { pairs: Object.entries(value).map(([key, part]) => [JSON.stringify(key), treeOf(part)]) };
  return JSON.stringify(value) ?? 'null';
};

export const textOf = (tree: Tree): string => {
  if (typeof tree === 'string') return tree;
  if (isGroup(tree)) return `{${tree.pairs.map(([key, part]) => `${key}:${textOf(part)}`).join(',')}}`;
  return `[${tree.map(textOf).join(',')}]`;
};

/** The parts of a group or a list, and the same with others in their place. */
const parts = (tree: Tree): readonly Tree[] =>
  typeof tree === 'string' ? [] : isGroup(tree) ? tree.pairs.map(([, part]) => part) : tree;
const withParts = (tree: Tree, made: readonly Tree[]): Tree =>
  isGroup(tree) ? { pairs: tree.pairs.map(([key], k) => [key, made[k] ?? 'null']) } : made;

export const sizeOf = (tree: Tree): number => parts(tree).reduce((sum, part) => sum + sizeOf(part), 1);

/** The tree at a place, counted from the root, which is 0. */
export const partAt = (tree: Tree, place: number): Tree => {
  let left = place - 1;
  for (const part of parts(tree)) {
    const size = sizeOf(part);
    if (left >= 0 && left < size) return partAt(part, left);
    left -= size;
  }
  return tree;
};

/** The tree with something else at a place. */
export const changedAt = (tree: Tree, place: number, change: (part: Tree) => Tree): Tree => {
  if (place === 0) return change(tree);
  let left = place - 1;
  return withParts(
    tree,
    parts(tree).map((part) => {
      const size = sizeOf(part);
      const at = left;
      left -= size;
      return at >= 0 && at < size ? changedAt(part, at, change) : part;
    }),
  );
};
