import AdviceWorker from './advice.worker.ts?worker';
import { tellMissing } from './offline/missing.ts';
import PaperWorker from './paper.worker.ts?worker';
import SwiftWorker from './swift.worker.ts?worker';

/** Every worker of the app is made here. */

/** Tells, too, when a worker's program cannot be loaded: such an error has no message. */
const told = (worker: Worker): Worker => {
  worker.addEventListener('error', ({ message }) => {
    if (!message) tellMissing();
  });
  return worker;
};

/** A worker that lays templates on sheets and writes PDF files. */
export const paperWorker = (): Worker => told(new PaperWorker());

/** A worker that looks for ways to bring findings right. */
export const adviceWorker = (): Worker => told(new AdviceWorker());

/** A worker that works out what becomes of the page while a hand drags a number. */
export const swiftWorker = (): Worker => told(new SwiftWorker());
