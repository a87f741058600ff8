import type { Problem } from '../../problem.ts';
import { pen } from '../../shape/path.ts';
import type { Footprint } from './footprint.ts';
import { leastSwing, slack, swingRadius } from './swing.ts';

/**
 * A straight front edge and a belly behind the slot. On each side the rear edge leaves the straight wing level, and swings by two equal arcs, one
 * hollow and one round, to the belly's rearmost point, level again.
 */
export const belly: Footprint = {
  name: 'belly behind',
  problems: ({ length, depth, wingDepth, bellyWidth }, mm) => {
    const problems: Problem[] = [];
    const widest = Math.min(bellyWidth, length);
    const deep = depth - wingDepth;
    if (bellyWidth > length + slack)
      problems.push({
        path: 'bridge.bellyWidth',
        value: bellyWidth,
        says: `The belly is ${mm(bellyWidth)} wide, the bridge only ${mm(length)} across. Make the belly ${mm(length, 'down')} or narrower, or the bridge longer.`,
      });
    if (deep < leastSwing - slack)
      problems.push({
        path: 'bridge.wingDepth',
        value: wingDepth,
        says: `The tips are ${mm(wingDepth)} deep, the bridge ${mm(depth)}: nothing is left for a belly. Make the tips at most ${mm(depth - leastSwing, 'down')} deep, or choose a rectangular footprint.`,
      });
    else if (2 * deep > widest + slack && 2 * deep <= length + slack)
      problems.push({
        path: 'bridge.bellyWidth',
        value: bellyWidth,
        says: `A belly ${mm(deep)} deep would overhang in a width of ${mm(widest)}. Make it at least ${mm(2 * deep, 'up')} wide, or shallower.`,
      });
    else if (2 * deep > widest + slack)
      problems.push({
        path: 'bridge.wingDepth',
        value: wingDepth,
        says: `A belly ${mm(deep)} deep would overhang in a width of ${mm(widest)}, and the bridge is only ${mm(length)} across. Make the tips at least ${mm(depth - widest / 2, 'up')} deep, or the bridge shallower.`,
      });
    return problems;
  },
  outline: ({ length, depth, wingDepth, bellyWidth }) => {
    const half = length / 2;
    const a = Math.min(bellyWidth / 2, half);
    const b = depth - wingDepth;
    const radius = swingRadius(a, b);
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
