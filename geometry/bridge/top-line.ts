import type { Design } from '../design.ts';
import type { Settled } from '../settle.ts';
import { arcFromTo } from '../shape/arc.ts';
import { fillet } from '../shape/fillet.ts';
import { polyline, reversePath } from '../shape/path.ts';
import { mirrorX, translateSegment } from '../shape/transform.ts';
import type { Path, Point, Segment } from '../shape/types.ts';
import { heightOn } from './graph.ts';
import { pyramidLine, pyramidOf, pyramidShare } from './pyramid.ts';
import { deckHeight, type Half, tipOf, undersideHeight } from './surface.ts';
import { wings } from './wings/index.ts';
import type { Span } from './wings/wing.ts';

/** A wing narrower than this, mm, is none: the deck runs out to the end. */
const noWing = 1e-9;

/** Where a wing ends, outwards from the centre line, and its height there, mm: at the tip, or at the foot of the pyramid. */
export const wingEnd = (job: Settled, half: Half): Point => {
  if (job.bridge.footprint === 'pyramid') return pyramidOf(job, half).foot;
  const x = job.bridge.length / 2;
  return { x, y: undersideHeight(job, x) + tipOf(job.bridge, half) };
};

/** What the wing on one side has to cross, mm; undefined where the deck leaves no room for a wing. */
export const wingSpan = (job: Settled, half: Half): Span | undefined => {
  const shoulder = job.bridge.deckWidth / 2;
  const end = wingEnd(job, half);
  const width = end.x - shoulder;
  return width > noWing ? { width, fall: deckHeight(job, half * shoulder) - end.y } : undefined;
};

/** From the shoulder out to the tip, in one half looked at as if it were the treble's; y DOWN. */
const outwards = (
  job: Settled,
  half: Half,
  share: number,
): { wing: readonly Segment[]; pyramid: readonly Segment[] } => {
  const { bridge } = job;
  const shoulder = { x: bridge.deckWidth / 2, y: -deckHeight(job, (half * bridge.deckWidth) / 2) };
  const span = wingSpan(job, half);
  const wing = span
    ? wings[bridge.wing].line(span, bridge).map((s) => translateSegment(s, shoulder.x, shoulder.y))
    : [];
  if (bridge.footprint !== 'pyramid') return { wing, pyramid: [] };
  const facets = pyramidLine(pyramidOf(job, half), share).map(({ x, y }) => ({ x, y: -y }));
  return { wing, pyramid: polyline(span ? facets : [shoulder, ...facets], false).segments };
};

const mirrored = (segments: readonly Segment[]): readonly Segment[] =>
  reversePath(mirrorX({ segments, closed: false })).segments;

const deckLine = ({ bridge }: Settled, from: Point, to: Point): Segment =>
  bridge.topRadius === 'flat' ? { kind: 'line', from, to } : arcFromTo(from, to, bridge.topRadius, 1);

/** The deck with a wing on either side, and the corner between them rounded by a radius; undefined where that does not fit. */
const rounded = (
  bass: readonly Segment[],
  deck: Segment,
  treble: readonly Segment[],
  radius: number,
): readonly Segment[] | undefined => {
  const [bassWing, trebleWing] = [bass.at(-1), treble[0]];
  const left = bassWing && fillet(bassWing, deck, radius);
  if (bassWing && !left) return undefined;
  const kept = left ? left.after : deck;
  const right = trebleWing && fillet(kept, trebleWing, radius);
  if (trebleWing && !right) return undefined;
  return [
    ...(left ? [...bass.slice(0, -1), left.before, ...(left.arc ? [left.arc] : [])] : bass),
    right ? right.before : kept,
    ...(right ? [...(right.arc ? [right.arc] : []), right.after, ...treble.slice(1)] : treble),
  ];
};

/**
 * The bridge's upper line across, seen from the tail: x across (+ treble), y DOWN from the fret plane, mm; from the bass tip over wing, shoulder and deck to the treble tip. `share` is how far the front and rear facets of a
 * pyramid have come where it is cut, 1 along its ridge; `shoulder` may stand in for the job's. With a tilt the deck stays an arc of the top radius through its two shoulders: it leaves the sheared surface of `deckHeight` by a
 * micrometre or two. Undefined where the shoulder's radius does not fit.
 */
export const topLineWith = (
  job: Settled,
  { share = 1, shoulder = job.bridge.shoulder }: { readonly share?: number; readonly shoulder?: number | 'sharp' } = {},
): Path | undefined => {
  const half = job.bridge.deckWidth / 2;
  const [bass, treble] = [outwards(job, -1, share), outwards(job, 1, share)];
  const deck = deckLine(job, { x: -half, y: -deckHeight(job, -half) }, { x: half, y: -deckHeight(job, half) });
  const [bassWing, bassPyramid] = [mirrored(bass.wing), mirrored(bass.pyramid)];
  const middle =
    shoulder === 'sharp' ? [...bassWing, deck, ...treble.wing] : rounded(bassWing, deck, treble.wing, shoulder);
  return middle && { segments: [...bassPyramid, ...middle, ...treble.pyramid], closed: false };
};

/** The bridge's upper line as in `topLineWith`. Throws a RangeError where the shoulder's radius does not fit; `build` refuses that first. */
export const topLine = (job: Settled, share = 1): Path => {
  const line = topLineWith(job, { share });
  if (line === undefined)
    throw new RangeError(`A shoulder rounded by ${job.bridge.shoulder} mm does not fit between deck and wing.`);
  return line;
};

/** Height of the bridge's top at y above the fret plane, mm: deck, shoulder, wing or tip, and a pyramid half-way along the guitar. Beyond a tip, that of the tip. Throws as `topLine` does. */
export const bridgeTopAt = (job: Settled, y: number): number => -heightOn(topLine(job), y);

/** The upper line where a plane square to the centre line cuts the bridge at a distance x from the nut: as everywhere, but for a pyramid's front and rear facets. Throws as `topLine` does. */
export const topLineAt = (job: Settled, design: Pick<Design, 'bridgeFront' | 'bridgeRear'>, x: number): Path =>
  topLine(job, job.bridge.footprint === 'pyramid' ? pyramidShare(job, design, x) : 1);
