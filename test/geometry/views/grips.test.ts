import { describe, expect, it } from 'vitest';
import { applies, fieldAt, fieldGroups, getAt, patternOf, setAt } from '../../../geometry/fields.ts';
import { withTypedPlaces } from '../../../geometry/instrument/spacing.ts';
import type { Job } from '../../../geometry/job.ts';
import { layOut } from '../../../geometry/layout.ts';
import { nearestOn } from '../../../geometry/shape/nearest.ts';
import type { Point } from '../../../geometry/shape/types.ts';
import { solve } from '../../../geometry/solve.ts';
import { type Grip, gripsOf, putOnSheet } from '../../../geometry/views/grips/index.ts';
import { views } from '../../../geometry/views/index.ts';
import { litBy } from '../../../geometry/views/lit.ts';
import { stretched } from '../../../geometry/views/stretch.ts';
import { starters } from '../../../src/jobs/index.ts';
import { jobOf, solved } from '../../solved.ts';

const names = ['above', 'tail', 'middle'] as const;

/** A job with these values put in, path by path. */
const withValues = (job: Job, values: Readonly<Record<string, unknown>>): Job =>
  Object.entries(values).reduce((made, [path, value]) => setAt(made, path, value), job);

const starter = (id: string): Job => jobOf(starters.find((one) => one.id === id)?.text ?? '');

/** Every starter, and what none of them has: typed setbacks on a line of least miss, a bridge that stays, a tilted deck with tips of their own, strings in pairs on an arc of pins. */
const jobs: readonly (readonly [string, Job])[] = [
  ...starters.map(({ id, text }) => [id, jobOf(text)] as const),
  ['kestrel, the bridge stays', withValues(starter('kestrel'), { work: 'saddle', 'slot.line': 'least' })],
  ['heron, tilted', withValues(starter('heron'), { 'bridge.tilt': 0.006, 'bridge.tipTreble': 4, 'pins.row': 'arc' })],
  ['godwit, each side its own', withValues(starter('godwit'), { 'bridge.mirrored': 'no' })],
  ['starling, pins on an arc', withValues(starter('starling'), { 'pins.row': 'arc', 'pins.arcRise': -2 })],
  [
    'heron, shoulders and edges rounded, scoops and places its own',
    withTypedPlaces(
      withValues(starter('heron'), {
        'bridge.shoulder': 12,
        'bridge.edge': 'round',
        'bridge.edgeSize': 1.8,
        'bridge.scoop': 260,
        'strings.setbacks': 'typed',
        'saddle.wireHole': 2.5,
        'pins.ramp': 2.5,
      }),
    ),
  ],
  [
    'kestrel, its slot open, its deck flat',
    withValues(starter('kestrel'), { 'slot.ends': 'through', 'slot.floor': 'dome', 'bridge.topRadius': 'flat' }),
  ],
];

const left = (job: Job): Job => setAt(job, 'hand', job.hand === 'left' ? 'right' : 'left');

/** The grips of a view as they stand on a sheet, by their ids. */
const onSheet = (job: Job, view: (typeof names)[number], heights: number): readonly Grip[] => {
  const made = solve(job);
  if (!made.ok) throw new Error(made.problems[0]?.says);
  const place = { x: 31.7, y: -12.9 };
  return putOnSheet(gripsOf(view, made.job, made.design), { place, heights: view === 'above' ? 1 : heights });
};

/** The job once the grip was dragged there. */
const dragged = (job: Job, grip: Grip, to: Point): Job => {
  const once = setAt(job, grip.jobPath, grip.value(to));
  return grip.also ? setAt(once, grip.also.jobPath, grip.also.value(to)) : once;
};

const along = (p: Point, axis: Point): number => p.x * axis.x + p.y * axis.y;

