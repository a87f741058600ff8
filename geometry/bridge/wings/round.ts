import { arcFromTo } from '../../shape/arc.ts';
import { levelRadius } from './hollow.ts';
import type { Wing } from './wing.ts';

/** One convex arc that leaves the shoulder level and falls to the tip. */
export const round: Wing = {
  style: 'round',
  needsWidth: () => true,
  line: (span) => [arcFromTo({ x: 0, y: 0 }, { x: span.width, y: span.fall }, levelRadius(span), 1)],
};
