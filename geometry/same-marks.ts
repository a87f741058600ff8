import type { Berth, Label, Mark, NoteMark, PathMark } from './drawing.ts';
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

const areSame = <T>(a: readonly T[] | undefined, b: readonly T[] | undefined, isSame: (a: T, b: T) => boolean) =>
  a === b ||
  (a !== undefined && b !== undefined && a.length === b.length && a.every((one, k) => isSame(one, b[k] as T)));

/** Whether two paths are the same line to the last digit. */
export const isSamePath = (a: Path, b: Path): boolean =>
  a === b || (a.closed === b.closed && areSame(a.segments, b.segments, isSameSegment));

const isSameLabel = (a: Label, b: Label): boolean =>
  areSame(a, b, (one, other) =>
    typeof one === 'string' || typeof other === 'string'
      ? one === other
      : Object.is(one.value, other.value) && one.kind === other.kind && one.fixed === other.fixed,
  );

const isSameBerth = (a: Partial<Berth>, b: Partial<Berth>): boolean =>
  a.anchor === b.anchor &&
  (a.at === b.at || (a.at !== undefined && b.at !== undefined && isSamePoint(a.at, b.at))) &&
  a.shift?.dx === b.shift?.dx &&
  a.shift?.dy === b.shift?.dy;

const isSameNote = (a: NoteMark, b: NoteMark): boolean =>
  isSameBerth(a, b) &&
  a.stagger === b.stagger &&
  a.roams === b.roams &&
  a.bold === b.bold &&
  a.scale === b.scale &&
  a.turn === b.turn &&
  areSame(a.or, b.or, isSameBerth) &&
  isSameLabel(a.label, b.label);

const isSameOutline = (a: PathMark, b: PathMark): boolean =>
  a.line === b.line &&
  a.purpose === b.purpose &&
  a.matter === b.matter &&
  a.hatch?.angle === b.hatch?.angle &&
  areSame(a.hatch?.holes, b.hatch?.holes, isSamePath) &&
  isSamePath(a.path, b.path);

/** Whether two marks draw the same. */
export const isSameMark = (a: Mark, b: Mark): boolean => {
  if (a === b) return true;
  if (a.id !== b.id || a.jobPath !== b.jobPath || a.alternative !== b.alternative) return false;
  if (a.kind === 'path') return b.kind === 'path' && isSameOutline(a, b);
  if (a.kind === 'note') return b.kind === 'note' && isSameNote(a, b);
  return (
    b.kind === 'dimension' &&
    a.along === b.along &&
    a.at.base === b.at.base &&
    a.at.ems === b.at.ems &&
    isSamePoint(a.from, b.from) &&
    isSamePoint(a.to, b.to) &&
    isSameLabel(a.label, b.label)
  );
};

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
