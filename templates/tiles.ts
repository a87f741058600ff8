import type { Primitive, Text } from '../geometry/drawing.ts';
import { bounds } from '../geometry/shape/bounds.ts';
import type { Bounds, Point } from '../geometry/shape/types.ts';
import { textBox } from '../geometry/text-box.ts';
import { type DecimalMark, decimalText } from '../geometry/units.ts';
import { clipStroke, isWithin } from './clip.ts';
import type { Size } from './packing.ts';
import { line, straight } from './primitive.ts';

/** One page's part of a block that is larger than the paper: rows are lettered downwards, columns numbered to the right. */
export interface Tile {
  readonly name: string;
  readonly row: number;
  readonly column: number;
  /** What of the block it shows, mm. */
  readonly window: Bounds;
}

/** Where two pages lie over each other: the middle of their overlap, on which the registration crosses stand. */
export interface Joint {
  /** As `A1-A2`. */
  readonly id: string;
  readonly tiles: readonly [Tile, Tile];
  readonly from: Point;
  readonly to: Point;
}

export interface Tiling {
  readonly tiles: readonly Tile[];
  readonly joints: readonly Joint[];
}

/** Every page moves on by at least this much, mm; with less the pages would hardly end. */
const leastStep = 20;
/** At most so far from cross to cross, mm, and at least so many on a joint. */
const crossPitch = 80;
const leastCrosses = 3;
/** From a cross's middle to its ends, mm. */
const crossReach = 4;
const crossSize = 2.5;

const letters = (row: number): string =>
  (row >= 26 ? letters(Math.floor(row / 26) - 1) : '') + String.fromCharCode(65 + (row % 26));

/** How many pages of a room a stretch takes. Throws RangeError where the overlap leaves no room to go on. */
const count = (whole: number, room: number, overlap: number, decimal: DecimalMark | undefined): number => {
  if (whole <= room) return 1;
  const mm = (length: number) => `${decimalText(length, 1, decimal)} mm`;
  if (room - overlap < leastStep)
    throw new RangeError(
      `An overlap of ${mm(overlap)} leaves nothing of a page that has room for ${mm(room)}. Choose an overlap of at most ${mm(Math.max(0, room - leastStep))}, a smaller margin or a larger paper.`,
    );
  return Math.ceil((whole - overlap) / (room - overlap));
};

/** Stretches of one length that cover the whole, each lying `overlap` over the next. */
const stretches = (
  whole: number,
  room: number,
  overlap: number,
  decimal: DecimalMark | undefined,
): readonly (readonly [number, number])[] => {
  const n = count(whole, room, overlap, decimal);
  const each = (whole + (n - 1) * overlap) / n;
  return Array.from({ length: n }, (_, i) => [i * (each - overlap), i * (each - overlap) + each] as const);
};

/** How many pages a block takes, mm; 1 where it fits. Throws RangeError as `tilingOf` does. */
export const pagesFor = (size: Size, room: Size, overlap: number, decimal?: DecimalMark | undefined): number =>
  count(size.width, room.width, overlap, decimal) * count(size.height, room.height, overlap, decimal);

/** A block parted over pages of a room, mm: all of one size, each lying over its neighbours. Throws RangeError where the overlap leaves no room to go on, its numbers with the decimal mark given. */
export const tilingOf = (size: Size, room: Size, overlap: number, decimal?: DecimalMark | undefined): Tiling => {
  const rows = stretches(size.height, room.height, overlap, decimal);
  const columns = stretches(size.width, room.width, overlap, decimal);
  const grid = rows.map(([minY, maxY], row) =>
    columns.map(([minX, maxX], column): Tile => {
      const name = `${letters(row)}${column + 1}`;
      return { name, row, column, window: { minX, minY, maxX, maxY } };
    }),
  );
  const tiles = grid.flat();
  const joint = (a: Tile, b: Tile): Joint => {
    const beside = a.row === b.row;
    const x = beside ? (a.window.maxX + b.window.minX) / 2 : 0;
    const y = beside ? 0 : (a.window.maxY + b.window.minY) / 2;
    const [from, to] = beside
      ? [
          { x, y: a.window.minY },
          { x, y: a.window.maxY },
        ]
      : [
          { x: a.window.minX, y },
          { x: a.window.maxX, y },
        ];
    return { id: `${a.name}-${b.name}`, tiles: [a, b], from, to };
  };
  const joints = tiles.flatMap((tile) =>
    [grid[tile.row]?.[tile.column + 1], grid[tile.row + 1]?.[tile.column]].flatMap((next) =>
      next ? [joint(tile, next)] : [],
    ),
  );
  return { tiles, joints };
};

