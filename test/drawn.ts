import type { Design } from '../geometry/design.ts';
import type { Settled } from '../geometry/settle.ts';
import { drawPiece, piecesOf } from '../templates/pieces/index.ts';
import type { Template } from '../templates/pieces/piece.ts';
import { newShop, type Shop } from '../templates/shop/index.ts';

/** Every drawing of every template of a job, once each, in a shop that nobody has set up if none is given. */
export const drawnPieces = (job: Settled, design: Design, shop: Shop = newShop()): readonly Template[] =>
  piecesOf(job).flatMap((piece) => drawPiece(piece, job, design, shop));

/** The one drawing with this id among them. Throws a RangeError where there is none. */
export const drawnPiece = (id: string, job: Settled, design: Design): Template => {
  const found = drawnPieces(job, design).find((drawing) => drawing.id === id);
  if (found === undefined) throw new RangeError(`No template of this job is called ${id}.`);
  return found;
};
