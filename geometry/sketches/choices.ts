import { arc } from '../shape/arc.ts';
import { path, pen, polyline } from '../shape/path.ts';
import { translate } from '../shape/transform.ts';
import type { Path } from '../shape/types.ts';
import { drawPath, paper, type Sketch, sketch } from './sketch.ts';

/** Small drawings side by side, one for each choice, of which the one that is chosen is lit. Each is drawn about its own middle, some 40 wide and 30 high. */
const choices = (drawings: Readonly<Record<string, readonly Path[]>>): Sketch => {
  const keys = Object.keys(drawings);
  const columns = keys.length === 4 ? 2 : Math.min(3, keys.length);
  const rows = Math.ceil(keys.length / columns);
  const placed = Object.fromEntries(
    keys.map((key, k) => {
      const x = (paper.width * ((k % columns) + 0.5)) / columns;
      const y = (paper.height * (Math.floor(k / columns) + 0.5)) / rows;
      return [key, (drawings[key] ?? []).map((one) => translate(one, x, y))];
    }),
  );
  return sketch(
    Object.values(placed).flatMap((paths) => paths.map((one) => drawPath('thin', one))),
    Object.fromEntries(
      Object.entries(placed).map(([key, paths]) => [key, paths.map((one) => drawPath('outline', one))]),
    ),
  );
};

const line = (...pairs: readonly (readonly [number, number])[]): Path =>
  polyline(
    pairs.map(([x, y]) => ({ x, y })),
    false,
  );
const dot = (x: number, y: number, r = 1.8): Path => path([arc({ x, y }, r, 0, 2 * Math.PI)], true);

/** One wing from the deck's shoulder to the tip, on its underside. */
const wing = (fall: (from: ReturnType<typeof pen>) => ReturnType<typeof pen>): Path =>
  fall(pen({ x: -26, y: 12 }).line({ x: -26, y: -12 }).line({ x: -8, y: -12 }))
    .line({ x: 26, y: 12 })
    .close();
const tip = { x: 26, y: 5 };

export const wings = choices({
  hollow: [wing((from) => from.arc(tip, 44, -1))],
  straight: [wing((from) => from.line(tip))],
  round: [wing((from) => from.arc(tip, 44, 1))],
  ogee: [wing((from) => from.arc({ x: 9, y: -3.5 }, 22, 1).arc(tip, 22, -1))],
});

const block = (front: (from: ReturnType<typeof pen>) => ReturnType<typeof pen>): Path =>
  front(pen({ x: -18, y: 14 }))
    .line({ x: 18, y: 14 })
    .close();
const deck = (half: number): Path =>
  polyline(
    [
      { x: -half, y: -13 },
      { x: half, y: -13 },
      { x: half, y: 13 },
      { x: -half, y: 13 },
    ],
    true,
  );

const oblong = (x: number, r: number): Path =>
  pen({ x: r - x, y: -13 })
    .line({ x: x - r, y: -13 })
    .arc({ x, y: r - 13 }, r, 1)
    .line({ x, y: 13 - r })
    .arc({ x: x - r, y: 13 }, r, 1)
    .line({ x: r - x, y: 13 })
    .arc({ x: -x, y: 13 - r }, r, 1)
    .line({ x: -x, y: r - 13 })
    .arc({ x: r - x, y: -13 }, r, 1)
    .close();
export const ends = choices({ square: [deck(22)], eased: [oblong(22, 5)], round: [oblong(22, 13)] });

export const edges = choices({
  square: [block((from) => from.line({ x: -18, y: -12 }).line({ x: 18, y: -12 }))],
  round: [
    block((from) =>
      from.line({ x: -18, y: -3 }).arc({ x: -9, y: -12 }, 9, 1).line({ x: 9, y: -12 }).arc({ x: 18, y: -3 }, 9, 1),
    ),
  ],
  chamfer: [
    block((from) =>
      from.line({ x: -18, y: -4 }).line({ x: -10, y: -12 }).line({ x: 10, y: -12 }).line({ x: 18, y: -4 }),
    ),
  ],
});

const slotEnd = (r: number): Path =>
  r === 0
    ? polyline(
        [
          { x: -18, y: -4 },
          { x: 18, y: -4 },
          { x: 18, y: 4 },
          { x: -18, y: 4 },
        ],
        true,
      )
    : pen({ x: -14, y: -4 })
        .line({ x: 14, y: -4 })
        .arc({ x: 18, y: 0 }, 4, 1)
        .arc({ x: 14, y: 4 }, 4, 1)
        .line({ x: -14, y: 4 })
        .arc({ x: -18, y: 0 }, 4, 1)
        .arc({ x: -14, y: -4 }, 4, 1)
        .close();
