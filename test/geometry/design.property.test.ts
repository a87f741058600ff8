import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { endProfile } from '../../geometry/bridge/profile.ts';
import { deckHeight, undersideHeight } from '../../geometry/bridge/surface.ts';
import { build } from '../../geometry/build.ts';
import type { Design } from '../../geometry/design.ts';
import { validateJob } from '../../geometry/job-file.ts';
import { layOut, sayWith } from '../../geometry/layout.ts';
import { mirrored } from '../../geometry/marks.ts';
import { saddleOutline } from '../../geometry/saddle/face.ts';
import { crownHeight } from '../../geometry/saddle/radius.ts';
import type { Settled } from '../../geometry/settle.ts';
import { bounds, pathIntersections, pointOn } from '../../geometry/shape/index.ts';
import { threeViews, views } from '../../geometry/views/index.ts';
import { drawPiece, piecesOf } from '../../templates/pieces/index.ts';
import { newShop } from '../../templates/shop/index.ts';
import { randomJob } from '../random-job.ts';

const RUNS = { numRuns: 200, seed: 20261 };

/** Checks a property on the random jobs that can be built, and that there are enough of them. */
const everyBuilt = (check: (job: Settled, design: Design) => void, runs = RUNS) => {
  let built = 0;
  fc.assert(
    fc.property(randomJob(), (job) => {
      expect(validateJob(job).ok).toBe(true);
      const result = build(job);
      if (!result.ok) {
        expect(result.problems.length).toBeGreaterThan(0);
        for (const problem of result.problems) expect(problem.says).not.toMatch(/NaN|undefined|Infinity/);
        return;
      }
      built += 1;
      check(result.job, result.design);
    }),
    { ...runs, endOnFailure: true },
  );
  expect(built).toBeGreaterThan(runs.numRuns / 3);
};

/** Every number in a value, however deep. */
const numbers = (value: unknown): readonly number[] =>
  typeof value === 'number' ? [value] : value && typeof value === 'object' ? Object.values(value).flatMap(numbers) : [];

/** The templates of a job: those that fill pages of their own, to be read or written on, or the others. */
const drawn = (job: Settled, design: Design, own: boolean) =>
  piecesOf(job)
    .filter(({ ownPage }) => (ownPage ?? false) === own)
    .flatMap((piece) => drawPiece(piece, job, design, newShop()));

describe('any job that can be built', () => {
  it('has an end profile as thick everywhere as deck less underside', () => {
    everyBuilt((job) => {
      // A rounded shoulder and a pyramid's facets leave the deck's own line.
      if (job.bridge.shoulder !== 'sharp' || job.bridge.footprint === 'pyramid') return;
      const profile = endProfile(job);
      const half = job.bridge.deckWidth / 2;
      for (const part of [-0.9, -0.4, 0, 0.3, 0.8]) {
        const y = part * half;
        const ray = {
          segments: [{ kind: 'line' as const, from: { x: y, y: -100 }, to: { x: y, y: 100 } }],
          closed: false,
        };
        const heights = pathIntersections(ray, profile).map((p) => -p.y);
        // The arc is not sheared by a tilt: over the widest decks drawn here that is worth some hundredths.
        expect(Math.abs(Math.max(...heights) - deckHeight(job, y))).toBeLessThan(0.05);
        expect(Math.min(...heights)).toBeCloseTo(undersideHeight(job, y), 6);
      }
    });
  });

  // The cut arc keeps the fitted radius but not its shear: at the steepest tilts drawn here that is worth up to two hundredths.
  it('has a crown that carries each string as well as what is cut fits', () => {
    everyBuilt((job, design) => {
      const outline = saddleOutline(design, 'across');
      design.strings.forEach((s) => {
        const ray = {
          segments: [
            { kind: 'line' as const, from: { x: s.acrossAtSaddle, y: -100 }, to: { x: s.acrossAtSaddle, y: 100 } },
          ],
          closed: false,
        };
        const top = Math.max(...pathIntersections(ray, outline).map((p) => -p.y));
        const cut = design.cut ? crownHeight(design.cut, s.acrossAtSaddle) : s.heightAboveFretPlane;
        expect(Math.abs(top - cut)).toBeLessThan(design.cut ? 0.02 : 1e-6);
      });
      expect(bounds(outline).maxX - bounds(outline).minX).toBeLessThanOrEqual(job.slot.length - job.saddle.play + 1e-8);
    });
  });

  it('has pages to read and write on: finite numbers, ids told apart', () => {
    everyBuilt(
      (job, design) => {
        const say = sayWith(job.show);
        for (const { marks } of drawn(job, design, true)) {
          const ids = marks.map((mark) => mark.id);
          expect(new Set(ids).size).toBe(ids.length);
          expect(numbers(layOut(marks, { em: 3.5, say })).every(Number.isFinite)).toBe(true);
        }
      },
      { ...RUNS, numRuns: 20 },
    );
  });

  it('draws in every view and piece: finite numbers, ids told apart, paths closed that say so', () => {
    everyBuilt(
      (job, design) => {
        const say = sayWith(job.show);
        const drawings = [
          ...Object.values(views).map((view) => view(job, design)),
          ...drawn(job, design, false),
          threeViews(job, design, 3.5, say),
        ];
        for (const drawing of drawings) {
          const ids = drawing.marks.map((mark) => mark.id);
          expect(new Set(ids).size).toBe(ids.length);
          const primitives = layOut(drawing.marks, { em: 3.5, say });
          expect(numbers(primitives).every(Number.isFinite)).toBe(true);
          for (const primitive of primitives) {
            if (primitive.kind !== 'stroke' || !primitive.path.closed) continue;
            const [first] = primitive.path.segments;
            const last = primitive.path.segments.at(-1);
            if (!first || !last) throw new Error(`${primitive.id} is empty`);
            const [a, b] = [pointOn(first, 0), pointOn(last, 1)];
            expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeLessThan(1e-6);
          }
          const there = numbers(drawing.marks);
          const back = numbers(mirrored(mirrored(drawing.marks)));
          expect(back.length).toBe(there.length);
          expect(Math.max(...back.map((n, k) => Math.abs(n - (there[k] ?? 0))))).toBeLessThan(1e-9);
        }
      },
      { ...RUNS, numRuns: 60 },
    );
  });
});
