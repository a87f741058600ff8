import { type Put, placeOf } from './page.ts';

/** What stands at a place of an element: an attribute, its one `text`, or the `value` of a field. */
const stands = (element: Element, at: string): string | null => {
  if (at === 'text') return element.textContent;
  return at === 'value' ? (element as HTMLInputElement).value : element.getAttribute(at);
};

const puts = (element: Element, at: string, text: string | null): void => {
  if (at === 'text') {
    const node = element.firstChild;
    if (node !== null && node === element.lastChild && node.nodeType === Node.TEXT_NODE) node.nodeValue = text;
    else element.textContent = text;
  } else if (at === 'value') (element as HTMLInputElement).value = text ?? '';
  else if (text === null) element.removeAttribute(at);
  else element.setAttribute(at, text);
};

/** Whether an element is in sight, as far as the window goes. */
export const isInWindow = (element: Element): boolean => {
  const { top, bottom, left, right } = element.getBoundingClientRect();
  const isIn = bottom > 0 && top < window.innerHeight && right > 0 && left < window.innerWidth && bottom > top;
  // What is folded away has a place, too.
  return isIn && element.checkVisibility?.() !== false;
};

const isDrawn = (element: Element): boolean => element.isConnected && element.closest('svg.drawing') !== null;

/** Whether an element that was found is still the one. */
const isStill = (element: Element, selector: string): boolean => element.isConnected && element.matches(selector);

/** A further line of a hatching, or piece of a line, made like the last one, after it; none where there is no such line. */
const furtherLine = (selector: string): Element | null => {
  const [, drawing, name = '', id = ''] = /^(.*)\[(data-mark|data-casing)="(.+(?:\.\d+)+)"\]$/.exec(selector) ?? [];
  if (drawing === undefined) return null;
  /** The last of a line's pieces, or else of the lines that it is one of. */
  const lastOf = (whole: string): Element | undefined =>
    [...document.querySelectorAll(`${drawing}[${name}^="${whole}"]`)].findLast((one) =>
      /^(\.\d+)*$/.test((one.getAttribute(name) ?? '').slice(whole.length)),
    );
  let last: Element | undefined;
  for (let whole = id; last === undefined && /\.\d+$/.test(whole); last = lastOf(whole))
    whole = whole.replace(/\.\d+$/, '');
  const line = last?.cloneNode() as Element | undefined;
  if (line === undefined) return null;
  line.setAttribute(name, id);
  // What lies under a line comes right before it.
  const over = name === 'data-casing' ? document.querySelector(`${drawing}[data-mark="${id}"]`) : null;
  if (over) over.before(line);
  else last?.after(line);
  return line;
};

/** Strings put into the page past React, which knows nothing of them: they are taken back before it renders what they say itself. */
export const quickStrings = () => {
  /** Elements by their selectors; none where there is none, or it is out of sight. */
  const found = new Map<string, Element | null>();
  const made = new Set<Element>();
  const before = new Map<string, { element: Element; at: string; was: string | null; now: string | null }>();

  const find = (selector: string, at: string): Element | null => {
    const known = found.get(selector);
    if (known !== undefined && (known === null || isStill(known, selector))) return known;
    const there = document.querySelector(selector);
    const element = there ?? (at === 'd' ? furtherLine(selector) : null);
    if (there === null && element !== null) made.add(element);
    const isSeen = element !== null && (isDrawn(element) || isInWindow(element));
    found.set(selector, isSeen ? element : null);
    return isSeen ? element : null;
  };

  return {
    put(all: readonly Put[]) {
      // All are found before the first is changed: where one lies would else have to be worked out anew each time.
      const elements = all.map(([selector, at]) => find(selector, at));
      for (const [k, [selector, at, text]] of all.entries()) {
        const element = elements[k];
        if (!element) continue;
        const place = placeOf(selector, at);
        const put = before.get(place);
        if (put?.element === element) put.now = text;
        else before.set(place, { element, at, was: stands(element, at), now: text });
        puts(element, at, text);
      }
    },
    /** All, or those whose selectors begin so, as React left it; but what React has put there itself meanwhile stays. */
    takeBack(part = '') {
      for (const [place, { element, at, was, now }] of before) {
        if (!place.startsWith(part)) continue;
        if (stands(element, at) === now) puts(element, at, was);
        before.delete(place);
      }
      if (part !== '') return;
      for (const element of made) element.remove();
      made.clear();
      // What is drawn stays known: to look for it anew takes longer than to put it in. The rest may have come in sight, or gone.
      for (const [selector, element] of found) if (element === null || !isDrawn(element)) found.delete(selector);
    },
  };
};
