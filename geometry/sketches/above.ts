import { footprints } from '../bridge/footprints/index.ts';
import type { Job } from '../job.ts';
import { newJob } from '../job-file.ts';
import { arc } from '../shape/arc.ts';
import { bounds } from '../shape/bounds.ts';
import { path, pen } from '../shape/path.ts';
import { translate } from '../shape/transform.ts';
import { type Bare, bow, box, drawPath, high, lines, ring, type Sketch, shape, sketch, wide } from './sketch.ts';

type Bridge = Job['bridge'];
export type Style = Bridge['footprint'];

/** A bridge in the sketches' own units, whatever its style. */
const schematic: Bridge = {
  ...newJob('2026-01-01').bridge,
  length: 116,
  depth: 40,
  wingDepth: 24,
  bellyWidth: 96,
  waistDepth: 26,
  waistWidth: 92,
  cornerRadius: 8,
  pyramidWidth: 18,
  mirrored: 'no',
  points: [
    { id: 'a', across: -54, along: 4, turn: 'corner' },
    { id: 'b', across: 0, along: 0, turn: 'smooth' },
    { id: 'c', across: 56, along: 6, turn: 'corner' },
    { id: 'd', across: 52, along: 26, turn: 'corner' },
    { id: 'e', across: 6, along: 40, turn: 'smooth' },
    { id: 'f', across: -58, along: 30, turn: 'corner' },
  ],
};
const middle = 75;
const front = 24;

/** The slot's middle on the centre line, and a slot at its slant. */
const slotY = front + 14;
const slot = (line: 'thin' | 'outline' = 'thin', half = 30, r = 1.6, down = 0): Bare => {
  const turn = Math.atan(0.08);
  const [x, y] = [half * Math.cos(turn), half * Math.sin(turn)];
  const [a, b] = [
    { x: middle - x, y: slotY + down + y },
    { x: middle + x, y: slotY + down - y },
  ];
  const start = -turn + Math.PI / 2;
  const ends = [arc(a, r, start, Math.PI), arc(b, r, start + Math.PI, Math.PI)] as const;
  const side = (p: { x: number; y: number }, angle: number) => ({
    x: p.x + r * Math.cos(angle),
    y: p.y + r * Math.sin(angle),
  });
  return drawPath(
    line,
    path(
      [
        ends[0],
        { kind: 'line', from: side(a, start + Math.PI), to: side(b, start + Math.PI) },
        ends[1],
        { kind: 'line', from: side(b, start), to: side(a, start) },
      ],
      true,
    ),
    'bone',
  );
};

/** Middles of the pin holes. */
const pinXs = [-24, -14.4, -4.8, 4.8, 14.4, 24].map((x) => middle + x);
const pinY = slotY + 14;
const holes = (ys: (x: number) => number, line: 'thin' | 'outline' = 'thin') =>
  pinXs.map((x) => ring(line, x, ys(x), 2, 'hole'));

const outlineOf = (bridge: Bridge) => {
  const found = footprints[bridge.footprint].outline(bridge);
  return translate(found, middle, front);
};

