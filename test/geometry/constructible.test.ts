import { describe, expect, it } from 'vitest';
import { build } from '../../geometry/build.ts';
import { setAt } from '../../geometry/fields.ts';
import type { Job } from '../../geometry/job.ts';
import { validateJob } from '../../geometry/job-file.ts';
import { solve } from '../../geometry/solve.ts';
import { workedExample } from '../solved.ts';

const change = (job: Job, changes: Record<string, number | string>): Job =>
  Object.entries(changes).reduce((changed, [path, value]) => setAt(changed, path, value), job);

/** Readable numbers that cannot be built: what is changed, where the tool looks for the fault, what it must name, and a way out that works. */
const cases: readonly {
  what: string;
  changes: Record<string, number | string>;
  path: string;
  names: RegExp;
  out: Record<string, number | string>;
}[] = [
  {
    what: 'a bridge top radius smaller than half the deck',
    changes: { 'bridge.topRadius': 50, 'bridge.deckWidth': 110, 'slot.length': 76 },
    path: 'bridge.topRadius',
    names: /50 mm.*110 mm.*more than 55 mm/,
    out: { 'bridge.topRadius': 400 },
  },
  {
    what: 'a board radius smaller than half the spread',
    changes: {
      'guitar.boardRadiusNut': 50,
      'guitar.boardRadiusEnd': 50,
      'strings.spread': 104,
      'slot.length': 120,
      'bridge.deckWidth': 130,
    },
    path: 'guitar.boardRadiusNut',
    names: /50 mm.*104 mm/,
    out: { 'guitar.boardRadiusNut': 355.6, 'guitar.boardRadiusEnd': 355.6 },
  },
  {
    what: 'a board flat at one end only',
    changes: { 'guitar.boardRadiusEnd': 'flat' },
    path: 'guitar.boardRadiusEnd',
    names: /flat at one end/,
    out: { 'guitar.boardRadiusEnd': 508 },
  },
  {
    what: 'a spread wider than the bridge',
    changes: { 'strings.spread': 155 },
    path: 'strings.spread',
    names: /155 mm.*152 mm/,
    out: { 'strings.spread': 56 },
  },
  {
    what: 'a slot shorter than the spread',
    changes: { 'slot.length': 50 },
    path: 'slot.length',
    names: /50 mm.*55\.5 mm.*58\.7 mm/,
    out: { 'slot.length': 58.8 },
  },
  {
    what: 'a slot outside the footprint',
    changes: { 'bridge.frontToSaddle': 38 },
    path: 'bridge.frontToSaddle',
    names: /38 mm.*inside the footprint/,
    out: { 'bridge.frontToSaddle': 10 },
  },
  {
    what: 'pin holes outside the footprint',
    changes: { 'pins.fromSaddle': 34 },
    path: 'pins.fromSaddle',
    names: /E2.*34 mm/,
    out: { 'pins.fromSaddle': 12 },
  },
  {
    what: 'a slot through the bridge',
    changes: { 'slot.depth': 9.3 },
    path: 'slot.depth',
    names: /9\.3 mm.*shallower than 9\.3 mm/,
    out: { 'slot.depth': 9.2 },
  },
  {
    what: 'a slot that comes out of the arch',
    changes: { 'slot.depth': 0.9, 'bridge.topRadius': 254 },
    path: 'slot.depth',
    names: /0\.9 mm/,
    out: { 'slot.depth': 4.7 },
  },
  {
    what: 'tips thicker than the shoulders',
    changes: { 'bridge.tipThickness': 9 },
    path: 'bridge.tipThickness',
    names: /9 mm/,
    out: { 'bridge.tipThickness': 4 },
  },
  {
    what: 'a hollow wing too narrow for its fall',
    changes: { 'bridge.deckWidth': 148, 'bridge.topRadius': 'flat' },
    path: 'bridge.deckWidth',
    names: /2 mm wide/,
    out: { 'bridge.deckWidth': 100 },
  },
  {
    what: 'a deck wider than the bridge',
    changes: { 'bridge.deckWidth': 153 },
    path: 'bridge.deckWidth',
    names: /153 mm.*152 mm/,
    out: { 'bridge.deckWidth': 84 },
  },
  {
    what: 'a belly shallower than its tips',
    changes: { 'bridge.wingDepth': 38.5 },
    path: 'bridge.wingDepth',
    names: /38\.5 mm/,
    out: { 'bridge.wingDepth': 24 },
  },
  {
    what: 'a belly wider than the bridge',
    changes: { 'bridge.bellyWidth': 153 },
    path: 'bridge.bellyWidth',
    names: /153 mm.*152 mm/,
    out: { 'bridge.bellyWidth': 152 },
  },
  {
    what: 'a belly that would overhang',
    changes: { 'bridge.bellyWidth': 20, 'bridge.depth': 60 },
    path: 'bridge.bellyWidth',
    names: /at least 72 mm/,
    out: { 'bridge.bellyWidth': 72 },
  },
  {
    what: 'a core as thick as its string',
    changes: { 'strings.list.E2.core': 1.3462 },
    path: 'strings.list.E2.core',
    names: /plain/,
    out: { 'strings.list.E2.core': 'plain' },
  },
  {
    what: 'strings that touch at the nut',
    changes: {
      'guitar.nutSpread': 15,
      'strings.list.E2.gauge': 3,
      'strings.list.A2.gauge': 3,
      'strings.list.D3.gauge': 2.9,
    },
    path: 'guitar.nutSpread',
    names: /15 mm/,
    out: { 'guitar.nutSpread': 36 },
  },
  {
    what: 'a bridge thicker than the strings are high',
    changes: { 'bridge.thickness': 16, 'slot.depth': 5 },
    path: 'bridge.thickness',
    names: /E2|A2|E4/,
    out: { 'bridge.thickness': 9 },
  },
  {
    what: 'a body joint beyond the board',
    changes: { 'guitar.bodyJoint': 20 },
    path: 'guitar.bodyJoint',
    names: /20/,
    out: { 'guitar.bodyJoint': 14 },
  },
  {
    what: 'a top radius so tight that the shoulders lie below any tip',
    changes: { 'bridge.topRadius': 60, 'bridge.deckWidth': 110 },
    path: 'bridge.topRadius',
    names: /A top radius of 60 mm falls by/,
    out: { 'bridge.topRadius': 600 },
  },
  {
    what: 'pins spread wider than the bridge',
    changes: { 'pins.spread': 160 },
    path: 'pins.spread',
    names: /160 mm.*less than 147 mm/,
    out: { 'pins.spread': 56 },
  },
  {
    what: 'pins before the break point',
    changes: { 'pins.fromSaddle': 3, 'pins.hole': 6.5 },
    path: 'pins.fromSaddle',
    names: /before its break point/,
    out: { 'pins.fromSaddle': 12 },
  },
];

