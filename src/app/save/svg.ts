import { sayWith } from '../../../geometry/layout.ts';
import { threeViews } from '../../../geometry/views/index.ts';
import type { Piece } from '../../../templates/pieces/piece.ts';
import { em, pieceSheet, type Sheet, viewSheet } from '../../../templates/sheets.ts';
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

/** One template at true size with its check bars, as an SVG file's text. */
export const pieceSvg = ({ job, design }: Built, piece: Piece): string => {
  const drawn = { ...piece.draw(job, design), id: piece.id, faceUp: piece.faceUp };
  return svgOf(pieceSheet(drawn, sheetInfo(job, version), sayWith(job.show)));
};
