import type { Held } from './bridge/held.ts';
import type { Leaves } from './bridge/pins.ts';
import type { ProfileHeights } from './bridge/profile.ts';
import type { SaddleLine } from './bridge/slot.ts';
import type { StringLine } from './saddle/heights.ts';
import type { CrownFit } from './saddle/radius.ts';
import type { Readings } from './settle.ts';
import type { Point } from './shape/types.ts';

/** All that is known of one string; mm, degrees, N, kg/m. */
export interface SolvedString extends StringLine {
  readonly id: string;
  readonly name: string;
  /** How far its break point lies beyond the nominal scale, on the crown that is made. */
  readonly setback: number;
  /** The setback it asks for: as typed, computed, or from what was heard. */
  readonly neededSetback: number;
  /** How far its needed break point lies off what the crown can carry, along the string; + behind it, 0 where it is reached. */
  readonly missed: number;
  /** From the saddle's front face back to its break point, square to the face. */
  readonly fromFront: number;
  readonly gauge: number;
  /** Where it meets its pin hole's middle, from above; without pins, where it goes into the bridge. */
  readonly pin: Point;
  /** Height of the deck under its break point. */
  readonly deck: number;
  /** Saddle standing above the deck: `z_s − z_b(y)`. */
  readonly exposure: number;
  /** From the saddle's bottom to its underside: the saddle's whole height. */
  readonly saddleHeight: number;
  /** How far its break point lies behind the middle of the slot; before it if negative. */
  readonly behindMiddle: number;
  /** Where it next touches the bridge: distance from the nut, height above the fret plane, and what it touches. */
  readonly leaves: Leaves;
  /** Its slope before and behind the crown. */
  readonly angleIn: number;
  readonly angleOut: number;
  readonly breakAngle: number;
  /** How far it turns aside on its way from the crown to the pin, seen from above; + towards the treble. */
  readonly fan: number;
  readonly tension: number;
  /** Its push on the saddle, straight down: `T(sin θ_in + sin θ_out)`. */
  readonly downforce: number;
}

/** Every number that follows from a job; mm, degrees, N. Heights are above the fret plane, at pitch. */
export interface Design {
  /** Where the settled measurements come from. */
  readonly readings: Readings;
  readonly strings: readonly SolvedString[];
  /** The slot's centre line. */
  readonly saddleLine: SaddleLine;
  /** The line from which the bridge's front edge and its pins are measured: the slot's, or the old slot's where the bridge stays. */
  readonly datum: SaddleLine;
  /** How the strings' ends are held in this job: which case of the load is its own. */
  readonly held: Held;
  /** Distances from the nut on the centre line. */
  readonly fret12: number;
  readonly bridgeFront: number;
  readonly bridgeRear: number;
  readonly topHeight: number;
  readonly deckCentre: number;
  readonly slotFloor: number;
  /** Wood left under the slot: least, along its length. */
  readonly woodUnderSlot: number;
  readonly saddle: {
    readonly thickness: number;
    readonly length: number;
    /** Height of its bottom: the slot's floor, or the top of what lies under it. */
    readonly bottom: number;
    /** The least thickness whose crown carries every needed break point. */
    readonly thicknessNeeded: number;
  };
  readonly profile: ProfileHeights;
  /** Straightedge clearance at the centre, strings off: h less the thickness; + is light. */
  readonly straightedgeClearance: number;
  /** The best circle through the strings' heights, and every gauge laid over them. */
  readonly crown: CrownFit;
  /** The crown that is cut; undefined where it follows each string's own height. */
  readonly cut: CrownFit | undefined;
  readonly gauges: readonly CrownFit[];
  readonly nearestGauge: CrownFit;
  readonly totalTension: number;
  readonly totalDownforce: number;
}
