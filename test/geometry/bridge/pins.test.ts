import { describe, expect, it } from 'vitest';
import { leavesAt, pinCentres, pinHoles, ramps, reamDepth, stringWays } from '../../../geometry/bridge/pins.ts';
import { slotCut } from '../../../geometry/bridge/slot.ts';
import { deckHeight } from '../../../geometry/bridge/surface.ts';
import { pinWood } from '../../../geometry/checks/pin-wood.ts';
import { setAt } from '../../../geometry/fields.ts';
import { withSet } from '../../../geometry/instrument/sets.ts';
import type { Job } from '../../../geometry/job.ts';
import { arcThrough, area, contains, isSimple, pointOn } from '../../../geometry/shape/index.ts';
import type { Point } from '../../../geometry/shape/types.ts';
import { seeded } from '../../seeded.ts';
import { built, workedExample } from '../../solved.ts';

const change = (values: Readonly<Record<string, unknown>>, job: Job = workedExample()): Job =>
  Object.entries(values).reduce((changed, [path, value]) => setAt(changed, path, value), job);
const byPins = (values: Readonly<Record<string, unknown>> = {}) => change({ 'pins.leaves': 'pins', ...values });
const line = { x: 643, slant: -0.04 };

/** Twelve strings on a bridge that is deep enough for their two rows. */
const twelve = () =>
  change(
    { 'strings.spread': 58, 'pins.spread': 62, 'guitar.nutSpread': 40, 'bridge.depth': 46, 'slot.line': 'least' },
    withSet(byPins(), 'twelve'),
  );

describe('a row on an arc', () => {
  it.each([2.5, -1.5])('is an exact circle through the outer pins, %s mm over their chord', (rise) => {
    const pins = pinCentres(byPins({ 'pins.row': 'arc', 'pins.arcRise': rise }), line);
    const [a, b, c] = [pins[0], pins[2], pins.at(-1)] as readonly [Point, Point, Point];
    expect(a.y).toBeCloseTo(c.y, 12);
    const { centre, radius } = arcThrough(a, b, c);
    for (const pin of pins) expect(Math.hypot(pin.x - centre.x, pin.y - centre.y)).toBeCloseTo(radius, 9);
    const middle = centre.y + Math.sign(rise) * radius;
    expect(middle - a.y).toBeCloseTo(rise, 9);
    expect(middle).toBeCloseTo(643 + 12.5, 9);
  });

  it('without a sagitta is straight', () => {
    for (const { y } of pinCentres(byPins({ 'pins.row': 'arc', 'pins.arcRise': 0 }), line)) expect(y).toBe(655.5);
  });
});

describe('strings in pairs', () => {
  it('have two rows of pins, each equally spaced, from outer pin to outer pin over the spread', () => {
    const job = change({ 'pins.row': 'square', 'pins.secondRow': 9, 'pins.secondAside': 7 }, twelve());
    const pins = pinCentres(job, line);
    const [first, second] = [0, 1].map((from) => pins.filter((_, k) => k % 2 === from)) as [Point[], Point[]];
    expect([first[0]?.x, second.at(-1)?.x]).toEqual([-31, 31]);
    for (const [k, pin] of first.entries()) {
      expect(pin.x).toBeCloseTo(-31 + (k * (62 - 7)) / 5, 12);
      expect((second[k]?.x ?? 0) - pin.x).toBeCloseTo(7, 12);
      expect((second[k]?.y ?? 0) - pin.y).toBeCloseTo(9, 12);
    }
  });

  it('without pins go in side by side, as over the saddle', () => {
    const { job, design } = built(change({ 'pins.hold': 'tied', 'pins.row': 'square', 'pins.spread': 58 }, twelve()));
    expect(job.strings.spread).toBe(58);
    for (const { pin, acrossAtSaddle } of design.strings) expect(pin.x).toBeCloseTo(acrossAtSaddle, 9);
    expect(new Set(design.strings.map(({ pin }) => pin.y)).size).toBe(1);
  });
});