export const slotEnds = choices({
  round: [deck(22), slotEnd(4)],
  square: [deck(22), slotEnd(0)],
  through: [deck(22), line([-22, -4], [22, -4]), line([-22, 4], [22, 4])],
});

const bridgeOn = (floor: Path): readonly Path[] => [
  pen({ x: -32, y: 16 })
    .line({ x: -32, y: -10 })
    .arc({ x: 32, y: -10 }, 110, 1)
    .line({ x: 32, y: 16 })
    .arc({ x: -32, y: 16 }, 90, -1)
    .close(),
  line([-22, -12.4], [-22, 2]),
  line([22, -12.4], [22, 2]),
  floor,
];
export const floors = choices({
  level: bridgeOn(line([-22, 2], [22, 2])),
  dome: bridgeOn(pen({ x: -22, y: 2 }).arc({ x: 22, y: 2 }, 90, 1).path()),
});

const slanted = line([-18, -8], [18, -13]);
const row = (y: (x: number) => number): readonly Path[] => [-15, -9, -3, 3, 9, 15].map((x) => dot(x, y(x)));
export const pinRows = choices({
  square: [slanted, ...row(() => 6)],
  slanted: [slanted, ...row((x) => 6 - (x * 5) / 36)],
  arc: [slanted, ...row((x) => 10 - (x / 15) ** 2 * 6)],
});

const strings = (xs: readonly number[], rs: readonly number[]): readonly Path[] => [
  line([-22, 6], [22, 6]),
  ...xs.map((x, k) => dot(x, 6 - (rs[k] ?? 1), rs[k])),
];
const thick = [4, 3.2, 2.4, 1.6, 1];
export const spacings = choices({
  centres: strings([-16, -8, 0, 8, 16], thick),
  gaps: strings([-16, -6.2, 2.0, 8.6, 13.8], thick),
  typed: strings([-18, -11, 2, 7, 17], thick),
});

export const courses = choices({
  single: strings([-24, -12, 0, 12, 24], [2, 2, 2, 2, 2]),
  pairs: strings([-26, -20.5, -11, -5.5, 5.5, 11, 20.5, 26], [2, 1.4, 2, 1.4, 2, 1.4, 2, 1.4]),
});

const saddleEnds = (
  crown: (from: ReturnType<typeof pen>) => ReturnType<typeof pen>,
  ...more: readonly Path[]
): readonly Path[] => [
  crown(pen({ x: -20, y: 12 }).line({ x: -20, y: -4 }))
    .line({ x: 20, y: 12 })
    .close(),
  ...more,
];
const arched = (from: ReturnType<typeof pen>) => from.arc({ x: 20, y: -4 }, 40, 1);
export const crowns = choices({
  best: saddleEnds(arched),
  gauge: saddleEnds(
    arched,
    pen({ x: -20, y: -7 })
      .line({ x: -20, y: -18 })
      .line({ x: 20, y: -18 })
      .line({ x: 20, y: -7 })
      .arc({ x: -20, y: -7 }, 40, -1)
      .close(),
  ),
  heights: saddleEnds((from) =>
    from
      .line({ x: -13, y: -8 })
      .line({ x: -4, y: -8.5 })
      .line({ x: 3, y: -11 })
      .line({ x: 12, y: -6 })
      .line({ x: 20, y: -2 }),
  ),
});

const half = [line([0, -14], [24, -14], [28, 0], [16, 12], [0, 14])];
const other = (dx: number) => line([0, -14], [-24 + dx, -14 + dx / 2], [-28 + dx, dx], [-16, 12], [0, 14]);
export const symmetries = choices({
  yes: [...half, other(0), line([0, -20], [0, 20])],
  no: [...half, other(7)],
});

export const turns = choices({
  smooth: [pen({ x: -24, y: 12 }).arc({ x: 24, y: 12 }, 30, 1).path(), dot(0, -6)],
  corner: [line([-24, 12], [0, -8], [24, 12]), dot(0, -8)],
});

const cap = (grain: readonly Path[]): readonly Path[] => [deck(20), ...grain];
const hatch = [-12, -6, 0, 6, 12];
export const grains = choices({
  across: cap([-8, -3, 3, 8].map((y) => line([-16, y], [16, y]))),
  along: cap(hatch.map((x) => line([x, -10], [x, 10]))),
  slanted: cap(hatch.map((x) => line([x - 6, 8], [x + 6, -8]))),
});
