import { type Laid, type LayAsk, layAll, type PdfAsk, type Progress, pdfOf } from './save/paper-work.ts';

/** What the worker says: how far it has come, the file and which characters it lacks, the sheets, or why there is none of them. */
export type PaperWord =
  | ({ readonly kind: 'progress' } & Progress)
  | { readonly kind: 'file'; readonly bytes: Uint8Array<ArrayBuffer>; readonly lacking: readonly string[] }
  | { readonly kind: 'laid'; readonly turn: number; readonly laid: Laid }
  | { readonly kind: 'failed'; readonly turn?: number; readonly why: string };

const say = (word: PaperWord, transfer: Transferable[] = []) => self.postMessage(word, { transfer });
const whyOf = (error: unknown) => (error instanceof Error ? error.message : String(error));

let latest = 0;
const breath = () => new Promise((resolve) => setTimeout(resolve));

const lay = async (ask: LayAsk) => {
  const { turn } = ask;
  latest = turn;
  // A newer question may have come in meanwhile: then nobody waits for this one.
  await breath();
  if (turn !== latest) return;
  try {
    say({ kind: 'laid', turn, laid: layAll(ask) });
  } catch (error) {
    say({ kind: 'failed', turn, why: whyOf(error) });
  }
};

const write = async (ask: PdfAsk) => {
  try {
    const written = await pdfOf(ask, (progress) => say({ kind: 'progress', ...progress }));
    const bytes = new Uint8Array(written.bytes);
    say({ kind: 'file', bytes, lacking: written.lacking }, [bytes.buffer]);
  } catch (error) {
    say({ kind: 'failed', why: whyOf(error) });
  }
};

self.onmessage = ({ data }: MessageEvent<LayAsk | PdfAsk>) => (data.kind === 'lay' ? lay(data) : write(data));
