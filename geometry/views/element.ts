import type { PathMark } from '../drawing.ts';
import { stroke } from '../marks.ts';
import { polyline } from '../shape/path.ts';
import type { Path, Point } from '../shape/types.ts';

/** An upright rectangle between two opposite corners, mm; closed. */
export const block = (a: Point, b: Point): Path => polyline([a, { x: b.x, y: a.y }, b, { x: a.x, y: b.y }], true);

/** What lies in the slot under the saddle, such as a pickup element. */
export const elementMark = (outline: Path): PathMark =>
  stroke('element', outline, { line: 'outline', purpose: 'show', matter: 'pin', jobPath: 'saddle.under' });
