import type { Design } from '../design.ts';
import type { Settled } from '../settle.ts';
import { dot, lerp } from '../shape/point.ts';
import { rounded } from '../shape/rounded.ts';
import type { Path, Point } from '../shape/types.ts';
import { insideOf } from './cover.ts';
import { type Brace, placeOf } from './existing.ts';
import { type PinHole, pinHoles } from './pins.ts';

/** Radius of the cap's eased corners, mm [practice]. */
const corner = 2;

/** What a grain line has to keep between the edges of two holes, mm [practice]. */
export const grainKept = 1;

/** The overlay on a worn bridge plate, from above; mm. */
export interface PlateCap {
  readonly outline: Path;
  readonly middle: Point;
  readonly thickness: number;
  /** Where the pin holes go through it, bass first. */
  readonly holes: readonly PinHole[];
  /** Its grain's direction, as a unit vector. */
  readonly grain: Point;
  /** Least distance between two holes' middles, square to the grain; infinite where there is only one. */
  readonly apart: number;
  /** How much farther apart, square to the grain, neighbouring holes would have to be staggered so that each grain line passes through one of them only; 0 where it does. */
  readonly stagger: number;
  /** Least wood between a hole's edge and the cap's; negative where a hole runs out of it. */
  readonly wall: number;
}

const half = Math.SQRT1_2;

/** The grain's direction from above: one that is slanted runs from the bass side's front to the treble side's rear. */
const grains: Readonly<Record<Settled['plate']['grain'], Point>> = {
  across: { x: 1, y: 0 },
  along: { x: 0, y: 1 },
  slanted: { x: half, y: half },
};

const eased = (middle: Point, length: number, depth: number): Path =>
  rounded((dx, dy) => ({ x: middle.x + dx, y: middle.y + dy }), length, depth, Math.min(corner, length / 2, depth / 2));

/** The least distance between two of these places, square to a direction (a unit vector), mm. */
export const apartSquareTo = (direction: Point, places: readonly Point[]): number => {
  const square = { x: -direction.y, y: direction.x };
  const sorted = places.map((place) => dot(place, square)).sort((a, b) => a - b);
  return sorted.slice(1).reduce((least, at, k) => Math.min(least, at - (sorted[k] ?? at)), Number.POSITIVE_INFINITY);
};

/** Holes that are to lie on separate grain lines stand so far apart square to the grain, mm: a hole's width and what is kept between two. */
export const apartNeeded = (job: Settled): number => job.pins.hole + grainKept;

/** The cap on the bridge plate, its pins' holes in its middle; undefined where there is none, or no pins to go through it. */
export const plateCap = (job: Settled, design: Design): PlateCap | undefined => {
  const { cap, length, depth, grain } = job.plate;
  const drilled = pinHoles(job, design);
  if (typeof cap !== 'number' || drilled.length === 0) return undefined;
  const holes = drilled.map(({ at }) => at);
  const along = holes.map(({ y }) => y);
  const across = holes.map(({ x }) => x);
  const between = (values: readonly number[]) => (Math.min(...values) + Math.max(...values)) / 2;
  const middle = { x: between(across), y: between(along) };
  const outline = eased(middle, length, depth);
  const inCap = insideOf(outline);
  const apart = apartSquareTo(grains[grain], holes);
  return {
    outline,
    middle,
    thickness: cap,
    holes: drilled,
    grain: grains[grain],
    apart,
    stagger: Math.max(0, apartNeeded(job) - apart),
    wall: Math.min(...drilled.map(({ at, diameter }) => inCap(at) - diameter / 2)),
  };
};

/** Steps by thirds that find the lowest place of a valley to the last digits that matter. */
const thirds = 45;

/**
 * From the cap's edge to a brace's, mm: how far the two stand apart; negative by how far the brace reaches into the cap. The signed distance from a convex outline runs convex along a line, so that thirds
 * find where it is least.
 */
export const capToBrace = ({ outline }: PlateCap, brace: Brace): number => {
  const [from, to] = [placeOf(brace), { x: brace.acrossTo, y: brace.fromNutTo }];
  const inCap = insideOf(outline);
  const outsideBy = (t: number) => -inCap(lerp(from, to, t));
  let [low, high] = [0, 1];
  for (let k = 0; k < thirds; k += 1) {
    const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
    if (outsideBy(a) <= outsideBy(b)) high = b;
    else low = a;
  }
  return outsideBy((low + high) / 2) - brace.width / 2;
};
