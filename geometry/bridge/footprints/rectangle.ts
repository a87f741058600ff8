import { pen, polyline } from '../../shape/path.ts';
import type { Path } from '../../shape/types.ts';
import type { Footprint } from './footprint.ts';

/** A rectangle whose four corners are quarter circles of a radius, mm; half-round ends where the radius is half its depth. */
const rounded = (half: number, depth: number, r: number): Path =>
  pen({ x: -half + r, y: 0 })
    .line({ x: half - r, y: 0 })
    .arc({ x: half, y: r }, r, 1)
    .line({ x: half, y: depth - r })
    .arc({ x: half - r, y: depth }, r, 1)
    .line({ x: -half + r, y: depth })
    .arc({ x: -half, y: depth - r }, r, 1)
    .line({ x: -half, y: r })
    .arc({ x: -half + r, y: 0 }, r, 1)
    .close();

/** A rectangle: its ends square, with eased corners, or half-round. */
export const rectangle: Footprint = {
  style: 'rectangle',
  problems: ({ length, depth, ends, cornerRadius }, mm) => {
    if (ends === 'eased' && 2 * cornerRadius > Math.min(depth, length))
      return [
        {
          path: 'bridge.cornerRadius',
          value: cornerRadius,
          says: `Corners of ${mm(cornerRadius)} do not fit on ends ${mm(depth)} deep. Make the radius at most ${mm(Math.min(depth, length) / 2)}, or choose half-round ends.`,
        },
      ];
    if (ends === 'round' && depth > length)
      return [
        {
          path: 'bridge.depth',
          value: depth,
          says: `Half-round ends ${mm(depth)} deep do not fit on a bridge ${mm(length)} across. Make it at least ${mm(depth)} across.`,
        },
      ];
    return [];
  },
  outline: ({ length, depth, ends, cornerRadius }) => {
    const half = length / 2;
    if (ends === 'eased') return rounded(half, depth, cornerRadius);
    if (ends === 'round') return rounded(half, depth, depth / 2);
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
