import Flatten from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { showLine, stroke } from '../../../geometry/marks.ts';
import { pointOn } from '../../../geometry/shape/along.ts';
import { arc } from '../../../geometry/shape/arc.ts';
import { views } from '../../../geometry/views/index.ts';
import { measured } from '../../../geometry/views/ruler.ts';
import { edgesOf, snapsNear } from '../../../geometry/views/snap.ts';
import { starters } from '../../../src/jobs/index.ts';
import { built, jobOf } from '../../solved.ts';

const shown = { line: 'outline', purpose: 'show' } as const;
const dome = arc({ x: 0, y: 300 }, 300, -Math.PI / 2 - 0.1, 0.2);
const marks = [
  showLine('level', { x: -40, y: 2 }, { x: 40, y: 2 }),
  showLine('upright', { x: 10, y: -20 }, { x: 10, y: 20 }),
  stroke('dome', { segments: [dome], closed: false }, shown),
  stroke('hole', { segments: [arc({ x: -20, y: 10 }, 2.5, 0, 2 * Math.PI)], closed: true }, shown),
];
const edges = edgesOf(marks);
const kinds = (at: { x: number; y: number }, heights = 1, reach = 1) =>
  snapsNear(edges, at, { reach, heights }).map(({ kind }) => kind);

describe('a place is caught by', () => {
  it('ends, middles and centres, exactly', () => {
    expect(snapsNear(edges, { x: 39.7, y: 2.3 }, { reach: 1, heights: 1 })[0]).toEqual({
      kind: 'end',
      point: { x: 40, y: 2 },
    });
    expect(snapsNear(edges, { x: 0.2, y: 2.1 }, { reach: 0.5, heights: 1 })[0]).toEqual({
      kind: 'middle',
      point: { x: 0, y: 2 },
    });
    expect(snapsNear(edges, { x: -20.2, y: 10.1 }, { reach: 1, heights: 1 })[0]).toEqual({
      kind: 'centre',
      point: { x: -20, y: 10 },
    });
  });

  it('crossings, where another library has them', () => {
    const [found] = snapsNear(edges, { x: 10.3, y: 0.4 }, { reach: 0.6, heights: 1 });
    const circle = new Flatten.Circle(new Flatten.Point(0, 300), 300);
    const line = new Flatten.Segment(new Flatten.Point(10, -20), new Flatten.Point(10, 20));
    const [there] = circle.intersect(line);
    expect(found?.kind).toBe('crossing');
    expect(found?.point.x).toBeCloseTo(there?.x ?? Number.NaN, 9);
    expect(found?.point.y).toBeCloseTo(there?.y ?? Number.NaN, 9);
  });

  it('edges where nothing else is near, and by nothing where nothing is', () => {
    expect(kinds({ x: -33, y: 2.4 }, 1, 0.5)).toEqual(['edge']);
    expect(kinds({ x: 60, y: -15 })).toEqual([]);
  });

  it('the foot that is square to where the measurement begins', () => {
    const from = { x: 25, y: -30 };
    const [foot] = snapsNear(edges, { x: 25.4, y: 2 }, { reach: 1, heights: 1, from });
    expect(foot).toEqual({ kind: 'square', point: { x: 25, y: 2 } });
    // On an arc it lies on the line through its centre.
    const down = snapsNear(edges, { x: 22.6, y: 0.9 }, { reach: 1, heights: 1, from }).find(
      ({ kind }) => kind === 'square',
    );
    const away = Math.hypot(25, 330);
    expect(down?.point.x).toBeCloseTo((25 / away) * 300, 9);
    expect(down?.point.y).toBeCloseTo(300 - (330 / away) * 300, 9);
  });

  it('what is nearest as it is shown, stretched, and still on the true edge', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2.5, max: 25, noNaN: true }),
        fc.double({ min: -1.5, max: 1.5, noNaN: true }),
        fc.constantFrom(1, 2, 5, 10),
        (x, off, heights) => {
          const at = { x, y: 300 - Math.sqrt(300 ** 2 - x ** 2) + off / heights };
          const only = edgesOf([stroke('dome', { segments: [dome], closed: false }, shown)]);
          const [found] = snapsNear(only, at, { reach: 2, heights }).filter(({ kind }) => kind !== 'end');
          expect(Math.hypot(found?.point.x ?? 0, (found?.point.y ?? 0) - 300)).toBeCloseTo(300, 9);
          const away = (p: { x: number; y: number }) => Math.hypot(p.x - at.x, (p.y - at.y) * heights);
          let least = Number.POSITIVE_INFINITY;
          for (let k = 0; k <= 20_000; k += 1) least = Math.min(least, away(pointOn(dome, k / 20_000)));
          expect(away(found?.point ?? at)).toBeLessThanOrEqual(least + 1e-9);
        },
      ),
      { numRuns: 40 },
    );
  });
});

describe('the ruler', () => {
  it('measures heights as they are, and only what both views show', () => {
    const [a, b] = [
      { view: 'tail', point: { x: -30, y: 4 } },
      { view: 'tail', point: { x: 10, y: 1 } },
    ] as const;
    expect(measured(a, b)).toEqual({ distance: Math.hypot(40, 3), across: 40, height: 3 });
    expect(measured({ view: 'above', point: { x: 5, y: 640 } }, { view: 'above', point: { x: 2, y: 636 } })).toEqual({
      distance: 5,
      across: 3,
      along: 4,
    });
    expect(measured({ view: 'above', point: { x: 5, y: 640 } }, b)).toEqual({ across: 5 });
    expect(measured({ view: 'above', point: { x: 5, y: 640 } }, { view: 'middle', point: { x: -650, y: 3 } })).toEqual({
      along: 10,
    });
    expect(measured(a, { view: 'middle', point: { x: -650, y: -3 } })).toEqual({ height: 7 });
  });

  it.each(starters)('reads the numbers of $id off its views', ({ text }) => {
    const { job, design } = built(jobOf(text));
    const caught = (view: keyof typeof views, at: { x: number; y: number }, kind: string) => {
      const found = snapsNear(edgesOf(views[view](job, design).marks), at, { reach: 0.05, heights: 1 }).find(
        (s) => s.kind === kind,
      );
      if (found === undefined) throw new Error(`nothing there: ${kind} at ${at.x}, ${at.y}`);
      return { view, point: found.point };
    };
    const way = job.hand === 'left' ? -1 : 1;
    for (const s of design.strings) {
      const x = way * s.acrossAtSaddle;
      const gap = measured(
        caught('tail', { x, y: -s.heightAboveFretPlane }, 'end'),
        caught('tail', { x, y: -s.deck }, 'end'),
      );
      expect(gap.distance).toBeCloseTo(s.exposure, 9);
      expect(gap.height).toBeCloseTo(s.exposure, 9);
    }
  });
});
