import type { Settled } from '../../settle.ts';
import type { Point } from '../../shape/types.ts';

/** What is gone by when a number is not put in by typing it: the job's path that holds it, and what it becomes. */
export interface Pull {
  readonly jobPath: string;
  /** The value, in stored units, with which the grip stands at this place of its view, or as near as the grip goes. Not held to the field's limits; infinite where a radius would have to be flat. */
  readonly value: (to: Point) => number;
}

/**
 * A place on a view where a number can be taken hold of and dragged: the inverse of where the field puts it. Places are those of the view, mm, y DOWN, the guitar's hand and the heights' stretch counted in.
 */
export interface Grip extends Pull {
  /** Stable and unique within its view. */
  readonly id: string;
  readonly at: Point;
  /** The direction in which it goes, of length 1; undefined where it goes anywhere. */
  readonly axis?: Point;
  /** What changes with it square to the first number, where it goes anywhere. */
  readonly also?: Pull;
  /** The same number is held at another grip, which speaks for both. */
  readonly isTwin?: boolean;
}

/** Across the page, down the page. */
export const acrossPage: Point = { x: 1, y: 0 };
export const downPage: Point = { x: 0, y: 1 };

interface Even {
  readonly id: string;
  readonly jobPath: string;
  readonly at: Point;
  readonly axis: Point;
  /** The value now. */
  readonly now: number;
  /** By how much it grows for each mm along the axis. */
  readonly rate?: number;
  readonly isTwin?: boolean;
}

/** A grip whose place goes evenly with its number. */
export const even = ({ now, rate = 1, ...grip }: Even): Grip => ({
  ...grip,
  value: ({ x, y }) => now + rate * ((x - grip.at.x) * grip.axis.x + (y - grip.at.y) * grip.axis.y),
});

/** Steps after which no nearer value is looked for, and how near is enough, mm. */
const mostSteps = 24;
const near = 1e-9;

/**
 * The number that takes `place` to a target, by the secant method from `now`, where the place goes nearly evenly with the number by `slope`. Where `place` has no answer the step is halved. The nearest that was found, if none is near enough.
 */
export const found = (place: (value: number) => number | undefined, target: number, now: number, slope = 1): number => {
  let [value, miss] = [now, (place(now) ?? target) - target];
  let rise = slope;
  for (let step = 0; step < mostSteps && Math.abs(miss) > near; step += 1) {
    let by = -miss / rise;
    let next = place(value + by);
    for (let half = 0; half < mostSteps && next === undefined; half += 1) {
      by /= 2;
      next = place(value + by);
    }
    if (next === undefined) break;
    const missed = next - target;
    if (missed !== miss) rise = (missed - miss) / by;
    if (Math.abs(missed) >= Math.abs(miss) && step > 2) break;
    [value, miss] = [value + by, missed];
  }
  return value;
};

const mirroredPull = <P extends Pull>(pull: P): P => ({
  ...pull,
  value: ({ x, y }: Point) => pull.value({ x: -x, y }),
});

/** Grips of a view that is mirrored for a left-handed guitar. */
export const gripsForHand = (grips: readonly Grip[], { hand }: Pick<Settled, 'hand'>): readonly Grip[] =>
  hand === 'right'
    ? grips
    : grips.map((grip) => ({
        ...mirroredPull(grip),
        at: { x: 0 - grip.at.x, y: grip.at.y },
        ...(grip.axis && { axis: { x: 0 - grip.axis.x, y: grip.axis.y } }),
        ...(grip.also && { also: mirroredPull(grip.also) }),
      }));

/** Where a view lies on the sheet, mm, and how many times as large its heights are drawn. */
export interface Put {
  readonly place: Point;
  readonly heights: number;
}

const put = <P extends Pull>(pull: P, { place, heights }: Put): P => ({
  ...pull,
  value: ({ x, y }: Point) => pull.value({ x: x - place.x, y: (y - place.y) / heights }),
});

/** Grips as they stand on the sheet. */
export const putOnSheet = (grips: readonly Grip[], where: Put): readonly Grip[] =>
  grips.map((grip) => ({
    ...put(grip, where),
    at: { x: grip.at.x + where.place.x, y: grip.at.y * where.heights + where.place.y },
    ...(grip.also && { also: put(grip.also, where) }),
  }));
