import type { Design } from '../design.ts';
import { perDesign } from '../per-design.ts';
import type { Settled } from '../settle.ts';
import { pointOn } from '../shape/along.ts';
import { quarterTurns } from '../shape/bounds.ts';
import { cubicTurns } from '../shape/cubic.ts';
import { integral, roundedIntegral } from '../shape/integral.ts';
import { segmentEnd, segmentStart } from '../shape/path.ts';
import type { Path, Segment } from '../shape/types.ts';
import { edgeArea, edgeAt } from './edge.ts';
import { heightOn } from './graph.ts';
import { footprintOutline } from './outline.ts';
import { pinHoles } from './pins.ts';
import { pyramidOf, pyramidRun } from './pyramid.ts';
import { slotCut } from './slot.ts';
import { type Stretch, shared, stretchesAlong } from './spans.ts';
import { slotFloorAt, undersideHeight } from './surface.ts';
import { topLine } from './top-line.ts';
import { woods } from './woods.ts';

/** The bridge's volume and what it is made up of, mm³. */
export interface Volume {
  /** Between top and underside, within the footprint. */
  readonly whole: number;
  readonly slot: number;
  /** Each hole's area times the bridge's thickness at its middle. */
  readonly holes: number;
  /** What round-overs or chamfers take off the deck's front and back edges. */
  readonly edges: number;
  /** What is left. */
  readonly wood: number;
}

const turns = (s: Segment): readonly number[] =>
  s.kind === 'arc' ? quarterTurns(s.start, s.sweep) : s.kind === 'cubic' ? cubicTurns(s).x : [];

/** Where across a path has a corner, a joint or an upright tangent: between two such places all its chords change smoothly. */
const breaks = (path: Path): readonly number[] =>
  path.segments.flatMap((s) => [segmentStart(s).x, segmentEnd(s).x, ...turns(s).map((t) => pointOn(s, t).x)]);

/** The integral over y of what a chord along the guitar holds, between the places at which it may change its manner. */
const overChords = (
  at: readonly number[],
  chords: (y: number) => readonly Stretch[],
  held: (y: number, chord: Stretch) => number,
): number => {
  const places = at.toSorted((a, b) => a - b);
  return places.slice(1).reduce((sum, to, k) => {
    const from = places[k] as number;
    if (to - from <= 1e-9) return sum;
    return sum + roundedIntegral((y) => chords(y).reduce((all, chord) => all + held(y, chord), 0), from, to);
  }, 0);
};

/** The area under the top along one chord, from the fret plane, mm²: its height times its length, less what a pyramid's front and rear facets leave out. */
const underTop = (job: Settled, top: Path, y: number, [from, to]: Stretch): number => {
  const { bridge } = job;
  const level = -heightOn(top, y) * (to - from);
  const out = Math.abs(y);
  if (bridge.footprint !== 'pyramid' || out <= bridge.length / 2 - bridge.pyramidWidth) return level;
  const { ridge, rise } = pyramidOf(job, y < 0 ? -1 : 1);
  const share = Math.max(0, 1 - Math.abs(out - ridge.x) / (bridge.pyramidWidth / 2));
  return level - rise * share * share * pyramidRun(bridge);
};

/**
 * The bridge's volume. Along each chord of the footprint, from front to rear, top and underside are integrated, and the chords across the bridge by Gauss's quadrature between the footprint's and the top line's corners; the slot likewise, from the
 * top down to its floor. Source: Cavalieri's principle. Throws as `topLine` does.
 */
export const bridgeVolume = perDesign((job, design): Volume => {
  const outline = footprintOutline(job, design);
  const cut = slotCut(job, design.saddleLine);
  const top = topLine(job);
  const half = job.bridge.deckWidth / 2;
  const chords = stretchesAlong(outline);
  const slotChords = stretchesAlong(cut);
  const inSlot = (y: number) => shared(chords(y), slotChords(y));
  const under = (y: number, [from, to]: Stretch) =>
    integral((x) => undersideHeight(job, y, x - design.saddleLine.x), from, to);
  const [edge, across] = [breaks(outline), breaks(top)];
  const within = (places: readonly number[], of: Path) => {
    const own = breaks(of);
    const [least, most] = [Math.min(...own), Math.max(...own)];
    return places.filter((y) => y > least && y < most);
  };
  const whole = overChords(
    [...edge, ...within([...across, 0], outline)],
    chords,
    (y, chord) => underTop(job, top, y, chord) - under(y, chord),
  );
  const slot = overChords(
    [...breaks(cut), ...within([...across, ...edge], cut)],
    inSlot,
    (y, [from, to]) => Math.max(0, -heightOn(top, y) - slotFloorAt(job, design, y)) * (to - from),
  );
  const holes = pinHoles(job, design).reduce(
    (sum, { at, diameter }) =>
      sum +
      (Math.PI / 4) * diameter ** 2 * (-heightOn(top, at.x) - undersideHeight(job, at.x, at.y - design.saddleLine.x)),
    0,
  );
  const size = edgeAt(job, 0);
  const edges =
    size === 0
      ? 0
      : overChords(
          [...within([...edge, -half, half], outline), Math.min(...edge), Math.max(...edge)],
          chords,
          (y, [from, to]) => 2 * edgeArea(job, Math.min(edgeAt(job, y), (to - from) / 2)),
        );
  return { whole, slot, holes, edges, wood: whole - slot - holes - edges };
});

/** The bridge's weight, g: its volume times its wood's mean density. */
export const bridgeWeight = (job: Settled, design: Design): number =>
  (bridgeVolume(job, design).wood * woods[job.stock.wood].density) / 1e6;
