import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { setAt } from '../../../geometry/fields.ts';
import { edgeAt, leastRadius, lightAt, restOf } from '../../../geometry/gauge/rest.ts';
import { type SurfaceName, surfaceNames, surfaceOf } from '../../../geometry/gauge/surfaces.ts';
import { layOut, sayWith } from '../../../geometry/layout.ts';
import { crownEdge } from '../../../geometry/saddle/crown.ts';
import { gaugeRadii } from '../../../geometry/saddle/gauges.ts';
import { pointOn } from '../../../geometry/shape/along.ts';
import { end, polyline, start } from '../../../geometry/shape/path.ts';
import type { Path } from '../../../geometry/shape/types.ts';
import { gaugeLaid } from '../../../geometry/views/gauge-laid.ts';
import { starters } from '../../../src/jobs/index.ts';
import { built, jobOf } from '../../solved.ts';

/** An arc over ±half with its ends so many mm apart in height. */
const dome = (radius: number | 'flat', half: number, tilt = 0): Path => {
  const edge = crownEdge(
    [
      { x: -half, y: tilt / 2 },
      { x: half, y: -tilt / 2 },
    ],
    radius,
    -half,
    half,
  );
  if (edge === undefined) throw new Error('the arc does not reach');
  return { segments: [edge], closed: false };
};
const rest = (surface: Path, radius: number | 'flat') => {
  const found = restOf(surface, radius);
  if (found === undefined) throw new Error(`no rest for ${radius}`);
  return found;
};

describe('a gauge on an arc', () => {
  it('of a smaller radius rests on the ends: light in the middle is the difference of the sagittas', () => {
    // A gauge of radius 100 over a flat chord of 100: a segment of 60°, whose height is 0.13397 of its radius and whose chord is 1.00000 of it
    // [memory of Machinery’s Handbook, table of segments of circles].
    const level = rest(dome('flat', 50), 100);
    expect(level.touches.map(({ x }) => x)).toEqual([-50, 50]);
    expect(lightAt(dome('flat', 50), level, 0) / 100).toBeCloseTo(0.13397, 5);
    // 90°: height 0.29289, chord 1.41421.
    expect(lightAt(dome('flat', 70.7105), rest(dome('flat', 70.7105), 100), 0) / 100).toBeCloseTo(0.29289, 5);
    const sagitta = (r: number, chord: number) => r - Math.sqrt(r * r - (chord * chord) / 4);
    const surface = dome(400, 30);
    expect(lightAt(surface, rest(surface, 300), 0)).toBeCloseTo(sagitta(300, 60) - sagitta(400, 60), 9);
    for (const x of [-30, 30]) expect(lightAt(surface, rest(surface, 300), x)).toBeCloseTo(0, 9);
  });

  it('of a larger radius rests on the middle: light at the ends is that difference', () => {
    const sagitta = (r: number, chord: number) => r - Math.sqrt(r * r - (chord * chord) / 4);
    const surface = dome(400, 30);
    const on = rest(surface, 500);
    expect(on.touches.length).toBe(1);
    expect(on.touches[0]?.x).toBeCloseTo(0, 9);
    for (const x of [-30, 30]) expect(lightAt(surface, on, x)).toBeCloseTo(sagitta(400, 60) - sagitta(500, 60), 9);
    const straight = rest(surface, 'flat');
    expect(lightAt(surface, straight, 30)).toBeCloseTo(sagitta(400, 60), 9);
  });

  it('of its own radius shows no light, however the surface is tipped', () => {
    const surface = dome(400, 30, 1.5);
    const on = rest(surface, 400);
    for (const x of [-30, -11, 0, 7, 30]) expect(lightAt(surface, on, x)).toBeCloseTo(0, 9);
  });

  it('is refused where it is too tight to span it, and only there', () => {
    expect(leastRadius(dome('flat', 50))).toBeCloseTo(50, 9);
    expect(restOf(dome('flat', 50), 49.9)).toBeUndefined();
    expect(restOf(dome('flat', 50), 50)).toBeDefined();
  });

  it('hangs over a dip between two places, and leaves what is beyond them', () => {
    const humps = polyline(
      [
        { x: -30, y: 2 },
        { x: -12, y: 0 },
        { x: 0, y: 1 },
        { x: 9, y: 0.5 },
        { x: 30, y: 3 },
      ],
      false,
    );
    const on = rest(humps, 'flat');
    expect(on.touches).toEqual([
      { x: -12, y: 0 },
      { x: 9, y: 0.5 },
    ]);
    expect(lightAt(humps, on, 0)).toBeCloseTo(1 - (0.5 * 12) / 21, 9);
  });
});

