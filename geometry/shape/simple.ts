import { pointOn } from './along.ts';
import { monotoneParts } from './cubic.ts';
import { meetings } from './intersect.ts';
import { nearestOn } from './nearest.ts';
import { segmentEnd, segmentStart } from './path.ts';
import { distance } from './point.ts';
import type { Path, Segment } from './types.ts';

/** Meetings this near (mm) to a joint are the joint. */
const joint = 1e-6;

/** Whether a path neither crosses, touches nor retraces itself; its joints do not count. */
export const isSimple = (path: Path): boolean => {
  const parts: readonly Segment[] = path.segments
    .flatMap((s): readonly Segment[] => (s.kind === 'cubic' ? monotoneParts(s) : [s]))
    .filter((s) => s.kind !== 'line' || distance(s.from, s.to) > 0);
  const follows = (i: number, j: number): boolean => j === i + 1 || (path.closed && j === 0 && i === parts.length - 1);
  return parts.every((a, i) =>
    parts.slice(i + 1).every((b, k) => {
      const j = i + 1 + k;
      const joints = [...(follows(i, j) ? [segmentEnd(a)] : []), ...(follows(j, i) ? [segmentStart(a)] : [])];
      if (!meetings(a, b).every((m) => joints.some((p) => distance(p, m.point) <= joint))) return false;
      // Two segments between the same two joints may be one line, there and back.
      return joints.length < 2 || nearestOn(b, pointOn(a, 0.5)).distance > joint;
    }),
  );
};