/** The places of a joint's crosses, clear of the pages' other joints. */
const crossesOf = ({ from, to }: Joint, overlap: number): readonly Point[] => {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const clear = Math.min(overlap + crossReach, length / 5);
  const n = Math.max(leastCrosses, Math.ceil((length - 2 * clear) / crossPitch) + 1);
  return Array.from({ length: n }, (_, i) => {
    const t = (clear + ((length - 2 * clear) * i) / (n - 1)) / length;
    return { x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t };
  });
};

/**
 * What joins two pages, the same on both: the line along which one may be cut, and crosses on it that are laid over each other. Ids begin with `join.` and the joint's, as `join.A1-A2.cross1.x`.
 */
const joining = (joint: Joint, overlap: number): readonly Primitive[] => {
  const { id, from, to, tiles } = joint;
  const crosses = crossesOf(joint, overlap);
  const [first, second] = crosses as readonly [Point, Point];
  // Crosses that stand near to each other are drawn smaller.
  const reach = Math.min(crossReach, Math.hypot(second.x - first.x, second.y - first.y) / 3);
  return [
    straight(`join.${id}.line`, from, to, 'phantom'),
    ...crosses.flatMap(({ x, y }, i): readonly Primitive[] => {
      const cross = `join.${id}.cross${i + 1}`;
      const says = `${tiles[0].name}/${tiles[1].name} ${i + 1}`;
      return [
        straight(`${cross}.x`, { x: x - reach, y }, { x: x + reach, y }),
        straight(`${cross}.y`, { x, y: y - reach }, { x, y: y + reach }),
        line(`${cross}.name`, { x: x + 0.6, y: y - 0.6 }, says, crossSize),
      ];
    }),
  ];
};

/** The texts that a tile shows: each whole, on every page that holds it; one that lies across a joint is drawn aside on the page that holds most of it. */
const textOn = (text: Text, tile: Tile, tiles: readonly Tile[]): readonly Text[] => {
  const box = textBox(text);
  if (tiles.some(({ window }) => isWithin(box, window))) return isWithin(box, tile.window) ? [text] : [];
  const held = ({ window }: Tile) =>
    Math.max(0, Math.min(box.maxX, window.maxX) - Math.max(box.minX, window.minX)) *
    Math.max(0, Math.min(box.maxY, window.maxY) - Math.max(box.minY, window.minY));
  const best = tiles.reduce((a, b) => (held(b) > held(a) ? b : a));
  if (best !== tile) return [];
  const { window } = tile;
  const scale = Math.min(
    1,
    (window.maxX - window.minX) / (box.maxX - box.minX),
    (window.maxY - window.minY) / (box.maxY - box.minY),
  );
  const set = { ...text, size: text.size * scale };
  const now = textBox(set);
  const into = (min: number, max: number, lo: number, hi: number) => Math.max(0, lo - min) + Math.min(0, hi - max);
  const dx = into(now.minX, now.maxX, window.minX, window.maxX);
  const dy = into(now.minY, now.maxY, window.minY, window.maxY);
  return [{ ...set, at: { x: set.at.x + dx, y: set.at.y + dy } }];
};

/**
 * What one page of several shows of a block: strokes cut exactly at the page's edges, arrowheads and texts whole, and the joints to its neighbours. In the block's own mm.
 */
export const tilePrimitives = (
  primitives: readonly Primitive[],
  tile: Tile,
  { tiles, joints }: Tiling,
  overlap: number,
): readonly Primitive[] => {
  const shown = primitives.flatMap((p): readonly Primitive[] => {
    if (p.kind === 'text') return textOn(p, tile, tiles);
    // What is filled is no larger than an overlap, so some page holds it whole.
    if (p.matter === 'ink') return isWithin(bounds(p.path), tile.window) ? [p] : [];
    return clipStroke(p, tile.window);
  });
  return [...shown, ...joints.filter((j) => j.tiles.includes(tile)).flatMap((j) => joining(j, overlap))];
};
