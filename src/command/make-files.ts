import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Design } from '../../geometry/design.ts';
import type { Job } from '../../geometry/job.ts';
import { sayWith } from '../../geometry/layout.ts';
import { report } from '../../geometry/report.ts';
import type { Settled } from '../../geometry/settle.ts';
import { threeViews } from '../../geometry/views/index.ts';
import { em } from '../../templates/block.ts';
import { pieceSheet, viewSheet } from '../../templates/one-page.ts';
import { onPaper, type PaperId, papers } from '../../templates/paper.ts';
import { toPdf } from '../../templates/pdf.ts';
import { drawPiece, piecesOf, templatesOf } from '../../templates/pieces/index.ts';
import { laySheets, type Sheet } from '../../templates/sheets.ts';
import { newShop } from '../../templates/shop/index.ts';
import { toSvg } from '../../templates/svg.ts';
import { svgWindow } from '../../templates/svg-window.ts';
import { sheetInfo } from '../../templates/title-block.ts';
import type { NamedFile } from './write-files.ts';

export type Made =
  | { readonly ok: true; readonly files: readonly NamedFile[] }
  | { readonly ok: false; readonly says: string };

const packageFile = new URL('../../package.json', import.meta.url);
const font = (name: string): Uint8Array =>
  readFileSync(createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`));

/** Every file of a draft, ready to be written; or why the templates cannot be laid on that paper. */
export async function makeFiles(job: Settled, design: Design, paper: PaperId, asked: Job = job): Promise<Made> {
  const { version } = JSON.parse(readFileSync(packageFile, 'utf8')) as { version: string };
  const info = sheetInfo(job, version);
  const say = sayWith(job.show);
  const shop = onPaper(newShop(), paper);
  let sheets: readonly Sheet[];
  try {
    sheets = laySheets(templatesOf(job, design, shop), shop, info, say);
  } catch (error) {
    if (error instanceof RangeError) return { ok: false, says: error.message };
    throw error;
  }
  const pdf = await toPdf(sheets, {
    title: info.job || 'Templates',
    author: `Sagitta ${version}`,
    subject: `Bridge and saddle templates, 1:1, on ${papers[paper].name}`,
    // The job's own day, not the clock's: the same job gives the same file.
    date: new Date(`${job.date}T00:00:00Z`),
    fonts: { regular: font('DejaVuSans'), bold: font('DejaVuSans-Bold') },
  });
  const svg = (sheet: Sheet) => toSvg(sheet.primitives, { ...sheet, window: svgWindow() });
  return {
    ok: true,
    files: [
      { name: 'drawing.svg', content: svg(viewSheet(threeViews(job, design, em, say), info, say)) },
      // Pages of words are for the sheets; there is nothing in them to be cut or traced.
      ...piecesOf(job)
        .filter(({ ownPage }) => !ownPage)
        .flatMap((piece) => drawPiece(piece, job, design, shop))
        // A page that is only read or written on is no template: it comes in the PDF, where it is asked for.
        .filter(({ ownPage }) => !ownPage)
        .map((piece) => ({ name: `pieces/${piece.id}.svg`, content: svg(pieceSheet(piece, info, say)) })),
      { name: 'templates.pdf', content: pdf },
      { name: 'report.json', content: `${JSON.stringify(report(job, design, asked), null, 2)}\n` },
    ],
  };
}
