import type { Keep } from '../keep/keep.ts';
import type { Bench, Notice } from '../store.ts';
import { refusedFields } from '../store.ts';
import { words } from '../words.ts';
import { startAnew } from './updates.ts';

const says = words.offline;

/** What there is to know before the page may be loaded anew. */
export interface Renewal {
  readonly bench: Bench;
  /** Nothing where the browser keeps no jobs. */
  readonly keep: Pick<Keep, 'flush' | 'isKept'> | undefined;
  readonly start?: () => Promise<void>;
}

/** Loads the page anew once everything that was done and typed is safe; what is not is said, and the page stays. */
export const renew = async ({ bench, keep, start = startAnew }: Renewal): Promise<void> => {
  const tell = (
    notice: Omit<Notice, 'id' | 'act'>,
    act: NonNullable<Notice['act']> = { says: says.again, run: () => renew({ bench, keep, start }) },
  ) => bench.note({ id: 'renew', ...notice, act });
  const details = refusedFields(bench.getState());
  if (details.length > 0) return tell({ says: says.refused, details });
  await keep?.flush();
  if (keep && !keep.isKept()) return tell({ says: says.unsafe, details: [], file: {} });
  if (keep === undefined && !bench.getState().isFresh)
    return tell({ says: says.unkept, details: [], file: {} }, { says: says.reload, run: start });
  await start();
};
