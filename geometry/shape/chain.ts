import { tangentOn } from './along.ts';
import { lengthOf } from './measure.ts';
import { path, segmentEnd, segmentStart } from './path.ts';
import { cross, distance, dot } from './point.ts';
import type { Path, Point, Segment } from './types.ts';

/** Ends no farther apart than this (mm) are one: less than half of what a path allows, since two of them may meet at a third. */
const near = 4e-7;

/** A segment that leads from one knot to another. */
interface Link {
  readonly segment: Segment;
  readonly from: number;
  readonly to: number;
}

/** Numbers the places where segments begin and end. */
const knot = (segments: readonly Segment[]): readonly Link[] => {
  const knots: Point[] = [];
  const at = (p: Point): number => {
    const known = knots.findIndex((k) => distance(k, p) <= near);
    return known >= 0 ? known : knots.push(p) - 1;
  };
  return segments
    .map((segment) => ({ segment, from: at(segmentStart(segment)), to: at(segmentEnd(segment)) }))
    .filter(({ segment, from, to }) => from !== to || lengthOf(segment) > 4 * near);
};

const turnInto = (a: Link, b: Link): number => {
  const from = tangentOn(a.segment, 1);
  const to = tangentOn(b.segment, 0);
  return Math.atan2(cross(from, to), dot(from, to));
};

/**
 * The closed paths into which loose segments join, each followed in its own sense; segments that join into none are left out. Where several
 * lead on from one place, the way bends as far as it can towards `turn` (+ from +x towards +y), and a path is closed as soon as it returns
 * to a place where it has been, so no path touches itself at a joint. A line run there and back becomes a path of its own, without area.
 */
export const chain = (segments: readonly Segment[], turn: number): readonly Path[] => {
  const links = knot(segments);
  const unused = new Set(links);
  const paths: Path[] = [];
  for (const first of links) {
    if (!unused.delete(first)) continue;
    const trail = [first];
    for (let last = trail.at(-1); last; last = trail.at(-1)) {
      const here = last;
      const back = trail.findIndex((l) => l.from === here.to);
      if (back >= 0) {
        paths.push(
          path(
            trail.splice(back).map((l) => l.segment),
            true,
          ),
        );
        continue;
      }
      const onward = [...unused].filter((l) => l.from === here.to);
      // A dead end: the way that led into it is given up, up to where another leads on.
      if (onward.length === 0) {
        trail.pop();
        continue;
      }
      const next = onward.reduce((best, l) => (turn * turnInto(here, l) > turn * turnInto(here, best) ? l : best));
      unused.delete(next);
      trail.push(next);
    }
  }
  return paths;
};
