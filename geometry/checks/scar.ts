import { footprints } from '../bridge/footprints/index.ts';
import { footprintOutline } from '../bridge/outline.ts';
import type { Design } from '../design.ts';
import type { Settled } from '../settle.ts';
import { levelCrossings } from '../shape/crossing.ts';
import { pointOn } from '../shape/measure.ts';
import { nearestOn } from '../shape/nearest.ts';
import { segmentEnd, segmentStart } from '../shape/path.ts';
import { translate } from '../shape/transform.ts';
import type { Path, Point, Segment } from '../shape/types.ts';
import type { Check, Fact } from './check.ts';
import { levelAt } from './level.ts';
import { unsigned } from './say.ts';

/** Places on each part of the scar's outline that are looked at. */
const places = 8;

const samples = (outline: Path): readonly Point[] =>
  outline.segments.flatMap((segment) => Array.from({ length: places }, (_, k) => pointOn(segment, k / places)));

/** The old bridge's outline in place; undefined where it is not measured, or its numbers make no outline. */
const scarOutline = ({ scar, bridge }: Settled): Path | undefined => {
  if (scar.outline === 'none') return undefined;
  const { length, depth, wingDepth, bellyWidth } = scar;
  const old = { ...bridge, length, depth, wingDepth, bellyWidth };
  const footprint = footprints[scar.outline];
  return footprint.problems(old, String).length > 0 ? undefined : translate(footprint.outline(old), 0, scar.fromNut);
};

/** Which edge of the footprint a part of its outline is. */
const edgeOf = (segment: Segment, middle: number): string => {
  const [from, to] = [segmentStart(segment), segmentEnd(segment)];
  if (segment.kind === 'line' && Math.abs(to.y - from.y) > Math.abs(to.x - from.x)) return 'the tips';
  return (from.y + to.y) / 2 < middle ? 'the front edge' : 'the rear edge';
};

/** How far the footprint covers the scar, edge by edge: least signed distance of the scar's outline from the footprint's, negative where it lies outside. */
const cover = (job: Settled, design: Design): readonly Fact[] => {
  const scar = scarOutline(job);
  if (scar === undefined) return [];
  const outline = footprintOutline(job, design);
  const edges = outline.segments.map((segment) => edgeOf(segment, design.datum.x));
  const crossings = levelCrossings(outline);
  const least = new Map<string, number>();
  for (const p of samples(scar)) {
    let [near, edge] = [Number.POSITIVE_INFINITY, ''];
    outline.segments.forEach((segment, k) => {
      const { distance } = nearestOn(segment, p);
      if (distance < near) [near, edge] = [distance, edges[k] ?? ''];
    });
    const winding = crossings(p.y).reduce((sum, { x, way }) => (x > p.x ? sum + way : sum), 0);
    const value = winding === 0 ? -near : near;
    least.set(edge, Math.min(value, least.get(edge) ?? value));
  }
  return [...least].map(([where, value]) => ({ where, value }));
};

/** How far the new footprint covers the scar that the old bridge left on the top. */
export const scar: Check = {
  id: 'scar',
  path: 'bridge.footprint',
  facts: cover,
  says: ({ worst, level, facts, range, say }) => {
    if (level === 'right') return `The footprint covers the old scar by ${say(worst.value)} or more`;
    const shown = facts.filter(({ value }) => levelAt(range, value) !== 'right');
    const [bare, tight] = [shown.filter(({ value }) => value < 0), shown.filter(({ value }) => value >= 0)];
    const list = (all: readonly Fact[]) =>
      all.map(({ value, where }) => `${unsigned(say(value))} at ${where}`).join(', ');
    return [
      ...(bare.length > 0 ? [`Bare scar shows, ${list(bare)}`] : []),
      ...(tight.length > 0 ? [`the old scar is covered by only ${list(tight)}`] : []),
    ]
      .join('; ')
      .replace(/^t/, 'T');
  },
  means: { low: 'Bare wood or torn finish will show around the new bridge.' },
  fixes: [
    ['bridge.frontToSaddle'],
    ['bridge.length'],
    ['bridge.depth'],
    ['bridge.wingDepth'],
    ['bridge.bellyWidth'],
    ['bridge.frontToSaddle', 'bridge.depth'],
    ['bridge.frontToSaddle', 'bridge.length'],
    ['bridge.length', 'bridge.depth'],
    ['bridge.depth', 'bridge.wingDepth'],
    ['bridge.frontToSaddle', 'bridge.length', 'bridge.depth'],
    ['bridge.frontToSaddle', 'bridge.depth', 'bridge.wingDepth'],
    ['bridge.frontToSaddle', 'bridge.length', 'bridge.depth', 'bridge.wingDepth'],
    ['bridge.frontToSaddle', 'bridge.length', 'bridge.depth', 'bridge.wingDepth', 'bridge.bellyWidth'],
  ],
};
