import { rangeOf } from '../checks/ranges.ts';
import type { Settled } from '../settle.ts';
import { fretAt } from './frets.ts';

/** What the neck angle gives, and what would have to be done about it; mm, degrees. */
export interface NeckOrBridge {
  /** Straightedge to top, strings off. */
  readonly neckPlaneHeight: number;
  /** Thicknesses at the centre that leave the usual straightedge clearance. */
  readonly suits: { readonly from: number; readonly to: number };
  /** The thickness nearest to the bridge as it is that is usual as a bridge and suits the neck; undefined if none is. */
  readonly thickness: number | undefined;
  /** What a reset to the middle of what is usual would take, for a bridge of `forThickness`. */
  readonly reset: {
    readonly forThickness: number;
    /** How much the fret plane has to come up over the bridge; down if negative. */
    readonly raise: number;
    /** By how much the neck turns. */
    readonly angle: number;
    /** Taken off the heel at its end, tapering to nothing at the top's edge: `heel depth·Δh/(L − x_b)`; off the joint's upper edge if negative. */
    readonly offHeel: number;
  };
  /** `bridge` when a usual bridge suits the neck; `reset` when none does, even within what is doubtful; `either` between the two. */
  readonly says: 'bridge' | 'either' | 'reset';
}

/**
 * Neck or bridge: which bridge suits the neck as it is, and what a neck reset would take instead. A thicker bridge leaves less light under the straightedge by as much; raising the
 * fret plane by Δh at the bridge takes `heel depth·Δh/(L − x_b)` off the heel [def]. Which thicknesses and clearances are usual is common practice [practice].
 */
export const neckOrBridge = (job: Settled): NeckOrBridge => {
  const { guitar, bridge } = job;
  const h = guitar.neckPlaneHeight;
  const clear = rangeOf(job, 'straightedge').range;
  const thick = rangeOf(job, 'neck').range;
  const { from: least = 0, to: most = least } = clear;
  const { from: thin = 0, to: stout = thin, doubtfulFrom = thin, doubtfulTo = stout } = thick;
  const suits = { from: h - most, to: h - least };
  const low = Math.max(suits.from, thin);
  const high = Math.min(suits.to, stout);
  const thickness = low <= high ? Math.min(high, Math.max(low, bridge.thickness)) : undefined;
  const isDoubtful = Math.max(suits.from, doubtfulFrom) <= Math.min(suits.to, doubtfulTo);
  const forThickness = (thin + stout) / 2;
  const raise = forThickness + (least + most) / 2 - h;
  const reach = guitar.scale - fretAt(guitar.scale, guitar.bodyJoint);
  return {
    neckPlaneHeight: h,
    suits,
    thickness,
    reset: {
      forThickness,
      raise,
      angle: (Math.atan(raise / reach) * 180) / Math.PI,
      offHeel: (guitar.heelDepth * raise) / reach,
    },
    says: thickness !== undefined ? 'bridge' : isDoubtful ? 'either' : 'reset',
  };
};
