import type { Settled } from '../settle.ts';
import { drop } from '../shape/sagitta.ts';

/** Which half of the bridge: −1 bass, +1 treble. */
export type Half = -1 | 1;

/** Height of the bare top at the saddle line on the centre line, at pitch, above the fret plane, mm: `−h + rise`. */
export const topHeight = (job: Settled): number => -job.guitar.neckPlaneHeight + job.guitar.rise;

/** Height of the bridge's deck at y above the fret plane, at pitch, mm: `−h + rise + T_c − drop(R_b, y) + tilt·y`. Throws a RangeError when |y| > R_b. */
export const deckHeight = (job: Settled, y: number): number =>
  topHeight(job) + job.bridge.thickness - drop(job.bridge.topRadius, y) + job.bridge.tilt * y;

/**
 * Height of the bridge's underside, which follows the top's dome across and along, mm: `−h + rise − drop(R_t, y) − drop(R_l, behind)`. `behind` is how far behind the saddle line, taken on the centre line. Throws a
 * RangeError beyond either radius.
 */
export const undersideHeight = (job: Settled, y: number, behind = 0): number =>
  topHeight(job) - drop(job.guitar.topRadius, y) - drop(job.top.radiusAlong, behind);

/** The radius across that the slot's floor, and so the saddle's bottom, has: the dome's where it follows that. */
export const floorRadius = ({ slot, guitar }: Settled): number | 'flat' =>
  slot.floor === 'dome' ? guitar.topRadius : 'flat';

/** Height of the slot's floor at y above the fret plane, mm: level, or falling with the dome as the underside does across. */
export const slotFloorAt = (job: Settled, design: { readonly slotFloor: number }, y: number): number =>
  design.slotFloor - drop(floorRadius(job), y);

/** Thickness of the wing tip on one side, mm. */
export const tipOf = ({ tipThickness, tipTreble }: Settled['bridge'], half: Half): number =>
  half === 1 && tipTreble !== 'same' ? tipTreble : tipThickness;

/**
 * The wood left under the slot, least along its length, mm. The underside falls away from where the saddle line crosses the centre line to every side, across and along, and no floor falls faster: so it is least there.
 */
export const slotWood = (job: Settled, design: { readonly slotFloor: number }): number =>
  slotFloorAt(job, design, 0) - undersideHeight(job, 0);
