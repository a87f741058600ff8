/**
 * A pure function whose first argument is an object that nobody changes, worked out once for each object; again where it is asked with other further arguments, of which the last ones are kept. Nothing is kept of an
 * object that is gone.
 */
export const once = <K extends object, R extends readonly unknown[], T>(
  of: (key: K, ...rest: R) => T,
): ((key: K, ...rest: R) => T) => {
  const known = new WeakMap<K, { readonly rest: R; readonly value: T }>();
  return (key, ...rest) => {
    const before = known.get(key);
    if (before !== undefined && rest.every((one, k) => Object.is(one, before.rest[k]))) return before.value;
    const value = of(key, ...rest);
    known.set(key, { rest, value });
    return value;
  };
};

/** So many texts are kept; then all are forgotten, as those of a number that is dragged do not come again. */
const mostTexts = 2000;

/** The same for a text, such as a path. */
export const onceForText = <T>(of: (text: string) => T): ((text: string) => T) => {
  const known = new Map<string, T>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined || known.has(text)) return before as T;
    const value = of(text);
    if (known.size >= mostTexts) known.clear();
    known.set(text, value);
    return value;
  };
};
