import { describe, expect, it } from 'vitest';
import { footprintOutline } from '../../../geometry/bridge/outline.ts';
import { sectionAcross, sectionAlong } from '../../../geometry/bridge/section.ts';
import { undersideHeight } from '../../../geometry/bridge/surface.ts';
import { bridgeTopAt } from '../../../geometry/bridge/top-line.ts';
import { bridgeVolume, bridgeWeight } from '../../../geometry/bridge/volume.ts';
import { setAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import { area, bounds, contains } from '../../../geometry/shape/index.ts';
import { seeded } from '../../seeded.ts';
import { built, workedExample } from '../../solved.ts';

const make = (values: Readonly<Record<string, unknown>>) =>
  built(Object.entries(values).reduce<Job>((job, [path, value]) => setAt(job, path, value), workedExample()));

const block = {
  'bridge.footprint': 'rectangle',
  'bridge.depth': 32,
  'bridge.deckWidth': 152,
  'bridge.topRadius': 'flat',
  'guitar.topRadius': 'flat',
};

describe('the volume', () => {
  it('of a plain block is exactly its length times its depth times its thickness, less slot and pin holes', () => {
    const { job, design } = make(block);
    const { whole, slot, holes, edges, wood } = bridgeVolume(job, design);
    expect(whole).toBeCloseTo(152 * 32 * 9.3, 6);
    // A stadium: a rectangle and two half circles.
    expect(slot).toBeCloseTo(((76 - 3.2) * 3.2 + Math.PI * 1.6 ** 2) * 5, 4);
    expect(holes).toBeCloseTo(6 * Math.PI * 2.5 ** 2 * 9.3, 6);
    expect(edges).toBe(0);
    expect(wood).toBeCloseTo(whole - slot - holes, 9);
  });

  it('of straight wings is that of prisms on trapezia', () => {
    const { job, design } = make({ ...block, 'bridge.deckWidth': 84, 'bridge.wing': 'straight' });
    expect(bridgeVolume(job, design).whole).toBeCloseTo((84 * 9.3 + (2 * 34 * (9.3 + 3.2)) / 2) * 32, 6);
  });

  // Machinery's Handbook, segments of circles for radius = 1 [memory]: 30°, height .03407, chord .51764, area .01180.
  it('of an arched deck has the segment of the handbook’s table on it', () => {
    const radius = 152 / 0.51764;
    const { job, design } = make({ ...block, 'bridge.topRadius': radius, 'slot.depth': 6 });
    const atEdge = 9.3 - 0.03407 * radius;
    const expected = (152 * atEdge + 0.0118 * radius ** 2) * 32;
    expect(Math.abs(bridgeVolume(job, design).whole / expected - 1)).toBeLessThan(5e-4);
  });

  // Machinery's Handbook, wedge [memory]: V = (2a + c)·b·h/6, its base a by b, its edge c.
  it('of a pyramid is the handbook’s wedge on a block', () => {
    const { job, design } = make({
      ...block,
      'bridge.footprint': 'pyramid',
      'bridge.deckWidth': 84,
      'bridge.wing': 'straight',
    });
    const wedge = ((2 * 32 + 12) * 20 * (7.5 - 3.2)) / 6;
    const rest = (84 * 9.3 + (2 * 14 * (9.3 + 3.2)) / 2 + 2 * 20 * 3.2) * 32;
    expect(bridgeVolume(job, design).whole).toBeCloseTo(rest + 2 * wedge, 6);
  });

  it('of edges taken off is their cross-section’s, along front and back of the deck', () => {
    for (const [edge, section] of [
      ['chamfer', 2],
      ['round', 4 - Math.PI],
    ] as const) {
      const { job, design } = make({ ...block, 'bridge.deckWidth': 84, 'bridge.edge': edge, 'bridge.edgeSize': 2 });
      expect(bridgeVolume(job, design).edges).toBeCloseTo(2 * 84 * section, 6);
    }
  });

  it('of a half-round end is that of its circle', () => {
    const { job, design } = make({ ...block, 'bridge.ends': 'round' });
    expect(bridgeVolume(job, design).whole).toBeCloseTo((120 * 32 + Math.PI * 16 ** 2) * 9.3, 4);
  });
});

const points = [
  [0, 0],
  [40, 2],
  [76, 6],
  [74, 30],
  [40, 34],
  [0, 38],
].map(([across, along], k) => ({ id: `p${k}`, across, along, turn: 'smooth' }));

const bridges: readonly (readonly [string, Readonly<Record<string, unknown>>])[] = [
  ['belly, hollow, domed both ways', { 'guitar.topRadius': 4000, 'top.radiusAlong': 6000 }],
  [
    'belly before, ogee, tilted',
    {
      'bridge.footprint': 'bellyBefore',
      'bridge.frontToSaddle': 24,
      'pins.fromSaddle': 9,
      'pins.leaves': 'pins',
      'bridge.wing': 'ogee',
      'bridge.tilt': 0.01,
      'bridge.edge': 'round',
    },
  ],
  [
    'waisted, round, rounded shoulders',
    {
      'bridge.footprint': 'waisted',
      'bridge.wing': 'round',
      'bridge.shoulder': 5,
      'bridge.tipTreble': 2.6,
      'bridge.edge': 'chamfer',
    },
  ],
  [
    'half-round ends, scooped',
    {
      'bridge.footprint': 'rectangle',
      'bridge.ends': 'round',
      'bridge.scoop': 250,
      'slot.floor': 'dome',
      'slot.ends': 'through',
    },
  ],
  ['pyramids on a dome', { 'bridge.footprint': 'pyramid', 'bridge.tipTreble': 2.8, 'slot.ends': 'square' }],
  ['free', { 'bridge.footprint': 'free', 'bridge.points': points }],
];

describe('the volume by other ways', () => {
  // Cavalieri's principle: the areas of thin slices, by Green's theorem.
  it.each(bridges)('is that of its slices along the guitar: %s', (_, values) => {
    const { job, design } = make(values);
    const half = job.bridge.length / 2;
    const step = half / 150;
    let sum = 0;
    for (let y = -half + step / 2; y < half; y += step)
      for (const path of sectionAlong(job, design, y).wood) sum += Math.abs(area(path)) * step;
    expect(Math.abs(bridgeVolume(job, design).wood / sum - 1)).toBeLessThan(1.5e-3);
  });

  it.each(bridges)('is that of its slices across: %s', (_, values) => {
    const { job, design } = make(values);
    const box = bounds(footprintOutline(job, design));
    const step = (box.maxY - box.minY) / 120;
    let sum = 0;
    for (let x = box.minY + step / 2; x < box.maxY; x += step)
      for (const path of sectionAcross(job, design, x).wood) sum += Math.abs(area(path)) * step;
    const { wood, edges } = bridgeVolume(job, design);
    expect(Math.abs((wood + edges) / sum - 1)).toBeLessThan(4e-3);
  });

  // Points by chance, as a person would who knew nothing of integrals.
  it.each(bridges.slice(0, 4))('between top and underside is what points by chance find: %s', (_, values) => {
    const { job, design } = make(values);
    const outline = footprintOutline(job, design);
    const box = bounds(outline);
    const { even } = seeded(5);
    const n = 3_000;
    const size = (box.maxX - box.minX) * (box.maxY - box.minY);
    let sum = 0;
    for (let k = 0; k < n; k += 1) {
      const p = { x: even(box.minX, box.maxX), y: even(box.minY, box.maxY) };
      if (contains(outline, p)) sum += bridgeTopAt(job, p.x) - undersideHeight(job, p.x, p.y - design.saddleLine.x);
    }
    expect(Math.abs(bridgeVolume(job, design).whole / ((sum / n) * size) - 1)).toBeLessThan(0.03);
  });
});

describe('the weight', () => {
  it('is the volume times the wood’s density', () => {
    const { job, design } = make({ ...block, 'stock.wood': 'ebony' });
    // 1050 kg/m³ is 1.05 g/cm³.
    expect(bridgeWeight(job, design)).toBeCloseTo((bridgeVolume(job, design).wood / 1000) * 1.05, 9);
    // A rosewood belly bridge weighs some 20 to 35 g [practice].
    const worked = make({});
    expect(bridgeWeight(worked.job, worked.design)).toBeGreaterThan(20);
    expect(bridgeWeight(worked.job, worked.design)).toBeLessThan(35);
  });
});
