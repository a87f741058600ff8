import { fieldAt } from '../../../../geometry/fields.ts';
import type { Point } from '../../../../geometry/shape/types.ts';
import type { ShowUnits } from '../../../../geometry/units.ts';
import type { Grip } from '../../../../geometry/views/grips/index.ts';
import { gaugesIn, strideBeyond } from './step.ts';

/** A hand that drags a radius goes at least so far from one gauge's to the next, px; and so far from flat to where the largest gauge begins. */
const least = 12;
const toGauges = 42;
/** How far to either side it is looked how the radius goes with its place, mm. */
const beside = 0.01;

/** A place on the way of a hand, px from where the arc is flat, and how much the arc bends there, 1/mm. */
interface Knot {
  readonly px: number;
  readonly bend: number;
}

/** The straight line through two knots, from one of their numbers to the other. */
const line = (from: 'px' | 'bend', to: 'px' | 'bend', a: Knot, b: Knot, value: number): number =>
  a[to] + ((value - a[from]) * (b[to] - a[to])) / (b[from] - a[from]);

/** One number of a way by the other, which may lie beyond its ends. */
const along = (knots: readonly Knot[], from: 'px' | 'bend', to: 'px' | 'bend', value: number): number => {
  const next = knots.findIndex((knot, k) => k > 0 && knot[from] >= value);
  const k = next === -1 ? knots.length - 1 : next;
  return line(from, to, knots[k - 1] as Knot, knots[k] as Knot, value);
};

/** Radii, mm, the largest first, and how far a hand goes at least to each from the one before, px: first from flat to where a radius rests on the largest gauge. */
const rungs = (show: ShowUnits): readonly { readonly radius: number; readonly px: number }[] => {
  const [largest = 0, ...others] = gaugesIn(show).toReversed();
  return [
    { radius: largest + strideBeyond(show) / 2, px: toGauges },
    { radius: largest, px: least / 2 },
    ...others.map((radius) => ({ radius, px: least })),
  ];
};

/** A grip that the hand leaves behind or outruns along its way. */
export type GearedGrip = Grip & { readonly axis: Point };

/** Whether a grip is geared: it holds a radius. */
export const isGeared = (grip: Grip): grip is GearedGrip =>
  grip.axis !== undefined && fieldAt(grip.jobPath)?.kind === 'radius';

/**
 * The radius, mm, to which a hand at this place of the drawing drags its grip; infinite where the arc would be flat. `scale` is in px per mm. An arc falls by tenths of a millimetre from one gauge to the next, less than a hand can hold
 * apart: between gauges that lie nearer to each other than 12 px the hand goes those 12 px, else as far as the arc does.
 */
export const geared = (
  { at, axis, value }: Pick<GearedGrip, 'at' | 'axis' | 'value'>,
  to: Point,
  scale: number,
  show: ShowUnits,
): number => {
  const bendAt = (travel: number) => 1 / value({ x: at.x + travel * axis.x, y: at.y + travel * axis.y });
  const now = bendAt(0);
  // From flat, it bends to one side only.
  const [ahead, behind] = [(bendAt(beside) - now) / beside, (now - bendAt(-beside)) / beside];
  /** How much more it bends with each px of the arc's own way. */
  const rate = (Math.abs(ahead) > Math.abs(behind) ? ahead : behind) / scale;
  if (rate === 0) return value(to);
  const own = Math.abs(rate);
  const knots: Knot[] = [
    { px: -1, bend: -own },
    { px: 0, bend: 0 },
  ];
  for (const { radius, px: wide } of rungs(show)) {
    const { px, bend: before } = knots.at(-1) as Knot;
    const bend = 1 / radius;
    knots.push({ px: px + Math.max(wide, (bend - before) / own), bend });
  }
  const { px: last, bend: most } = knots.at(-1) as Knot;
  knots.push({ px: last + 1, bend: most + own });
  const travel = ((to.x - at.x) * axis.x + (to.y - at.y) * axis.y) * scale;
  const bend = along(knots, 'px', 'bend', along(knots, 'bend', 'px', now) + Math.sign(rate) * travel);
  return bend > 0 ? 1 / bend : Number.POSITIVE_INFINITY;
};
