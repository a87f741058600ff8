import { expect } from 'vitest';
import type { Primitive, Stroke } from '../../geometry/drawing.ts';
import { pathLength } from '../../geometry/shape/measure.ts';
import { distanceTo } from '../../geometry/shape/nearest.ts';
import type { Path, Point, Segment } from '../../geometry/shape/types.ts';
import type { Sheet } from '../../templates/sheets.ts';
import { purposes } from '../../templates/style.ts';
import { fitCircle, pointAt } from '../fit-circle.ts';
import type { PdfFile } from '../read-pdf.ts';
import type { SvgFile } from '../read-svg.ts';

/*
 * Every stroke of a sheet as a reader that did not write the file finds it, against the exact path that was to be drawn. A writer keeps the strokes' order
 * within their purpose, so that the k-th that is read is the k-th that was drawn.
 */

/** How far a line may lie off on paper, mm, and how much an arc's radius may differ. */
const off = 0.01;
const ofRadius = 0.001;

/** A point of a segment, by formulas of the tests' own. */
const at = (s: Segment, t: number): Point => {
  if (s.kind === 'cubic') return pointAt(s, t);
  if (s.kind === 'line') return { x: s.from.x + (s.to.x - s.from.x) * t, y: s.from.y + (s.to.y - s.from.y) * t };
  const angle = s.start + s.sweep * t;
  return { x: s.centre.x + s.radius * Math.cos(angle), y: s.centre.y + s.radius * Math.sin(angle) };
};
const along = (s: Segment): readonly Point[] =>
  (s.kind === 'line' ? [0, 0.5, 1] : [0, 0.21, 0.43, 0.68, 1]).map((t) => at(s, t));

/** What was read with the line that closes it, which readers leave out. */
const closed = (segments: readonly Segment[]): Path => {
  const [first, last] = [segments[0], segments.at(-1)];
  if (!first || !last) throw new Error('nothing was read');
  return { segments: [...segments, { kind: 'line', from: at(last, 1), to: at(first, 0) }], closed: true };
};

const strokesOf = (primitives: readonly Primitive[]): readonly Stroke[] =>
  purposes.flatMap((purpose) => primitives.filter((p) => p.kind === 'stroke').filter((s) => s.purpose === purpose));

interface Read {
  readonly segments: readonly Segment[];
  readonly closed: boolean;
}

const compare = (drawn: Stroke, read: Read): void => {
  const says = drawn.id;
  expect(read.closed, says).toBe(drawn.path.closed);
  const back: Path = read.closed ? closed(read.segments) : { segments: read.segments, closed: false };
  const there = read.segments.flatMap(along).map((p) => distanceTo(drawn.path, p));
  const here = drawn.path.segments.flatMap(along).map((p) => distanceTo(back, p));
  expect(Math.max(...there, ...here), says).toBeLessThan(off);
};

/** Every arc of a path drawn by itself, and what was read of it: its pieces lie between its ends. */
const radii = (drawn: Stroke, read: Read): void => {
  const curved = read.segments.filter((s) => s.kind !== 'line');
  for (const s of drawn.path.segments) {
    if (s.kind !== 'arc') continue;
    const own = curved.filter((piece) =>
      [0.25, 0.5, 0.75].every((t) => distanceTo({ segments: [s], closed: false }, at(piece, t)) < off),
    );
    expect(own.length, `${drawn.id}: an arc`).toBeGreaterThan(0);
    // A short arc's chord says little of its radius: it is told by where it lies.
    if (s.radius * Math.abs(s.sweep) < 1 || Math.abs(s.sweep) < 0.02) continue;
    const found = fitCircle(own.flatMap((piece) => [0, 0.2, 0.4, 0.6, 0.8, 1].map((t) => at(piece, t))));
    expect(Math.abs(found.radius / s.radius - 1), `${drawn.id}: radius ${s.radius}`).toBeLessThan(ofRadius);
  }
};

/** Holds a page of a PDF file to the sheet that it was written from. */
export const holdPdf = (page: PdfFile['pages'][number], sheet: Sheet): void => {
  const drawn = strokesOf(sheet.primitives);
  expect(page.paths.map(({ layer }) => layer)).toEqual(drawn.map(({ purpose }) => purpose));
  for (const [k, stroke] of drawn.entries()) {
    const read = page.paths[k] as Read;
    compare(stroke, read);
    radii(stroke, read);
  }
};

/** Holds an SVG file to the sheet that it was written from; its arcs are arcs. */
export const holdSvg = (file: SvgFile, sheet: Sheet): void => {
  expect([file.widthMm, file.heightMm]).toEqual([sheet.width, sheet.height].map((side) => expect.closeTo(side, 5)));
  const drawn = strokesOf(sheet.primitives);
  const elements = file.elements.filter(({ tag }) => tag !== 'text');
  expect(elements.map(({ purpose }) => purpose)).toEqual(drawn.map(({ purpose }) => purpose));
  for (const [k, stroke] of drawn.entries()) {
    const read = elements[k]?.paths[0] as Read;
    compare(stroke, read);
    const arcs = read.segments.filter((s) => s.kind === 'arc');
    expect(arcs.length > 0, stroke.id).toBe(stroke.path.segments.some((s) => s.kind === 'arc'));
    radii(stroke, read);
  }
};

interface Motion {
  /** From the drawing to the sheet. */
  readonly there: (p: Point) => Point;
  /** And back. */
  readonly back: (p: Point) => Point;
}

