import { leavesAt } from '../bridge/pins.ts';
import { rangeOf } from '../checks/ranges.ts';
import type { SolvedString } from '../design.ts';
import { perDesign } from '../per-design.ts';
import type { Settled } from '../settle.ts';

export type LifeLimit = 'exposure' | 'breakAngle';

export interface Life {
  /** How far the action can still come down at fret 12, mm; negative where a limit is passed already. */
  readonly atFret12: number;
  /** The same at the saddle. */
  readonly atSaddle: number;
  /** What is met first. */
  readonly limit: LifeLimit;
}

const DEGREES = 180 / Math.PI;

/**
 * The break angle with the saddle lowered by d, degrees: the string pivots at the nut, so its slope falls by d/x_s, and so does its height over where it leaves the bridge; before a ramp it then lies on
 * whichever corner it falls to less steeply, not always the one of today.
 */
const loweredBreakAngle = (job: Settled, s: SolvedString, d: number): number => {
  const height = s.heightAboveFretPlane - d;
  const { x, z } = leavesAt(job, s.pin, s.acrossAtSaddle, s.breakX, height);
  return (Math.atan(s.slope - d / s.breakX) + Math.atan((height - z) / (x - s.breakX))) * DEGREES;
};

/** How far the saddle can come down until the break angle is `least` degrees, mm; bisection, as the angle falls all the way. */
const untilBreakAngle = (job: Settled, s: SolvedString, least: number): number => {
  let [low, high] = [-50, 50];
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (loweredBreakAngle(job, s, middle) > least) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

/**
 * How far each string's action can still be lowered at fret 12 until its exposure or its break angle falls below the least that is right, and which of them that is. The string pivots at the nut: what comes off
 * the saddle shows at fret 12 as `x_12/x_s` of it [practice: half].
 */
export const lifeLeft = perDesign((job, design): readonly Life[] => {
  const leastExposure = rangeOf(job, 'exposure').range.from ?? 0;
  const leastAngle = rangeOf(job, 'breakAngle').range.from ?? 0;
  return design.strings.map((s) => {
    const byExposure = s.exposure - leastExposure;
    const byAngle = untilBreakAngle(job, s, leastAngle);
    const limit = byExposure <= byAngle ? 'exposure' : 'breakAngle';
    const atSaddle = Math.min(byExposure, byAngle);
    return { atSaddle, atFret12: (atSaddle * design.fret12) / s.breakX, limit };
  });
});
