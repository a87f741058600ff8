import type { Problem } from '../../problem.ts';
import { pen } from '../../shape/path.ts';
import type { Footprint } from './footprint.ts';

/**
 * Ends of full depth, and between them a waist: front and rear edge each leave the end level, and swing by two equal arcs, one round and one hollow, to the waist's middle, level again. With a half width a and b the
 * waist's share on each edge, every arc's radius is `(a² + b²)/(4b)`.
 */
export const waisted: Footprint = {
  style: 'waisted',
  problems: ({ length, depth, waistDepth, waistWidth }, mm) => {
    const problems: Problem[] = [];
    if (waistWidth > length)
      problems.push({
        path: 'bridge.waistWidth',
        value: waistWidth,
        says: `The waist is ${mm(waistWidth)} wide, the bridge only ${mm(length)} across. Make the waist ${mm(length)} or narrower, or the bridge longer.`,
      });
    if (waistDepth >= depth)
      problems.push({
        path: 'bridge.waistDepth',
        value: waistDepth,
        says: `The waist is ${mm(waistDepth)} deep, the ends ${mm(depth)}: nothing is left of a waist. Make it shallower than ${mm(depth)}, or choose a rectangular footprint.`,
      });
    else if (depth - waistDepth > waistWidth)
      problems.push({
        path: 'bridge.waistWidth',
        value: waistWidth,
        says: `A waist that takes ${mm((depth - waistDepth) / 2)} off each edge would overhang in a width of ${mm(waistWidth)}. Make it at least ${mm(depth - waistDepth)} wide, or deeper in its middle.`,
      });
    return problems;
  },
  frontAtCentre: ({ depth, waistDepth }) => (depth - waistDepth) / 2,
  outline: ({ length, depth, waistDepth, waistWidth }) => {
    const half = length / 2;
    const a = waistWidth / 2;
    const b = (depth - waistDepth) / 2;
    const radius = (a * a + b * b) / (4 * b);
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
