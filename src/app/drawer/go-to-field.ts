import { flushSync } from 'react-dom';
import { fieldId } from '../numbers/use-field.ts';
import type { Bench } from '../store.ts';

/** The focus to a field of the page: the drawer opens for one that lies in it, and closes for any other. */
export const goToField = (bench: Bench, path: string): void => {
  const isInDrawer = document.getElementById(fieldId(path))?.closest('.drawer') != null;
  flushSync(() => bench.openDrawer(isInDrawer));
  const input = document.getElementById(fieldId(path));
  input?.scrollIntoView({ block: 'center' });
  input?.focus({ preventScroll: true });
};
