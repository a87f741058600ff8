import { arcFromTo } from '../../shape/arc.ts';
import { levelRadius } from './hollow.ts';
import type { Wing } from './wing.ts';

/** An S of two equal arcs, the upper round and the lower hollow, level at both ends: each crosses half the wing. */
export const ogee: Wing = {
  style: 'ogee',
  needsWidth: () => true,
  line: ({ width, fall }) => {
    const middle = { x: width / 2, y: fall / 2 };
    const radius = levelRadius({ width: width / 2, fall: fall / 2 });
    return [arcFromTo({ x: 0, y: 0 }, middle, radius, 1), arcFromTo(middle, { x: width, y: fall }, radius, -1)];
  },
};
