import { cubicAcceleration, cubicSpeed } from '../../geometry/shape/cubic.ts';
import { lengthOf, pathLength, tangentOn } from '../../geometry/shape/measure.ts';
import { cross, dot } from '../../geometry/shape/point.ts';
import type { Path, Segment } from '../../geometry/shape/types.ts';
import { stretch } from './along.ts';

export interface Tabs {
  /** So many round a contour; 0 for none. */
  readonly count: number;
  /** At most so far apart along it, mm. */
  readonly spacing: number | 'any';
  /** How much of the tool's way is left out for each, mm. */
  readonly gap: number;
}

/** A contour keeps so many gaps' lengths for each tab, or gets fewer. */
const room = 6;
/** How far a tab may be moved from its even place, as a share of the way from one to the next. */
const reach = 0.4;
/** What a place off the straight counts for, where a stub is harder to dress off and the curve is often what matters, and one near a corner, in that same share. */
const bent = 0.5;
const nearCorner = 1.5;
/** A joint that turns by more than this (radians) is a corner, and so is a bend tighter than so many gaps. */
const corner = 0.02;
const tight = 3;
/** How many beginnings are tried for the row of tabs. */
const beginnings = 48;

interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly cost: number;
}

/** The least radius to which a segment is bent, mm. */
const tightest = (s: Segment): number => {
  if (s.kind === 'line') return Number.POSITIVE_INFINITY;
  if (s.kind === 'arc') return s.radius;
  const radii = Array.from({ length: 9 }, (_, k) => {
    const v = cubicSpeed(s, k / 8);
    return Math.hypot(v.x, v.y) ** 3 / Math.abs(cross(v, cubicAcceleration(s, k / 8)));
  });
  return Math.min(...radii.filter((radius) => !Number.isNaN(radius)));
};

const turnBetween = (a: Segment, b: Segment): number => {
  const [u, v] = [tangentOn(a, 1), tangentOn(b, 0)];
  return Math.abs(Math.atan2(cross(u, v), dot(u, v)));
};

/** Where the middle of a tab may stand, in mm along the path: gently bent stretches with a gap's length clear of every corner, and the straights in them. */
const berthsOf = ({ segments }: Path, gap: number): readonly Stretch[] => {
  const isGentle = segments.map((s) => tightest(s) >= tight * gap);
  const breaks = segments.map((s, k) => {
    const before = (k || segments.length) - 1;
    return !isGentle[k] || !isGentle[before] || turnBetween(segments[before] as Segment, s) > corner;
  });
  const first = breaks.indexOf(true);
  const starts: number[] = [];
  let whole = 0;
  for (const s of segments) {
    starts.push(whole);
    whole += lengthOf(s);
  }
  const straights = segments.flatMap((s, k): Stretch[] => {
    const from = starts[k] as number;
    return s.kind === 'line' ? [{ from: from + gap / 2, to: from + lengthOf(s) - gap / 2, cost: 0 }] : [];
  });
  if (first < 0) return [{ from: 0, to: whole, cost: bent }, ...straights].filter(({ from, to }) => to > from);
  const runs: Stretch[] = [];
  for (let n = 0; n < segments.length; n++) {
    const k = (first + n) % segments.length;
    const from = starts[k] as number;
    const to = from + lengthOf(segments[k] as Segment);
    const last = runs.at(-1);
    if (!isGentle[k]) continue;
    if (breaks[k] || !last) runs.push({ from, to, cost: bent });
    else runs[runs.length - 1] = { ...last, to: last.to + to - from };
  }
  const clear = runs.map((run) => ({ ...run, from: run.from + 1.5 * gap, to: run.to - 1.5 * gap }));
  const within = clear.flatMap((run) =>
    [0, whole].flatMap((round) =>
      straights.map((s) => ({
        from: Math.max(s.from + round, run.from),
        to: Math.min(s.to + round, run.to),
        cost: 0,
      })),
    ),
  );
  return [...clear, ...within].filter(({ from, to }) => to > from);
};

/** The best place near an even one, and what it costs. */
const settle = (even: number, berths: readonly Stretch[], whole: number, apart: number) =>
  berths
    .flatMap(({ from, to, cost }) =>
      [-whole, 0, whole].map((round) => {
        const at = Math.min(Math.max(even, from + round), to + round);
        return { at, cost: cost + Math.abs(at - even) / apart };
      }),
    )
    .filter(({ at }) => Math.abs(at - even) <= reach * apart)
    .reduce((best, place) => (place.cost < best.cost ? place : best), { at: even, cost: nearCorner });

/**
 * The middles of a closed contour's tabs, in mm along it: as even as may be, on straights where there are any near, clear of corners. Fewer than asked where
 * the contour is too short for them, none on one that has no room for one.
 */
export const tabPlaces = (closed: Path, { count, spacing, gap }: Tabs): readonly number[] => {
  const whole = pathLength(closed);
  const wanted = count === 0 ? 0 : Math.max(count, spacing === 'any' ? 0 : Math.ceil(whole / spacing));
  const number = Math.min(wanted, Math.floor(whole / (room * gap)));
  if (number === 0) return [];
  const apart = whole / number;
  const berths = berthsOf(closed, gap);
  const rows = Array.from({ length: beginnings }, (_, b) => {
    const places = Array.from({ length: number }, (_, k) =>
      settle(((b + 0.5) / beginnings + k) * apart, berths, whole, apart),
    );
    return { places, cost: places.reduce((sum, { cost }) => sum + cost, 0) };
  });
  const best = rows.reduce((least, row) => (row.cost < least.cost - 1e-9 ? row : least));
  return best.places.map(({ at }) => at);
};

/** A closed contour without its tabs: open stretches from one to the next, in their order; the contour itself where it gets none. */
export const withoutTabs = (closed: Path, tabs: Tabs): readonly Path[] => {
  const places = tabPlaces(closed, tabs);
  const whole = pathLength(closed);
  if (places.length === 0) return [closed];
  return places.map((at, k) => {
    const next = places[k + 1] ?? (places[0] as number) + whole;
    const round = at < 0 ? whole : 0;
    return stretch(closed, at + tabs.gap / 2 + round, next - tabs.gap / 2 + round);
  });
};
