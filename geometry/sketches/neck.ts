import { bow, box, high, lines, ring, shape, sketch, wide } from './sketch.ts';

/** The guitar from above, its nut on the left; frets by equal temperament. */
const nut = 14;
const saddle = 124;
const fretAt = (n: number): number => nut + (saddle - nut) * (1 - 2 ** (-n / 12));
const middle = 42;
const half = (x: number): number => 8 + (x - nut) * 0.045;
const fret = (n: number, line: 'thin' | 'outline' = 'thin') => {
  const x = fretAt(n);
  return lines(line, [x, middle - half(x)], [x, middle + half(x)]);
};
const frets = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20];
const string = (side: number, line: 'thin' | 'outline' = 'thin') =>
  lines(line, [nut, middle + side * 6], [saddle, middle + side * 12]);
const end = fretAt(20) + 3;
const joint = fretAt(14);

/** The guitar from above, its neck to the left: distances along it, and widths across it. */
export const neck = sketch(
  [
    bow('thin', [joint, middle - 11], [joint + 16, 9], [149, 6]),
    bow('thin', [joint, middle + 11], [joint + 16, 75], [149, 78]),
    shape(
      'outline',
      'wood',
      [nut, middle - half(nut)],
      [end, middle - half(end)],
      [end, middle + half(end)],
      [nut, middle + half(nut)],
    ),
    ...frets.map((n) => fret(n)),
    box('outline', 'wood', saddle - 7, middle - 21, saddle + 11, middle + 21),
    box('outline', 'bone', saddle - 1.5, middle - 14, saddle + 1.5, middle + 14),
    string(-1),
    string(1),
  ],
  {
    scale: [wide(nut, fretAt(12), 68, middle + half(nut), '× 2')],
    frets: frets.map((n) => fret(n, 'outline')),
    joint: [
      fret(14, 'outline'),
      lines('outline', [joint, middle - half(joint)], [joint, 18]),
      lines('outline', [joint, middle + half(joint)], [joint, 66]),
    ],
    fret: [fret(7, 'outline')],
    distance: [wide(nut, fretAt(7), 68, middle + half(nut))],
    boardWidth: [high(middle - half(fretAt(12)), middle + half(fretAt(12)), fretAt(12))],
    nutSpread: [high(middle - 6, middle + 6, 6, nut)],
    nutPlace: [
      lines('centre', [4, middle], [60, middle]),
      ring('outline', nut, middle - 6, 2),
      high(middle - 6, middle, 6, nut),
    ],
    toSaddle: [wide(nut, saddle, 72, [middle + half(nut), middle + 14])],
    toBridge: [wide(nut, saddle - 7, 72, [middle + half(nut), middle + 21])],
    string: [string(-1, 'outline'), ring('outline', nut, middle - 6, 2), ring('outline', saddle, middle - 12, 2)],
  },
);
