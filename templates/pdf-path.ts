import type { Stroke } from '../geometry/drawing.ts';
import { digits } from '../geometry/path-data.ts';
import { start } from '../geometry/shape/path.ts';
import { polar } from '../geometry/shape/point.ts';
import type { Arc, Path, Point } from '../geometry/shape/types.ts';
import { dashes, lineWidth } from './style.ts';

const pair = (p: Point): string => `${digits(p.x)} ${digits(p.y)}`;

/**
 * An arc as cubics of at most 45° each, PDF having no arcs: control points lie `4/3·tan(δ/4)` radii along the tangents, which leaves
 * the circle by 4 parts in a million of its radius: 0.001 mm at 254 mm.
 */
const arcOperators = (a: Arc): string => {
  const pieces = Math.max(1, Math.ceil(Math.abs(a.sweep) / (Math.PI / 4) - 1e-9));
  const step = a.sweep / pieces;
  const reach = (4 / 3) * Math.tan(step / 4) * a.radius;
  let operators = '';
  for (let n = 0; n < pieces; n++) {
    const [from, to] = [a.start + n * step, a.start + (n + 1) * step];
    const p = polar(a.centre, a.radius, from);
    const q = polar(a.centre, a.radius, to);
    const c1 = { x: p.x - reach * Math.sin(from), y: p.y + reach * Math.cos(from) };
    const c2 = { x: q.x + reach * Math.sin(to), y: q.y - reach * Math.cos(to) };
    operators += `${pair(c1)} ${pair(c2)} ${pair(q)} c\n`;
  }
  return operators;
};

const pathOperators = (path: Path): string => {
  let operators = `${pair(start(path))} m\n`;
  for (const s of path.segments) {
    if (s.kind === 'line') operators += `${pair(s.to)} l\n`;
    else if (s.kind === 'arc') operators += arcOperators(s);
    else operators += `${pair(s.c1)} ${pair(s.c2)} ${pair(s.to)} c\n`;
  }
  return path.closed ? `${operators}h\n` : operators;
};

/** The operators that draw a stroke, or fill one of ink, under a matrix of mm. */
export const strokeOperators = ({ path, line, matter }: Stroke): string => {
  if (matter === 'ink') return `${pathOperators(path)}f\n`;
  return `${digits(lineWidth[line])} w [${dashes[line].map(digits).join(' ')}] 0 d\n${pathOperators(path)}S\n`;
};
