// The tool's way beside every contour of some starters' templates against clipper2-ts 2.0 (github.com/countertype/clipper2-ts), which is given each contour as many short lines.
import { EndType, inflatePathsD, JoinType, type PathD } from 'clipper2-ts';
import { describe, expect, it } from 'vitest';
import { layOut, sayWith } from '../../geometry/layout.ts';
import { area, lengthOf, pointOn } from '../../geometry/shape/measure.ts';
import { distanceTo } from '../../geometry/shape/nearest.ts';
import type { Path, Point, Segment } from '../../geometry/shape/types.ts';
import { starters } from '../../src/jobs/index.ts';
import { contoursOf } from '../../templates/cutter/contour.ts';
import { kerfBeside } from '../../templates/cutter/kerf.ts';
import { drawnPieces } from '../drawn.ts';
import { built, jobOf } from '../solved.ts';

/** Lines of at most this length along curves, mm: at 5 mm radius they leave a curve by 0.001 mm. */
const shortest = 0.2;
const steps = (s: Segment): number => (s.kind === 'line' ? 1 : Math.max(40, Math.ceil(lengthOf(s) / shortest)));
const dense = (path: Path): PathD =>
  path.segments.flatMap((s) => Array.from({ length: steps(s) }, (_, k) => ({ ...pointOn(s, k / steps(s)), z: 0 })));

const toLine = (a: Point, b: Point, p: Point): number => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const size = dx * dx + dy * dy;
  const t = size > 0 ? Math.max(0, Math.min(1, ((p.x - a.x) * dx + (p.y - a.y) * dy) / size)) : 0;
  return Math.hypot(a.x + t * dx - p.x, a.y + t * dy - p.y);
};
const toPolygon = (polygon: PathD, p: Point): number =>
  polygon.reduce((least, b, k) => Math.min(least, toLine(polygon.at(k - 1) as Point, b, p)), Number.POSITIVE_INFINITY);

// A belly, a free outline with its cubics, and pairs of strings.
const some = starters.filter((_, k) => k % 3 === 0);

describe.each(some)('$id', ({ text }) => {
  const { job, design } = built(jobOf(text));

  it('every outline, slot and hole of it, for a laser and a router bit: within 0.01 mm', { timeout: 30_000 }, () => {
    for (const { title, marks } of drawnPieces(job, design).slice(0, 4)) {
      const strokes = layOut(marks, { em: 3.5, say: sayWith(job.show) }).filter((p) => p.kind === 'stroke');
      const worked = contoursOf(strokes.filter(({ purpose }) => purpose === 'cut' || purpose === 'drill'));
      for (const contour of worked.filter(({ bounds }) => bounds !== 'line')) {
        for (const tool of [0.2, 2]) {
          const kerf = kerfBeside(contour, tool, title);
          if (!kerf.ok) throw new Error(JSON.stringify(kerf.says));
          const outline = contour.stroke.path;
          const forwards = Math.sign(area(outline));
          // Outside a part, inside what is waste.
          const by = contour.bounds === 'part' ? tool / 2 : -tool / 2;
          const points = forwards > 0 ? dense(outline) : dense(outline).toReversed();
          const theirs = inflatePathsD([points], by, JoinType.Round, EndType.Polygon, 2, 5, 5e-4);
          expect(theirs).toHaveLength(1);
          const ours = kerf.path.segments.flatMap((s) => [0, 0.3, 0.6].map((t) => pointOn(s, t)));
          for (const p of ours) expect(toPolygon(theirs[0] as PathD, p)).toBeLessThan(0.01);
          const back = (theirs[0] as PathD).filter((_, k) => k % 7 === 0);
          for (const p of back) expect(distanceTo(kerf.path, p)).toBeLessThan(0.01);
          expect(Math.abs(area(kerf.path)) > Math.abs(area(outline))).toBe(by > 0);
        }
      }
    }
  });
});
