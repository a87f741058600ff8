import type { Design } from '../../design.ts';
import { setAt } from '../../fields.ts';
import type { Settled } from '../../settle.ts';
import type { Point } from '../../shape/types.ts';
import { solve } from '../../solve.ts';
import { found, type Grip } from './grip.ts';

interface Sought {
  readonly id: string;
  readonly jobPath: string;
  /** Where it stands in a design. */
  readonly place: (design: Design) => Point;
  readonly axis: Point;
  /** The value now. */
  readonly now: number;
  /** How far it goes along the axis, mm, for each unit of the value, roughly. */
  readonly slope: number;
}

/** A grip whose place hangs on more than its own number, such as a computed setback: the value is looked for by solving anew. */
export const sought = (job: Settled, design: Design, { id, jobPath, place, axis, now, slope }: Sought): Grip => {
  const along = ({ x, y }: Point) => x * axis.x + y * axis.y;
  const reached = (value: number) => {
    const solved = solve(setAt(job, jobPath, value));
    return solved.ok ? along(place(solved.design)) : undefined;
  };
  return { id, jobPath, at: place(design), axis, value: (to) => found(reached, along(to), now, slope) };
};
