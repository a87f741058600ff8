import { pointOn } from './along.ts';
import { boundsApart, boundsOfSegment } from './bounds.ts';
import { meetings } from './intersect.ts';
import type { Bounds, Line, Segment } from './types.ts';

/** From where to where along a segment, 0 to 1. */
export type Stretch = readonly [from: number, to: number];

/** Shorter stretches than this only touch. */
const touch = 1e-9;

/** The part of a line in a box, after Liang and Barsky 1984. */
const lineWithin = ({ from, to }: Line, box: Bounds): readonly Stretch[] => {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  let [low, high] = [0, 1];
  for (const [p, q] of [
    [-dx, from.x - box.minX],
    [dx, box.maxX - from.x],
    [-dy, from.y - box.minY],
    [dy, box.maxY - from.y],
  ] as const) {
    if (p === 0) {
      if (q < 0) return [];
    } else if (p < 0) low = Math.max(low, q / p);
    else high = Math.min(high, q / p);
  }
  return high - low > touch ? [[low, high]] : [];
};

const edgesOf = ({ minX, minY, maxX, maxY }: Bounds): readonly Line[] => {
  const corners = [
    { x: minX, y: minY },
    { x: maxX, y: minY },
    { x: maxX, y: maxY },
    { x: minX, y: maxY },
  ] as const;
  return corners.map((from, k) => ({ kind: 'line', from, to: corners[(k + 1) % 4] ?? from }));
};

/** The stretches of a segment that lie in an upright box, in order; one that only touches it from outside has none. */
export const stretchesWithin = (segment: Segment, box: Bounds): readonly Stretch[] => {
  if (segment.kind === 'line') return lineWithin(segment, box);
  if (boundsApart(boundsOfSegment(segment), box, 0)) return [];
  const cuts = [0, ...edgesOf(box).flatMap((edge) => meetings(segment, edge).map(({ t }) => t)), 1].sort(
    (a, b) => a - b,
  );
  return cuts.slice(1).flatMap((to, k): Stretch[] => {
    const from = cuts[k] ?? 0;
    if (to - from <= touch) return [];
    const { x, y } = pointOn(segment, (from + to) / 2);
    return x > box.minX && x < box.maxX && y > box.minY && y < box.maxY ? [[from, to]] : [];
  });
};
