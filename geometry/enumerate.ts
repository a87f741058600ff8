/**
 * Items one after another: `a, b, c`; with semicolons where an item has a decimal comma, so that `2,5; 3,1` is not read as four numbers. So English parts items that hold
 * commas themselves.
 */
export const inRow = (items: readonly string[]): string =>
  items.join(items.some((item) => /\d,\d/.test(item)) ? '; ' : ', ');

/** Items as a sentence names them, the last behind `last`: `a, b and c`. */
export const enumerate = (items: readonly string[], last: 'and' | 'or' = 'and'): string =>
  items.length < 2 ? (items[0] ?? '') : `${inRow(items.slice(0, -1))} ${last} ${items.at(-1)}`;
