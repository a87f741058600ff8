import { sayWith } from '../../../geometry/layout.ts';
import { threeViews } from '../../../geometry/views/index.ts';
import { em } from '../../../templates/block.ts';
import { pieceSheet, viewSheet } from '../../../templates/one-page.ts';
import { drawPiece } from '../../../templates/pieces/index.ts';
import type { Piece } from '../../../templates/pieces/piece.ts';
import type { Sheet } from '../../../templates/sheets.ts';
import { newShop } from '../../../templates/shop/index.ts';
import { toSvg } from '../../../templates/svg.ts';
import { sheetInfo } from '../../../templates/title-block.ts';
import type { Built } from '../store.ts';
import { version } from '../version.ts';

const svgOf = (sheet: Sheet): string => toSvg(sheet.primitives, { ...sheet, window });

/** The three views on one page at true size, as an SVG file's text. */
export const viewsSvg = ({ job, design }: Built): string => {
  const say = sayWith(job.show);
  return svgOf(viewSheet(threeViews(job, design, em, say), sheetInfo(job, version), say));
};

/** The drawings of one template at true size with their check bars, each as an SVG file's name and text. */
export const pieceSvgs = (
  { job, design }: Built,
  piece: Piece,
): readonly { readonly id: string; readonly svg: string }[] =>
  drawPiece(piece, job, design, newShop()).map((drawn) => ({
    id: drawn.id,
    svg: svgOf(pieceSheet(drawn, sheetInfo(job, version), sayWith(job.show))),
  }));
