import { EndType, inflatePathsD, JoinType, type PathD } from 'clipper2-ts';
import { expect } from 'vitest';
import type { Drawing } from '../../geometry/drawing.ts';
import { layOut } from '../../geometry/layout.ts';
import { area, lengthOf, pointOn } from '../../geometry/shape/measure.ts';
import { distanceTo } from '../../geometry/shape/nearest.ts';
import type { Path, Point, Segment } from '../../geometry/shape/types.ts';
import { contoursOf } from '../../templates/cutter/contour.ts';
import { kerfBeside } from '../../templates/cutter/kerf.ts';

/*
 * A tool's way beside every contour of a drawing against clipper2-ts 2.0 (github.com/countertype/clipper2-ts, after Angus Johnson's Clipper2), which is given each
 * contour as many short lines.
 */

/** How near the two have to be, mm. */
const within = 0.01;

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

/** Holds the tool's ways beside a drawing's contours to the other library's, for tools of these widths (mm); returns how many were compared. Those that a tool does not fit are left out. */
export const holdKerfs = ({ title, marks }: Drawing, tools: readonly number[]): number => {
  const strokes = layOut(marks, { em: 3.5, say: (label) => label.join('') }).filter((p) => p.kind === 'stroke');
  const contours = contoursOf(strokes.filter(({ purpose }) => purpose === 'cut' || purpose === 'drill'));
  let compared = 0;
  for (const contour of contours.filter(({ bounds }) => bounds !== 'line'))
    for (const tool of tools) {
      const kerf = kerfBeside(contour, tool);
      if (!kerf.ok) continue;
      compared++;
      const outline = contour.stroke.path;
      // Outside a part, inside what is waste.
      const by = contour.bounds === 'part' ? tool / 2 : -tool / 2;
      const points = area(outline) > 0 ? dense(outline) : dense(outline).toReversed();
      const theirs = inflatePathsD([points], by, JoinType.Round, EndType.Polygon, 2, 5, 5e-4);
      const says = `${title}, ${contour.stroke.id}, ${tool} mm`;
      expect(theirs, says).toHaveLength(1);
      const [polygon] = theirs as [PathD];
      const ours = kerf.path.segments.flatMap((s) => [0, 0.3, 0.6].map((t) => pointOn(s, t)));
      const there = ours.map((p) => toPolygon(polygon, p));
      const back = polygon.filter((_, k) => k % 7 === 0).map((p) => distanceTo(kerf.path, p));
      expect(Math.max(...there, ...back), says).toBeLessThan(within);
      expect(Math.abs(area(kerf.path)) > Math.abs(area(outline)), says).toBe(by > 0);
    }
  return compared;
};
