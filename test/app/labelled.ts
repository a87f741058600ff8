/*
 * An element by its label, as a person finds it. The test library's own way asks every element of the page for its labels, for each of which jsdom walks the whole page: seconds each
 * time on one as large as ours. Here only labels and names are looked at. Matched as whole text, blanks closed up.
 */

const plain = (text: string | null): string => (text ?? '').trim().replace(/\s+/g, ' ');

const named = (label: string, within: ParentNode): readonly Element[] => {
  const byLabel = [...within.querySelectorAll('label')]
    .filter((one) => plain(one.textContent) === label || [...one.children].some((c) => plain(c.textContent) === label))
    .flatMap((one) =>
      one.htmlFor === ''
        ? [...one.querySelectorAll('input, select, textarea')]
        : [document.getElementById(one.htmlFor)],
    )
    .filter((one) => one !== null);
  const byName = [...within.querySelectorAll('[aria-label]')].filter(
    (one) => plain(one.getAttribute('aria-label')) === label,
  );
  const byOther = [...within.querySelectorAll('[aria-labelledby]')].filter((one) =>
    (one.getAttribute('aria-labelledby') ?? '')
      .split(' ')
      .some((id) => plain(document.getElementById(id)?.textContent ?? '') === label),
  );
  return [...new Set([...byLabel, ...byName, ...byOther])];
};

/** The one element with this label; undefined where there is none. Throws an Error where there are several. */
export const findLabelled = <E extends Element = HTMLInputElement>(
  label: string,
  within: ParentNode = document,
): E | undefined => {
  const found = named(label, within);
  if (found.length > 1) throw new Error(`${found.length} elements are labelled “${label}”; one was meant.`);
  return found[0] as E | undefined;
};

/** The one element with this label. Throws an Error where there is none, or several. */
export const labelled = <E extends Element = HTMLInputElement>(label: string, within: ParentNode = document): E => {
  const found = findLabelled<E>(label, within);
  if (found === undefined) throw new Error(`Nothing is labelled “${label}”.`);
  return found;
};
