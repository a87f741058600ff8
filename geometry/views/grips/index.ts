import type { Design } from '../../design.ts';
import { benchOrder } from '../../fields.ts';
import type { Settled } from '../../settle.ts';
import { aboveGrips } from './above.ts';
import type { Grip } from './grip.ts';
import { middleGrips } from './middle.ts';
import { tailGrips } from './tail.ts';

export { type Grip, type Pull, putOnSheet } from './grip.ts';

/** The grips of every view. A new one stands in the file of its view. */
const grips = { above: aboveGrips, tail: tailGrips, middle: middleGrips } as const;

/** Where numbers can be taken hold of in a view, in the order of the bench; places as in that view, mm, mirrored for a left-handed guitar, heights not stretched. */
export const gripsOf = (view: keyof typeof grips, job: Settled, design: Design): readonly Grip[] =>
  grips[view](job, design).toSorted((a, b) => benchOrder(a.jobPath) - benchOrder(b.jobPath));
