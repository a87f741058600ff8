import type { Design } from '../design.ts';
import type { Settled } from '../settle.ts';
import { arcFromTo, circle } from '../shape/arc.ts';
import { bounds, joinBounds } from '../shape/bounds.ts';
import { end, path, start } from '../shape/path.ts';
import { drop } from '../shape/sagitta.ts';
import type { Bounds, Path, Point, Segment } from '../shape/types.ts';
import { type Brace, placeOf } from './existing.ts';
import { joined, partBetween } from './graph.ts';
import { footprintOutline } from './outline.ts';
import { pinHoles } from './pins.ts';
import { slotOutline } from './slot.ts';
import type { Stretch } from './spans.ts';
import { topLine } from './top-line.ts';

/*
 * The two blocks between which a bridge is clamped to the top: one on the bridge, the other inside under the top.
 */

/** What a bench makes its cauls by, mm. */
export interface CaulSizes {
  /** Whether the outer one bears on the deck alone, or on the wings too. */
  readonly bears: 'deck' | 'wings';
  /** How far the outer one stays inside the bridge's edges, and the inner one reaches beyond them. */
  readonly inset: number;
  readonly beyond: number;
  /** Of the outer one, over the highest place of the deck; of the inner one in its middle. */
  readonly thickness: number;
  readonly insideThickness: number;
  /** A channel over slot and pins; `clears`: as wide as these need, with so much room round them. */
  readonly channelWidth: number | 'clears';
  readonly channelDepth: number;
  readonly room: number;
  /** Top and plate together: what lies between bridge and inner caul. */
  readonly between: number;
  /** On either side of a brace. */
  readonly braceRoom: number;
}

/** A channel in a caul's face: its edges from above (x across, y the distance from the nut), as far as they lie on the caul, run out where next to no wall would be left at an end; and how wide what it has to clear is, its room included. */
export interface Channel {
  readonly box: Bounds;
  readonly needed: number;
}

export interface Caul {
  /** From above: x across, y the distance from the nut, mm. */
  readonly plan: Bounds;
  readonly channel: Channel | undefined;
  /** Across, seen from the tail: x across, y DOWN, mm; closed. */
  readonly profile: Path;
}

/** Round about all of these outlines, with room. */
const roundAll = (outlines: readonly Path[], room: number): Bounds | undefined => {
  const [first, ...rest] = outlines.map(bounds);
  if (first === undefined) return undefined;
  const { minX, minY, maxX, maxY } = rest.reduce(joinBounds, first);
  return { minX: minX - room, minY: minY - room, maxX: maxX + room, maxY: maxY + room };
};

const pinRings = (job: Settled, design: Design): readonly Path[] =>
  pinHoles(job, design).map(({ at, diameter }) => circle(at, diameter / 2));

/** A wall left at a channel's end that is thinner than this breaks away, mm [practice]: the channel runs out there. */
const leastWall = 4;

const channelOn = (plan: Bounds, cleared: readonly Path[], { channelWidth, room }: CaulSizes): Channel | undefined => {
  const round = roundAll(cleared, room);
  if (round === undefined) return undefined;
  const needed = round.maxY - round.minY;
  const half = (channelWidth === 'clears' ? needed : channelWidth) / 2;
  const middle = (round.minY + round.maxY) / 2;
  const box = {
    minX: round.minX - plan.minX < leastWall ? plan.minX : round.minX,
    maxX: plan.maxX - round.maxX < leastWall ? plan.maxX : round.maxX,
    minY: Math.max(plan.minY, middle - half),
    maxY: Math.min(plan.maxY, middle + half),
  };
  return box.maxX > box.minX && box.maxY > box.minY ? { box, needed } : undefined;
};

/** How far out the outer caul may bear, mm from the centre line: to the deck's shoulders; or to the tips, or to a pyramid's foot. */
const reachOf = ({ bridge }: Settled, { bears, inset }: CaulSizes): number => {
  const tip = bridge.length / 2 - (bridge.footprint === 'pyramid' ? bridge.pyramidWidth : 0);
  return (bears === 'deck' ? Math.min(bridge.deckWidth / 2, tip) : tip) - inset;
};

/**
 * The caul on the bridge: its face is the bridge's own top line, the same lines and arcs, its back straight and level, `thickness` over the highest place of the face. From the bridge's front edge to its rear, less the inset. Throws as
 * `topLine` does.
 */
export const caul = (job: Settled, design: Design, sizes: CaulSizes): Caul => {
  const reach = reachOf(job, sizes);
  const edge = bounds(footprintOutline(job, design));
  const plan = { minX: -reach, maxX: reach, minY: edge.minY + sizes.inset, maxY: edge.maxY - sizes.inset };
  const face: Path = { segments: partBetween(topLine(job), -reach, reach), closed: false };
  const back = bounds(face).minY - sizes.thickness;
  const [left, right] = [start(face), end(face)];
  const corner = (x: number): Point => ({ x, y: back });
  return {
    plan,
    channel: channelOn(plan, [slotOutline(job.slot, design.saddleLine), ...pinRings(job, design)], sizes),
    profile: path(
      joined([
        ...face.segments,
        { kind: 'line', from: right, to: corner(right.x) },
        { kind: 'line', from: corner(right.x), to: corner(left.x) },
        { kind: 'line', from: corner(left.x), to: left },
      ]),
      true,
    ),
  };
};

/** The radius of what an inner caul lies against: the dome's, less top and plate; `flat` where there is none. */
export const insideRadius = (dome: number | 'flat', { between }: Pick<CaulSizes, 'between'>): number | 'flat' =>
  dome === 'flat' ? 'flat' : dome - between;

/**
 * The caul inside, under the plate: its face follows the underside of the top, an arc about the dome's own centre, its back straight and level. The profile's middle stands at y = 0.
 */
export const insideCaul = (job: Settled, design: Design, sizes: CaulSizes): Caul => {
  const edge = bounds(footprintOutline(job, design));
  const { beyond, insideThickness } = sizes;
  const plan = {
    minX: edge.minX - beyond,
    maxX: edge.maxX + beyond,
    minY: edge.minY - beyond,
    maxY: edge.maxY + beyond,
  };
  const radius = insideRadius(job.guitar.topRadius, sizes);
  const faceAt = (x: number): Point => ({ x, y: drop(radius, x) });
  const [left, right] = [faceAt(plan.minX), faceAt(plan.maxX)];
  const face: Segment = radius === 'flat' ? { kind: 'line', from: left, to: right } : arcFromTo(left, right, radius, 1);
  const corner = (x: number): Point => ({ x, y: insideThickness });
  return {
    plan,
    channel: channelOn(plan, pinRings(job, design), sizes),
    profile: path(
      [
        face,
        { kind: 'line', from: right, to: corner(right.x) },
        { kind: 'line', from: corner(right.x), to: corner(left.x) },
        { kind: 'line', from: corner(left.x), to: left },
      ],
      true,
    ),
  };
};

/** Where a plane square to the centre line at a distance x from the nut cuts a brace, with room on either side, mm across; undefined where it passes the brace by, or runs along it. */
export const braceCut = (brace: Brace, x: number, room: number): Stretch | undefined => {
  const [from, to] = [placeOf(brace), { x: brace.acrossTo, y: brace.fromNutTo }];
  const fall = to.y - from.y;
  const t = (x - from.y) / fall;
  if (fall === 0 || t < 0 || t > 1) return undefined;
  const middle = from.x + (to.x - from.x) * t;
  const half = ((brace.width / 2 + room) * Math.hypot(to.x - from.x, fall)) / Math.abs(fall);
  return [middle - half, middle + half];
};
