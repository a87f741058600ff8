import { start } from './shape/path.ts';
import { polar } from './shape/point.ts';
import type { Arc, Path, Point } from './shape/types.ts';

/** A number with six decimals at most and no more digits than it needs: within 0.000 001 of the value. */
export const digits = (value: number): string => {
  const short = String(Number(value.toFixed(6)));
  // Below 1e-6 nothing is left, so that no exponent ever shows; a negative zero is written as 0.
  return short === '-0' ? '0' : short;
};

const pair = (p: Point): string => `${digits(p.x)} ${digits(p.y)}`;

/**
 * An arc as `A` commands. Each turns at most a third of a circle: a half circle's ends, rounded, would leave its centre loose by
 * thousandths, and a whole circle's ends are one point.
 */
const arcData = (a: Arc): string => {
  const pieces = Math.max(1, Math.ceil(Math.abs(a.sweep) / ((2 * Math.PI) / 3) - 1e-9));
  const radius = digits(a.radius);
  const flag = a.sweep > 0 ? 1 : 0;
  let data = '';
  for (let n = 1; n <= pieces; n++) {
    data += `A${radius} ${radius} 0 0 ${flag} ${pair(polar(a.centre, a.radius, a.start + (a.sweep * n) / pieces))}`;
  }
  return data;
};

/**
 * The path as the `d` of an SVG path element (SVG 2, 9.3): lines as `L`, circular arcs as `A`, cubics as `C`, coordinates in the
 * path's own mm. Throws RangeError when the path has no segments.
 */
export const pathData = (path: Path): string => {
  let data = `M${pair(start(path))}`;
  for (const s of path.segments) {
    if (s.kind === 'line') data += `L${pair(s.to)}`;
    else if (s.kind === 'arc') data += arcData(s);
    else data += `C${pair(s.c1)} ${pair(s.c2)} ${pair(s.to)}`;
  }
  return path.closed ? `${data}Z` : data;
};
