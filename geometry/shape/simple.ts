import { pointOn } from './along.ts';
import { boundsApart, boundsOfSegment } from './bounds.ts';
import { monotoneParts } from './cubic.ts';
import { meetings } from './intersect.ts';
import { nearestOn } from './nearest.ts';
import { segmentEnd, segmentStart } from './path.ts';
import { distance } from './point.ts';
import type { Bounds, Path, Point, Segment } from './types.ts';

/** Meetings this near (mm) to a joint are the joint. */
const joint = 1e-6;

/** A place where a path crosses, touches or retraces itself, the first that is found; undefined where it does not. Its joints do not count. */
export const ownMeeting = (path: Path): Point | undefined => {
  const parts: readonly Segment[] = path.segments
    .flatMap((s): readonly Segment[] => (s.kind === 'cubic' ? monotoneParts(s) : [s]))
    .filter((s) => s.kind !== 'line' || distance(s.from, s.to) > 0);
  const boxes = parts.map(boundsOfSegment);
  const follows = (i: number, j: number): boolean => j === i + 1 || (path.closed && j === 0 && i === parts.length - 1);
  for (const [i, a] of parts.entries())
    for (const [k, b] of parts.slice(i + 1).entries()) {
      const j = i + 1 + k;
      if (boundsApart(boxes[i] as Bounds, boxes[j] as Bounds, joint)) continue;
      const joints = [...(follows(i, j) ? [segmentEnd(a)] : []), ...(follows(j, i) ? [segmentStart(a)] : [])];
      const found = meetings(a, b).find((m) => joints.every((p) => distance(p, m.point) > joint));
      if (found) return found.point;
      // Two segments between the same two joints may be one line, there and back.
      if (joints.length < 2) continue;
      const middle = pointOn(a, 0.5);
      if (nearestOn(b, middle).distance <= joint) return middle;
    }
  return undefined;
};

/** Whether a path neither crosses, touches nor retraces itself; its joints do not count. */
export const isSimple = (path: Path): boolean => ownMeeting(path) === undefined;
