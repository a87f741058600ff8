import { heightOn } from '../bridge/graph.ts';
import { topLine } from '../bridge/top-line.ts';
import type { Design } from '../design.ts';
import type { Settled } from '../settle.ts';
import type { Path, Point } from '../shape/types.ts';
import { crownEdgeOf, halfSaddle } from './face.ts';

/** How many even steps a line of gaps has. */
const steps = 48;

const lines = (job: Settled, design: Design): { readonly crown: Path; readonly top: Path } => {
  const edge = crownEdgeOf(design, 'across');
  if (edge === undefined) throw new RangeError('The crown does not reach the saddle’s ends.');
  return { crown: { segments: edge, closed: false }, top: topLine(job) };
};

/**
 * How far the saddle’s crown, as it is cut, stands above the bridge’s top: at a place across the guitar, both in mm. At a string that is its exposure, but for what a crown of one radius misses its wanted
 * height by. Throws a RangeError where the crown does not reach the saddle’s ends; `build` refuses that first.
 */
export const gapOver = (job: Settled, design: Design): ((across: number) => number) => {
  const { crown, top } = lines(job, design);
  return (across) => heightOn(top, across) - heightOn(crown, across);
};

/** The gap from the saddle’s bass end to its treble end: x across the guitar, y the gap, mm; close enough for a line to be drawn through, with a point at every string. Throws as `gapOver` does. */
export const gapLine = (job: Settled, design: Design): readonly Point[] => {
  const gap = gapOver(job, design);
  const half = halfSaddle(design, 'across');
  const places = [
    ...Array.from({ length: steps + 1 }, (_, k) => half * ((2 * k) / steps - 1)),
    ...design.strings.map((s) => s.acrossAtSaddle),
  ];
  return [...new Set(places)].sort((a, b) => a - b).map((x) => ({ x, y: gap(x) }));
};
