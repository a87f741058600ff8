import type { Design } from '../design.ts';
import type { Drawing, Label, Mark, Primitive } from '../drawing.ts';
import { boundsOfPrimitives, layOut, movedPrimitives } from '../layout.ts';
import { moved } from '../marks.ts';
import { once } from '../once.ts';
import { withSameMarks } from '../same-marks.ts';
import type { Settled } from '../settle.ts';
import { joinBounds } from '../shape/bounds.ts';
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

/** The marks of each view as it was drawn last: what stays the same is not worked out again. */
const last: Partial<Record<ViewName, readonly Mark[]>> = {};

/** A view with what lies over it. */
const under = (name: ViewName, job: Settled, design: Design, over: LaidOver): Drawing => {
  const view = views[name](job, design);
  const marks = withSameMarks([...view.marks, ...over[name]], last[name] ?? []);
  last[name] = marks;
  return { ...view, marks };
};

/** A view by itself, its heights drawn so many times as large, and those of what lies `over` it with them; from above there are none. */
export const viewAlone = (name: ViewName, job: Settled, design: Design, heights = 1, over = nothingOver): Placed => {
  const view = under(name, job, design, over);
  const factor = name === 'above' ? 1 : heights;
  return { ...stretched(view, factor), places: { [name]: { x: 0, y: 0, heights: factor } } };
};

/** The views of a design by themselves, not yet placed; what lies `over` each is drawn on it, and stretched with it. */
export type Unplaced = Readonly<Record<ViewName, Drawing>>;

/** The three views of a design, their heights drawn so many times as large, which is for the screen only. */
export const unplaced = (job: Settled, design: Design, heights = 1, over = nothingOver): Unplaced => ({
  above: under('above', job, design, over),
  tail: stretched(under('tail', job, design, over), heights),
  middle: stretched(under('middle', job, design, over), heights),
});

/** A view laid out by itself, and the room that it takes. */
const laid = once((marks: readonly Mark[], em: number, say: (label: Label) => string) => {
  const primitives = layOut(marks, { em, say });
  return { primitives, room: boundsOfPrimitives(primitives) };
});

/**
 * Three views on one sheet, in third-angle arrangement (ISO 5456-2): from above; below it the view from the tail, on the same axis across; to the right of that the section, on the same
 * heights, drawn `heights` times as large. `em` is the text height in mm that they are laid out with, `say` the reader's units: both decide how much room the dimensions take. Each view is laid out by itself, and so
 * moved to its place.
 */
export const arranged = (
  from: Unplaced,
  em: number,
  say: (label: Label) => string,
  heights = 1,
): Sheet & { readonly primitives: readonly Primitive[]; readonly bounds: Bounds } => {
  const lay = (drawing: Drawing) => laid(drawing.marks, em, say);
  const laidOut = { above: lay(from.above), tail: lay(from.tail), middle: lay(from.middle) };
  const down = laidOut.above.room.maxY - Math.min(laidOut.tail.room.minY, laidOut.middle.room.minY) + 1.2 * em;
  const right = laidOut.tail.room.maxX - laidOut.middle.room.minX + 2 * em;
  const place = (
    x: number,
    y: number,
    heights: number,
    { minX, minY, maxX, maxY }: Bounds,
  ): Place & { room: Bounds } => ({
    x,
    y,
    heights,
    room: { minX: minX + x, minY: minY + y, maxX: maxX + x, maxY: maxY + y },
  });
  const places = {
    above: place(0, 0, 1, laidOut.above.room),
    tail: place(0, down, heights, laidOut.tail.room),
    middle: place(right, down, heights, laidOut.middle.room),
  };
  return {
    id: 'drawing',
    title: 'Three views',
    places,
    bounds: joinBounds(joinBounds(places.above.room, places.tail.room), places.middle.room),
    primitives: [
      ...movedPrimitives(laidOut.above.primitives, 0, 0, 'above.'),
      ...movedPrimitives(laidOut.tail.primitives, 0, down, 'tail.'),
      ...movedPrimitives(laidOut.middle.primitives, right, down, 'middle.'),
    ],
    marks: [
      ...moved(from.above.marks, 0, 0, 'above.'),
      ...moved(from.tail.marks, 0, down, 'tail.'),
      ...moved(from.middle.marks, right, down, 'middle.'),
    ],
  };
};

/** The three views of a design on one sheet, as `arranged` places them. */
export const threeViews = (
  job: Settled,
  design: Design,
  em: number,
  say: (label: Label) => string,
  heights = 1,
  over = nothingOver,
): Sheet => {
  const { id, title, places, marks } = arranged(unplaced(job, design, heights, over), em, say, heights);
  return { id, title, places, marks };
};
