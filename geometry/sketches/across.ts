import { pen } from '../shape/path.ts';
import { bow, box, drawPath, gauge, high, lines, ring, sketch, wide } from './sketch.ts';

/** A board's crowns at the nut and at its end, each with its gauge. */
const boardEnd = (x: number, half: number, y: number) => [
  drawPath(
    'outline',
    pen({ x: x - half, y: y + 12 })
      .line({ x: x - half, y: y + 5 })
      .arc({ x: x + half, y: y + 5 }, half * 2.6, 1)
      .line({ x: x + half, y: y + 12 })
      .close(),
    'wood',
  ),
];
const bulge = (half: number) => half * 2.6 - Math.sqrt((half * 2.6) ** 2 - half ** 2);
const crownOf = (x: number, half: number, y: number) =>
  gauge([x - half, y + 5], [x, y + 5 - bulge(half)], [x + half, y + 5]);
export const boardRadius = sketch([...boardEnd(36, 22, 50), ...boardEnd(106, 34, 50)], {
  nut: [crownOf(36, 22, 50)],
  end: [crownOf(106, 34, 50)],
});

/** The bridge's end profile, seen from the tail. */
const tipTop = 58;
const profile = pen({ x: 12, y: 70 })
  .line({ x: 12, y: tipTop })
  .arc({ x: 44, y: 40 }, 38, -1)
  .arc({ x: 106, y: 40 }, 92, 1)
  .arc({ x: 138, y: tipTop }, 38, -1)
  .line({ x: 138, y: 70 })
  .arc({ x: 12, y: 70 }, 330, -1)
  .close();
const deckTop = 40 - (92 - Math.sqrt(92 ** 2 - 31 ** 2));
const underside = 70 - (330 - Math.sqrt(330 ** 2 - 63 ** 2));
export const tail = sketch([drawPath('outline', profile, 'wood')], {
  thickness: [high(deckTop, underside, 75)],
  topRadius: [gauge([44, 40], [75, deckTop], [106, 40])],
  tilt: [lines('outline', [44, 33], [124, 24]), lines('thin', [44, 33], [132, 33]), high(24, 33, 124)],
  deck: [wide(44, 106, 20, 40)],
  tip: [high(tipTop, 70, 6, 12)],
  tipTreble: [high(tipTop, 70, 144, 138)],
  scoop: [ring('outline', 27, 34, 21), lines('thin', [27, 34], [38, 52])],
  shoulder: [bow('outline', [36, 46], [43, 40.5], [52, 38]), bow('outline', [98, 38], [107, 40.5], [114, 46])],
});

/** The end profile of a bridge with pyramids. */
export const pyramidEnd = sketch(
  [
    drawPath(
      'outline',
      pen({ x: 8, y: 70 })
        .line({ x: 8, y: 60 })
        .line({ x: 22, y: 46 })
        .line({ x: 36, y: 58 })
        .line({ x: 48, y: 42 })
        .arc({ x: 102, y: 42 }, 90, 1)
        .line({ x: 114, y: 58 })
        .line({ x: 128, y: 46 })
        .line({ x: 142, y: 60 })
        .line({ x: 142, y: 70 })
        .close(),
      'wood',
    ),
  ],
  { ridge: [ring('outline', 22, 46, 2), high(46, 70, 22)] },
);

/** Strings over the saddle, seen from the tail. */
const y = (x: number) => 46 - (170 - Math.sqrt(170 ** 2 - (x - 75) ** 2)) * -1;
const singles = [30, 48, 66, 84, 102, 120];
const pairs = singles.flatMap((x) => [x - 3.5, x + 3.5]);
const over = (xs: readonly number[]) => [
  drawPath(
    'outline',
    pen({ x: 18, y: 74 })
      .line({ x: 18, y: y(18) })
      .arc({ x: 132, y: y(18) }, 170, 1)
      .line({ x: 132, y: 74 })
      .close(),
    'bone',
  ),
  box('outline', 'wood', 6, 60, 144, 84),
  lines('centre', [75, 8], [75, 88]),
  ...xs.map((x) => ring('outline', x, y(x) - 2.4, 2.2, 'pin')),
];
export const row = sketch(over(singles), {
  spread: [wide(30, 120, 20, y(30) - 2)],
  place: [ring('outline', 102, y(102) - 2.4, 2.2), wide(75, 102, 24, y(102) - 2)],
});
export const pairRow = sketch(over(pairs), {
  pairGap: [wide(44.5, 51.5, 24, y(48) - 2)],
  spread: [wide(26.5, 123.5, 20, y(30) - 2)],
  place: [ring('outline', 105.5, y(105.5) - 2.4, 2.2), wide(75, 105.5, 24, y(102) - 2)],
});

/** A range with its four bounds on a scale. */
const bounds = { doubtfulFrom: 28, from: 54, to: 96, doubtfulTo: 122 };
const tick = (x: number) => [lines('outline', [x, 30], [x, 60])];
export const range = sketch(
  [
    box('thin', 'hole', 6, 38, 144, 52),
    box('thin', 'pin', bounds.doubtfulFrom, 38, bounds.doubtfulTo, 52),
    box('outline', 'wood', bounds.from, 38, bounds.to, 52),
  ],
  Object.fromEntries(Object.entries(bounds).map(([key, x]) => [key, tick(x)])),
);
