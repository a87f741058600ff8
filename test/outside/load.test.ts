// The load on the glue line: the check of the trade's notes, worked out there by an independent program, and the same statics added up as vectors.
import { describe, expect, it } from 'vitest';
import { helds } from '../../geometry/bridge/held.ts';
import { load } from '../../geometry/bridge/load.ts';
import { setAt } from '../../geometry/fields.ts';
import type { Job } from '../../geometry/job.ts';
import { built, workedExample } from '../solved.ts';

const change = (changes: Readonly<Record<string, unknown>>): Job =>
  Object.entries(changes).reduce<Job>((job, [path, value]) => setAt(job, path, value), workedExample());

/** The worked example's strings on a rectangle 32 × 152, its front edge 634 from the nut, its top flat. */
const rectangle = built(
  change({
    'bridge.footprint': 'rectangle',
    'bridge.depth': 32,
    'bridge.length': 152,
    'bridge.frontToSaddle': 642.9 - 634,
    'guitar.topRadius': 'flat',
  }),
);
const found = load(rectangle.job, rectangle.design);

describe('the worked example on a rectangle', () => {
  it('lies where the check has it', () => {
    expect(rectangle.design.bridgeFront).toBeCloseTo(634, 9);
    expect(found.area).toBeCloseTo(32 * 152, 6);
    expect(found.centreFromNut).toBeCloseTo(650, 6);
    expect(found.secondMoment).toBeCloseTo((152 * 32 ** 3) / 12, 3);
  });

  it('with its pins: N 708.07 N, M 8113.7 N·mm, rear +0.167 MPa, shear 0.145', () => {
    const { pins } = found.cases;
    expect(pins.down.toFixed(2)).toBe('708.07');
    expect(pins.moment.toFixed(1)).toBe('8113.7');
    expect(pins.rearStress.toFixed(3)).toBe('0.167');
    expect(pins.meanShear.toFixed(3)).toBe('0.145');
  });

  it.each(['wornPlate', 'tied'] as const)('%s, the second force gone: 4.13 N, 9337.6 N·mm, +0.359 MPa', (held) => {
    const alone = found.cases[held];
    expect(alone.down.toFixed(2)).toBe('4.13');
    expect(alone.moment.toFixed(1)).toBe('9337.6');
    expect(alone.rearStress.toFixed(3)).toBe('0.359');
    expect(alone.meanShear.toFixed(3)).toBe('0.145');
  });

  it('has in each string its share of the moment, tension and downforce', () => {
    for (const held of helds) {
      const sum = found.strings.reduce((total, string) => total + string.moment[held], 0);
      expect(sum).toBeCloseTo(found.cases[held].moment, 8);
    }
    expect(found.strings.map(({ id }) => id)).toEqual(rectangle.design.strings.map(({ id }) => id));
    expect(found.strings.reduce((sum, { tension }) => sum + tension, 0)).toBeCloseTo(rectangle.design.totalTension, 9);
    expect(found.strings.reduce((sum, { downforce }) => sum + downforce, 0)).toBeCloseTo(
      rectangle.design.totalDownforce,
      9,
    );
  });
});

interface Vector {
  readonly x: number;
  readonly z: number;
}

describe.each([
  ['a rectangle', rectangle],
  ['a belly on a domed top', built(change({ 'pins.leaves': 'pins' }))],
])('statics on %s', (_, { job, design }) => {
  const { cases, centreFromNut, area, secondMoment } = load(job, design);

  /** Forces of one string on the bridge, each with where it acts: x towards the tail, z up. */
  const forces = (withPins: boolean): readonly { readonly at: Vector; readonly force: Vector }[] =>
    design.strings.flatMap((s) => {
      const along = Math.hypot(1, s.slope);
      const atCrown = {
        at: { x: s.breakX, z: s.heightAboveFretPlane },
        force: { x: -s.tension / along, z: (-s.tension * s.slope) / along },
      };
      const atPin = { at: { x: s.leaves.x, z: design.topHeight }, force: { x: 0, z: -s.tension } };
      return withPins ? [atCrown, atPin] : [atCrown];
    });

  it.each(helds)('%s: sums of the forces, and of their moments r × F about the glue’s middle', (held) => {
    const all = forces(held === 'pins');
    const sum = (f: (one: (typeof all)[number]) => number) => all.reduce((total, one) => total + f(one), 0);
    expect(cases[held].down).toBeCloseTo(-sum(({ force }) => force.z), 9);
    expect(cases[held].meanShear).toBeCloseTo(-sum(({ force }) => force.x) / area, 12);
    // Tipping forward turns the top of the bridge towards the nut: against the turn from x to z.
    const turn = sum(({ at, force }) => (at.z - design.topHeight) * -force.x + (at.x - centreFromNut) * force.z);
    expect(cases[held].moment).toBeCloseTo(turn, 6);
  });

  it('at the rear edge stretch what the moment lifts less what presses down', () => {
    for (const held of helds) {
      const { down, moment, meanStress, rearStress } = cases[held];
      expect(meanStress).toBeCloseTo(-down / area, 12);
      expect(rearStress).toBeCloseTo(-down / area + (moment * (design.bridgeRear - centreFromNut)) / secondMoment, 9);
    }
  });

  it('the pins help: without them the rear edge is pulled harder', () => {
    expect(cases.wornPlate.rearStress).toBeGreaterThan(cases.pins.rearStress);
    expect(cases.tied).toEqual(cases.wornPlate);
  });
});

