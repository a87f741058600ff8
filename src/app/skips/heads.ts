import { flushSync } from 'react-dom';
import type { Bench } from '../store.ts';
import { words } from '../words.ts';

/** A part of the page, by the element that the keys are led to and what it is called. */
export interface Head {
  readonly id: string;
  readonly title: string;
}

/** Where the links that lead past things lie: the first of those at the page's beginning. */
export const skipsId = 'skips';

/** The parts of the page, in the order in which they stand. */
export const heads = {
  sheet: { id: 'sheet-title', title: words.sheet.label },
  numbers: { id: 'numbers-title', title: words.numbers.label },
  alternatives: { id: 'compare-title', title: words.compare.label },
  strings: { id: 'strings-title', title: words.strings.label },
  setUp: { id: 'setup-title', title: words.setUp.label },
  findings: { id: 'findings-title', title: words.findings.label },
  outcome: { id: 'outcome-title', title: words.outcome.label },
  templates: { id: 'save-templates', title: words.bar.templates },
} as const satisfies Readonly<Record<string, Head>>;

/** Where a group of the numbers begins. */
export const groupId = (group: string): string => `group-${group}`;

/**
 * The focus to the head of a part of the page, or to the whole part where its head is not seen: the drawer opens for one that lies in it, and closes for any other. What no key stops at takes the focus for as
 * long as it has it.
 */
export const goToHead = (bench: Bench, id: string): void => {
  const isInDrawer = document.getElementById(id)?.closest('.drawer') != null;
  flushSync(() => bench.openDrawer(isInDrawer));
  const head = document.getElementById(id);
  const to = head?.classList.contains('unseen') ? head.closest('section') : head;
  if (!to) return;
  if (to.tabIndex < 0 && !to.hasAttribute('tabindex')) {
    to.tabIndex = -1;
    to.addEventListener('blur', () => to.removeAttribute('tabindex'), { once: true });
  }
  to.scrollIntoView({ block: 'start' });
  to.focus({ preventScroll: true });
};
