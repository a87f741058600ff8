import type { Berth, Drawing, Mark, NoteMark } from '../drawing.ts';
import { once } from '../once.ts';
import { arcCubics } from '../shape/arc-cubics.ts';
import type { Path, Point, Segment } from '../shape/types.ts';

/*
 * Heights differ by tenths of a millimetre: to judge them by eye a view can be stretched upwards. Only the picture is; every number on it stays true, and
 * the view's title says by how much. Paper is never stretched.
 */

const up = (p: Point, factor: number): Point => ({ x: p.x, y: p.y * factor });

const segments = (segment: Segment, factor: number): readonly Segment[] => {
  if (segment.kind === 'arc') return arcCubics(segment).flatMap((cubic) => segments(cubic, factor));
  const ends = { from: up(segment.from, factor), to: up(segment.to, factor) };
  if (segment.kind === 'line') return [{ kind: 'line', ...ends }];
  return [{ kind: 'cubic', ...ends, c1: up(segment.c1, factor), c2: up(segment.c2, factor) }];
};

const stretchPath = (path: Path, factor: number): Path => ({
  ...path,
  segments: path.segments.flatMap((segment) => segments(segment, factor)),
});

/** The title, saying how far the view is stretched. One that ends at a dimension may then stand over it: a stretched one holds its value inside. */
const longerTitle = (title: NoteMark, factor: number): NoteMark => {
  // By one figure more from ten times on.
  const farther = title.anchor !== 'end' ? 0 : factor < 10 ? 1.6 : 2.2;
  const over = <B extends Partial<Berth>>(berth: B): B => ({
    ...berth,
    ...(berth.shift && { shift: { dx: berth.shift.dx + farther, dy: berth.shift.dy } }),
  });
  return {
    ...over(title),
    label: [...title.label, ` · heights ${factor}×`],
    ...(title.or && { or: title.or.map(over) }),
  };
};

/** A note with every place that it may stand at. */
const stretchNote = (mark: NoteMark, factor: number): NoteMark => ({
  ...mark,
  at: up(mark.at, factor),
  ...(mark.names && { names: mark.names.map((p) => up(p, factor)) as [Point, ...Point[]] }),
  ...(mark.keepsOff && { keepsOff: mark.keepsOff.map((p) => up(p, factor)) }),
  ...(mark.or && {
    or: mark.or.map((berth) => ({
      ...berth,
      ...(berth.at && { at: up(berth.at, factor) }),
      ...(berth.leads && { leads: up(berth.leads, factor) }),
    })),
  }),
});

const stretchMark = once((mark: Mark, factor: number): Mark => {
  switch (mark.kind) {
    case 'path':
      return {
        ...mark,
        path: stretchPath(mark.path, factor),
        ...(mark.hatch && {
          hatch: { ...mark.hatch, holes: mark.hatch.holes.map((hole) => stretchPath(hole, factor)) },
        }),
      };
    case 'note':
      return mark.id === 'title' ? longerTitle(stretchNote(mark, factor), factor) : stretchNote(mark, factor);
    case 'dimension':
      return {
        ...mark,
        from: up(mark.from, factor),
        to: up(mark.to, factor),
        ...(mark.along === 'x' && { at: { ...mark.at, base: mark.at.base * factor } }),
      };
  }
});

const stretchMarks = once((marks: readonly Mark[], factor: number) => marks.map((mark) => stretchMark(mark, factor)));

/** A view of heights with its heights drawn so many times as large; its title says so. With 1 it is the drawing itself. */
export const stretched = (drawing: Drawing, factor: number): Drawing =>
  factor === 1 ? drawing : { ...drawing, marks: stretchMarks(drawing.marks, factor) };