/** A footprint from above, with slot and pins; the scar that one left, without. */
const footprintSketch = (bridge: Bridge, isScar: boolean): Sketch => {
  const outline = outlineOf(bridge);
  const { minX, maxX, minY, maxY } = bounds(outline);
  const before = bridge.footprint === 'bellyBefore';
  const down = before ? 8 : 0;
  const [wingFrom, wingTo] = before ? [maxY - bridge.wingDepth, maxY] : [minY, minY + bridge.wingDepth];
  const bellyY = before ? maxY - bridge.wingDepth : minY + bridge.wingDepth;
  const { bellyWidth, waistWidth, waistDepth, pyramidWidth, cornerRadius } = bridge;
  const waist = front + (bridge.depth - waistDepth) / 2;
  const dots =
    bridge.footprint === 'free'
      ? bridge.points.map(({ across, along }) => ring('thin', middle + across, front + along, 1.8, 'hole'))
      : [];
  const facets =
    bridge.footprint === 'pyramid'
      ? [-1, 1].flatMap((side) => {
          const [outer, inner] = [
            middle + (side * bridge.length) / 2,
            middle + side * (bridge.length / 2 - pyramidWidth),
          ];
          return [
            lines('thin', [outer, minY], [inner, maxY]),
            lines('thin', [outer, maxY], [inner, minY]),
            lines('thin', [inner, minY], [inner, maxY]),
          ];
        })
      : [];
  return sketch(
    [
      lines('centre', [middle, 8], [middle, 84]),
      isScar ? drawPath('hidden', outline, 'top') : drawPath('outline', outline, 'wood'),
      ...facets,
      ...(isScar ? [] : [slot('thin', 30, 1.6, down), ...holes(() => pinY + down)]),
      ...dots,
    ],
    {
      outline: [drawPath('outline', outline), ...facets],
      length: [wide(minX, maxX, 14, [minY + 4, minY + 4])],
      depth: [high(minY, maxY, maxX + 10, middle + 4)],
      wingDepth: [high(wingFrom, wingTo, minX - 8, minX)],
      bellyWidth: [wide(middle - bellyWidth / 2, middle + bellyWidth / 2, before ? 14 : 78, bellyY)],
      waistDepth: [high(waist, waist + waistDepth, middle + 38, middle)],
      waistWidth: [wide(middle - waistWidth / 2, middle + waistWidth / 2, 78, maxY)],
      corner: [
        bow(
          'outline',
          [maxX, maxY - cornerRadius],
          [maxX - cornerRadius * 0.2929, maxY - cornerRadius * 0.2929],
          [maxX - cornerRadius, maxY],
        ),
        lines(
          'thin',
          [maxX - cornerRadius, maxY - cornerRadius],
          [maxX - cornerRadius * 0.2929, maxY - cornerRadius * 0.2929],
        ),
      ],
      pyramidWidth: [wide(minX, minX + pyramidWidth, 76, maxY)],
      pointAcross: [ring('outline', middle + 52, front + 26, 2.4), wide(middle, middle + 52, 76, [maxY, front + 26])],
      pointAlong: [ring('outline', middle + 52, front + 26, 2.4), high(front, front + 26, 143, [middle, middle + 52])],
    },
  );
};

/** A bridge of a style from above, a rectangle with the ends given. */
export const footprint = (style: Style, ends: Bridge['ends']): Sketch => {
  const isShallow = style === 'rectangle' || style === 'pyramid';
  return footprintSketch({ ...schematic, footprint: style, ends, depth: isShallow ? 34 : schematic.depth }, false);
};

/** The scar that a bridge of a style left on the top. */
export const scarOf = (style: Style): Sketch => footprintSketch({ ...schematic, footprint: style }, true);

const plain = box('outline', 'wood', 16, front, 134, front + 38);
const wire = 52;
const slotAt = (x: number) => slotY - 0.08 * (x - middle);

/** The slot from above, large. */
export const slotAbove = sketch([plain, lines('centre', [middle, 8], [middle, 84]), slot('outline', 44, 4)], {
  length: [wide(middle - 48, middle + 48, 78, [slotAt(27), slotAt(123)])],
  slant: [
    lines('outline', [31, slotY], [132, slotY]),
    lines('outline', [31, slotAt(31)], [132, slotAt(132)]),
    high(slotY, slotAt(132), 142, 132),
  ],
  wire: [ring('outline', wire, slotAt(wire), 2.2)],
  wireAcross: [ring('outline', wire, slotAt(wire), 2.2), wide(wire, middle, 76, [slotAt(wire), slotY])],
  play: [slot('outline', 43, 2.4)],
  place: [lines('outline', [22, slotAt(22)], [128, slotAt(128)])],
});

const arcY = (x: number) => pinY + 5 - ((x - middle) / 24) ** 2 * 5;
const secondXs = pinXs.map((x) => x + 4.4);
/** The pins from above. */
export const pinsAbove = sketch([plain, lines('centre', [middle, 8], [middle, 84]), slot(), ...holes(() => pinY)], {
  spread: [wide(middle - 24, middle + 24, 76, pinY)],
  toPins: [high(slotY, pinY, 142, middle)],
  hole: [...holes(() => pinY, 'outline')],
});
/** Pins on an arc. */
export const pinsOnArc = sketch([plain, lines('centre', [middle, 8], [middle, 84]), slot(), ...holes(arcY)], {
  arcRise: [
    bow('outline', [middle - 24, arcY(middle - 24)], [middle, arcY(middle)], [middle + 24, arcY(middle + 24)]),
    lines('thin', [middle - 24, pinY], [middle + 60, pinY]),
    high(pinY, arcY(middle), middle + 60, [middle + 24, middle]),
  ],
});
/** Pins in two rows. */
export const pinsInTwo = sketch(
  [
    plain,
    lines('centre', [middle, 8], [middle, 84]),
    slot(),
    ...holes(() => pinY - 4),
    ...secondXs.map((x) => ring('thin', x, pinY + 5, 2, 'hole')),
  ],
  {
    secondRow: [high(pinY - 4, pinY + 5, 142, [middle + 24, middle + 28])],
    secondAside: [wide(middle - 24, middle - 19.6, 76, [pinY - 4, pinY + 5])],
  },
);

