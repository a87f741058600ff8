import { keep, restore } from './memory.ts';
import { parts } from './parts.ts';
import { createBench } from './store.ts';

/** The whole bench with all its parts, at work on the job as it was left; every change of it is kept. */
export const makeWhole = (getStorage: () => Storage) => {
  const bench = createBench(restore(getStorage));
  const { flush } = keep(bench, getStorage);
  window.addEventListener('pagehide', flush);
  document.addEventListener('visibilitychange', flush);
  return { bench, parts };
};
