import type { Primitive } from '../geometry/drawing.ts';
import type { Point } from '../geometry/shape/types.ts';
import type { Size } from './packing.ts';
import { line, straight } from './primitive.ts';
import type { Tile, Tiling } from './tiles.ts';
import { wrap } from './wrap.ts';

/** Height of the strip that says how the pages join, mm. */
export const planHeight = 22;
const planText = 3;
/** Of the strip's width the plan takes at most this share; its words stand beside it. */
const planShare = 0.33;
const beside = 4;
const sayText = 2.7;
const leading = 3.8;

/** A small plan of how the pages join, this one's outline wide, and what to do with them; in a strip whose top left corner is at `at`, `width` mm wide. */
export const joinPlan = (at: Point, width: number, size: Size, tile: Tile, { tiles }: Tiling): readonly Primitive[] => {
  const scale = Math.min((planShare * width) / size.width, planHeight / size.height);
  const outlines = tiles.flatMap((one): readonly Primitive[] => {
    const own = one === tile;
    const { minX, minY, maxX, maxY } = one.window;
    const corner = { x: at.x + minX * scale, y: at.y + minY * scale };
    const far = { x: at.x + maxX * scale, y: at.y + maxY * scale };
    const letter = Math.min(planText, (far.y - corner.y) * 0.5, ((far.x - corner.x) * 0.7) / one.name.length);
    const middle = { x: (corner.x + far.x) / 2, y: (corner.y + far.y) / 2 + letter * 0.36 };
    const corners = [corner, { x: far.x, y: corner.y }, far, { x: corner.x, y: far.y }];
    return [
      ...corners.map((from, i) =>
        straight(`plan.${one.name}.${i}`, from, corners[(i + 1) % 4] as Point, own ? 'outline' : 'thin'),
      ),
      { ...line(`plan.${one.name}`, middle, one.name, letter, own), anchor: 'middle' },
    ];
  });
  const left = size.width * scale + beside;
  const says = [
    `Page ${tile.name} of ${tiles.length} that join`,
    ...wrap(
      'Prove each page by its check bars. Lay page over page until the crosses with the same number meet on the joint line (dash, dot, dot), and tape them.',
      width - left,
      sayText,
    ),
  ];
  return [
    ...outlines,
    ...says.map((text, i) =>
      line(`plan.says${i}`, { x: at.x + left, y: at.y + sayText + i * leading }, text, sayText, i === 0),
    ),
  ];
};
