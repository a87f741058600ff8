import { useEffect } from 'react';
import { fieldId } from '../numbers/use-field.ts';
import { useBenchState } from '../use-bench.ts';

/** A pointer that only passes over a number moves nothing, ms. */
const rest = 250;

/** Brings a field's row into sight where its column is scrolled by itself; the page is never scrolled for it. */
const show = (path: string) => {
  const row = document.getElementById(fieldId(path))?.closest('.field');
  const column = row?.closest('.numbers');
  if (!row || !column || column.scrollHeight <= column.clientHeight) return;
  if (getComputedStyle(column).overflowY !== 'auto') return;
  const [at, seen] = [row.getBoundingClientRect(), column.getBoundingClientRect()];
  if (at.top < seen.top || at.bottom > seen.bottom)
    column.scrollTop += (at.top + at.bottom) / 2 - (seen.top + seen.bottom) / 2;
};

/** Keeps the row of the number that is pointed at, or worked at, on the drawing in sight in its column. */
export const useRowInSight = () => {
  const pointed = useBenchState((state) => state.pointed);
  const focus = useBenchState((state) => state.focus);
  const held = useBenchState((state) => state.held);
  useEffect(() => {
    const isOnSheet = document.activeElement?.closest('.sheet') != null;
    const path = held ?? pointed ?? (isOnSheet ? focus : undefined);
    if (path === undefined) return;
    const timer = setTimeout(() => show(path), held === undefined && pointed !== undefined ? rest : 0);
    return () => clearTimeout(timer);
  }, [pointed, focus, held]);
};
