import regular from 'dejavu-fonts-ttf/ttf/DejaVuSans.ttf?url';
import bold from 'dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf?url';
import type { Job } from '../../../geometry/job.ts';
import type { PaperId } from '../../../templates/paper.ts';
import type { PdfWord } from '../pdf.worker.ts';
import { pdfWorker } from '../workers.ts';
import type { PdfAsk, PdfStep } from './pdf-file.ts';

type PdfFile = Pick<Extract<PdfWord, { kind: 'file' }>, 'bytes' | 'lacking'>;

/** Writes a job's templates in a worker. `done` resolves to the file and the characters that it lacks, or to nothing when it was stopped; it rejects with what is to be said. */
export const writePdf = (job: Job, paper: PaperId, tell: (step: PdfStep) => void) => {
  const worker = pdfWorker();
  let stop = () => {};
  const done = new Promise<PdfFile | undefined>((resolve, reject) => {
    stop = () => resolve(undefined);
    worker.onmessage = ({ data }: MessageEvent<PdfWord>) => {
      if (data.kind === 'step') tell(data.step);
      else if (data.kind === 'file') resolve(data);
      else reject(new Error(data.why));
    };
    worker.onerror = ({ message }) =>
      reject(new Error(message || 'The part that writes PDF files could not be started.'));
  }).finally(() => worker.terminate());
  const at = (address: string) => new URL(address, document.baseURI).href;
  const ask: PdfAsk = { job, paper, fonts: { regular: at(regular), bold: at(bold) } };
  worker.postMessage(ask);
  return { done, stop: () => stop() };
};
