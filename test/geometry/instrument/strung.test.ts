import { describe, expect, it } from 'vitest';
import { missingReadings, neckPlaneAtPitch, strungSaddleHeight } from '../../../geometry/instrument/strung.ts';
import { seeded } from '../../seeded.ts';

/** A parabola through nothing at a and at b, and −depth half-way (Lagrange); nothing outside. */
const sagging = (x: number, a: number, b: number, depth: number) =>
  x <= a || x >= b ? 0 : (-depth * (x - a) * (x - b)) / (((a + b) / 2 - a) * ((a + b) / 2 - b));

/** What would be read on a guitar whose neck plane height, rise, bridge and strings are known: the row's middle runs straight from nut to saddle. */
const invented = ({ even }: ReturnType<typeof seeded>) => {
  const scale = even(600, 680);
  const [bodyJoint, setback] = [[12, 14, 16][Math.floor(even(0, 3))] ?? 14, even(0, 5)];
  const [height, rise, thickness] = [even(7, 13), even(-0.2, 2), even(6, 11)];
  const relief = even(0, 0.6);
  const [atNut, atSaddle] = [even(0.3, 1), even(2, 8)];
  const fret = (n: number) => scale - scale * 0.5 ** (n / 12);
  const saddle = scale + setback;
  const string = (x: number) => atNut + ((atSaddle - atNut) * x) / saddle;
  const over = (n: number) => string(fret(n)) - sagging(fret(n), fret(1), fret(bodyJoint), relief);
  const deck = -height + rise + thickness;
  const [action, firstFret] = [over(12), over(1)];
  // Bass stands higher than treble by as much as the middle asks of neither.
  const [da, df] = [even(0, 0.5), even(0, 0.1)];
  return {
    height,
    rise,
    saddle: atSaddle,
    line: { scale, bodyJoint, setback },
    strung: {
      thickness,
      exposure: atSaddle - deck,
      actionBass: action + da,
      actionTreble: action - da,
      firstFretBass: firstFret + df,
      firstFretTreble: firstFret - df,
      relief,
      // A straightedge on the frets carried over the deck at pitch.
      light: -deck,
    },
  };
};

describe('a strung guitar', () => {
  it('gives back its neck plane height at pitch, by the strings and by the straightedge', () => {
    const chance = seeded(21);
    for (let k = 0; k < 300; k += 1) {
      const guitar = invented(chance);
      const read = neckPlaneAtPitch(guitar.strung, guitar.line);
      expect(read.strung).toBeCloseTo(guitar.height - guitar.rise, 9);
      expect(read.straightedge).toBeCloseTo(guitar.height - guitar.rise, 9);
      expect(read.saddleHeight).toBeCloseTo(guitar.saddle, 9);
      expect(strungSaddleHeight(guitar.strung, guitar.line)).toBeCloseTo(guitar.saddle, 9);
    }
  });

  it('by the strings or by the straightedge alone, as the readings allow', () => {
    const { strung, line, height, rise } = invented(seeded(4));
    const noLight = neckPlaneAtPitch({ ...strung, light: 'not taken' }, line);
    expect(noLight.straightedge).toBeUndefined();
    expect(noLight.strung).toBeCloseTo(height - rise, 9);
    const noRelief = neckPlaneAtPitch({ ...strung, relief: 'not taken' }, line);
    expect(noRelief).not.toHaveProperty('strung');
    expect(noRelief.straightedge).toBeCloseTo(height - rise, 9);
    expect(neckPlaneAtPitch({ ...strung, thickness: 'not taken' }, line)).toEqual({});
  });

  it('a reading of nothing is a reading', () => {
    const { strung } = invented(seeded(4));
    expect(missingReadings({ ...strung, exposure: 0, relief: 0 })).toEqual([]);
    expect(
      missingReadings({ ...strung, exposure: 'not taken', firstFretBass: 'not taken', light: 'not taken' }),
    ).toEqual(['exposure', 'firstFretBass']);
  });
});