describe('readable, but not constructible', () => {
  it('tells a slot from a deck that is a hair narrower, in fractions too', () => {
    const wrong = change(workedExample(), { 'slot.length': 86.1, 'bridge.deckWidth': 86, 'show.length': 'fraction' });
    const solved = build(wrong);
    const [, slot, deck] =
      (solved.ok ? '' : (solved.problems[0]?.says ?? '')).match(/is (.*) long .* deck, (.*?) wide/) ?? [];
    expect(slot).not.toBe(deck);
    // 86.1 mm are 3.3898 in, 86 mm 3.3858 in: rounded so that the one still fits the other.
    expect([slot, deck]).toEqual(['3 25/64 in', '3.385 in']);
  });

  it('speaks in the job’s own unit, as its fields do', () => {
    const wrong = change(workedExample(), { 'slot.length': 50, 'show.length': 'fraction' });
    const result = build(wrong);
    expect(!result.ok && result.problems[0]?.says).toMatch(/slot 1 31\/32 in long.*longer than 2 5\/16 in/);
  });

  for (const { what, changes, path, names, out } of cases) {
    // A measured 9.0 behind the break point would hide where the pins lie.
    const base = change(workedExample(), { 'pins.leaves': 'pins', 'show.radius': 'mm' });
    it(`${what}: said at ${path}, with a way out`, () => {
      const wrong = change(base, changes);
      expect(validateJob(wrong).ok).toBe(true);
      const result = build(wrong);
      if (result.ok) throw new Error('was built');
      const problem = result.problems.find((p) => p.path === path);
      expect(problem?.says.replaceAll('.0 mm', ' mm')).toMatch(names);
      expect(problem?.value).toBeDefined();
      expect(build(change(wrong, out)).ok).toBe(true);
    });
  }
});

it('has numbers all the same where they can be worked out: only what they describe cannot be made', () => {
  const wrong = change(workedExample(), { 'bridge.frontToSaddle': 3 });
  const right = solve(workedExample());
  const numbers = solve(wrong);
  if (!numbers.ok || !right.ok) throw new Error('was not solved');
  expect(numbers.design.totalDownforce).toBeCloseTo(right.design.totalDownforce, 12);
  expect(numbers.design.datum.x - numbers.design.bridgeFront).toBeCloseTo(3, 12);
  expect(build(wrong).ok).toBe(false);
});

describe('a slot outside its footprint', () => {
  const outside = (front: number, changes: Record<string, number | string> = {}) =>
    change(workedExample(), { 'bridge.frontToSaddle': front, ...changes });
  const said = (job: Job) => {
    const found = build(job);
    return found.ok ? undefined : found.problems.find(({ path }) => path === 'bridge.frontToSaddle')?.says;
  };

  it.each([
    ['before the front edge', outside(3)],
    ['behind the belly', outside(37)],
    ['off the wings’ depth', outside(26, { 'bridge.bellyWidth': 60, 'bridge.wingDepth': 20 })],
  ])('is told where it would lie inside: %s', (_, job) => {
    const place = /Put it ([\d.]+) mm behind the front edge/.exec(said(job) ?? '')?.[1];
    expect(place).toBeDefined();
    expect(said(setAt(job, 'bridge.frontToSaddle', Number(place)))).toBeUndefined();
  });
});
