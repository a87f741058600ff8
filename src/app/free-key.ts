/** A key of its own for one more item of a list: the kind's name and the first number from `from` on that is free. */
export const freeKey = (list: readonly { readonly id: string }[], kind: string, from = list.length + 1): string => {
  const taken = new Set(list.map(({ id }) => id));
  let n = from;
  while (taken.has(`${kind}-${n}`)) n += 1;
  return `${kind}-${n}`;
};
