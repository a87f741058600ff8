import { isSame } from './changes.ts';
import type { Mark, PathMark } from './drawing.ts';
import type { Path, Point, Segment } from './shape/types.ts';

/*
 * A drawing is made anew with every number that changes, though most of it stays as it was. Marks that say the same as before are taken over as the very same objects, so that whatever was worked
 * out from them is found again (`once.ts`).
 */

const isSamePoint = (a: Point, b: Point): boolean => a.x === b.x && a.y === b.y;

const isSameSegment = (a: Segment, b: Segment): boolean => {
  if (a.kind === 'line') return b.kind === 'line' && isSamePoint(a.from, b.from) && isSamePoint(a.to, b.to);
  if (a.kind === 'arc')
    return (
      b.kind === 'arc' &&
      a.radius === b.radius &&
      a.start === b.start &&
      a.sweep === b.sweep &&
      isSamePoint(a.centre, b.centre)
    );
  return (
    b.kind === 'cubic' &&
    isSamePoint(a.from, b.from) &&
    isSamePoint(a.c1, b.c1) &&
    isSamePoint(a.c2, b.c2) &&
    isSamePoint(a.to, b.to)
  );
};

/** Whether two paths are the same line to the last digit. Most of a drawing is paths, so they are not compared key by key. */
export const isSamePath = (a: Path, b: Path): boolean =>
  a === b ||
  (a.closed === b.closed &&
    a.segments.length === b.segments.length &&
    a.segments.every((segment, k) => isSameSegment(segment, b.segments[k] as Segment)));

const isSameOutline = ({ path: a, ...one }: PathMark, { path: b, ...other }: PathMark): boolean =>
  isSamePath(a, b) && isSame(one, other);

/** Whether two marks draw the same. */
const isSameMark = (a: Mark, b: Mark): boolean =>
  a.kind === 'path' && b.kind === 'path' ? isSameOutline(a, b) : isSame(a, b);

/** The marks of a drawing, each that was there before as the same object as then. */
export const withSameMarks = (now: readonly Mark[], before: readonly Mark[]): readonly Mark[] => {
  const was = new Map(before.map((mark) => [mark.id, mark]));
  let isNew = now.length !== before.length;
  const marks = now.map((mark, k) => {
    const then = was.get(mark.id);
    const same = then !== undefined && isSameMark(then, mark) ? then : mark;
    if (same !== before[k]) isNew = true;
    return same;
  });
  return isNew ? marks : before;
};
