import { tellMissing } from './offline/missing.ts';

/** Every worker of the app is made here. */

/** Tells, too, when a worker's program cannot be loaded: such an error has no message. */
const told = (worker: Worker): Worker => {
  worker.addEventListener('error', ({ message }) => {
    if (!message) tellMissing();
  });
  return worker;
};

/** A worker that writes PDF files. */
export const pdfWorker = (): Worker =>
  told(new Worker(new URL('./pdf.worker.ts', import.meta.url), { type: 'module' }));

/** A worker that looks for ways to bring findings right. */
export const adviceWorker = (): Worker =>
  told(new Worker(new URL('./advice.worker.ts', import.meta.url), { type: 'module' }));
