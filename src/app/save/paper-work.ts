import { build } from '../../../geometry/build.ts';
import type { Stroke } from '../../../geometry/drawing.ts';
import type { Job } from '../../../geometry/job.ts';
import { layOut, sayWith } from '../../../geometry/layout.ts';
import { fileInfo } from '../../../templates/file-info.ts';
import { toPdf } from '../../../templates/pdf.ts';
import { drawPiece, piecesOf, printedOf, templatesOf } from '../../../templates/pieces/index.ts';
import { laySheets, type Sheet } from '../../../templates/sheets.ts';
import type { Shop } from '../../../templates/shop/index.ts';
import { sheetInfo } from '../../../templates/title-block.ts';
import { version } from '../version.ts';
import { words } from '../words.ts';
import { textDrawer } from './draw-text.ts';
import { type FontPlaces, fetchFonts } from './fonts.ts';

/*
 * What a worker does on the way to paper, as plain functions: drawing the pieces, laying them on sheets, and writing the PDF.
 */

export interface LayAsk {
  readonly kind: 'lay';
  /** Of several asks only the last is answered to its end. */
  readonly turn: number;
  readonly job: Job;
  readonly shop: Shop;
}

export interface PdfAsk {
  readonly kind: 'pdf';
  readonly job: Job;
  readonly shop: Shop;
  readonly fonts: FontPlaces;
}

/** Every piece of a job that is not a page of words, in lines for a small picture, by its id; and the sheets that a shop prints, or why there are none. */
export interface Laid {
  readonly pictures: Readonly<Record<string, readonly Stroke[]>>;
  readonly sheets: readonly Sheet[];
  readonly says?: string;
}

/** How far writing has come: in words, and as a share of the whole. */
export interface Progress {
  readonly says: string;
  readonly share: number;
}

const built = (job: Job) => {
  const solved = build(job);
  if (!solved.ok) throw new Error(solved.problems.map(({ says }) => says).join(' '));
  return solved;
};

/** A drawing that cannot be made for this shop's paper is left out: the sheets say why. */
const orNothing = <T>(draw: () => T): T | undefined => {
  try {
    return draw();
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
};

/** Pieces and sheets of a job, as they are asked for on the way to paper. Throws what is to be said to the person. */
export const layAll = ({ job, shop }: Pick<LayAsk, 'job' | 'shop'>): Laid => {
  const solved = built(job);
  const say = sayWith(job.show);
  const pictures = piecesOf(solved.job).flatMap((piece) => {
    if (piece.ownPage) return [];
    const drawing = orNothing(() => drawPiece(piece, solved.job, solved.design, shop)[0]);
    const strokes = drawing && layOut(drawing.marks, { em: 3.5, say }).filter((p) => p.kind === 'stroke');
    return strokes ? [[piece.id, strokes] as const] : [];
  });
  try {
    const drawn = templatesOf(solved.job, solved.design, shop);
    const sheets = laySheets(drawn, shop, sheetInfo(solved.job, version), say);
    return { pictures: Object.fromEntries(pictures), sheets };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { pictures: Object.fromEntries(pictures), sheets: [], says: error.message };
  }
};

/** A PDF file's bytes, and the characters that stand in it as their codes, as neither its fonts nor the browser's have them. */
export interface WrittenPdf {
  readonly bytes: Uint8Array;
  readonly lacking: readonly string[];
}

/** The ticked templates of a job on a shop's sheets, as a PDF file; `tell` hears how far it has come. Throws what is to be said to the person. */
export const pdfOf = async ({ job, shop, fonts }: PdfAsk, tell: (progress: Progress) => void): Promise<WrittenPdf> => {
  const { steps, noneTicked } = words.templates;
  tell({ says: steps.fonts(), share: 0 });
  const files = await fetchFonts(fonts);
  tell({ says: steps.solve(), share: 0.05 });
  const solved = built(job);
  const count = printedOf(solved.job, shop).length;
  if (count === 0) throw new Error(noneTicked);
  let n = 0;
  const drawn = templatesOf(solved.job, solved.design, shop, ({ title }) => {
    n += 1;
    tell({ says: steps.draw(n, count, title), share: 0.1 + (0.3 * n) / count });
  });
  tell({ says: steps.lay(), share: 0.4 });
  const info = sheetInfo(solved.job, version);
  const sheets = laySheets(drawn, shop, info, sayWith(job.show));
  let lacking: readonly string[] = [];
  const drawText = textDrawer();
  const bytes = await toPdf(sheets, {
    ...fileInfo(info, shop),
    fonts: files,
    ...(drawText && { drawText }),
    tellLacking: (characters) => {
      lacking = characters;
    },
    tell: (page) => tell({ says: steps.write(page, sheets.length), share: 0.5 + (0.5 * page) / sheets.length }),
  });
  return { bytes, lacking };
};
