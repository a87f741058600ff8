import type { Stroke } from '../geometry/drawing.ts';
import { digits } from '../geometry/path-data.ts';
import { arcCubics } from '../geometry/shape/arc-cubics.ts';
import { start } from '../geometry/shape/path.ts';
import type { Cubic, Path, Point } from '../geometry/shape/types.ts';
import { dashes, lineWidth } from './style.ts';

const pair = (p: Point): string => `${digits(p.x)} ${digits(p.y)}`;

const cubicOperator = ({ c1, c2, to }: Cubic): string => `${pair(c1)} ${pair(c2)} ${pair(to)} c\n`;

const pathOperators = (path: Path): string => {
  let operators = `${pair(start(path))} m\n`;
  for (const s of path.segments) {
    if (s.kind === 'line') operators += `${pair(s.to)} l\n`;
    else operators += (s.kind === 'arc' ? arcCubics(s) : [s]).map(cubicOperator).join('');
  }
  return path.closed ? `${operators}h\n` : operators;
};

/** The operators that draw a stroke, or fill one of ink, under a matrix of mm. */
export const strokeOperators = ({ path, line, matter }: Stroke): string => {
  if (matter === 'ink') return `${pathOperators(path)}f\n`;
  return `${digits(lineWidth[line])} w [${dashes[line].map(digits).join(' ')}] 0 d\n${pathOperators(path)}S\n`;
};