describe.each(jobs)('the grips of %s', (_, job) => {
  it.each([
    ['as it is', job, 1],
    ['for the other hand, heights three times as large', left(job), 3],
  ] as const)('follow the hand to a micrometre’s thousandth, %s', (_, one, heights) => {
    for (const view of names) {
      for (const grip of onSheet(one, view, heights)) {
        // As far as a hand may go at once; the tilt of a slot is taken hold of near its end.
        for (const d of [-0.41, 0.27]) {
          const way = grip.axis ?? { x: 0.6, y: 0.8 };
          const to = { x: grip.at.x + d * way.x, y: grip.at.y + d * way.y };
          // No deck bulges less than a flat one.
          if (!Number.isFinite(grip.value(to))) continue;
          const after = onSheet(dragged(one, grip, to), view, heights).find(({ id }) => id === grip.id);
          const moved = after && { x: after.at.x - grip.at.x, y: after.at.y - grip.at.y };
          expect(moved && along(moved, way), `${view} ${grip.id}`).toBeCloseTo(d, 6);
          if (grip.axis === undefined) {
            expect(moved?.x, grip.id).toBeCloseTo(d * way.x, 6);
            expect(moved?.y, grip.id).toBeCloseTo(d * way.y, 6);
          }
        }
      }
    }
  });

  it('light something in their own view, which is the one that stays in sight', () => {
    for (const view of names) {
      const made = solve(job);
      if (!made.ok) throw new Error(made.problems[0]?.says);
      const primitives = layOut(views[view](made.job, made.design).marks, { em: 3, say: () => '1' });
      const dark = onSheet(job, view, 1).filter(({ jobPath }) => !primitives.some(litBy(jobPath, made.job)));
      expect(dark.map(({ id }) => `${view} ${id}`)).toEqual([]);
    }
  });

  it('stand on what is drawn, hold numbers that count, and give back the number that is there', () => {
    const made = solve(job);
    if (!made.ok) throw new Error(made.problems[0]?.says);
    for (const view of names) {
      const heights = view === 'above' ? 1 : 3;
      const { marks } = stretched(views[view](made.job, made.design), heights);
      const paths = marks.flatMap((mark) => (mark.kind === 'path' ? [mark.path] : []));
      const grips = putOnSheet(gripsOf(view, made.job, made.design), { place: { x: 0, y: 0 }, heights });
      expect(new Set(grips.map(({ id }) => id)).size).toBe(grips.length);
      for (const grip of grips) {
        for (const { jobPath, value } of grip.also ? [grip, grip.also] : [grip]) {
          const field = fieldAt(jobPath);
          expect(field && applies(field, job), jobPath).toBe(true);
          const there = getAt(made.job, jobPath);
          // A word stands for a number that the grip begins from: a flat deck for no end of a radius, a level scoop for its own.
          if (there === 'flat') expect(value(grip.at), jobPath).toBe(Number.POSITIVE_INFINITY);
          else if (there === 'level') expect(value(grip.at), jobPath).toBeGreaterThan(0);
          else expect(value(grip.at), jobPath).toBeCloseTo(there as number, 9);
        }
        // A slot's slant and its place are taken hold of on its centre line, a pin row by the pins’ middles; a break point out of the crown's reach stands where it is wanted, and a shoulder where it would be sharp. A tilted
        // deck's arc leaves the surface that is reckoned with by a micrometre or two (`topLineWith`).
        const inside = /^(slot\.(slant|fromNut)|saddle\.wireAcross|pins\.|setback\.)/.test(grip.id)
          ? 4
          : job.bridge.shoulder !== 'sharp' && /^topRadius$/.test(grip.id)
            ? 0.1
            : 2e-3;
        const off = Math.min(...paths.flatMap(({ segments }) => segments.map((s) => nearestOn(s, grip.at).distance)));
        expect(off, `${view} ${grip.id}`).toBeLessThan(inside);
      }
    }
  });
});

/** The numbers that no grip holds, by their fields or what these begin with. */
const without: readonly string[] = [
  // Measured on the guitar or heard: a hand does not change what is there.
  ...['guitar', 'strung', 'scar', 'top', 'setup', 'strings.list.*.cents'],
  // By a drill, a reamer, a caliper, or what the maker of the part says.
  ...['pins.hole', 'pins.pinDiameter', 'pins.taper', 'saddle.wireHole', 'saddle.under'],
  ...['strings.list.*.gauge', 'strings.list.*.core', 'strings.list.*.pitch', 'strings.list.*.nutPlace'],
  // Two or three millimetres at most, or hundredths: typed, as no hand is as fine.
  ...[
    'saddle.play',
    'saddle.proud',
    'pins.rampDepth',
    'strings.pairGap',
    'strings.finger',
    'action.firstFretBass',
    'action.firstFretTreble',
  ],
  // On no view, or where the view itself is cut.
  ...['plate', 'stock', 'limits', 'show'],
  // Where a string is found to leave the bridge.
  'pins.leaves',
];

describe('grips', () => {
  it('go in the order of the bench, one for a number, its twins aside', () => {
    const { job, design } = { job: starter('heron'), design: solved(starter('heron')) };
    const made = solve(job);
    if (!made.ok) throw new Error(made.problems[0]?.says);
    const said = names.flatMap((view) => gripsOf(view, made.job, design).filter(({ isTwin }) => !isTwin));
    const paths = said.map(({ jobPath }) => jobPath);
    expect(new Set(paths).size).toBe(paths.length);
    const above = gripsOf('above', made.job, design).map(({ id }) => id);
    expect(above).toEqual([
      'strings.spread',
      'length',
      'length.bass',
      'depth',
      'wingDepth',
      'bellyWidth',
      'frontToSaddle',
      'slot.width',
      'slot.length',
      'pins.spread',
      'pins.fromSaddle',
    ]);
  });

  it('are there for every number that is chosen and has a place on a view', () => {
    const held = new Set(
      jobs.flatMap(([, job]) =>
        names.flatMap((view) =>
          onSheet(job, view, 1).flatMap((grip) =>
            [grip, ...(grip.also ? [grip.also] : [])].map(({ jobPath }) => patternOf(jobPath)),
          ),
        ),
      ),
    );
    const left = fieldGroups
      .flatMap(({ fields }) => fields)
      .filter(({ kind, path }) => kind !== 'word' && kind !== 'text' && !held.has(path))
      .map(({ path }) => path)
      .filter((path) => !without.some((begin) => path === begin || path.startsWith(`${begin}.`)));
    expect(left).toEqual([]);
    expect([...held].filter((path) => without.includes(path ?? ''))).toEqual([]);
  });
});
