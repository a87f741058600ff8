import { useEffect } from 'react';
import { useStill } from './sheet/use-still.ts';
import { useBenchState } from './use-bench.ts';

/** Around a field, px. */
const gap = 8;
/** Under this height of what a keyboard leaves of the window, px, a drawing and the numbers under it have no room for more. */
const low = 560;

/** What is to be seen of a field while it is typed at: its row, and what is said of it under it. */
const rowOf = (input: Element): { readonly top: number; readonly bottom: number } | undefined => {
  const row = input.closest('.field') ?? input.closest('tr');
  if (row === null) return undefined;
  const says = input.getAttribute('aria-describedby')?.split(' ')[0];
  const { top, bottom } = row.getBoundingClientRect();
  const said = document.getElementById(says ?? '');
  const under = said?.classList.contains('says') ? said.getBoundingClientRect().bottom : bottom;
  return { top, bottom: Math.max(bottom, under) };
};

/** What the field is scrolled in where that is not the page: the column of numbers at a desk, or the drawer. */
const scrollerOf = (input: Element): Element | null => {
  const column = input.closest('.numbers');
  const scrolls = column !== null && getComputedStyle(column).overflowY === 'auto';
  return scrolls ? column : input.closest('.drawer');
};

/** Scrolls as far as the row is to be seen, under the drawer's head where that stays in sight. */
const scrollTo = (scroller: Element, row: { readonly top: number; readonly bottom: number }) => {
  const { top, bottom } = scroller.getBoundingClientRect();
  const from = Math.max(top, scroller.querySelector('.drawer-head')?.getBoundingClientRect().bottom ?? top) + gap;
  const to = bottom - gap;
  if (row.bottom > to) scroller.scrollTop += Math.min(row.bottom - to, row.top - from);
  else if (row.top < from) scroller.scrollTop += row.top - from;
};

/** Tells the style how high the sheet stands and which part of the window is seen, and scrolls the field in focus out from under both. */
const settle = (stage: HTMLElement) => {
  const view = window.visualViewport;
  const { style } = document.documentElement;
  const top = Math.round(view?.offsetTop ?? 0);
  const height = Math.round(view?.height ?? window.innerHeight);
  style.setProperty('--seen-top', `${top}px`);
  style.setProperty('--seen-height', `${height}px`);
  document.documentElement.toggleAttribute('data-low', height * (view?.scale ?? 1) < low);
  style.setProperty('--stage-height', `${Math.round(stage.getBoundingClientRect().height)}px`);

  const input = document.activeElement;
  const row = input instanceof HTMLElement && input.matches('input, select') ? rowOf(input) : undefined;
  if (row === undefined) return;
  const scroller = scrollerOf(input as HTMLElement);
  if (scroller !== null) return scrollTo(scroller, row);
  if (getComputedStyle(stage).position !== 'sticky') return;
  const sheet = stage.getBoundingClientRect();
  const box = (input as HTMLElement).getBoundingClientRect();
  // The sheet stands over the fields only where both are in the same column.
  const isOver = box.left < sheet.right && box.right > sheet.left && sheet.top <= top + 1;
  const from = (isOver ? sheet.bottom : top) + gap;
  const to = top + height - gap;
  if (row.bottom > to) window.scrollBy(0, Math.min(row.bottom - to, row.top - from));
  else if (row.top < from) window.scrollBy(0, row.top - from);
};

/** Keeps the field in focus in sight: under the sheet where that stays, over an on-screen keyboard, with what is said of it. */
export const InSight = () => {
  const focus = useBenchState((state) => state.focus);
  const drafts = useBenchState((state) => state.drafts);
  // While a hand drags a number, no field is typed at.
  const solved = useStill((state) => state.solved);

  // biome-ignore lint/correctness/useExhaustiveDependencies: each of these can change what stands above or under the field
  useEffect(() => {
    const stage = document.querySelector<HTMLElement>('.stage');
    if (stage === null) return;
    const again = () => settle(stage);
    again();
    const observer = typeof ResizeObserver === 'undefined' ? undefined : new ResizeObserver(again);
    observer?.observe(stage);
    window.visualViewport?.addEventListener('resize', again);
    window.visualViewport?.addEventListener('scroll', again);
    return () => {
      observer?.disconnect();
      window.visualViewport?.removeEventListener('resize', again);
      window.visualViewport?.removeEventListener('scroll', again);
    };
  }, [focus, drafts, solved]);

  return null;
};
