import { type PdfAsk, type PdfStep, pdfOf } from './save/pdf-file.ts';

/** What the worker says: a step begun, the file and which characters it lacks, or why there is none. */
export type PdfWord =
  | { readonly kind: 'step'; readonly step: PdfStep }
  | { readonly kind: 'file'; readonly bytes: Uint8Array<ArrayBuffer>; readonly lacking: readonly string[] }
  | { readonly kind: 'failed'; readonly why: string };

const say = (word: PdfWord, transfer: Transferable[] = []) => self.postMessage(word, { transfer });

self.onmessage = async ({ data }: MessageEvent<PdfAsk>) => {
  try {
    const written = await pdfOf(data, (step) => say({ kind: 'step', step }));
    const bytes = new Uint8Array(written.bytes);
    say({ kind: 'file', bytes, lacking: written.lacking }, [bytes.buffer]);
  } catch (error) {
    say({ kind: 'failed', why: error instanceof Error ? error.message : String(error) });
  }
};
