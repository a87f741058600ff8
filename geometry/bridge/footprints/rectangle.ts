import { pen } from '../../shape/path.ts';
import type { Path } from '../../shape/types.ts';
import type { Footprint } from './footprint.ts';
import { oblong } from './oblong.ts';
import { slack } from './swing.ts';

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
  name: 'rectangular',
  problems: ({ length, depth, ends, cornerRadius }, mm) => {
    const most = Math.min(depth, length) / 2;
    if (ends === 'eased' && cornerRadius > most + slack)
      return [
        {
          path: 'bridge.cornerRadius',
          value: cornerRadius,
          says: `Corners of ${mm(cornerRadius)} do not fit on a bridge ${mm(length)} by ${mm(depth)}. Make the radius at most ${mm(most, 'down')}${depth <= length ? ', or choose half-round ends' : ''}.`,
        },
      ];
    if (ends === 'round' && depth > length + slack)
      return [
        {
          path: 'bridge.depth',
          value: depth,
          says: `Half-round ends ${mm(depth)} deep do not fit on a bridge ${mm(length)} across. Make it at most ${mm(length, 'down')} deep, or at least ${mm(depth, 'up')} across.`,
        },
      ];
    return [];
  },
  outline: (bridge) => {
    const { length, depth, ends, cornerRadius } = bridge;
    if (ends === 'square') return oblong(bridge);
    const most = Math.min(depth, length) / 2;
    return rounded(length / 2, depth, ends === 'eased' ? Math.min(cornerRadius, most) : most);
  },
};
