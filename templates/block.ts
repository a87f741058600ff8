import type { Primitive } from '../geometry/drawing.ts';
import { boundsOfPrimitives, type LayOut, layOut } from '../geometry/layout.ts';
import { cleanName } from '../geometry/names.ts';
import type { Size } from './packing.ts';
import type { Template } from './pieces/piece.ts';
import { line, placePrimitive } from './primitive.ts';

/** Text height in pieces and of a piece's title, mm. */
export const em = 3.5;
export const titleSize = 4;
export const faceSize = 3;

/** One drawing laid out, its corner at the origin. */
export interface Block extends Size {
  readonly title: string;
  readonly face: string;
  readonly ownPage: boolean;
  readonly primitives: readonly Primitive[];
}

/** What stands over a template: which face of the work lies up. */
export const faceOf = ({ faceUp }: Template): string => `Face up: ${faceUp ?? 'the printed one'}`;

/**
 * A template laid out, its title and the face that lies up over it; one that fills pages of its own has its own head. Every id begins with `key`, which is the
 * drawing's own id, or for a further copy one that no other has.
 */
export const blockOf = (piece: Template, key: string, say: LayOut['say']): Block => {
  const inside = layOut(piece.marks, { em, say });
  const { minX, minY } = boundsOfPrimitives(inside);
  const title = cleanName(piece.title);
  const ownPage = piece.ownPage === true;
  const head = ownPage
    ? []
    : [
        line(`${key}.title`, { x: minX, y: minY - 7 }, title, titleSize, true),
        line(`${key}.face`, { x: minX, y: minY - 2.5 }, faceOf(piece), faceSize),
      ];
  const named = [...head, ...inside.map((p) => ({ ...p, id: `${key}.${p.id}` }))];
  const bounds = boundsOfPrimitives(named);
  return {
    title,
    face: piece.faceUp ?? 'the printed one',
    ownPage,
    width: bounds.maxX - bounds.minX,
    height: bounds.maxY - bounds.minY,
    primitives: named.map((p) => placePrimitive(p, { dx: -bounds.minX, dy: -bounds.minY })),
  };
};

/** A block turned by a quarter against the clock, so that what was read from below is read from the right. */
export const turnedBlock = (block: Block): Block => ({
  ...block,
  width: block.height,
  height: block.width,
  primitives: block.primitives.map((p) => placePrimitive(p, { turn: -Math.PI / 2, dx: 0, dy: block.width })),
});

/** The blocks of some templates, in their order; a template that comes more than once has ids of its own each time. */
export const blocksOf = (pieces: readonly Template[], say: LayOut['say']): readonly Block[] => {
  const seen = new Map<string, number>();
  return pieces.map((piece) => {
    const copy = (seen.get(piece.id) ?? 0) + 1;
    seen.set(piece.id, copy);
    return blockOf(piece, copy === 1 ? piece.id : `${piece.id}.copy${copy}`, say);
  });
};
