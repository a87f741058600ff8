import { describe, expect, it } from 'vitest';
import { setAt } from '../../../geometry/fields.ts';
import { withSet } from '../../../geometry/instrument/sets.ts';
import {
  clearGaps,
  pairsAcross,
  placesAcross,
  smallestGap,
  stringPlaces,
  withTypedPlaces,
} from '../../../geometry/instrument/spacing.ts';
import { wantedAt } from '../../../geometry/saddle/heights.ts';
import { built, solved, workedExample } from '../../solved.ts';

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

describe('pairs', () => {
  const twelve = [0.6, 1.2, 0.42, 0.9, 0.3, 0.66, 0.22, 0.5, 0.36, 0.36, 0.26, 0.26];

  it.each(['centres', 'gaps'] as const)(
    'lie from outer string to outer string, each pair as far apart: %s',
    (spacing) => {
      const places = pairsAcross(58, twelve, spacing, 2.4);
      expect([places[0], places.at(-1)]).toEqual([-29, 29]);
      for (const [k, y] of places.entries()) if (k % 2 === 1) expect(y - (places[k - 1] ?? 0)).toBeCloseTo(2.4, 12);
    },
  );

  it('have their courses’ middles equally spaced, or the gaps between courses', () => {
    const middles = (places: readonly number[]) =>
      places.flatMap((y, k) => (k % 2 === 1 ? [(y + (places[k - 1] ?? 0)) / 2] : []));
    const centres = middles(pairsAcross(58, twelve, 'centres', 2.4));
    for (const [k, y] of centres.entries()) expect(y).toBeCloseTo(-27.8 + (55.6 * k) / 5, 12);
    const gaps = clearGaps(pairsAcross(58, twelve, 'gaps', 2.4), twelve).filter((_, k) => k % 2 === 1);
    for (const gap of gaps) expect(gap).toBeCloseTo(gaps[0] ?? 0, 12);
    // By hand: 58 less six pairs of 2.4 and less half of 1.2 + 0.42 + 0.9 + 0.3 + 0.66 + 0.22 + 0.5 + 0.36 + 0.36 + 0.26, over five.
    expect(gaps[0]).toBeCloseTo((58 - 14.4 - 2.59) / 5, 12);
  });
});

describe('the strings’ places', () => {
  it('at the nut keep a pair’s spacing in the proportion of the spreads', () => {
    const job = withSet(workedExample(), 'twelve');
    const { nut, saddle } = stringPlaces(job);
    const share = job.guitar.nutSpread / job.strings.spread;
    for (const [k, y] of nut.entries()) expect(y).toBeCloseTo((saddle[k] ?? 0) * share, 9);
  });

  it('are as typed, and begin where they were', () => {
    const job = withTypedPlaces(workedExample());
    expect(job.strings.spacing).toBe('typed');
    expect(stringPlaces(job)).toEqual(stringPlaces(workedExample()));
    const moved = setAt(job, 'strings.list.D3.saddlePlace', -5);
    expect(stringPlaces(moved).saddle[2]).toBe(-5);
    const { strings } = solved(moved);
    expect(strings.map(({ acrossAtSaddle }) => acrossAtSaddle)).toEqual(stringPlaces(moved).saddle);
    // All but the string that was moved are as they were.
    const before = solved(workedExample()).strings;
    for (const [k, s] of strings.entries())
      if (k !== 2) expect(s.exposure).toBeCloseTo(before[k]?.exposure ?? Number.NaN, 9);
  });

  it('give the spread from outer string to outer string, wherever its middle', () => {
    const job = withTypedPlaces(workedExample());
    const off = {
      ...job,
      strings: { ...job.strings, list: job.strings.list.map((s) => ({ ...s, saddlePlace: s.saddlePlace + 0.7 })) },
    };
    const { job: settled, design } = built(off);
    expect(settled.strings.spread).toBeCloseTo(55.5, 12);
    expect(design.strings[0]?.acrossAtSaddle).toBeCloseTo(-27.05, 12);
  });
});

describe('courses', () => {
  it('have one action and one first-fret clearance, straight from bass to treble', () => {
    const job = withSet(workedExample(), 'twelve');
    const single = workedExample();
    for (const k of job.strings.list.keys()) expect(wantedAt(job, k)).toEqual(wantedAt(single, Math.floor(k / 2)));
    expect([wantedAt(job, 0), wantedAt(job, 11)]).toEqual([
      { action: 2.5, firstFret: 0.45 },
      { action: 1.9, firstFret: 0.3 },
    ]);
  });
});
