import { polyline } from '../../shape/path.ts';
import type { Footprint } from './footprint.ts';

/** A rectangle, its corners sharp. */
export const rectangle: Footprint = {
  style: 'rectangle',
  problems: () => [],
  outline: ({ length, depth }) => {
    const half = length / 2;
    return polyline(
      [
        { x: -half, y: 0 },
        { x: half, y: 0 },
        { x: half, y: depth },
        { x: -half, y: depth },
      ],
      true,
    );
  },
};
