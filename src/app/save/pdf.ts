import type { Job } from '../../../geometry/job.ts';
import type { Shop } from '../../../templates/shop/index.ts';
import type { PaperWord } from '../paper.worker.ts';
import { words } from '../words.ts';
import { paperWorker } from '../workers.ts';
import { fontPlaces } from './fonts.ts';
import type { PdfAsk, Progress } from './paper-work.ts';

type PdfFile = Pick<Extract<PaperWord, { kind: 'file' }>, 'bytes' | 'lacking'>;

/** Writes a job's templates in a worker. `done` resolves to the file and the characters that it lacks, or to nothing when it was stopped; it rejects with what is to be said. */
export const writePdf = (job: Job, shop: Shop, tell: (progress: Progress) => void) => {
  const worker = paperWorker();
  let stop = () => {};
  const done = new Promise<PdfFile | undefined>((resolve, reject) => {
    stop = () => resolve(undefined);
    worker.onmessage = ({ data }: MessageEvent<PaperWord>) => {
      if (data.kind === 'progress') tell(data);
      else if (data.kind === 'file') resolve(data);
      else if (data.kind === 'failed') reject(new Error(data.why));
    };
    worker.onerror = ({ message }) => reject(new Error(message || words.templates.noWorker));
  }).finally(() => worker.terminate());
  worker.postMessage({ kind: 'pdf', job, shop, fonts: fontPlaces() } satisfies PdfAsk);
  return { done, stop: () => stop() };
};
