import type { Mark } from '../drawing.ts';
import { pointOn } from '../shape/along.ts';
import { boundsOfSegment } from '../shape/bounds.ts';
import { meetings } from '../shape/intersect.ts';
import { nearestOn } from '../shape/nearest.ts';
import { distance } from '../shape/point.ts';
import type { Arc, Bounds, Point, Segment } from '../shape/types.ts';

/** What a place is caught by: an edge's end, its middle or its centre, where two edges cross, the place of an edge that is square to where a measurement begins, or the nearest place of an edge. */
export type SnapKind = 'end' | 'crossing' | 'centre' | 'middle' | 'square' | 'edge';

export interface Snap {
  readonly kind: SnapKind;
  /** In the view's own true mm, exactly on its geometry. */
  readonly point: Point;
}

/** A segment of a view, and the box around it. */
export interface Edge {
  readonly segment: Segment;
  readonly box: Bounds;
}

/** The edges of a view that is not stretched: all its strokes, but neither dimensions nor hatching. */
export const edgesOf = (marks: readonly Mark[]): readonly Edge[] =>
  marks.flatMap((mark) =>
    mark.kind === 'path' ? mark.path.segments.map((segment) => ({ segment, box: boundsOfSegment(segment) })) : [],
  );

/** Places nearer to each other than this are one, mm. */
const same = 1e-6;
const turn = 2 * Math.PI;

const isRound = (s: Segment): s is Arc => s.kind === 'arc' && Math.abs(s.sweep) > turn - 1e-9;

/** The least of a function between two places round a sampled least one, by golden section. */
const leastBetween = (f: (t: number) => number, from: number, to: number): number => {
  const ratio = (Math.sqrt(5) - 1) / 2;
  let [a, b] = [from, to];
  let [c, d] = [b - ratio * (b - a), a + ratio * (b - a)];
  let [fc, fd] = [f(c), f(d)];
  for (let k = 0; k < 80 && b - a > 1e-13; k += 1) {
    if (fc < fd) {
      [b, d, fd] = [d, c, fc];
      c = b - ratio * (b - a);
      fc = f(c);
    } else {
      [a, c, fc] = [c, d, fd];
      d = a + ratio * (b - a);
      fd = f(d);
    }
  }
  return (a + b) / 2;
};

/** How many places of an arc are tried first: between two of them lies at most one place that is nearest. */
const tries = 48;

/** The place of an edge that is nearest as it is shown, its heights drawn larger. Lines and cubics keep their parameter when they are stretched; an arc, then part of an ellipse, is searched. */
const nearestShown = (segment: Segment, at: Point, heights: number): Point => {
  if (heights === 1) return nearestOn(segment, at).point;
  const up = (p: Point): Point => ({ x: p.x, y: p.y * heights });
  if (segment.kind === 'line')
    return pointOn(segment, nearestOn({ ...segment, from: up(segment.from), to: up(segment.to) }, up(at)).t);
  if (segment.kind === 'cubic') {
    const { from, c1, c2, to } = segment;
    return pointOn(segment, nearestOn({ ...segment, from: up(from), c1: up(c1), c2: up(c2), to: up(to) }, up(at)).t);
  }
  const away = (t: number) => distance(up(pointOn(segment, t)), up(at));
  let best = 0;
  for (let k = 1; k <= tries; k += 1) if (away(k / tries) < away(best / tries)) best = k;
  return pointOn(segment, leastBetween(away, Math.max(0, best - 1) / tries, Math.min(tries, best + 1) / tries));
};

/** How much farther off than it is a place is taken to be, as a share of the reach: an end is rather meant than a crossing beside it, and what is only worked out least of all. */
const handicap: Readonly<Record<SnapKind, number>> = {
  end: 0,
  crossing: 0.2,
  centre: 0.3,
  middle: 0.3,
  square: 0.4,
  edge: 2,
};

interface Snapping {
  /** How far off a place may be, mm on the drawing as it is shown. */
  readonly reach: number;
  /** How many times as large heights are drawn. */
  readonly heights: number;
  /** Where the measurement begins, if it has begun in this view. */
  readonly from?: Point | undefined;
}

/**
 * The places of a view's geometry near a point, both in the view's own true mm: first those that are points, the nearest first (an end before what is about as near), then those on edges. What is near is told by how it is shown, stretched; what is caught is exact.
 * A place that is several things at once is told once, by the first of end, crossing, centre, middle and square.
 */
export const snapsNear = (edges: readonly Edge[], at: Point, { reach, heights, from }: Snapping): readonly Snap[] => {
  const away = (p: Point) => Math.hypot(p.x - at.x, (p.y - at.y) * heights);
  const up = reach / heights;
  const near = edges
    .filter(
      ({ box }) =>
        box.minX <= at.x + reach && box.maxX >= at.x - reach && box.minY <= at.y + up && box.maxY >= at.y - up,
    )
    .map(({ segment }) => ({ segment, nearest: nearestShown(segment, at, heights) }))
    .filter(({ nearest }) => away(nearest) <= reach);
  const of = (kind: SnapKind, points: readonly Point[]): readonly Snap[] => points.map((point) => ({ kind, point }));
  const segments = near.map(({ segment }) => segment);
  const open = segments.filter((s) => !isRound(s));
  const points = [
    ...of(
      'end',
      open.flatMap((s) => [pointOn(s, 0), pointOn(s, 1)]),
    ),
    ...of(
      'crossing',
      segments.flatMap((a, k) => segments.slice(k + 1).flatMap((b) => meetings(a, b).map(({ point }) => point))),
    ),
    ...of(
      'centre',
      edges.flatMap(({ segment }) => (segment.kind === 'arc' ? [segment.centre] : [])),
    ),
    ...of(
      'middle',
      open.flatMap((s) => (s.kind === 'cubic' ? [] : [pointOn(s, 0.5)])),
    ),
    ...of(
      'square',
      from === undefined
        ? []
        : segments.flatMap((s) => {
            const foot = nearestOn(s, from);
            return foot.t > 0 && foot.t < 1 ? [foot.point] : [];
          }),
    ),
  ].filter(({ point }) => away(point) <= reach);
  const on = of(
    'edge',
    near.map(({ nearest }) => nearest),
  );
  const found: Snap[] = [];
  for (const snap of [...points, ...on])
    if (!found.some(({ point }) => distance(point, snap.point) <= same)) found.push(snap);
  const rank = ({ kind, point }: Snap) => away(point) + handicap[kind] * reach;
  return found.sort((a, b) => rank(a) - rank(b));
};
