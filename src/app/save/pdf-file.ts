import { build } from '../../../geometry/build.ts';
import type { Job } from '../../../geometry/job.ts';
import { sayWith } from '../../../geometry/layout.ts';
import { onPaper, type PaperId, papers } from '../../../templates/paper.ts';
import { toPdf } from '../../../templates/pdf.ts';
import { templatesOf } from '../../../templates/pieces/index.ts';
import { laySheets } from '../../../templates/sheets.ts';
import { newShop } from '../../../templates/shop/index.ts';
import { sheetInfo } from '../../../templates/title-block.ts';
import { version } from '../version.ts';
import { textDrawer } from './draw-text.ts';

export type PdfStep = 'fonts' | 'solve' | 'lay' | 'write';

export interface PdfAsk {
  readonly job: Job;
  readonly paper: PaperId;
  /** Where DejaVu Sans and its bold lie, on this origin. */
  readonly fonts: { readonly regular: string; readonly bold: string };
}

const fetchBytes = async (address: string): Promise<Uint8Array> => {
  const answer = await fetch(address);
  if (!answer.ok)
    throw new Error(`The font could not be fetched (${answer.status}). Check the connection and try again.`);
  return new Uint8Array(await answer.arrayBuffer());
};

/** A PDF file's bytes, and the characters that stand in it as their codes, as neither its fonts nor the browser's have them. */
export interface WrittenPdf {
  readonly bytes: Uint8Array;
  readonly lacking: readonly string[];
}

/** All templates of a job on sheets of a paper, as a PDF file; `tell` hears of each step. Throws what is to be said to the person. */
export const pdfOf = async ({ job, paper, fonts }: PdfAsk, tell: (step: PdfStep) => void): Promise<WrittenPdf> => {
  tell('fonts');
  const [regular, bold] = await Promise.all([fetchBytes(fonts.regular), fetchBytes(fonts.bold)]);
  tell('solve');
  const solved = build(job);
  if (!solved.ok) throw new Error(solved.problems.map(({ says }) => says).join(' '));
  tell('lay');
  const info = sheetInfo(job, version);
  const shop = onPaper(newShop(), paper);
  const drawn = templatesOf(solved.job, solved.design, shop);
  const sheets = laySheets(drawn, shop, info, sayWith(job.show));
  tell('write');
  let lacking: readonly string[] = [];
  const drawText = textDrawer();
  const bytes = await toPdf(sheets, {
    title: info.job || 'Templates',
    author: `Sagitta ${version}`,
    subject: `Bridge and saddle templates, 1:1, on ${papers[paper].name}`,
    // The job's own day, not the clock's: the same job gives the same file.
    date: new Date(`${job.date}T00:00:00Z`),
    fonts: { regular, bold },
    ...(drawText && { drawText }),
    tellLacking: (characters) => {
      lacking = characters;
    },
  });
  return { bytes, lacking };
};