describe('where a string next touches the bridge', () => {
  /** The first of the later points that a line stretched from the first over them all touches: the next corner of their upper hull. */
  const nextOfHull = ([from, ...others]: readonly [Point, ...Point[]]): Point =>
    others.reduce((best, p) => {
      const turn = (best.x - from.x) * (p.y - from.y) - (best.y - from.y) * (p.x - from.x);
      return turn > 0 ? p : best;
    });

  it('is, at a ramp, the next corner of the hull over crown, beginning and foot', () => {
    const { even } = seeded(5);
    const seen = new Set<string>();
    const { job } = built(byPins());
    for (let k = 0; k < 400; k += 1) {
      const [ramp, depth] = [even(0.5, 6), even(0.2, 6)];
      const asked = { ...job, pins: { ...job.pins, ramp, rampDepth: depth } };
      const pin = { x: even(-28, 28), y: 655 };
      const [breakX, above] = [even(641, 645), even(1, 7)];
      const deck = deckHeight(job, pin.x);
      const edge = 655 - job.pins.hole / 2;
      const crown = { x: breakX, y: deck + above };
      const found = leavesAt(asked, pin, 0, breakX, deck + above);
      const hull = nextOfHull([crown, { x: edge - ramp, y: deck }, { x: edge, y: deck - depth }]);
      expect([found.x, found.z]).toEqual([hull.x, hull.y]);
      // The wood from the deck down the ramp: nowhere does the string lie in it.
      for (let part = 0; part <= 1; part += 0.05) {
        const x = breakX + part * (found.x - breakX);
        const wood = x <= edge - ramp ? deck : deck - (depth * (x - edge + ramp)) / ramp;
        const string = crown.y + part * (found.z - crown.y);
        expect(string).toBeGreaterThanOrEqual(wood - 1e-9);
      }
      seen.add(found.touch);
    }
    expect([...seen].toSorted()).toEqual(['rampFoot', 'rampStart']);
  });

  it('a ramp makes the break angle steeper, and where it is deep enough the string leaves at its beginning', () => {
    const angles = (job: Job) => built(job).design.strings.map(({ breakAngle }) => breakAngle);
    const plain = angles(byPins());
    for (const [k, angle] of angles(byPins({ 'pins.ramp': 3, 'pins.rampDepth': 2 })).entries())
      expect(angle).toBeGreaterThan(plain[k] ?? Number.NaN);
    for (const { leaves, pin } of built(byPins({ 'pins.ramp': 4, 'pins.rampDepth': 8 })).design.strings)
      expect(leaves.x).toBeCloseTo(pin.y - 2.5 - 4, 12);
  });

  it('is the hole in the tie block, below the deck; the deck where the string is held behind; and the place typed with pins only', () => {
    const at = (hold: string) =>
      built(change({ 'pins.hold': hold, 'pins.row': 'square', 'pins.fromSaddle': 11, 'pins.below': 2.5 })).design;
    const tied = at('tied');
    const behind = at('behind');
    for (const [k, { leaves, pin }] of tied.strings.entries()) {
      expect(leaves).toMatchObject({ touch: 'tieHole', x: tied.datum.x + 11 });
      const other = behind.strings[k];
      expect(other?.leaves).toMatchObject({ touch: 'backHole', x: pin.y });
      expect((other?.leaves.z ?? 0) - leaves.z).toBeCloseTo(2.5, 12);
      expect(other?.breakAngle).toBeLessThan(tied.strings[k]?.breakAngle ?? 0);
    }
    for (const { leaves, breakX } of at('pins').strings)
      expect(leaves).toMatchObject({ touch: 'typed', x: breakX + 9 });
  });
});