describe.each([
  ['tied at a block', 'tied', { 'pins.hold': 'tied', 'pins.fromSaddle': 11, 'pins.below': 3 }],
  ['held at the back edge', 'tied', { 'pins.hold': 'behind', 'pins.fromSaddle': 13 }],
  [
    'by ball ends that pull up into the bridge’s own holes',
    'wornPlate',
    { 'plate.state': 'worn', 'pins.leaves': 'pins' },
  ],
  ['by pins over a sound plate', 'pins', { 'pins.leaves': 'pins' }],
  [
    'by pins over a worn plate that is capped',
    'pins',
    { 'plate.state': 'worn', 'plate.cap': 2, 'pins.leaves': 'pins' },
  ],
] as const)('strings %s', (_, held, values) => {
  const { job, design } = built(
    change({ 'bridge.footprint': 'rectangle', 'bridge.depth': 32, 'pins.row': 'square', ...values }),
  );
  const { cases, centreFromNut, area } = load(job, design);

  it('are the case that the design names', () => {
    expect(design.held).toBe(held);
  });

  // Worked by hand on the free body of bridge and saddle: at every place where a string bends or ends, T along each of its two parts, from the wood outwards.
  it('load the bridge by all that they do to it, bend by bend', () => {
    const forces = design.strings.flatMap((s): readonly { readonly at: Vector; readonly force: Vector }[] => {
      const T = s.tension;
      const crown = { x: s.breakX, z: s.heightAboveFretPlane };
      const touch = { x: s.leaves.x, z: s.leaves.z };
      const far = Math.hypot(touch.x - crown.x, touch.z - crown.z);
      const back = { x: (touch.x - crown.x) / far, z: (touch.z - crown.z) / far };
      const slope = Math.atan(s.slope);
      const atCrown = [
        { at: crown, force: { x: -T * Math.cos(slope), z: -T * Math.sin(slope) } },
        { at: crown, force: { x: T * back.x, z: T * back.z } },
      ];
      // Where it goes in, the string draws the wood towards the crown.
      const atTouch = { at: touch, force: { x: -T * back.x, z: -T * back.z } };
      if (job.pins.hold !== 'pins') return [...atCrown, atTouch];
      // In its hole it turns down over the front wall; its ball end draws up on what it bears on: the plate under the top, or, worn through it, the bridge's own hole.
      const down = { at: touch, force: { x: 0, z: -T } };
      const ball = { at: { x: touch.x, z: design.topHeight }, force: { x: 0, z: T } };
      return held === 'pins' ? [...atCrown, atTouch, down] : [...atCrown, atTouch, down, ball];
    });
    const sum = (f: (one: (typeof forces)[number]) => number) => forces.reduce((total, one) => total + f(one), 0);
    expect(cases[held].down).toBeCloseTo(-sum(({ force }) => force.z), 8);
    expect(cases[held].meanShear * area).toBeCloseTo(-sum(({ force }) => force.x), 8);
    const turn = sum(({ at, force }) => (at.z - design.topHeight) * -force.x + (at.x - centreFromNut) * force.z);
    expect(cases[held].moment).toBeCloseTo(turn, 6);
  });
});

it('a block far behind or near, high or low, loads the glue alike: what it holds back it holds within the bridge', () => {
  const tied = (fromSaddle: number, below: number) => {
    const { job, design } = built(
      change({
        'bridge.footprint': 'rectangle',
        'pins.hold': 'tied',
        'pins.fromSaddle': fromSaddle,
        'pins.below': below,
      }),
    );
    return { load: load(job, design).cases[design.held], angle: design.strings[0]?.breakAngle ?? 0 };
  };
  const [near, far] = [tied(8, 4), tied(20, 1)];
  expect(near.angle).toBeGreaterThan(far.angle + 10);
  expect(near.load).toEqual(far.load);
});

it('a higher crown tips harder, a deeper bridge bears it better', () => {
  const moment = (job: Job) => {
    const { job: settled, design } = built(job);
    return load(settled, design).cases.pins;
  };
  const base = moment(workedExample());
  const lower = moment(change({ 'guitar.neckPlaneHeight': 9 }));
  // A millimetre less of height takes the whole pull towards the nut times a millimetre off the moment, and adds nothing.
  const pull = built(workedExample()).design.strings.reduce((s, t) => s + t.tension / Math.hypot(1, t.slope), 0);
  expect(base.moment - lower.moment).toBeCloseTo(pull, 3);
  expect(moment(change({ 'bridge.depth': 42, 'bridge.wingDepth': 28 })).rearStress).toBeLessThan(base.rearStress);
});

// For scale [memory of the USDA Wood Handbook, FPL-GTR-282, ch. 5: Sitka spruce, tension square to the grain, 12 %]: 2.6 MPa, which such averages never reach.
it('stays far below what spruce bears across the grain', () => {
  for (const held of helds) expect(Math.abs(found.cases[held].rearStress)).toBeLessThan(2.6 / 4);
});
