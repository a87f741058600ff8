import type { Problem } from '../../problem.ts';
import { pen } from '../../shape/path.ts';
import type { Footprint } from './footprint.ts';
import { leastSwing, slack, swingRadius } from './swing.ts';

/**
 * Ends of full depth, and between them a waist: front and rear edge each leave the end level, and swing by two equal arcs, one round and one hollow, to the waist's middle, level again.
 */
export const waisted: Footprint = {
  name: 'waisted',
  problems: ({ length, depth, waistDepth, waistWidth }, mm) => {
    const problems: Problem[] = [];
    const widest = Math.min(waistWidth, length);
    const taken = depth - waistDepth;
    if (waistWidth > length + slack)
      problems.push({
        path: 'bridge.waistWidth',
        value: waistWidth,
        says: `The waist is ${mm(waistWidth)} wide, the bridge only ${mm(length)} across. Make the waist ${mm(length, 'down')} or narrower, or the bridge longer.`,
      });
    if (taken < 2 * leastSwing - slack)
      problems.push({
        path: 'bridge.waistDepth',
        value: waistDepth,
        says: `The waist is ${mm(waistDepth)} deep, the ends ${mm(depth)}: nothing is left of a waist. Make it at most ${mm(depth - 2 * leastSwing, 'down')} deep, or choose a rectangular footprint.`,
      });
    else if (taken > widest + slack && taken <= length + slack)
      problems.push({
        path: 'bridge.waistWidth',
        value: waistWidth,
        says: `A waist that takes ${mm(taken / 2)} off each edge would overhang in a width of ${mm(widest)}. Make it at least ${mm(taken, 'up')} wide, or deeper in its middle.`,
      });
    else if (taken > widest + slack)
      problems.push({
        path: 'bridge.waistDepth',
        value: waistDepth,
        says: `A waist that takes ${mm(taken / 2)} off each edge would overhang in a width of ${mm(widest)}, and the bridge is only ${mm(length)} across. Make it at least ${mm(depth - widest, 'up')} deep in its middle.`,
      });
    return problems;
  },
  frontAtCentre: ({ depth, waistDepth }) => (depth - waistDepth) / 2,
  outline: ({ length, depth, waistDepth, waistWidth }) => {
    const half = length / 2;
    const a = Math.min(waistWidth / 2, half);
    const b = (depth - waistDepth) / 2;
    const radius = swingRadius(a, b);
    return pen({ x: -half, y: 0 })
      .line({ x: -a, y: 0 })
      .arc({ x: -a / 2, y: b / 2 }, radius, 1)
      .arc({ x: 0, y: b }, radius, -1)
      .arc({ x: a / 2, y: b / 2 }, radius, -1)
      .arc({ x: a, y: 0 }, radius, 1)
      .line({ x: half, y: 0 })
      .line({ x: half, y: depth })
      .line({ x: a, y: depth })
      .arc({ x: a / 2, y: depth - b / 2 }, radius, 1)
      .arc({ x: 0, y: depth - b }, radius, -1)
      .arc({ x: -a / 2, y: depth - b / 2 }, radius, -1)
      .arc({ x: -a, y: depth }, radius, 1)
      .line({ x: -half, y: depth })
      .close();
  },
};
