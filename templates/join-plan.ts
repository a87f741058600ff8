import type { Primitive } from '../geometry/drawing.ts';
import type { Point } from '../geometry/shape/types.ts';
import type { Size } from './packing.ts';
import { line, straight } from './primitive.ts';
import type { Tile, Tiling } from './tiles.ts';

/** Height of the strip that says how the pages join, mm. */
export const planHeight = 22;
const planWidth = 46;
const planText = 3;

/** A small plan of how the pages join, this one's outline wide, and what to do with them; its top left corner at `at`. */
export const joinPlan = (at: Point, size: Size, tile: Tile, { tiles }: Tiling): readonly Primitive[] => {
  const scale = Math.min(planWidth / size.width, planHeight / size.height);
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
  const x = at.x + size.width * scale + 5;
  const says = [
    `Page ${tile.name} of ${tiles.length} that join`,
    'Prove each page by its check bars.',
    'Lay page over page until the crosses with the same',
    'number meet on the joint line (dash, dot, dot); tape.',
  ];
  return [
    ...outlines,
    ...says.map((text, i) => line(`plan.says${i}`, { x, y: at.y + 4 + i * 4.6 }, text, planText, i === 0)),
  ];
};
