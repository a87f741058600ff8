import { floorRadius } from '../bridge/surface.ts';
import type { Design } from '../design.ts';
import type { Settled } from '../settle.ts';
import { bounds } from '../shape/measure.ts';
import { segmentEnd, segmentStart } from '../shape/path.ts';
import { drop } from '../shape/sagitta.ts';
import { crownEdgeOf, halfSaddle } from './face.ts';

/** The saddle's whole heights, from its bottom up to the crown that is cut, seen square to its face, mm. */
export interface WholeHeights {
  readonly bass: number;
  readonly treble: number;
  /** From the lowest place of its bottom up to the crown's highest point, wherever that is. */
  readonly highest: number;
}

/** How high the saddle stands at each of its ends, and over all, mm; its bottom follows the slot's floor. Throws a RangeError when the crown does not reach its ends; `build` refuses that first. */
export const wholeHeights = (job: Settled, design: Design): WholeHeights => {
  const segments = crownEdgeOf(design, 'along') ?? [];
  const [first, last] = [segments[0], segments.at(-1)];
  if (first === undefined || last === undefined) throw new RangeError('The crown does not reach the saddle’s ends.');
  const lowest = design.saddle.bottom - drop(floorRadius(job), halfSaddle(design, 'along'));
  const above = (y: number) => -y - lowest;
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

/** The smallest blank that the saddle can be made from, with what is left proud at first: as long and as thick as the saddle, and as high as it stands over all with the proud. */
export const blank = (job: Settled, design: Design): Blank => ({
  length: design.saddle.length,
  height: wholeHeights(job, design).highest + job.saddle.proud,
  thickness: design.saddle.thickness,
});
