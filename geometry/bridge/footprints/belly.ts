import type { Problem } from '../../problem.ts';
import { pen } from '../../shape/path.ts';
import type { Footprint } from './footprint.ts';

/**
 * A straight front edge and a belly behind the slot. On each side the rear edge leaves the straight wing level, and swings by two equal arcs, one
 * hollow and one round, to the belly's rearmost point, level again: with a half width a and a depth b, each arc's radius is `(a² + b²)/(4b)`.
 */
export const belly: Footprint = {
  style: 'belly',
  problems: ({ length, depth, wingDepth, bellyWidth }, mm) => {
    const problems: Problem[] = [];
    if (bellyWidth > length)
      problems.push({
        path: 'bridge.bellyWidth',
        value: bellyWidth,
        says: `The belly is ${mm(bellyWidth)} wide, the bridge only ${mm(length)} across. Make the belly ${mm(length)} or narrower, or the bridge longer.`,
      });
    if (wingDepth >= depth)
      problems.push({
        path: 'bridge.wingDepth',
        value: wingDepth,
        says: `The tips are ${mm(wingDepth)} deep, the bridge ${mm(depth)}: nothing is left for a belly. Make the tips shallower than ${mm(depth)}, or choose a rectangular footprint.`,
      });
    else if (depth - wingDepth > bellyWidth / 2)
      problems.push({
        path: 'bridge.bellyWidth',
        value: bellyWidth,
        says: `A belly ${mm(depth - wingDepth)} deep would overhang in a width of ${mm(bellyWidth)}. Make it at least ${mm(2 * (depth - wingDepth))} wide, or shallower.`,
      });
    return problems;
  },
  outline: ({ length, depth, wingDepth, bellyWidth }) => {
    const half = length / 2;
    const a = bellyWidth / 2;
    const b = depth - wingDepth;
    const radius = (a * a + b * b) / (4 * b);
    const middle = wingDepth + b / 2;
    return pen({ x: -half, y: 0 })
      .line({ x: half, y: 0 })
      .line({ x: half, y: wingDepth })
      .line({ x: a, y: wingDepth })
      .arc({ x: a / 2, y: middle }, radius, -1)
      .arc({ x: 0, y: depth }, radius, 1)
      .arc({ x: -a / 2, y: middle }, radius, 1)
      .arc({ x: -a, y: wingDepth }, radius, -1)
      .line({ x: -half, y: wingDepth })
      .close();
  },
};
