import type { Design } from '../../geometry/design.ts';
import type { Drawing } from '../../geometry/drawing.ts';
import type { Settled } from '../../geometry/settle.ts';
import type { Shop } from '../shop/index.ts';

/** A drawing of a piece; which face lies up under it where it is not the piece's own. */
export type PieceDrawing = Drawing & { readonly faceUp?: string };

/** One template at true size. Its drawings stand in their own millimetres, x right and y down the paper. */
export interface Piece {
  /** Also its file's name. */
  readonly id: string;
  readonly title: string;
  /** Which face of the work lies up when the paper is laid on it. */
  readonly faceUp: string;
  /** What it is for at the bench, in one sentence. */
  readonly use: string;
  /** Why this job has no such piece, in one sentence; undefined where it has one. Every job has it where this is left out. */
  readonly whyNot?: (job: Settled) => string | undefined;
  /** How many are printed where the shop does not say; 1 where this is left out. */
  readonly usually?: 0 | 1;
  /** Each of its drawings fills pages of its own, in their order, and is never laid beside other pieces. */
  readonly ownPage?: true;
  /** Only asked of a job that has this piece. Several drawings, such as a gauge each, are laid each by itself; their ids differ and begin with the piece's. */
  readonly draw: (job: Settled, design: Design, shop: Shop) => PieceDrawing | readonly PieceDrawing[];
}

/** A drawing for paper, with what the sheet says and heeds of it. */
export type Template = Drawing & Partial<Pick<Piece, 'faceUp' | 'ownPage'>>;

/** A piece that is one drawing. */
export interface OnePiece extends Piece {
  readonly draw: (job: Settled, design: Design, shop: Shop) => Drawing;
}

/** A piece of several drawings, such as one for each station. */
export interface ManyPiece extends Piece {
  readonly draw: (job: Settled, design: Design, shop: Shop) => readonly PieceDrawing[];
}
