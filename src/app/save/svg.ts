import { sayWith } from '../../../geometry/layout.ts';
import { threeViews } from '../../../geometry/views/index.ts';
import { em } from '../../../templates/block.ts';
import { pieceSheet, viewSheet } from '../../../templates/one-page.ts';
import { drawPiece } from '../../../templates/pieces/index.ts';
import type { Piece } from '../../../templates/pieces/piece.ts';
import type { Sheet } from '../../../templates/sheets.ts';
import type { Shop } from '../../../templates/shop/index.ts';
import { toSvg } from '../../../templates/svg.ts';
import { sheetInfo } from '../../../templates/title-block.ts';
import type { Built } from '../store.ts';
import { version } from '../version.ts';
import type { TextFile } from './files.ts';

const svgOf = (sheet: Sheet): string => toSvg(sheet.primitives, { ...sheet, window });

/** The three views on one page at true size, as an SVG file. */
export const viewsSvg = ({ job, design }: Built): readonly TextFile[] => {
  const say = sayWith(job.show);
  const sheet = viewSheet(threeViews(job, design, em, say), sheetInfo(job, version), say);
  return [{ name: 'three-views', text: svgOf(sheet) }];
};

/** The drawings of one template at true size with their check bars, each as an SVG file. */
export const pieceSvgs = ({ job, design }: Built, piece: Piece, shop: Shop): readonly TextFile[] =>
  drawPiece(piece, job, design, shop).map((drawn) => ({
    name: drawn.id,
    text: svgOf(pieceSheet(drawn, sheetInfo(job, version), sayWith(job.show))),
  }));
