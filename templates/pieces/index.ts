import type { Design } from '../../geometry/design.ts';
import type { Settled } from '../../geometry/settle.ts';
import type { Shop } from '../shop/index.ts';
import { benchTicket } from './bench-ticket.ts';
import { caulPiece } from './caul.ts';
import { endProfilePiece } from './end-profile.ts';
import { finishMask } from './finish-mask.ts';
import { footprint } from './footprint.ts';
import { insideCaulPiece } from './inside-caul.ts';
import { locatingStrip } from './locating-strip.ts';
import { measuringSheet } from './measuring-sheet.ts';
import type { Piece, Template } from './piece.ts';
import { pinStrip } from './pin-strip.ts';
import { plateCapPiece } from './plate-cap.ts';
import { radiusGauges } from './radius-gauges.ts';
import { saddle } from './saddle.ts';
import { saddleBack } from './saddle-back.ts';
import { saddleCrown } from './saddle-crown.ts';
import { section } from './section.ts';
import { sections } from './sections.ts';
import { slotGuide } from './slot-guide.ts';

/** Every template, in bench order. A new one is a file beside this one and a line here. */
export const pieces: readonly Piece[] = [
  footprint,
  finishMask,
  endProfilePiece,
  section,
  sections,
  slotGuide,
  pinStrip,
  locatingStrip,
  plateCapPiece,
  caulPiece,
  insideCaulPiece,
  saddle,
  saddleBack,
  saddleCrown,
  radiusGauges,
  benchTicket,
  measuringSheet,
];

/** The templates that a job has, in bench order. */
export const piecesOf = (job: Settled): readonly Piece[] => pieces.filter(({ whyNot }) => whyNot?.(job) === undefined);

/** How many of a piece a shop prints. */
export const copiesOf = ({ id, usually = 1 }: Piece, { copies }: Shop): number =>
  Object.hasOwn(copies, id) ? (copies[id] ?? usually) : usually;

/** The drawings of one piece of a job. */
export const drawPiece = (piece: Piece, job: Settled, design: Design, shop: Shop): readonly Template[] => {
  const { faceUp, ownPage } = piece;
  return [piece.draw(job, design, shop)].flat().map((drawing) => ({
    faceUp,
    ...drawing,
    ...(ownPage && { ownPage }),
  }));
};

/** The templates of a job that a shop prints at least one of, in bench order. */
export const printedOf = (job: Settled, shop: Shop): readonly Piece[] =>
  piecesOf(job).filter((piece) => copiesOf(piece, shop) > 0);

/** Every drawing that a shop prints of a job, each as many times as asked, in bench order; `tell` hears of each piece before it is drawn. */
export const templatesOf = (
  job: Settled,
  design: Design,
  shop: Shop,
  tell: (piece: Piece) => void = () => {},
): readonly Template[] =>
  printedOf(job, shop).flatMap((piece) => {
    tell(piece);
    const drawn = drawPiece(piece, job, design, shop);
    return Array.from({ length: copiesOf(piece, shop) }, () => drawn).flat();
  });
