import { sayWith } from '../../../geometry/layout.ts';
import { once } from '../../../geometry/once.ts';
import type { ShowUnits } from '../../../geometry/units.ts';
import { arranged, unplaced, type ViewName, viewAlone, views } from '../../../geometry/views/index.ts';
import { nothingOver } from '../../../geometry/views/laid-over.ts';
import type { Built } from '../store.ts';
import type { Fit } from './fit.ts';

/** What the sheet can show: all views together, or one of them. */
export type PictureName = 'three' | ViewName;

/** How many times as large heights are drawn at first, and at most. */
export const usualHeights = 3;
export const mostHeights = 10;

export const viewNames = Object.keys(views) as readonly ViewName[];

const sayIn = once((show: ShowUnits) => sayWith(show));

/** How a picture is laid out with the alternatives over it, but for the room that it has: heights so many times as large, texts so many px high. */
export const layingOf = (
  name: PictureName,
  { job, design }: Built,
  heights: number,
  text: number,
  others = nothingOver,
): Omit<Fit, 'room' | 'seed'> => {
  const say = sayIn(job.show);
  if (name === 'three') {
    const from = unplaced(job, design, heights, others);
    return { draw: (em) => arranged(from, em, say, heights), say, text };
  }
  const alone = viewAlone(name, job, design, heights, others);
  return { draw: () => alone, say, text };
};
