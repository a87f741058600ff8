import type { Design, SolvedString } from '../design.ts';
import type { Job } from '../job.ts';
import type { Settled } from '../settle.ts';
import { nearestOn } from '../shape/nearest.ts';
import { distance } from '../shape/point.ts';
import type { Point } from '../shape/types.ts';
import { insideOf } from './cover.ts';
import { footprintOutline } from './outline.ts';
import { pinHoles } from './pins.ts';
import { slotCut } from './slot.ts';

export type Hole = Job['top']['holes'][number];
export type Brace = Job['top']['braces'][number];
export type Rise = Job['top']['rises'][number];

/** A measured place on the guitar, from above: x across, y the distance from the nut, mm. */
export const placeOf = ({ across, fromNut }: { readonly across: number; readonly fromNut: number }): Point => ({
  x: across,
  y: fromNut,
});

/** Whether a hole stays open: kept, or kept for a register pin. */
export const isKept = ({ plan }: Hole): boolean => plan === 'keep' || plan === 'register';

/** Whether the new bridge's own pin is to come through it: a kept pin hole, where strings are held by pins. */
export const isMet = (job: Settled, hole: Hole): boolean =>
  isKept(hole) && hole.what === 'pin' && job.pins.hold === 'pins';

/** A kept hole, with the wood round it in the new bridge. */
export interface Kept {
  readonly hole: Hole;
  /** Least wood between its edge and the footprint's, the slot's and, unless a pin comes through it, the pin holes', mm; negative where it runs out of the bridge or into them. */
  readonly wall: number;
  /** Whether its middle lies inside the footprint. */
  readonly isInside: boolean;
}

/** A kept pin hole and the new pin that comes nearest to it. */
export interface Meeting {
  readonly hole: Hole;
  readonly string: SolvedString;
  /** From middle to middle, from above, mm. */
  readonly miss: number;
}

/** What is there already, and what becomes of it. */
export interface Existing {
  /** Kept holes, drilled into the new bridge where no pin of its own comes through them. */
  readonly kept: readonly Kept[];
  /** Plugged ones, and those that are plugged and moved. */
  readonly plugged: readonly Hole[];
  readonly meetings: readonly Meeting[];
  /** Between the two register pins that stand farthest apart, mm; 0 where there is only one, undefined where there is none. */
  readonly registerApart: number | undefined;
  /** Readings of the top's belly or dip inside the footprint. */
  readonly risesUnder: readonly Rise[];
}

/** The kept holes with the wood round them. */
export const keptHoles = (job: Settled, design: Design): readonly Kept[] => {
  const holes = job.top.holes.filter(isKept);
  if (holes.length === 0) return [];
  const inFootprint = insideOf(footprintOutline(job, design));
  const inSlot = insideOf(slotCut(job, design.saddleLine));
  const drilled = pinHoles(job, design);
  return holes.map((hole) => {
    const at = placeOf(hole);
    const inside = inFootprint(at);
    const pins = isMet(job, hole) ? [] : drilled.map((pin) => distance(pin.at, at) - pin.diameter / 2);
    return { hole, wall: Math.min(inside, -inSlot(at), ...pins) - hole.diameter / 2, isInside: inside > 0 };
  });
};

/** Each kept pin hole with the new pin nearest to it; none where strings are not held by pins. */
export const meetings = (job: Settled, design: Design): readonly Meeting[] =>
  job.top.holes
    .filter((hole) => isMet(job, hole))
    .map((hole) => {
      const at = placeOf(hole);
      return design.strings
        .map((string) => ({ hole, string, miss: distance(string.pin, at) }))
        .reduce((nearest, one) => (one.miss < nearest.miss ? one : nearest));
    });

/** Between the two register pins that stand farthest apart, mm. */
export const registerApart = ({ top }: Pick<Job, 'top'>): number | undefined => {
  const pins = top.holes.filter(({ plan }) => plan === 'register').map(placeOf);
  if (pins.length === 0) return undefined;
  return Math.max(...pins.flatMap((a) => pins.map((b) => distance(a, b))));
};

/** The readings of the top's belly or dip that lie under the footprint. */
export const risesUnder = (job: Settled, design: Design): readonly Rise[] => {
  if (job.top.rises.length === 0) return [];
  const inFootprint = insideOf(footprintOutline(job, design));
  return job.top.rises.filter((rise) => inFootprint(placeOf(rise)) >= 0);
};

/** From a brace's nearer edge to a place, mm; negative over the brace itself. */
export const fromBrace = (brace: Brace, p: Point): number => {
  const to = { x: brace.acrossTo, y: brace.fromNutTo };
  return nearestOn({ kind: 'line', from: placeOf(brace), to }, p).distance - brace.width / 2;
};

/** What is there already under a new bridge, and what becomes of it. */
export const existing = (job: Settled, design: Design): Existing => ({
  kept: keptHoles(job, design),
  plugged: job.top.holes.filter((hole) => !isKept(hole)),
  meetings: meetings(job, design),
  registerApart: registerApart(job),
  risesUnder: risesUnder(job, design),
});