/** The light by search: of very many places of the surface, for each way in which the gauge can be tipped the lowest that it can lie; of all ways the one lowest over the middle. */
const searched = (surface: Path, radius: number | 'flat', xs: readonly number[]): readonly number[] => {
  const points = surface.segments.flatMap((s) => Array.from({ length: 4001 }, (_, k) => pointOn(s, k / 4000)));
  const [from, to] = [start(surface).x, end(surface).x];
  const middle = (from + to) / 2;
  const fall = (off: number) => (radius === 'flat' ? 0 : radius - Math.sqrt(Math.max(0, radius * radius - off * off)));
  // Heights up; the gauge is c + t·(x − middle) for a straight one, or a circle whose middle stands t aside.
  const line = (t: number, x: number) => (radius === 'flat' ? t * (x - middle) : -fall(x - middle - t));
  const lowest = (t: number) => {
    let most = Number.NEGATIVE_INFINITY;
    for (const p of points) most = Math.max(most, -p.y - line(t, p.x));
    return most;
  };
  const over = (t: number) => lowest(t) + line(t, middle);
  const reach = radius === 'flat' ? 0.5 : Math.min(40, radius - (to - from) / 2);
  let [a, b] = [-reach, reach];
  for (let k = 0; k < 70; k += 1) {
    const [c, d] = [a + (b - a) / 3, b - (b - a) / 3];
    if (over(c) <= over(d)) b = d;
    else a = c;
  }
  const t = (a + b) / 2;
  return xs.map((x) => {
    const near = points.reduce((best, p) => (Math.abs(p.x - x) < Math.abs(best.x - x) ? p : best));
    return lowest(t) + line(t, near.x) + near.y;
  });
};

it.each(starters)('on every surface of $id lies as a search finds it, touching and nowhere through', ({ text }) => {
  for (const crown of ['best', 'heights']) {
    const { job, design } = built(setAt(jobOf(text), 'saddle.crown', crown));
    for (const name of Object.keys(surfaceNames) as SurfaceName[]) {
      const { line, strings } = surfaceOf(name, job, design);
      expect(strings.length).toBeGreaterThanOrEqual(name === 'crown' ? design.strings.length : 1);
      for (const radius of gaugeRadii) {
        if (radius !== 'flat' && radius < leastRadius(line)) continue;
        const on = rest(line, radius);
        for (const { x, y } of on.touches) expect(edgeAt(on.lying, x)).toBeCloseTo(y, 8);
        for (const s of line.segments)
          for (let k = 0; k <= 50; k += 1) {
            const p = pointOn(s, k / 50);
            expect(p.y - edgeAt(on.lying, p.x)).toBeGreaterThan(-1e-8);
          }
      }
      // As it takes its time, only two gauges are searched for.
      if (crown === 'best' || name === 'top') continue;
      const xs = [start(line).x, 0, end(line).x];
      for (const radius of [304.8, 'flat'] as const) {
        if (radius !== 'flat' && radius < leastRadius(line)) continue;
        const found = searched(line, radius, xs);
        xs.forEach((x, k) => {
          // What lies between the places tried tips it by as much.
          expect(Math.abs(lightAt(line, rest(line, radius), x) - (found[k] as number))).toBeLessThan(1.5e-3);
        });
      }
    }
  }
});

it('rests alike whichever way round the surface is', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 150, max: 900, noNaN: true }),
      fc.double({ min: 60, max: 900, noNaN: true }),
      fc.double({ min: -2, max: 2, noNaN: true }),
      (surface, gauge, tilt) => {
        const [one, other] = [dome(surface, 40, tilt), dome(surface, 40, -tilt)];
        for (const x of [-40, -13, 0, 22])
          expect(lightAt(one, rest(one, gauge), x)).toBeCloseTo(lightAt(other, rest(other, gauge), -x), 7);
      },
    ),
    { numRuns: 100 },
  );
});

it('is drawn with the light under it hatched, touching where it touches', () => {
  const { job, design } = built(jobOf(starters[0]?.text ?? ''));
  const surface = surfaceOf('deck', job, design);
  const marks = gaugeLaid(surface, rest(surface.line, 254), job.hand);
  const drawn = layOut(marks, { em: 0.05, say: sayWith(job.show) });
  expect(drawn.some(({ id }) => /^gauge\.light\.\d+\.hatch/.test(id))).toBe(true);
  expect(marks.filter(({ id }) => id.startsWith('gauge.at.')).length).toBe(surface.strings.length);
});
