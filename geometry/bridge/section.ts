import type { Design } from '../design.ts';
import { slotFloorLine } from '../saddle/face.ts';
import type { Settled } from '../settle.ts';
import { arcFromTo, circle } from '../shape/arc.ts';
import { path, segmentEnd, segmentStart } from '../shape/path.ts';
import type { Path, Point, Segment } from '../shape/types.ts';
import { edgeAt, edgedTop } from './edge.ts';
import { heightOn, joined, partBetween } from './graph.ts';
import { footprintOutline } from './outline.ts';
import { pinHoles } from './pins.ts';
import { pyramidOf, pyramidRun } from './pyramid.ts';
import { slotCut } from './slot.ts';
import { type Stretch, shared, stretchesAcross, stretchesAlong, without } from './spans.ts';
import { floorRadius, slotFloorAt, undersideHeight } from './surface.ts';
import { topLine, topLineAt } from './top-line.ts';

/** What a plane cuts of the bridge, y DOWN from the fret plane, mm: closed outlines of lines and arcs, in the order of +x; none where the plane misses it. */
export interface Section {
  readonly wood: readonly Path[];
  /** Where the plane runs in the slot, from wall to wall. */
  readonly slot: readonly Stretch[];
}

/** A shallow arc that bulges up (or a line, for `flat`) from one point to another. */
const bulged = (from: Point, to: Point, radius: number | 'flat'): Segment =>
  radius === 'flat' ? { kind: 'line', from, to } : arcFromTo(from, to, radius, from.x < to.x ? 1 : -1);

/** What a plane is cut by: the top's line and the slot's floor as graphs, the underside's height and radius. */
interface Plane {
  readonly top: (piece: Stretch) => Path;
  readonly floor: (x: number) => number;
  readonly floorRadius: number | 'flat';
  readonly under: (x: number) => number;
  readonly underRadius: number | 'flat';
}

/** The bare top's line from one place on the page's x to another, exact. */
export type Ground = (from: number, to: number) => Segment;

/** How far the bridge is made: finished, or shaped only, its slot and holes still to come. */
export type Made = 'finished' | 'shaped';

const cut = (
  stretches: readonly Stretch[],
  slot: readonly Stretch[],
  holes: readonly Stretch[],
  plane: Plane,
  made: Made,
): Section => ({
  slot: shared(stretches, slot),
  wood: stretches.flatMap((stretch) => {
    const top = plane.top(stretch);
    return without([stretch], made === 'finished' ? holes : []).map(([a, b]) => {
      const notches = made === 'finished' ? shared([[a, b]], slot) : [];
      const upper = [
        ...without([[a, b]], notches).map((s) => ({ at: s[0], segments: partBetween(top, ...s) })),
        ...notches.map(([p, q]) => ({
          at: p,
          segments: [bulged({ x: p, y: -plane.floor(p) }, { x: q, y: -plane.floor(q) }, plane.floorRadius)],
        })),
      ]
        .toSorted((s, t) => s.at - t.at)
        .flatMap(({ segments }) => segments);
      const [left, right] = [
        { x: a, y: -plane.under(a) },
        { x: b, y: -plane.under(b) },
      ];
      const [first, last] = [upper[0] as Segment, upper.at(-1) as Segment];
      return path(
        joined([
          { kind: 'line', from: left, to: segmentStart(first) },
          ...joined(upper),
          { kind: 'line', from: segmentEnd(last), to: right },
          bulged(right, left, plane.underRadius),
        ]),
        true,
      );
    });
  }),
});

const holesOf = (job: Settled, design: Design, stretches: (hole: Path) => readonly Stretch[]): readonly Stretch[] =>
  pinHoles(job, design).flatMap(({ at, diameter }) => stretches(circle(at, diameter / 2)));

/**
 * The bridge cut by a plane square to the centre line at a distance x from the nut, seen from the tail: page x across (+ treble), y DOWN from the fret plane, mm. Between the footprint's edges there; the top as `topLineAt`, the underside
 * on the top's dome, the slot and the pin holes where the plane meets them. What round-overs and chamfers take off the front and back edges is left out: it shows in the sections along the guitar. Throws as `topLine` does.
 */
export const sectionAcross = (job: Settled, design: Design, x: number, made: Made = 'finished'): Section => {
  const top = topLineAt(job, design, x);
  return cut(
    stretchesAcross(footprintOutline(job, design))(x),
    stretchesAcross(slotCut(job, design.saddleLine))(x),
    holesOf(job, design, (hole) => stretchesAcross(hole)(x)),
    {
      top: () => top,
      floor: (y) => slotFloorAt(job, design, y),
      floorRadius: floorRadius(job),
      under: (y) => undersideHeight(job, y, x - design.saddleLine.x),
      underRadius: job.guitar.topRadius,
    },
    made,
  );
};

