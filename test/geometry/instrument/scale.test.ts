import { describe, expect, it } from 'vitest';
import { fewestFrets, fitScale, type MeasuredFret } from '../../../geometry/instrument/scale.ts';
import { seeded } from '../../seeded.ts';

/** Equal temperament, each fret from the one before it: what is left shrinks by the twelfth root of two. */
const frets = (scale: number, numbers: readonly number[]): readonly MeasuredFret[] => {
  const semitone = Math.exp(Math.LN2 / 12);
  return numbers.map((fret) => {
    let left = scale;
    for (let k = 0; k < fret; k += 1) left /= semitone;
    return { fret, distance: scale - left };
  });
};

describe('the scale by measured frets', () => {
  it.each([[[5, 12, 19]], [[1, 2, 3]], [[3, 7, 12, 15, 20]], [[20, 12, 5, 1]]])(
    'is exact by exact frets %j, without an error',
    (numbers) => {
      const fitted = fitScale(frets(645.3, numbers));
      expect(fitted?.scale).toBeCloseTo(645.3, 9);
      expect(fitted?.error).toBeCloseTo(0, 9);
      for (const miss of fitted?.misses ?? [Number.NaN]) expect(miss).toBeCloseTo(0, 9);
    },
  );

  it('needs three readings, as two say nothing of their own error', () => {
    expect(fewestFrets).toBe(3);
    expect(fitScale([])).toBeUndefined();
    expect(fitScale(frets(640, [5, 12]))).toBeUndefined();
    expect(fitScale(frets(640, [5, 7, 12]))).toBeDefined();
  });

  it('is where the squares of the misses are least, searched by halving', () => {
    const { even, normal } = seeded(3);
    for (let k = 0; k < 20; k += 1) {
      const scale = even(560, 700);
      const read = frets(scale, [3, 5, 7, 12, 15, 19]).map((f) => ({ ...f, distance: f.distance + normal(0.3) }));
      const squares = (l: number) =>
        frets(l, [3, 5, 7, 12, 15, 19]).reduce((sum, f, i) => sum + ((read[i]?.distance ?? 0) - f.distance) ** 2, 0);
      let [low, high] = [500, 800];
      for (let step = 0; step < 120; step += 1) {
        const [a, b] = [low + (high - low) * 0.382, low + (high - low) * 0.618];
        if (squares(a) < squares(b)) high = b;
        else low = a;
      }
      const fitted = fitScale(read);
      expect(fitted?.scale).toBeCloseTo((low + high) / 2, 4);
      expect(fitted?.misses.reduce((sum, miss) => sum + miss * miss, 0)).toBeCloseTo(squares(low), 6);
    }
  });

  // JCGM 100:2008 (GUM), 4.2: the standard uncertainty is the deviation of what would be found over and over.
  it('says an error that comes true: over 4000 guitars its square is that of the scales’ own scatter, within 5 %', () => {
    const { normal } = seeded(8);
    let said = 0;
    let scattered = 0;
    for (let k = 0; k < 4000; k += 1) {
      const read = frets(640, [5, 7, 12, 17]).map((f) => ({ ...f, distance: f.distance + normal(0.2) }));
      const fitted = fitScale(read);
      said += (fitted?.error ?? Number.NaN) ** 2;
      scattered += ((fitted?.scale ?? Number.NaN) - 640) ** 2;
    }
    expect(said / scattered).toBeGreaterThan(0.95);
    expect(said / scattered).toBeLessThan(1.05);
  });
});
