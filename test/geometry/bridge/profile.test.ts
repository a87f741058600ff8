import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { endProfile, profileHeights } from '../../../geometry/bridge/profile.ts';
import { pyramidLines, pyramidOf } from '../../../geometry/bridge/pyramid.ts';
import { deckHeight, undersideHeight } from '../../../geometry/bridge/surface.ts';
import { bridgeTopAt, topLine, wingSpan } from '../../../geometry/bridge/top-line.ts';
import { levelRadius } from '../../../geometry/bridge/wings/hollow.ts';
import { wingProblems } from '../../../geometry/bridge/wings/problems.ts';
import { setAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import type { Problem } from '../../../geometry/problem.ts';
import type { Settled } from '../../../geometry/settle.ts';
import { isSimple, tangentOn } from '../../../geometry/shape/index.ts';
import { segmentEnd, segmentStart } from '../../../geometry/shape/path.ts';
import { distance } from '../../../geometry/shape/point.ts';
import { parseQuantity } from '../../../geometry/units.ts';
import { built, workedExample } from '../../solved.ts';

type Values = Readonly<Record<string, number | string>>;
const put = <J extends Job>(job: J, values: Values): J =>
  Object.entries(values).reduce<Job>((changed, [path, value]) => setAt(changed, path, value), job) as J;
const made = (values: Values): Settled => built(put(workedExample(), values)).job;

const pyramidal = {
  'bridge.footprint': 'pyramid',
  'bridge.depth': 32,
  'bridge.pyramidWidth': 20,
  'bridge.deckWidth': 84,
  'guitar.topRadius': 'flat',
} as const;

describe('the end profile', () => {
  const job = workedExample();

  it('keeps the deck, the dome and the hollow wings as exact arcs of their radii', () => {
    const { shoulderBass, tipTop } = profileHeights(job);
    // (w² + H²)/(2H): the circle through the shoulder whose lowest point is the tip [def].
    const [w, H] = [(job.bridge.length - job.bridge.deckWidth) / 2, shoulderBass - tipTop];
    const radii = endProfile(job).segments.flatMap((s) => (s.kind === 'arc' ? [s.radius] : []));
    expect(radii).toHaveLength(4);
    expect(radii[0]).toBeCloseTo((w * w + H * H) / (2 * H), 9);
    expect(radii[1]).toBeCloseTo(508, 9);
    expect(radii[2]).toBeCloseTo(radii[0] ?? 0, 9);
    expect(radii[3]).toBeCloseTo(7600, 6);
  });

  it('is straight where it is asked to be straight', () => {
    const straight = made({ 'bridge.wing': 'straight', 'bridge.topRadius': 'flat', 'guitar.topRadius': 'flat' });
    expect(endProfile(straight).segments.every((s) => s.kind === 'line')).toBe(true);
  });

  it('is as thick at each tip as it was told', () => {
    const apart = made({ 'bridge.tipThickness': 3.4, 'bridge.tipTreble': 2.6 });
    const { tipTop, tipTopTreble, tipUnderside } = profileHeights(apart);
    expect(tipTop - tipUnderside).toBeCloseTo(3.4, 12);
    expect(tipTopTreble - tipUnderside).toBeCloseTo(2.6, 12);
    expect(bridgeTopAt(apart, -76) - undersideHeight(apart, 76)).toBeCloseTo(3.4, 9);
    expect(bridgeTopAt(apart, 76) - undersideHeight(apart, 76)).toBeCloseTo(2.6, 9);
  });

  it('has neither tips nor wings where the deck runs out to the ends', () => {
    const profile = endProfile(
      made({ 'bridge.deckWidth': 152, 'bridge.topRadius': 'flat', 'guitar.topRadius': 'flat' }),
    );
    expect(profile.segments).toHaveLength(4);
    expect(isSimple(profile)).toBe(true);
  });
});

/** The treble wing's segments, from the shoulder out; the last segment of the top line ends at the tip. */
const trebleWing = (job: Settled) =>
  topLine(job).segments.filter((s) => segmentStart(s).x >= job.bridge.deckWidth / 2 - 1e-9);

describe('the wings', () => {
  it('hollow: runs out level at the tip', () => {
    const [wing] = trebleWing(made({ 'bridge.wing': 'hollow' }));
    if (wing?.kind !== 'arc') throw new Error('no arc');
    expect(tangentOn(wing, 1).y).toBeCloseTo(0, 9);
    expect(tangentOn(wing, 0).y).toBeGreaterThan(0.1);
  });

  it('hollow of a typed radius: that radius, between shoulder and tip', () => {
    const job = made({ 'bridge.wing': 'hollow', 'bridge.scoop': 200 });
    const [wing] = trebleWing(job);
    if (wing?.kind !== 'arc') throw new Error('no arc');
    expect(wing.radius).toBe(200);
    // A hollow lies below its chord.
    const chord = (deckHeight(job, 42) + profileHeights(job).tipTop) / 2;
    const span = wingSpan(job, 1);
    const half = Math.hypot(span?.width ?? 0, span?.fall ?? 0) / 2;
    // The sagitta stands square to the chord: straight down it is a little more.
    expect(chord - bridgeTopAt(job, 59)).toBeGreaterThan(200 - Math.sqrt(200 ** 2 - half ** 2));
    expect(chord - bridgeTopAt(job, 59)).toBeLessThan(1.05 * (200 - Math.sqrt(200 ** 2 - half ** 2)));
  });

  it('round: leaves the shoulder level and bulges', () => {
    const job = made({ 'bridge.wing': 'round' });
    const [wing] = trebleWing(job);
    if (wing?.kind !== 'arc') throw new Error('no arc');
    expect(tangentOn(wing, 0).y).toBeCloseTo(0, 9);
    expect(wing.centre.y).toBeGreaterThan(segmentStart(wing).y);
    expect(wing.radius).toBeCloseTo(levelRadius(wingSpan(job, 1) ?? { width: 1, fall: 1 }), 9);
  });

  it('ogee: two equal arcs without a corner between, level at both ends', () => {
    const [upper, lower] = trebleWing(made({ 'bridge.wing': 'ogee' }));
    if (upper?.kind !== 'arc' || lower?.kind !== 'arc') throw new Error('no arcs');
    expect(upper.radius).toBeCloseTo(lower.radius, 9);
    expect(Math.sign(upper.sweep)).toBe(-Math.sign(lower.sweep));
    expect(tangentOn(upper, 0).y).toBeCloseTo(0, 9);
    expect(tangentOn(lower, 1).y).toBeCloseTo(0, 9);
    expect(tangentOn(upper, 1).y).toBeCloseTo(tangentOn(lower, 0).y, 9);
  });

  it('round off the corner at the shoulder by an exact arc that touches both', () => {
    for (const wing of ['hollow', 'straight', 'round', 'ogee'])
      for (const topRadius of [508, 'flat']) {
        const job = made({ 'bridge.wing': wing, 'bridge.shoulder': 6, 'bridge.topRadius': topRadius });
        const { segments } = topLine(job);
        // A flat deck and a wing that leaves it level meet without a corner.
        const hasCorner = topRadius !== 'flat' || wing === 'hollow' || wing === 'straight';
        expect(segments.filter((s) => s.kind === 'arc' && Math.abs(s.radius - 6) < 1e-9)).toHaveLength(
          hasCorner ? 2 : 0,
        );
        segments.slice(1).forEach((s, k) => {
          const before = segments[k];
          if (before === undefined) return;
          expect(distance(segmentEnd(before), segmentStart(s))).toBeLessThan(1e-9);
          const [a, b] = [tangentOn(before, 1), tangentOn(s, 0)];
          expect(Math.abs(a.x * b.y - a.y * b.x)).toBeLessThan(1e-7);
        });
      }
  });
});

describe('the pyramid', () => {
  const job = made(pyramidal);

  it('falls to its foot, rises to its ridge and falls to its tip, as thick as they were told', () => {
    const under = undersideHeight(job, 0);
    expect(bridgeTopAt(job, 56) - under).toBeCloseTo(3.2, 9);
    expect(bridgeTopAt(job, 66) - under).toBeCloseTo(7.5, 9);
    expect(bridgeTopAt(job, -66) - under).toBeCloseTo(7.5, 9);
    expect(bridgeTopAt(job, 76) - under).toBeCloseTo(3.2, 9);
    // Straight facets.
    expect(bridgeTopAt(job, 61) - under).toBeCloseTo((3.2 + 7.5) / 2, 9);
    expect(bridgeTopAt(job, 73.5) - under).toBeCloseTo(3.2 + (7.5 - 3.2) / 4, 9);
    expect(isSimple(endProfile(job))).toBe(true);
  });

  it('has four facets that meet in a ridge as long as it is deeper than wide, seen from above', () => {
    const design = { bridgeFront: 630, bridgeRear: 662 };
    const lines = pyramidLines(job, design);
    expect(lines).toHaveLength(12);
    const ridges = lines.filter(([a, b]) => a.x === b.x && Math.abs(a.x) === 66);
    expect(ridges.map(([a, b]) => b.y - a.y)).toEqual([12, 12]);
    // The other edges run from the corners at 45°: equal runs both ways.
    for (const [a, b] of lines.filter(([p, q]) => p.x !== q.x))
      expect(Math.abs(a.x - b.x)).toBeCloseTo(Math.abs(a.y - b.y), 12);
    const wide = made({ ...pyramidal, 'bridge.pyramidWidth': 33, 'bridge.wing': 'straight' });
    expect(pyramidLines(wide, design)).toHaveLength(10);
    expect(pyramidLines(workedExample(), design)).toEqual([]);
  });

  it('leaves the foot and the tip of one side to their own thickness', () => {
    const apart = made({ ...pyramidal, 'bridge.tipTreble': 2.5 });
    expect(pyramidOf(apart, -1).foot.y - undersideHeight(apart, 56)).toBeCloseTo(3.2, 12);
    expect(pyramidOf(apart, 1).tip.y - undersideHeight(apart, 76)).toBeCloseTo(2.5, 12);
  });
});

describe('the top at any place', () => {
  it('is the deck in its middle, and never below the underside', () => {
    for (const wing of ['hollow', 'straight', 'round', 'ogee']) {
      const job = made({ 'bridge.wing': wing, 'bridge.tilt': 0.01 });
      for (let y = -76; y <= 76; y += 0.5) {
        expect(bridgeTopAt(job, y)).toBeGreaterThan(undersideHeight(job, y));
        if (Math.abs(y) < 41.9) expect(Math.abs(bridgeTopAt(job, y) - deckHeight(job, y))).toBeLessThan(0.003);
      }
    }
  });

  it('rests on a dome that falls across and along', () => {
    const job = made({ 'guitar.topRadius': 5000, 'top.radiusAlong': 8000 });
    const bare = undersideHeight(job, 0);
    expect(bare - undersideHeight(job, 60)).toBeCloseTo(5000 - Math.sqrt(5000 ** 2 - 60 ** 2), 9);
    expect(bare - undersideHeight(job, 0, -20)).toBeCloseTo(8000 - Math.sqrt(8000 ** 2 - 20 ** 2), 9);
    expect(bare - undersideHeight(job, 60, 20)).toBeCloseTo(
      5000 - Math.sqrt(5000 ** 2 - 60 ** 2) + 8000 - Math.sqrt(8000 ** 2 - 20 ** 2),
      9,
    );
  });
});

/** What a problem's sentence says to do, done: its last “… at least/at most …”, put into the field that it speaks of. */
const followed = (
  job: Settled,
  { path, says }: Problem,
): { readonly job: Settled; readonly field: string } | undefined => {
  const found =
    /(the tips|the bass tip|the treble tip|the ridge|the edge|it) at (?:least|most) ([\d.,/ ]+? (?:mm|in))/i.exec(says);
  const [, what, text] = found ?? [];
  if (what === undefined || text === undefined) return undefined;
  const tips: Values = {
    'the tips': 'bridge.tipThickness',
    'the bass tip': 'bridge.tipThickness',
    'the treble tip': 'bridge.tipTreble',
  };
  const field = String(tips[what.toLowerCase()] ?? path);
  const read = parseQuantity(text, 'length', job.show.length);
  return read.ok ? { job: setAt(job, field, read.value) as Settled, field } : undefined;
};

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const wingJobs = fc
  .record({
    'show.length': fc.constantFrom('mm', 'in', 'fraction'),
    'show.radius': fc.constantFrom('mm', 'in'),
    'bridge.footprint': fc.constantFrom('rectangle', 'pyramid'),
    'bridge.deckWidth': between(78, 112),
    'bridge.topRadius': fc.oneof(fc.constant('flat'), between(250, 900)),
    'bridge.tilt': between(-0.02, 0.02),
    'bridge.thickness': between(6, 12),
    'bridge.tipThickness': between(1, 10),
    'bridge.tipTreble': fc.oneof(fc.constant('same'), between(1, 10)),
    'bridge.wing': fc.constantFrom('hollow', 'straight', 'round', 'ogee'),
    'bridge.scoop': fc.oneof(fc.constant('level'), between(5, 200)),
    'bridge.shoulder': fc.oneof(fc.constant('sharp'), between(0.5, 60)),
    'bridge.pyramidThickness': between(1, 12),
    'bridge.length': between(120, 180),
    'bridge.edge': fc.constantFrom('square', 'round', 'chamfer'),
    'bridge.edgeSize': between(0.2, 10),
  })
  .map((values) =>
    put(workedExample(), {
      ...values,
      'bridge.pyramidWidth': Math.min(20, (values['bridge.length'] - values['bridge.deckWidth']) / 2 - 0.5),
    }),
  );

describe('wings that cannot be built', () => {
  it.each([
    [
      'a hollow deeper than the tip',
      { 'bridge.wing': 'hollow', 'bridge.scoop': 60 },
      'bridge.scoop',
      /deeper than the tip/,
    ],
    [
      'a scoop too small to span its wing',
      { 'bridge.wing': 'hollow', 'bridge.scoop': 12 },
      'bridge.scoop',
      /does not span/,
    ],
    [
      'a ridge below its foot',
      { ...pyramidal, 'bridge.pyramidThickness': 3 },
      'bridge.pyramidThickness',
      /does not stand above its foot/,
    ],
    [
      'a treble tip above the shoulder',
      { 'bridge.tipTreble': 9 },
      'bridge.tipTreble',
      /The treble tip, 9(.0)? mm thick, does not lie below/,
    ],
    [
      'a shoulder too round',
      { 'bridge.shoulder': 60, 'bridge.wing': 'straight', 'bridge.deckWidth': 148 },
      'bridge.shoulder',
      /60(.0)? mm does not fit/,
    ],
    [
      'an ogee too steep',
      { 'bridge.deckWidth': 146, 'bridge.wing': 'ogee', 'bridge.topRadius': 'flat' },
      'bridge.deckWidth',
      /An ogee wing 3(.0)? mm wide cannot fall by/,
    ],
    [
      'a scoop that would overhang',
      { 'bridge.deckWidth': 147, 'bridge.scoop': 8, 'bridge.topRadius': 'flat' },
      'bridge.scoop',
      /overhang/,
    ],
    [
      'an edge thicker than the deck',
      { 'bridge.edge': 'round', 'bridge.edgeSize': 9.5 },
      'bridge.edgeSize',
      /take off more than is there/,
    ],
  ] as const)('%s: said where it is, and what it says will do', (_, values, path, words) => {
    const job = put(workedExample(), { 'show.radius': 'mm', ...values });
    const problem = wingProblems(job).find((p) => p.path === path);
    expect(problem?.says).toMatch(words);
    const mended = problem && followed(job, problem);
    if (mended === undefined) throw new Error(`nothing to follow in: ${problem?.says}`);
    expect(wingProblems(mended.job)).toEqual([]);
  });

  it('named at any numbers, and right once the words are followed', () => {
    const seen = new Map<string, number>();
    fc.assert(
      fc.property(wingJobs, (asked) => {
        let job = asked;
        // One after the other: a tip that is mended may leave the shoulder to be mended.
        for (let round = 0; round < 6; round += 1) {
          const [problem] = wingProblems(job);
          if (problem === undefined) break;
          expect(problem.says).not.toMatch(/NaN|undefined|Infinity/);
          const mended = followed(job, problem);
          if (mended === undefined) return;
          seen.set(problem.path, (seen.get(problem.path) ?? 0) + 1);
          const { field } = mended;
          const isSame = (p: Problem) => p.path === problem.path && followed(mended.job, p)?.field === field;
          const again = wingProblems(mended.job).find(isSame);
          expect(again?.says, problem.says).toBeUndefined();
          job = mended.job;
        }
        if (wingProblems(job).length > 0) return;
        const profile = endProfile(job);
        expect(profile.closed).toBe(true);
        expect(isSimple(profile)).toBe(true);
      }),
      { numRuns: 250, seed: 7 },
    );
    for (const path of ['tipThickness', 'tipTreble', 'scoop', 'shoulder', 'pyramidThickness', 'edgeSize'])
      expect(seen.get(`bridge.${path}`) ?? 0, path).toBeGreaterThan(0);
  });
});