/**
 * The bridge cut along the saddle line, as the view from the tail shows it: page x across (+ treble), y DOWN from the fret plane, mm. From tip to tip as the end profile has it, the slot open from end to end, its ends upright. Throws as
 * `topLine` does.
 */
export const sectionAtSaddle = (job: Settled, design: Design): Section => {
  const top = topLine(job);
  const half = job.bridge.length / 2;
  const floor = slotFloorLine(job, design, 'across');
  return cut(
    [[-half, half]],
    [[segmentStart(floor).x, segmentEnd(floor).x]],
    [],
    {
      top: () => top,
      floor: (y) => slotFloorAt(job, design, y),
      floorRadius: floorRadius(job),
      under: (y) => undersideHeight(job, y),
      underRadius: job.guitar.topRadius,
    },
    'finished',
  );
};

/** The top over one stretch along the guitar at y: level, its edges taken off; or over a pyramid's front facet, level, and down the rear one. */
const topAlong = (job: Settled, y: number): ((piece: Stretch) => Path) => {
  const { bridge } = job;
  const line = topLine(job);
  const from = bridge.length / 2 - bridge.pyramidWidth;
  if (bridge.footprint !== 'pyramid' || Math.abs(y) <= from)
    return (piece) => ({ segments: edgedTop(job, piece, heightOn(line, y), edgeAt(job, y)), closed: false });
  const { foot, tip } = pyramidOf(job, y < 0 ? -1 : 1);
  const out = Math.abs(y);
  const base = -(foot.y + ((tip.y - foot.y) * (out - foot.x)) / (tip.x - foot.x));
  const crest = heightOn(line, y);
  const reach =
    pyramidRun(bridge) * Math.max(0, 1 - Math.abs(2 * (out - foot.x) - bridge.pyramidWidth) / bridge.pyramidWidth);
  return ([a, b]) => {
    const points = [
      { x: a, y: base },
      { x: a + reach, y: crest },
      { x: b - reach, y: crest },
      { x: b, y: base },
    ];
    return {
      segments: points.slice(1).flatMap((to, k): readonly Segment[] => {
        const start = points[k] as Point;
        return to.x - start.x > 1e-9 ? [{ kind: 'line', from: start, to }] : [];
      }),
      closed: false,
    };
  };
};

/**
 * The bridge cut by a plane along the guitar at y from the centre line, the nut to the right: page x = −(distance from the nut), y DOWN from the fret plane, mm. From the footprint's front edge there to its rear, the front and back edges of the
 * deck taken off as the job says, in this plane; the underside on the dome along. Throws as `topLine` does.
 */
export const sectionAlong = (job: Settled, design: Design, y: number, made: Made = 'finished'): Section => {
  const flipped = (stretches: readonly Stretch[]): readonly Stretch[] =>
    stretches.map(([a, b]): Stretch => [-b, -a]).toReversed();
  const floor = slotFloorAt(job, design, y);
  return cut(
    flipped(stretchesAlong(footprintOutline(job, design))(y)),
    flipped(stretchesAlong(slotCut(job, design.saddleLine))(y)),
    flipped(holesOf(job, design, (hole) => stretchesAlong(hole)(y))),
    {
      top: topAlong(job, y),
      floor: () => floor,
      floorRadius: 'flat',
      under: (x) => undersideHeight(job, y, -x - design.saddleLine.x),
      underRadius: job.top.radiusAlong,
    },
    made,
  );
};

/** Finds the bare top's line from one place to another in a plane square to the centre line at a distance x from the nut; page as `sectionAcross`. */
export const groundAcross =
  (job: Settled, design: Design, x: number): Ground =>
  (from, to) => {
    const at = (y: number): Point => ({ x: y, y: -undersideHeight(job, y, x - design.saddleLine.x) });
    return bulged(at(from), at(to), job.guitar.topRadius);
  };

/** Finds the bare top's line from one place to another in a plane along the guitar at y from the centre line; page as `sectionAlong`. */
export const groundAlong =
  (job: Settled, design: Design, y: number): Ground =>
  (from, to) => {
    const at = (x: number): Point => ({ x, y: -undersideHeight(job, y, -x - design.saddleLine.x) });
    return bulged(at(from), at(to), job.top.radiusAlong);
  };
