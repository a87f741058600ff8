import type { Keep } from '../keep/keep.ts';
import type { Bench } from '../store.ts';
import { words } from '../words.ts';
import { onMissing } from './missing.ts';
import { renew } from './renew.ts';
import { putBy } from './updates.ts';

const says = words.offline;
/** The app is one file, as `npm run single` makes it. */
const isSingle = import.meta.env.MODE === 'single';

/** Sees to it that the page works without network, and tells at the bench of new versions and of parts that cannot be loaded. */
export const tend = (bench: Bench, keep: Keep | undefined): void => {
  const note = (id: string, text: string, button: string, fine = false) =>
    bench.note({ id, says: text, details: [], fine, act: { says: button, run: () => renew({ bench, keep }) } });
  onMissing(async () => {
    await keep?.flush();
    note('missing', says.missing, says.reload);
  });
  if (isSingle) {
    bench.note({ id: 'single', says: says.single, details: [], fine: true, file: {} });
    return;
  }
  // While the app is developed, its files change at every moment.
  if (import.meta.env.DEV || !('serviceWorker' in navigator)) return;
  putBy({
    onReady: () => note('update', says.ready, says.start, true),
    onTaken: () => note('update', says.taken, says.reload),
  }).catch(() => {
    // Denied, as in some private windows: all works as long as there is a network.
  });
};
