import type { Design } from '../design.ts';
import type { Job } from '../job.ts';
import { bounds } from '../shape/measure.ts';
import { segmentEnd, segmentStart } from '../shape/path.ts';
import { crownEdgeOf } from './face.ts';

/** The saddle's whole heights, from its bottom up to the crown that is cut, seen square to its face, mm. */
export interface WholeHeights {
  readonly bass: number;
  readonly treble: number;
  /** At the crown's highest point, wherever that is. */
  readonly highest: number;
}

/** How high the saddle stands at each of its ends, and at the highest point of its crown, mm. Throws a RangeError when the crown does not reach its ends; `solve` refuses that first. */
export const wholeHeights = (design: Design): WholeHeights => {
  const segments = crownEdgeOf(design, 'along') ?? [];
  const [first, last] = [segments[0], segments.at(-1)];
  if (first === undefined || last === undefined) throw new RangeError('The crown does not reach the saddle’s ends.');
  const above = (y: number) => -y - design.saddle.bottom;
  return {
    bass: above(segmentStart(first).y),
    treble: above(segmentEnd(last).y),
    highest: above(bounds({ segments, closed: false }).minY),
  };
};

/** A raw piece, mm. */
export interface Blank {
  readonly length: number;
  readonly height: number;
  readonly thickness: number;
}

/** The smallest blank that the saddle can be made from, with what is left proud at first: as long and as thick as the saddle, and as high as its crown's highest point with the proud. */
export const blank = (job: Job, design: Design): Blank => ({
  length: design.saddle.length,
  height: wholeHeights(design).highest + job.saddle.proud,
  thickness: design.saddle.thickness,
});
