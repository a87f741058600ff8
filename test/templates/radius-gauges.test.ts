// Radius gauges, measured as a caliper would.
import { describe, expect, it } from 'vitest';
import { setAt } from '../../geometry/fields.ts';
import type { Job } from '../../geometry/job.ts';
import { layOut, sayWith } from '../../geometry/layout.ts';
import { bounds, pointOn } from '../../geometry/shape/index.ts';
import type { Path } from '../../geometry/shape/types.ts';
import { radiusGauges } from '../../templates/pieces/radius-gauges.ts';
import { newShop, type Shop } from '../../templates/shop/index.ts';
import { fitCircle } from '../fit-circle.ts';
import { built, workedExample } from '../solved.ts';

const drawn = (asked: Job = workedExample(), gauges: Partial<Shop['gauges']> = {}) => {
  const { job, design } = built(asked);
  const shop = newShop();
  return radiusGauges.draw(job, design, { ...shop, gauges: { ...shop.gauges, ...gauges } });
};
type Gauge = ReturnType<typeof drawn>[number];
const pathOf = ({ marks }: Gauge, id: string): Path => {
  const found = marks.find((mark) => mark.id === id);
  if (found?.kind !== 'path') throw new Error(`no ${id}`);
  return found.path;
};
const edge = (path: Path) => path.segments.filter((s) => s.kind === 'arc');
const texts = ({ marks }: Gauge, job: Job) =>
  layOut(marks, { em: 3.5, say: sayWith(job.show) }).flatMap((p) => (p.kind === 'text' ? [p.text] : []));

describe('the radius gauges of a job', () => {
  it('are those of its board’s end, its bridge’s top, its crown and its dome', () => {
    // The crown's radius by the independent program of the worked example.
    expect(drawn().map(({ id }) => id)).toEqual([
      'radius-gauge-355.6',
      'radius-gauge-508',
      'radius-gauge-377.93',
      'radius-gauge-7600',
    ]);
  });

  it('are each drawn once: a board and a top of one radius share theirs; what is flat has none', () => {
    const shared = drawn(setAt(setAt(workedExample(), 'bridge.topRadius', 355.6), 'guitar.topRadius', 'flat'));
    expect(shared.map(({ id }) => id)).toEqual(['radius-gauge-355.6', 'radius-gauge-377.93']);
    expect(shared[0] && texts(shared[0], workedExample())).toContain('board at its end, bridge top');
  });

  it('are as long as what they are laid on: the deck, the saddle, the bridge', () => {
    const long = drawn().map((gauge) => bounds(pathOf(gauge, 'inside')).maxX * 2);
    expect(long.slice(1).map((n) => Number(n.toFixed(6)))).toEqual([84, 75.95, 152]);
  });

  it('are hollow and round to the radius that they name in mm and inches', () => {
    for (const gauge of drawn()) {
      const radius = Number(gauge.id.slice('radius-gauge-'.length));
      for (const side of ['inside', 'outside']) {
        const [arc, ...others] = edge(pathOf(gauge, side));
        if (arc === undefined || others.length > 0) throw new Error(`${gauge.id}: ${side} has not one arc`);
        const fitted = fitCircle([0, 0.2, 0.5, 0.7, 1].map((t) => pointOn(arc, t)));
        expect(Math.abs(fitted.radius / radius - 1)).toBeLessThan(1e-4);
      }
      const name = texts(gauge, workedExample()).find((text) => text.startsWith('R '));
      const [mm = 0, inches = 0] = (name?.match(/[\d.]+/g) ?? []).map(Number);
      expect(mm).toBeCloseTo(radius, 0);
      expect(inches).toBeCloseTo(radius / 25.4, 1);
    }
  });
});

describe('the gauges that a shop wants besides', () => {
  it('are proved by a sagitta that a caliper reads: 20 mm over a chord of 80 at a radius of 50, by Pythagoras 30 40 50', () => {
    const gauge = drawn(workedExample(), { list: [{ id: 'a', radius: 50 }] }).at(-1) as Gauge;
    const { minX, maxX, minY, maxY } = bounds(pathOf(gauge, 'inside'));
    const [arc] = edge(pathOf(gauge, 'inside'));
    if (arc === undefined) throw new Error('no arc');
    expect(maxX - minX).toBeCloseTo(80, 9);
    expect(maxY - pointOn(arc, 0.5).y).toBeCloseTo(20, 9);
    expect(pointOn(arc, 0.5).y - minY).toBeCloseTo(17, 9);
    expect(texts(gauge, workedExample())).toContain('sagitta 20.00 mm over 80.0 mm, by caliper');
  });

  it('are the usual ones in inches, in mm or both, beside the job’s own', () => {
    const radii = (besides: Shop['gauges']['besides']) =>
      drawn(workedExample(), { besides }).map(({ id }) => Number(id.slice('radius-gauge-'.length)));
    expect(radii('inch').slice(4)).toEqual([184.15, 241.3, 254, 304.8, 381, 406.4]);
    expect(radii('metric').slice(4)).toEqual([200, 250, 300, 350, 400, 450, 500]);
    expect(radii('both')).toHaveLength(17);
  });
});