/** The motion, without scale and mirror, that takes points to points best: by their means, and the angle of least squares. */
const motionOf = (pairs: readonly (readonly [Point, Point])[]): Motion => {
  const mean = (k: 0 | 1): Point => ({
    x: pairs.reduce((sum, pair) => sum + pair[k].x, 0) / pairs.length,
    y: pairs.reduce((sum, pair) => sum + pair[k].y, 0) / pairs.length,
  });
  const [from, to] = [mean(0), mean(1)];
  let [sine, cosine] = [0, 0];
  for (const [a, b] of pairs) {
    const [ax, ay, bx, by] = [a.x - from.x, a.y - from.y, b.x - to.x, b.y - to.y];
    cosine += ax * bx + ay * by;
    sine += ax * by - ay * bx;
  }
  const angle = Math.atan2(sine, cosine);
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const turned = (p: Point, a: Point, b: Point, sense: 1 | -1): Point => ({
    x: b.x + c * (p.x - a.x) - sense * s * (p.y - a.y),
    y: b.y + sense * s * (p.x - a.x) + c * (p.y - a.y),
  });
  return { there: (p) => turned(p, from, to, 1), back: (p) => turned(p, to, from, -1) };
};

/** How far rounding may move what is placed, mm. */
const placedWithin = 1e-6;

type Pairs = readonly (readonly [Point, Point])[];
type Strokes = ReadonlyMap<string, Stroke>;

const strokesById = (sheet: Sheet): Strokes =>
  new Map(sheet.primitives.flatMap((p) => (p.kind === 'stroke' ? [[p.id, p] as const] : [])));

/** Points of strokes that lie whole on a sheet, on the drawing and there. */
const wholePairs = (strokes: readonly Stroke[], placed: Strokes, prefix: string): Pairs =>
  strokes.flatMap((stroke) => {
    const on = placed.get(`${prefix}${stroke.id}`);
    const isWhole =
      on?.path.segments.length === stroke.path.segments.length &&
      Math.abs(pathLength(on.path) - pathLength(stroke.path)) < placedWithin;
    return isWhole
      ? stroke.path.segments.flatMap((s, k) =>
          [0, 0.37, 1].map((t) => [at(s, t), at(on.path.segments[k] as Segment, t)] as const),
        )
      : [];
  });

/** Points of the crosses by which a page joins one that is known already, on the drawing and there. */
const crossPairs = (placed: Strokes, known: Strokes, { back }: Motion): Pairs =>
  [...placed.values()].flatMap(({ id, path }) => {
    const other = /^join\..*\.cross\d+\.[xy]$/.test(id) ? known.get(id)?.path.segments[0] : undefined;
    return other ? [0, 1].map((t) => [back(at(other, t)), at(path.segments[0] as Segment, t)] as const) : [];
  });

/** Where each sheet shows a drawing: found by strokes that lie whole on it; on a page that has none, by the crosses that join it to one that has. */
const motionsOf = (
  strokes: readonly Stroke[],
  sheets: readonly Sheet[],
  prefix: string,
): ReadonlyMap<Strokes, Motion> => {
  const ids = strokes.map(({ id }) => `${prefix}${id}`);
  const shows = sheets.map(strokesById).filter((placed) => ids.some((id) => placed.has(id)));
  const found = new Map<Strokes, Motion>();
  const add = (placed: Strokes, pairs: Pairs): void => {
    if (pairs.length === 0) return;
    const motion = motionOf(pairs);
    const misses = pairs.map(([a, b]) => Math.hypot(motion.there(a).x - b.x, motion.there(a).y - b.y));
    expect(Math.max(...misses), prefix).toBeLessThan(placedWithin);
    found.set(placed, motion);
  };
  for (const placed of shows) add(placed, wholePairs(strokes, placed, prefix));
  for (let before = 0; before < found.size; ) {
    before = found.size;
    for (const placed of shows)
      for (const [known, motion] of [...found]) if (!found.has(placed)) add(placed, crossPairs(placed, known, motion));
  }
  expect(found.size, `${prefix}: pages whose place is found`).toBe(shows.length);
  return found;
};

/**
 * Holds a drawing on its sheets to the drawing as it was drawn: moved and turned, but never scaled, bent or mirrored; whole on one sheet, or parted over several
 * that show all of it. Ids on the sheets begin with `prefix`.
 */
export const holdPlaced = (own: readonly Primitive[], sheets: readonly Sheet[], prefix: string): void => {
  const strokes = own.filter((p) => p.kind === 'stroke');
  const shown = new Map(strokes.map(({ id }) => [id, 0]));
  for (const [placed, { back }] of motionsOf(strokes, sheets, prefix))
    for (const { id, path } of strokes) {
      // A page's edge may part a stroke; its further parts are numbered, as are those of a line broken under words, which are strokes of their own.
      const further = (k: number) => (shown.has(`${id}.${k}`) ? undefined : placed.get(`${prefix}${id}.${k}`));
      for (let k = 1, part = placed.get(`${prefix}${id}`); part; k++, part = further(k)) {
        const misses = part.path.segments.flatMap(along).map((p) => distanceTo(path, back(p)));
        expect(Math.max(...misses), `${prefix}${id}`).toBeLessThan(placedWithin);
        shown.set(id, (shown.get(id) ?? 0) + pathLength(part.path));
      }
    }
  // Pages lie over each other, so parts together are no shorter than the whole.
  for (const { id, path } of strokes)
    expect(shown.get(id), `${prefix}${id}`).toBeGreaterThan(pathLength(path) - placedWithin);
};
