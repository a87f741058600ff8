import { describe, expect, it } from 'vitest';
import { sectionAcross, sectionAlong } from '../../../geometry/bridge/section.ts';
import { slotFloorAt, undersideHeight } from '../../../geometry/bridge/surface.ts';
import { bridgeTopAt } from '../../../geometry/bridge/top-line.ts';
import { setAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import { area, bounds, isSimple } from '../../../geometry/shape/index.ts';
import { built, workedExample } from '../../solved.ts';

const make = (values: Readonly<Record<string, unknown>>) =>
  built(Object.entries(values).reduce<Job>((job, [path, value]) => setAt(job, path, value), workedExample()));

/** A plain block: 152 × 32 × 9.3, a square slot 3.2 wide and 5 deep square to the centre line, and pins 5 wide. */
const block = {
  'bridge.footprint': 'rectangle',
  'bridge.depth': 32,
  'bridge.deckWidth': 152,
  'bridge.topRadius': 'flat',
  'guitar.topRadius': 'flat',
  'slot.line': 'typed',
  'slot.fromNut': 643,
  'slot.slant': 0,
  'slot.ends': 'square',
  'pins.row': 'square',
};

describe('a section across', () => {
  const { job, design } = make(block);
  const areas = (x: number) => sectionAcross(job, design, x).wood.map((path) => Math.abs(area(path)));

  it('of a block is a rectangle, with the slot taken out where it runs', () => {
    expect(areas(design.bridgeFront + 3)[0]).toBeCloseTo(152 * 9.3, 9);
    expect(areas(643)[0]).toBeCloseTo(152 * 9.3 - 76 * 5, 9);
    expect(sectionAcross(job, design, 643).slot).toEqual([[-38, 38]]);
  });

  it('falls apart into as many pieces as the pin holes leave', () => {
    const row = areas(643 + 12.5);
    expect(row).toHaveLength(7);
    expect(row.reduce((sum, one) => sum + one, 0)).toBeCloseTo((152 - 6 * 5) * 9.3, 9);
  });

  it('is nothing before and behind the bridge', () => {
    expect(areas(design.bridgeFront - 0.1)).toEqual([]);
    expect(areas(design.bridgeRear + 0.1)).toEqual([]);
  });

  it('runs between the footprint’s edges there: half a belly where it has drawn in', () => {
    const belly = make({ ...block, 'bridge.footprint': 'belly', 'bridge.depth': 38.5 });
    const x = belly.design.bridgeFront + (24 + 38.5) / 2;
    const { minX, maxX } = bounds(sectionAcross(belly.job, belly.design, x).wood[0] ?? { segments: [], closed: true });
    // Two equal arcs meet half-way out and half-way back.
    expect([minX, maxX].map((at) => at.toFixed(6))).toEqual(['-35.000000', '35.000000']);
  });

  it('is two ends where a waist has drawn in its front edge', () => {
    const waisted = make({ ...block, 'bridge.footprint': 'waisted', 'bridge.waistDepth': 26 });
    expect(sectionAcross(waisted.job, waisted.design, waisted.design.bridgeFront + 0.5).wood).toHaveLength(2);
  });

  it('has the deck’s and the dome’s own arcs', () => {
    const worked = make({ 'slot.floor': 'dome' });
    const outline = sectionAcross(worked.job, worked.design, worked.design.saddleLine.x).wood[0];
    const radii = outline?.segments.flatMap((s) => (s.kind === 'arc' ? [Number(s.radius.toFixed(6))] : [])) ?? [];
    expect(radii.filter((r) => r === 508)).toHaveLength(2);
    // The underside, and the slot's floor above it.
    expect(radii.filter((r) => r === 7600)).toHaveLength(2);
  });

  it('cuts a pyramid level through its front facet, and along its ridge as the end profile', () => {
    const pyramid = make({
      ...block,
      'bridge.footprint': 'pyramid',
      'bridge.deckWidth': 84,
      'bridge.wing': 'straight',
    });
    const { bridgeFront } = pyramid.design;
    const at = (behind: number) =>
      Math.abs(
        area(
          sectionAcross(pyramid.job, pyramid.design, bridgeFront + behind).wood[0] ?? { segments: [], closed: true },
        ),
      );
    const wings = 84 * 9.3 + 2 * ((14 * (9.3 + 3.2)) / 2);
    // The front facet rises over half the pyramid's width, 10 mm, by 4.3: half-way up a trapezium, behind that the whole triangle.
    expect(at(5)).toBeCloseTo(wings + 2 * (20 * 3.2 + ((20 + 10) / 2) * (4.3 / 2)), 6);
    expect(at(29)).toBeCloseTo(wings + 2 * (20 * 3.2 + ((20 + 14) / 2) * 4.3 * 0.3), 6);
    expect(at(1e-7)).toBeCloseTo(wings + 2 * 20 * 3.2, 3);
  });
});

describe('a section along', () => {
  it('of a block has the slot and the pin hole taken out, and its edges', () => {
    for (const [edge, off] of [
      ['square', 0],
      ['chamfer', 2 * 2 ** 2 * 0.5],
      ['round', 2 * 2 ** 2 * (1 - Math.PI / 4)],
    ] as const) {
      const { job, design } = make({ ...block, 'bridge.edge': edge, 'bridge.edgeSize': 2 });
      const y = 27.75;
      const { wood, slot } = sectionAlong(job, design, y);
      expect(wood).toHaveLength(2);
      const whole = wood.reduce((sum, path) => sum + Math.abs(area(path)), 0);
      expect(whole).toBeCloseTo(32 * 9.3 - 3.2 * 5 - 5 * 9.3 - off, 9);
      expect(slot[0]?.map((at) => at.toFixed(9))).toEqual(['-644.600000000', '-641.400000000']);
      for (const path of wood) expect(isSimple(path)).toBe(true);
    }
  });

  it('leaves the edges of the wings square', () => {
    const { job, design } = make({ ...block, 'bridge.deckWidth': 84, 'bridge.edge': 'round' });
    const { wood } = sectionAlong(job, design, 60);
    expect(wood[0]?.segments.every((s) => s.kind === 'line')).toBe(true);
    expect(Math.abs(area(wood[0] ?? { segments: [], closed: true }))).toBeCloseTo(
      32 * (bridgeTopAt(job, 60) - undersideHeight(job, 60)),
      9,
    );
  });

  it('follows the dome along: an exact arc of its radius, highest at the saddle line', () => {
    const { job, design } = make({ ...block, 'top.radiusAlong': 3000 });
    const [wood] = sectionAlong(job, design, 45).wood;
    const under = wood?.segments.find((s) => s.kind === 'arc');
    if (under?.kind !== 'arc') throw new Error('no arc');
    expect(under.radius).toBe(3000);
    expect(under.centre.x).toBeCloseTo(-643, 6);
    expect(-under.centre.y + 3000).toBeCloseTo(design.topHeight, 6);
  });

  it('cuts a pyramid up its front facet, along and down its rear one', () => {
    const { job, design } = make({
      ...block,
      'bridge.footprint': 'pyramid',
      'bridge.deckWidth': 84,
      'bridge.wing': 'straight',
    });
    const at = (y: number) => Math.abs(area(sectionAlong(job, design, y).wood[0] ?? { segments: [], closed: true }));
    expect(at(66)).toBeCloseTo(32 * 3.2 + ((32 + 12) / 2) * 4.3, 9);
    expect(at(-61)).toBeCloseTo(32 * 3.2 + ((32 + 22) / 2) * (4.3 / 2), 9);
    expect(at(56.0000001)).toBeCloseTo(32 * 3.2, 4);
  });
});

describe('the slot’s floor', () => {
  it('is level, or as far above the dome everywhere', () => {
    const level = make({});
    const domed = make({ 'slot.floor': 'dome' });
    for (const y of [-38, 0, 20]) {
      expect(slotFloorAt(level.job, level.design, y)).toBe(level.design.slotFloor);
      expect(slotFloorAt(domed.job, domed.design, y) - undersideHeight(domed.job, y)).toBeCloseTo(9.3 - 5, 9);
    }
  });
});
