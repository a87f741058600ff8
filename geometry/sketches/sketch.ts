import type { LineType, Mark, Matter, Primitive } from '../drawing.ts';
import { layOut } from '../layout.ts';
import { across, mirrored, moved, stroke, upright } from '../marks.ts';
import { arcThrough, circle } from '../shape/arc.ts';
import { path, polyline } from '../shape/path.ts';
import type { Path, Point } from '../shape/types.ts';

/** The paper of every sketch, in its own units: x to the right, y down. */
export const paper = { width: 150, height: 90 } as const;
/** The text height, in the same units: it sets the size of arrowheads. */
const em = 7;

/** A mark that has yet no id. */
export type Bare = (id: string) => Mark;

/** A schematic drawing of where to hold the rule or gauge: what is always drawn, and what is drawn besides, lit, for each thing that can be measured on it. */
export interface Sketch {
  readonly base: readonly Mark[];
  readonly lit: Readonly<Record<string, readonly Mark[]>>;
}

/** What the marks that are lit show, as their job path. */
export const litPath = 'lit';

const named = (prefix: string, bare: readonly Bare[]): readonly Mark[] => bare.map((mark, k) => mark(`${prefix}.${k}`));

/** A sketch from its marks. */
export const sketch = (base: readonly Bare[], lit: Readonly<Record<string, readonly Bare[]>>): Sketch => ({
  base: named('base', base),
  lit: Object.fromEntries(
    Object.entries(lit).map(([key, bare]) => [key, named(key, bare).map((mark) => ({ ...mark, jobPath: litPath }))]),
  ),
});

/** The same sketch seen from the other side: the nut on the right, as in the section along the guitar. */
export const turned = ({ base, lit }: Sketch): Sketch => {
  const turn = (marks: readonly Mark[]) => moved(mirrored(marks), paper.width, 0);
  return { base: turn(base), lit: Object.fromEntries(Object.entries(lit).map(([key, marks]) => [key, turn(marks)])) };
};

/** A sketch's strokes and texts, with what is lit on it; the values of its dimensions are left out, as it has no scale. */
export const drawn = ({ base, lit }: Sketch, key: string): readonly Primitive[] =>
  layOut([...base, ...(lit[key] ?? [])], {
    em,
    say: (label) => label.filter((part) => typeof part === 'string').join(''),
  }).filter((primitive) => primitive.kind !== 'text' || primitive.text !== '');

export const at = (x: number, y: number): Point => ({ x, y });

/** A line of the drawing; closed ones may be of a matter. */
export const drawPath =
  (line: LineType, drawnPath: Path, matter?: Matter): Bare =>
  (id) =>
    stroke(id, drawnPath, { line, purpose: 'show', ...(matter === undefined ? {} : { matter }) });

type Pair = readonly [x: number, y: number];
const points = (pairs: readonly Pair[]): Point[] => pairs.map(([x, y]) => ({ x, y }));

export const lines = (line: LineType, ...pairs: readonly Pair[]): Bare =>
  drawPath(line, polyline(points(pairs), false));
export const shape = (line: LineType, matter: Matter, ...pairs: readonly Pair[]): Bare =>
  drawPath(line, polyline(points(pairs), true), matter);
export const box = (line: LineType, matter: Matter, x0: number, y0: number, x1: number, y1: number): Bare =>
  shape(line, matter, [x0, y0], [x1, y0], [x1, y1], [x0, y1]);
export const ring = (line: LineType, x: number, y: number, radius: number, matter?: Matter): Bare =>
  drawPath(line, circle({ x, y }, radius), matter);
/** An arc from the first point through the second to the third. */
export const bow = (line: LineType, a: Pair, b: Pair, c: Pair): Bare => {
  const [from, by, to] = points([a, b, c]) as [Point, Point, Point];
  return drawPath(line, path([arcThrough(from, by, to)], false));
};

/** A dimension across the page, its line at the height `y`, from features at the heights `fromY`. */
export const wide =
  (x0: number, x1: number, y: number, fromY: number | readonly [number, number] = y, label = ''): Bare =>
  (id) => {
    const [a, b] = typeof fromY === 'number' ? [fromY, fromY] : fromY;
    return across(id, at(x0, a), at(x1, b), y, 0, undefined, [label]);
  };

/** A dimension up the page, its line at `x`, from features at `fromX`. */
export const high =
  (y0: number, y1: number, x: number, fromX: number | readonly [number, number] = x): Bare =>
  (id) => {
    const [a, b] = typeof fromX === 'number' ? [fromX, fromX] : fromX;
    return upright(id, at(a, y0), at(b, y1), x, 0, undefined, ['']);
  };

/** A radius gauge that stands on a crown: its lower edge is the arc through three points, the middle one highest. */
export const gauge = (a: Pair, b: Pair, c: Pair, height = 12): Bare => {
  const [from, by, to] = points([a, b, c]) as [Point, Point, Point];
  const top = by.y - height;
  const back = polyline([to, at(to.x, top), at(from.x, top), from], false);
  return drawPath('outline', path([arcThrough(from, by, to), ...back.segments], true));
};
