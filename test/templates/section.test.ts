import { describe, expect, it } from 'vitest';
import { setAt } from '../../geometry/fields.ts';
import type { Job } from '../../geometry/job.ts';
import { layOut, sayWith } from '../../geometry/layout.ts';
import { pathIntersections, polyline } from '../../geometry/shape/index.ts';
import { drawnPiece } from '../drawn.ts';
import { built, workedExample } from '../solved.ts';

const make = (values: Readonly<Record<string, unknown>> = {}) => {
  const { job, design } = built(
    Object.entries(values).reduce<Job>((j, [path, value]) => setAt(j, path, value), workedExample()),
  );
  const { marks } = drawnPiece('section', job, design);
  const face = marks.find(({ id }) => id === 'outline');
  if (face?.kind !== 'path') throw new Error('no face');
  const upright = (x: number) =>
    polyline(
      [
        { x, y: -50 },
        { x, y: 50 },
      ],
      false,
    );
  /** From the highest to the lowest wood at x, mm above the fret plane. */
  const at = (x: number) => {
    const heights = pathIntersections(upright(x), face.path).map(({ y }) => -y);
    return [Math.max(...heights), Math.min(...heights)] as const;
  };
  const texts = layOut(marks, { em: 3.5, say: sayWith(job.show) });
  const said = (id: string) => texts.find((text) => text.kind === 'text' && text.id === id);
  return { job, at, marks, said };
};

/** R − √(R² − y²) [def]. */
const drop = (r: number | 'flat', y: number) => (r === 'flat' ? 0 : r - Math.sqrt(r * r - y * y));

describe('the section at the saddle line', () => {
  it('is as thick everywhere as the job’s own numbers make it: deck and dome by their radii, the slot’s floor under the deck by its depth', () => {
    const { job, at } = make();
    const { guitar, bridge, slot } = job;
    const top = guitar.rise - guitar.neckPlaneHeight;
    for (const x of [-41, -38.3, 38.3, 41]) {
      const [upper, lower] = at(x);
      expect(upper).toBeCloseTo(top + bridge.thickness - drop(bridge.topRadius, x), 6);
      expect(lower).toBeCloseTo(top - drop(guitar.topRadius, x), 6);
    }
    for (const x of [-37.5, -20, 0, 31]) expect(at(x)[0]).toBeCloseTo(top + bridge.thickness - slot.depth, 6);
    expect(at(-75.99)[0] - at(-75.99)[1]).toBeCloseTo(bridge.tipThickness, 2);
  });

  it('says how deep the slot is at its ends, where the deck has fallen away, and what wood is left under it', () => {
    const { job, said } = make({
      'bridge.topRadius': 400,
      'guitar.topRadius': 6000,
      'slot.slant': 0,
      'slot.line': 'typed',
    });
    const end = (5 - (400 - Math.sqrt(400 ** 2 - 38 ** 2))).toFixed(2);
    expect(said('slot')).toMatchObject({
      text: `slot 5.0 mm deep in the middle, ${end} mm at its bass end, ${end} mm at its treble end`,
    });
    const wood = 4.3 + drop(job.guitar.topRadius, 38);
    expect(said('wood')).toMatchObject({
      text: `wood under it: 4.3 mm in the middle, ${wood.toFixed(2)} mm at its ends`,
    });
  });

  it('leaves as much wood everywhere under a floor that follows the dome', () => {
    const { at } = make({ 'slot.floor': 'dome' });
    for (const x of [-37, -11, 25]) expect(at(x)[0] - at(x)[1]).toBeCloseTo(4.3, 6);
  });

  it('has an open slot from shoulder to shoulder', () => {
    const { at, marks } = make({ 'slot.ends': 'through', 'pins.hold': 'tied', 'pins.hole': 2.4 });
    expect(at(41.9)[0]).toBeCloseTo(at(0)[0], 9);
    expect(at(42.1)[0]).toBeGreaterThan(at(0)[0] + 2);
    expect(marks.some(({ id }) => id === 'slotLength')).toBe(false);
  });
});