describe('what is drilled', () => {
  it('is a hole for every pin, and none without pins', () => {
    const { job, design } = built(byPins());
    expect(pinHoles(job, design)).toEqual(design.strings.map(({ id, pin }) => ({ id, at: pin, diameter: 5 })));
    for (const hold of ['tied', 'behind']) {
      const other = built(byPins({ 'pins.hold': hold, 'pins.ramp': 2 }));
      expect(pinHoles(other.job, other.design)).toEqual([]);
      expect(ramps(other.job, other.design)).toEqual([]);
    }
  });

  it('has ramps that run from each hole’s edge along the string, as wide as it and a little', () => {
    const { job, design } = built(byPins({ 'pins.ramp': 4, 'pins.spread': 60 }));
    const outlines = ramps(job, design);
    expect(outlines).toHaveLength(6);
    expect(ramps(built(byPins()).job, design)).toEqual([]);
    for (const [k, outline] of outlines.entries()) {
      const s = design.strings[k];
      if (s === undefined) throw new Error('no string');
      expect(isSimple(outline)).toBe(true);
      const w = (s.gauge + 0.4) / 2;
      // A strip from the hole's edge on, its end half round: what lies between circle and chord is left out.
      const chord = Math.sqrt(2.5 ** 2 - w ** 2);
      const segment = 2.5 ** 2 * Math.asin(w / 2.5) - w * chord;
      expect(area(outline)).toBeCloseTo(2 * w * (2.5 + 4 - w - chord) + (Math.PI * w ** 2) / 2 - segment, 9);
      const far = Math.hypot(s.acrossAtSaddle - s.pin.x, s.breakX - s.pin.y);
      const on = (way: number) => ({
        x: s.pin.x + (way * (s.acrossAtSaddle - s.pin.x)) / far,
        y: s.pin.y + (way * (s.breakX - s.pin.y)) / far,
      });
      expect([2.45, 2.55, 6.45, 6.55].map((way) => contains(outline, on(way)))).toEqual([false, true, true, false]);
    }
  });

  it('leads strings without pins to the rear edge', () => {
    const tied = built(byPins({ 'pins.hold': 'tied', 'bridge.footprint': 'rectangle' }));
    const ways = stringWays(tied.job, tied.design);
    expect(ways.map(({ id }) => id)).toEqual(tied.design.strings.map(({ id }) => id));
    for (const [k, { from, to }] of ways.entries()) {
      expect(from).toEqual(tied.design.strings[k]?.pin);
      expect(to.x).toBeCloseTo(from.x, 12);
      expect(to.y).toBeCloseTo(tied.design.bridgeRear, 9);
    }
    const pins = built(byPins());
    expect(stringWays(pins.job, pins.design)).toEqual([]);
  });
});

describe('reaming', () => {
  const depth = (pinDiameter: number, hole: number, taper: number) =>
    reamDepth(byPins({ 'pins.pinDiameter': pinDiameter, 'pins.hole': hole, 'pins.taper': taper }));

  // A taper of 5 % is 1 in 20: over 6 mm it loses 0.3 mm.
  it('by hand: a pin of 5.3 mm with a taper of 1 in 20 seats in a hole of 5 mm at 6 mm; a thinner one falls through', () => {
    expect(depth(5.3, 5, 0.05)).toBeCloseTo(6, 9);
    expect(depth(5.0, 5, 0.05)).toBe(0);
    expect(depth(4.9, 5, 0.05)).toBeCloseTo(-2, 9);
  });

  it('has no depth where a pin has no taper, or where there is none', () => {
    expect(depth(5.3, 5, 0)).toBeUndefined();
    expect(reamDepth(byPins({ 'pins.hold': 'tied' }))).toBeUndefined();
  });
});

describe('the wood between slot and pins', () => {
  it.each(['round', 'square', 'through'])(
    'is the least distance from the slot’s outline, less the hole’s radius: %s',
    (ends) => {
      const { job, design } = built(byPins({ 'slot.ends': ends, 'slot.length': 60, 'pins.spread': 70 }));
      const outline = slotCut(job, design.saddleLine);
      const points = outline.segments.flatMap((segment) =>
        Array.from({ length: 4001 }, (_, k) => pointOn(segment, k / 4000)),
      );
      for (const [k, { value }] of pinWood.facts(job, design).entries()) {
        const pin = design.strings[k]?.pin ?? { x: 0, y: 0 };
        const nearest = Math.min(...points.map((p) => Math.hypot(p.x - pin.x, p.y - pin.y)));
        expect(value).toBeCloseTo(nearest - 2.5, 4);
      }
    },
  );
});
