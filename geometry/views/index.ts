import type { Design } from '../design.ts';
import type { Drawing, Label } from '../drawing.ts';
import { boundsOfPrimitives, layOut } from '../layout.ts';
import { moved } from '../marks.ts';
import type { Settled } from '../settle.ts';
import type { Point } from '../shape/types.ts';
import { above } from './above.ts';
import { middle } from './middle.ts';
import { stretched } from './stretch.ts';
import { tail } from './tail.ts';

/** Every view, in the order in which they are shown one by one. A new one is a file beside this one and a line here; `threeViews` places three of them. */
export const views = { above, tail, middle } as const;

/** Three views on one sheet, and where each lies on it, mm. */
export interface Sheet extends Drawing {
  readonly places: Readonly<Record<keyof typeof views, Point>>;
}

/**
 * The three views on one sheet, in third-angle arrangement (ISO 5456-2): from above; below it the view from the tail, on the same axis across; to the right of that the section, on the same
 * heights. `heights` is how many times as large heights are drawn, which is for the screen only. `em` is the text height in mm that the views will be laid out with, `say` the reader's units: both decide how much room the dimensions take.
 */
export const threeViews = (
  job: Settled,
  design: Design,
  em: number,
  say: (label: Label) => string,
  heights = 1,
): Sheet => {
  const from = {
    above: above(job, design),
    tail: stretched(tail(job, design), heights),
    middle: stretched(middle(job, design), heights),
  };
  const room = (drawing: Drawing) => boundsOfPrimitives(layOut(drawing.marks, { em, say }));
  const aboveRoom = room(from.above);
  const tailRoom = room(from.tail);
  const middleRoom = room(from.middle);
  const down = aboveRoom.maxY - Math.min(tailRoom.minY, middleRoom.minY) + 1.2 * em;
  const right = tailRoom.maxX - middleRoom.minX + 2 * em;
  return {
    id: 'drawing',
    title: 'Three views',
    places: { above: { x: 0, y: 0 }, tail: { x: 0, y: down }, middle: { x: right, y: down } },
    marks: [
      ...moved(from.above.marks, 0, 0, 'above.'),
      ...moved(from.tail.marks, 0, down, 'tail.'),
      ...moved(from.middle.marks, right, down, 'middle.'),
    ],
  };
};
