import { describe, expect, it } from 'vitest';
import { placesAcross, smallestGap } from '../../../geometry/instrument/spacing.ts';

const gauges = [1.35, 1.07, 0.81, 0.61, 0.41, 0.3];

describe('placesAcross', () => {
  it('puts the outer strings at half the spread, whatever the spacing', () => {
    for (const spacing of ['centres', 'gaps'] as const) {
      const places = placesAcross(56, gauges, spacing);
      expect(places).toHaveLength(6);
      expect(places[0]).toBe(-28);
      expect(places[5]).toBe(28);
    }
  });

  it('leaves the same clear gap between all neighbours when gaps are equal', () => {
    const places = placesAcross(56, gauges, 'gaps');
    const gaps = places.slice(1).map((y, k) => y - (places[k] ?? 0) - ((gauges[k] ?? 0) + (gauges[k + 1] ?? 0)) / 2);
    for (const gap of gaps) expect(gap).toBeCloseTo(gaps[0] ?? 0, 12);
    expect(smallestGap(places, gauges)).toBeCloseTo(gaps[0] ?? 0, 12);
  });

  it('is the same from centre to centre when centres are equal', () => {
    const places = placesAcross(55.5, gauges, 'centres');
    for (const [k, y] of places.entries()) expect(y).toBeCloseTo(-27.75 + 11.1 * k, 12);
  });

  it('tells when two strings would touch', () => {
    expect(smallestGap([0, 1], [1.2, 1.2])).toBeCloseTo(-0.2, 12);
  });
});
