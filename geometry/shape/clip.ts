import { partOf, pointOn } from './along.ts';
import { bounds } from './bounds.ts';
import { meetings } from './intersect.ts';
import { lengthOf } from './measure.ts';
import { path, segmentEnd, segmentStart } from './path.ts';
import { distance } from './point.ts';
import type { Line, Path, Point, Segment } from './types.ts';

/** What is shorter than this, mm, is none. */
const hair = 1e-9;

/** A line through a place, square to a direction, far longer than a path is wide. */
const across = (p: Path, at: Point, inward: Point): Line => {
  const { minX, minY, maxX, maxY } = bounds(p);
  const far = 2 * (Math.hypot(maxX - minX, maxY - minY) + distance(at, { x: (minX + maxX) / 2, y: (minY + maxY) / 2 }));
  return {
    kind: 'line',
    from: { x: at.x + inward.y * far, y: at.y - inward.x * far },
    to: { x: at.x - inward.y * far, y: at.y + inward.x * far },
  };
};

/**
 * What a straight line leaves of a closed path on the side to which `inward` (a unit vector, square to the line) points [Sutherland & Hodgman 1974, with arcs and curves cut where the line meets them]. Its own segments stay what they are;
 * between them it runs along the line, there and back where the path crosses it more than twice. Undefined where nothing is left.
 */
export const keepSide = (p: Path, at: Point, inward: Point): Path | undefined => {
  const line = across(p, at, inward);
  const kept = p.segments.flatMap((s): readonly Segment[] => {
    const cuts = [0, ...meetings(s, line).map(({ t }) => t), 1].sort((a, b) => a - b);
    return cuts.slice(1).flatMap((to, k) => {
      const from = cuts[k] as number;
      if (to - from < hair) return [];
      const part = partOf(s, from, to);
      const middle = pointOn(part, 0.5);
      const inside = (middle.x - at.x) * inward.x + (middle.y - at.y) * inward.y;
      return inside > hair && lengthOf(part) > hair ? [part] : [];
    });
  });
  const last = kept.at(-1);
  if (last === undefined) return undefined;
  const joined = kept.flatMap((s, k): readonly Segment[] => {
    const [from, to] = [segmentEnd(kept.at(k - 1) ?? last), segmentStart(s)];
    return distance(from, to) <= hair ? [s] : [{ kind: 'line', from, to }, s];
  });
  return path(joined, true);
};