/** The bridge plate from inside, between its braces. */
export const plate = sketch(
  [
    lines('thin', [10, 8], [56, 88]),
    lines('thin', [18, 8], [64, 88]),
    lines('thin', [140, 8], [94, 88]),
    lines('thin', [132, 8], [86, 88]),
    box('outline', 'wood', 46, 28, 104, 52),
    ...pinXs.map((x) => ring('thin', middle + (x - middle) * 0.8, 42, 1.7, 'hole')),
  ],
  {
    length: [wide(46, 104, 18, 28)],
    depth: [high(28, 52, 118, 104)],
  },
);

/** What is there already on the bare top: the nut far above, a hole, a reading of the top, a brace. */
const found = { hole: { x: 108, y: 56 }, rise: { x: 96, y: 70 }, from: { x: 28, y: 40 }, to: { x: 118, y: 82 } };
const nut = 8;
const scar = drawPath(
  'hidden',
  pen({ x: 24, y: 44 }).line({ x: 126, y: 44 }).line({ x: 126, y: 64 }).line({ x: 24, y: 64 }).close(),
);
const brace = (line: 'thin' | 'outline', aside = 2.6) => {
  const { from, to } = found;
  return [-aside, aside].map((by) =>
    lines(line, [from.x - by * 0.42, from.y + by * 0.9], [to.x - by * 0.42, to.y + by * 0.9]),
  );
};
const toNut = (p: { x: number; y: number }, x: number) => [
  lines('outline', [60, nut], [90, nut]),
  high(nut, p.y, x, [90, p.x]),
];
const dot = (p: { x: number; y: number }, r: number, line: 'thin' | 'outline' = 'outline') => ring(line, p.x, p.y, r);
export const topAbove = sketch(
  [
    lines('centre', [middle, 4], [middle, 88]),
    lines('thin', [60, nut], [90, nut]),
    scar,
    ...brace('thin'),
    dot(found.hole, 3.5, 'thin'),
    dot(found.rise, 1.2, 'thin'),
  ],
  {
    holeAcross: [dot(found.hole, 3.5), wide(middle, found.hole.x, 34, [30, found.hole.y])],
    holeFromNut: [dot(found.hole, 3.5), ...toNut(found.hole, 140)],
    holeDiameter: [dot(found.hole, 3.5), wide(found.hole.x - 3.5, found.hole.x + 3.5, 72, found.hole.y)],
    riseAcross: [dot(found.rise, 2), wide(middle, found.rise.x, 34, [30, found.rise.y])],
    riseFromNut: [dot(found.rise, 2), ...toNut(found.rise, 140)],
    braceAcross: [...brace('outline'), dot(found.from, 2.4), wide(found.from.x, middle, 22, [found.from.y, 26])],
    braceFromNut: [
      ...brace('outline'),
      dot(found.from, 2.4),
      lines('outline', [60, nut], [90, nut]),
      high(nut, found.from.y, 12, [60, found.from.x]),
    ],
    braceAcrossTo: [...brace('outline'), dot(found.to, 2.4), wide(middle, found.to.x, 34, [30, found.to.y])],
    braceFromNutTo: [...brace('outline'), dot(found.to, 2.4), ...toNut(found.to, 140)],
    braceWidth: [...brace('outline'), lines('outline', [66, 66], [72.5, 52])],
  },
);

/** The blank around the bridge. */
const around = { x0: 25, y0: 24, x1: 125 };
export const blank = sketch(
  [
    shape('outline', 'wood', [13, 12], [137, 12], [137, 76], [13, 76]),
    drawPath(
      'thin',
      translate(
        footprints.belly.outline({ ...schematic, footprint: 'belly', length: 100, bellyWidth: 84 }),
        middle,
        around.y0,
      ),
    ),
  ],
  {
    allowance: [wide(13, around.x0, 84, [76, around.y0 + 10]), high(12, around.y0, 144, [137, around.x1])],
  },
);

/** Where the sections are taken. */
const cut = { x: 104, y: front + 22 };
export const sections = sketch([plain, lines('centre', [middle, 8], [middle, 84]), slot()], {
  across: [lines('outline', [cut.x, 16], [cut.x, 72]), wide(middle, cut.x, 80, 72)],
  along: [lines('outline', [8, cut.y], [136, cut.y]), high(front, cut.y, 143, [134, 136])],
});
