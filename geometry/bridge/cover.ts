import type { Job } from '../job.ts';
import type { Problem } from '../problem.ts';
import { levelCrossings } from '../shape/crossing.ts';
import { pointOn } from '../shape/measure.ts';
import { distanceTo, nearestOn } from '../shape/nearest.ts';
import { segmentEnd, segmentStart } from '../shape/path.ts';
import { translate } from '../shape/transform.ts';
import type { Path, Point, Segment } from '../shape/types.ts';
import { footprints } from './footprints/index.ts';

/** Places on each part of the scar's outline that are looked at. */
const places = 8;

/** The scar's numbers as those of the bridge that left it. */
const asBridge = ({ scar, bridge }: Pick<Job, 'scar' | 'bridge'>): Job['bridge'] => {
  const { length, depth, wingDepth, bellyWidth } = scar;
  return { ...bridge, length, depth, wingDepth, bellyWidth, ends: 'square' };
};

/** What keeps the scar's numbers from making an outline; empty where they make one, or where none was measured. `mm` says a length in the reader's unit. */
export const scarProblems = ({ scar }: Pick<Job, 'scar'>, mm: (length: number) => string): readonly Problem[] => {
  const { outline, length, depth, wingDepth, bellyWidth } = scar;
  if (outline === 'none' || outline === 'rectangle') return [];
  const deep = depth - wingDepth;
  return [
    ...(bellyWidth > length
      ? [
          {
            path: 'scar.bellyWidth',
            value: bellyWidth,
            says: `The old scar’s belly is ${mm(bellyWidth)} wide, the scar only ${mm(length)} across. Measure both again: the belly is at most ${mm(length)} wide.`,
          },
        ]
      : []),
    ...(deep <= 0
      ? [
          {
            path: 'scar.wingDepth',
            value: wingDepth,
            says: `The old scar is ${mm(wingDepth)} deep at its tips and ${mm(depth)} in all: nothing is left for a belly. Measure both again, or choose a rectangular scar.`,
          },
        ]
      : deep > bellyWidth / 2
        ? [
            {
              path: 'scar.bellyWidth',
              value: bellyWidth,
              says: `The old scar’s belly, ${mm(deep)} deep, would overhang in a width of ${mm(bellyWidth)}. Measure again: it is at least ${mm(2 * deep)} wide.`,
            },
          ]
        : []),
  ];
};

/** The old bridge's outline in place on the guitar, from above: x across (+ treble), y the distance from the nut, mm; undefined where it was not measured, or its numbers make none. */
export const scarOutline = (job: Pick<Job, 'scar' | 'bridge'>): Path | undefined => {
  const { scar } = job;
  if (scar.outline === 'none' || scarProblems(job, String).length > 0) return undefined;
  return translate(footprints[scar.outline].outline(asBridge(job)), 0, scar.fromNut);
};

/** Tells of any point how far it lies inside a closed outline, mm; negative outside. */
export const insideOf = (outline: Path): ((p: Point) => number) => {
  const crossings = levelCrossings(outline);
  return (p) => {
    const winding = crossings(p.y).reduce((sum, { x, way }) => (x > p.x ? sum + way : sum), 0);
    return winding === 0 ? -distanceTo(outline, p) : distanceTo(outline, p);
  };
};

/** An edge of the footprint, and how far it covers the scar next to it, mm; negative where scar stays bare. */
export interface Cover {
  readonly edge: Edge;
  readonly least: number;
}

export type Edge = 'front' | 'rear' | 'bassTip' | 'trebleTip';

/** Two edges that meet in a corner are equally near to what lies off it, to within this, mm. */
const atCorner = 1e-9;

const isTip = (edge: Edge): boolean => edge === 'bassTip' || edge === 'trebleTip';

/** Which edge of the footprint a part of its outline is. */
const edgeOf = (segment: Segment, middle: number): Edge => {
  const [from, to] = [segmentStart(segment), segmentEnd(segment)];
  if (segment.kind === 'line' && Math.abs(to.y - from.y) > Math.abs(to.x - from.x))
    return from.x + to.x < 0 ? 'bassTip' : 'trebleTip';
  return (from.y + to.y) / 2 < middle ? 'front' : 'rear';
};

/**
 * How far a footprint covers a scar, edge by edge: the least signed distance of the scar's outline from the footprint's, at places along it, its corners among them. `middle` is the distance from the nut that tells
 * the front edge from the rear one.
 */
export const coverBetween = (outline: Path, scar: Path, middle: number): readonly Cover[] => {
  const edges = outline.segments.map((segment) => edgeOf(segment, middle));
  const crossings = levelCrossings(outline);
  const least = new Map<Edge, number>();
  const samples = scar.segments.flatMap((segment) =>
    Array.from({ length: places }, (_, k) => pointOn(segment, k / places)),
  );
  for (const p of samples) {
    let [near, edge]: [number, Edge] = [Number.POSITIVE_INFINITY, 'front'];
    outline.segments.forEach((segment, k) => {
      const { distance, point } = nearestOn(segment, p);
      const other = edges[k] ?? 'front';
      // Off a corner both its edges are equally near: the one is meant beyond which more lies.
      const isCloser = distance < near - atCorner;
      const isMeant = distance < near + atCorner && isTip(other) === Math.abs(p.x - point.x) > Math.abs(p.y - point.y);
      if (isCloser || isMeant) [near, edge] = [distance, other];
    });
    const winding = crossings(p.y).reduce((sum, { x, way }) => (x > p.x ? sum + way : sum), 0);
    const value = winding === 0 ? -near : near;
    least.set(edge, Math.min(value, least.get(edge) ?? value));
  }
  return [...least].map(([edge, value]) => ({ edge, least: value }));
};
