import { coordinates, cubicAt, cubicSpeed, splitCubic } from './cubic.ts';
import { nearestOn } from './nearest.ts';
import { cross, distance, subtract } from './point.ts';
import type { Cubic, Point } from './types.ts';

type Pair = readonly [t: number, u: number];

/** A stretch of a cubic, and the parameters it spans on the whole one. */
interface Stretch {
  readonly c: Cubic;
  readonly from: number;
  readonly to: number;
}

/** A stretch that bends less than this (mm) is taken for its chord. */
const flat = 1e-9;
/** Stretches farther apart than this (mm) do not meet. */
const reach = 3e-9;

const halves = ({ c, from, to }: Stretch): readonly [Stretch, Stretch] => {
  const [left, right] = splitCubic(c, 0.5);
  const middle = (from + to) / 2;
  return [
    { c: left, from, to: middle },
    { c: right, from: middle, to },
  ];
};

const reaches = (values: readonly number[]): readonly [number, number] => [Math.min(...values), Math.max(...values)];

const clear = (a: readonly number[], b: readonly number[]): boolean => {
  const [a0, a1] = reaches(a);
  const [b0, b1] = reaches(b);
  return a0 > b1 + reach || b0 > a1 + reach;
};

const handles = (c: Cubic): readonly Point[] => [c.from, c.c1, c.c2, c.to];

/** Heights over the chord of `over`, mm; of no use when the chord has no length. */
const heights = (c: Cubic, over: Cubic): readonly number[] | undefined => {
  const chord = subtract(over.to, over.from);
  const size = Math.hypot(chord.x, chord.y);
  return size > 0 ? handles(c).map((p) => cross(chord, subtract(p, over.from)) / size) : undefined;
};

const bend = (c: Cubic): number => {
  const h = heights(c, c);
  return h ? Math.max(...h.map(Math.abs)) : Math.max(...handles(c).map((p) => distance(p, c.from)));
};

/** Whether two stretches surely miss each other: their control points part along x, y or square to one of the chords (a fat line). */
const miss = (a: Cubic, b: Cubic): boolean => {
  const pa = coordinates(a);
  const pb = coordinates(b);
  if (clear(pa.x, pb.x) || clear(pa.y, pb.y)) return true;
  return [a, b].some((over) => {
    const ha = heights(a, over);
    const hb = heights(b, over);
    return ha !== undefined && hb !== undefined && clear(ha, hb);
  });
};

/** Newton's step in both parameters, kept while it brings the two points nearer. */
const polish = (a: Cubic, b: Cubic, from: Pair): { readonly pair: Pair; readonly gap: number } => {
  const gapAt = ([t, u]: Pair): Point => subtract(cubicAt(b, u), cubicAt(a, t));
  const size = (p: Point): number => Math.hypot(p.x, p.y);
  let pair = from;
  let gap = gapAt(pair);
  for (let i = 0; i < 8 && size(gap) > 0; i++) {
    const va = cubicSpeed(a, pair[0]);
    const vb = cubicSpeed(b, pair[1]);
    const sine = cross(va, vb);
    if (sine === 0) break;
    const next: Pair = [pair[0] + cross(gap, vb) / sine, pair[1] + cross(gap, va) / sine];
    const nextGap = gapAt(next);
    if (!(size(nextGap) < size(gap)) || next.some((t) => t < 0 || t > 1)) break;
    pair = next;
    gap = nextGap;
  }
  return { pair, gap: size(gap) };
};

/** When both share a stretch, what its ends tell is all there is to say; a crossing at a point is no stretch. */
const shareStretch = (a: Cubic, b: Cubic): boolean => {
  const onB = [0, 1].filter((t) => nearestOn(b, cubicAt(a, t)).distance <= flat);
  const onA = [0, 1]
    .map((u) => nearestOn(a, cubicAt(b, u)))
    .filter((n) => n.distance <= flat)
    .map((n) => n.t);
  const shared = [...onB, ...onA].sort((p, q) => p - q);
  const from = shared[0];
  const to = shared.at(-1);
  if (from === undefined || to === undefined || to - from < 1e-6) return false;
  return [0.25, 0.5, 0.75].every((k) => nearestOn(b, cubicAt(a, from + (to - from) * k)).distance <= flat);
};

/**
 * Where two cubics cross or touch, as pairs of parameters: both are halved as long as their control points allow a meeting, until they
 * are straight within 1e-9 mm; Newton's method then settles the place.
 */
export const cubicMeetings = (a: Cubic, b: Cubic): readonly Pair[] => {
  if (shareStretch(a, b)) return [];
  const whole = (c: Cubic): Stretch => ({ c, from: 0, to: 1 });
  const found: { readonly pair: Pair; readonly gap: number; readonly point: Point }[] = [];
  const open: (readonly [Stretch, Stretch])[] = [[whole(a), whole(b)]];
  for (let next = open.pop(); next; next = open.pop()) {
    const [p, q] = next;
    if (miss(p.c, q.c)) continue;
    const straightP = bend(p.c) <= flat;
    const straightQ = bend(q.c) <= flat;
    if (straightP && straightQ) {
      const { pair, gap } = polish(a, b, [(p.from + p.to) / 2, (q.from + q.to) / 2]);
      if (gap <= reach) found.push({ pair, gap, point: cubicAt(a, pair[0]) });
    } else {
      const ps = straightP ? [p] : halves(p);
      const qs = straightQ ? [q] : halves(q);
      for (const r of ps) for (const s of qs) open.push([r, s]);
    }
  }
  // Where they only touch, a row of stretches comes within reach: the nearest of them stands for all.
  const kept: typeof found = [];
  for (const f of found.sort((m, n) => m.gap - n.gap))
    if (!kept.some((k) => distance(k.point, f.point) <= (f.gap > 1e-12 ? 1e-2 : 1e-7))) kept.push(f);
  return kept.map((k) => k.pair);
};
