import type { Settled } from '../settle.ts';
import { drop } from '../shape/sagitta.ts';

/** Height of the bare top at the saddle line on the centre line, at pitch, above the fret plane, mm: `−h + rise`. */
export const topHeight = (job: Settled): number => -job.guitar.neckPlaneHeight + job.guitar.rise;

/** Height of the bridge's deck at y above the fret plane, at pitch, mm: `−h + rise + T_c − drop(R_b, y) + tilt·y`. Throws a RangeError when |y| > R_b. */
export const deckHeight = (job: Settled, y: number): number =>
  topHeight(job) + job.bridge.thickness - drop(job.bridge.topRadius, y) + job.bridge.tilt * y;

/** Height of the bridge's underside, which follows the top's dome, at y, mm: `−h + rise − drop(R_t, y)`. */
export const undersideHeight = (job: Settled, y: number): number => topHeight(job) - drop(job.guitar.topRadius, y);
