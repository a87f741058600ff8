/** Every worker of the app is made here. */

/** A worker that writes PDF files. */
export const pdfWorker = (): Worker => new Worker(new URL('./pdf.worker.ts', import.meta.url), { type: 'module' });
