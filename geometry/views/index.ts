import type { Design } from '../design.ts';
import type { Drawing, Label } from '../drawing.ts';
import { boundsOfPrimitives, layOut } from '../layout.ts';
import { moved } from '../marks.ts';
import type { Settled } from '../settle.ts';
import type { Bounds } from '../shape/types.ts';
import { above } from './above.ts';
import { type LaidOver, nothingOver } from './laid-over.ts';
import { middle } from './middle.ts';
import type { Place } from './place.ts';
import { stretched } from './stretch.ts';
import { tail } from './tail.ts';

/** Every view, in the order in which they are shown one by one. A new one is a file beside this one and a line here; `threeViews` places three of them. */
export const views = { above, tail, middle } as const;

export type ViewName = keyof typeof views;

/** One drawing of several views, and where each view stands in it. */
export interface Placed extends Drawing {
  readonly places: Readonly<Partial<Record<ViewName, Place>>>;
}

/** Three views on one sheet, and where each stands on it. */
export interface Sheet extends Placed {
  readonly places: Readonly<Record<ViewName, Place>>;
}

/** A view with what lies over it. */
const under = (name: ViewName, job: Settled, design: Design, over: LaidOver): Drawing => {
  const view = views[name](job, design);
  return { ...view, marks: [...view.marks, ...over[name]] };
};

/** A view by itself, its heights drawn so many times as large, and those of what lies `over` it with them; from above there are none. */
export const viewAlone = (name: ViewName, job: Settled, design: Design, heights = 1, over = nothingOver): Placed => {
  const view = under(name, job, design, over);
  const factor = name === 'above' ? 1 : heights;
  return { ...stretched(view, factor), places: { [name]: { x: 0, y: 0, heights: factor } } };
};

/**
 * The three views on one sheet, in third-angle arrangement (ISO 5456-2): from above; below it the view from the tail, on the same axis across; to the right of that the section, on the same
 * heights. `heights` is how many times as large heights are drawn, which is for the screen only. `em` is the text height in mm that the views will be laid out with, `say` the reader's units: both decide how much room the dimensions take. What lies `over` each view is drawn on it, and stretched with it.
 */
export const threeViews = (
  job: Settled,
  design: Design,
  em: number,
  say: (label: Label) => string,
  heights = 1,
  over = nothingOver,
): Sheet => {
  const from = {
    above: under('above', job, design, over),
    tail: stretched(under('tail', job, design, over), heights),
    middle: stretched(under('middle', job, design, over), heights),
  };
  const room = (drawing: Drawing) => boundsOfPrimitives(layOut(drawing.marks, { em, say }));
  const aboveRoom = room(from.above);
  const tailRoom = room(from.tail);
  const middleRoom = room(from.middle);
  const down = aboveRoom.maxY - Math.min(tailRoom.minY, middleRoom.minY) + 1.2 * em;
  const right = tailRoom.maxX - middleRoom.minX + 2 * em;
  const place = (x: number, y: number, heights: number, { minX, minY, maxX, maxY }: Bounds): Place => ({
    x,
    y,
    heights,
    room: { minX: minX + x, minY: minY + y, maxX: maxX + x, maxY: maxY + y },
  });
  return {
    id: 'drawing',
    title: 'Three views',
    places: {
      above: place(0, 0, 1, aboveRoom),
      tail: place(0, down, heights, tailRoom),
      middle: place(right, down, heights, middleRoom),
    },
    marks: [
      ...moved(from.above.marks, 0, 0, 'above.'),
      ...moved(from.tail.marks, 0, down, 'tail.'),
      ...moved(from.middle.marks, right, down, 'middle.'),
    ],
  };
};
