import { arc } from '../shape/arc.ts';
import type { Arc, Line, Point } from '../shape/types.ts';

/**
 * The crown as it is cut: an exact arc (or a line, for `flat`) of this radius through two points, carried on to x = `left` and x = `right`; y is DOWN, the crown bulges
 * up, mm. Undefined when the radius cannot reach the ends.
 */
export const crownEdge = (
  through: readonly [Point, Point],
  radius: number | 'flat',
  left: number,
  right: number,
): Arc | Line | undefined => {
  const [a, b] = through;
  const slope = (b.y - a.y) / (b.x - a.x);
  if (radius === 'flat')
    return {
      kind: 'line',
      from: { x: left, y: a.y + slope * (left - a.x) },
      to: { x: right, y: a.y + slope * (right - a.x) },
    };
  const chord = Math.hypot(b.x - a.x, b.y - a.y);
  if (radius < chord / 2) return undefined;
  const toCentre = Math.sqrt(radius ** 2 - (chord / 2) ** 2);
  // The centre lies below the chord: down the page, square to it.
  const centre = {
    x: (a.x + b.x) / 2 - (toCentre * (b.y - a.y)) / chord,
    y: (a.y + b.y) / 2 + (toCentre * (b.x - a.x)) / chord,
  };
  const reach = Math.max(Math.abs(left - centre.x), Math.abs(right - centre.x));
  if (reach > radius) return undefined;
  const angleAt = (x: number) => -Math.acos((x - centre.x) / radius);
  return arc(centre, radius, angleAt(left), angleAt(right) - angleAt(left));
};
