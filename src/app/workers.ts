/** Every worker of the app is made here. */

/** A worker that writes PDF files. */
export const pdfWorker = (): Worker => new Worker(new URL('./pdf.worker.ts', import.meta.url), { type: 'module' });

/** A worker that looks for ways to bring findings right. */
export const adviceWorker = (): Worker =>
  new Worker(new URL('./advice.worker.ts', import.meta.url), { type: 'module' });
