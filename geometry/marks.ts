import type { Berth, DimensionMark, Label, Mark, NoteMark, PathMark, Quantity } from './drawing.ts';
import { once } from './once.ts';
import { polyline } from './shape/path.ts';
import { mirrorX, translate } from './shape/transform.ts';
import type { Path, Point } from './shape/types.ts';

/** A length, mm, that a label shows in the reader's unit. */
export const length = (value: number): Quantity => ({ value, kind: 'length' });
/** A length that stands in a row with others like it. */
export const fixedLength = (value: number): Quantity => ({ value, kind: 'length', fixed: true });
/** Lengths of one kind that are read beside each other, mm: all as fractions, or all in decimals. */
export const lengthsAlike = <const T extends readonly number[]>(
  ...values: T
): { readonly [K in keyof T]: Quantity & { readonly value: number } } =>
  values.map((value) => ({ value, kind: 'length', beside: values })) as {
    readonly [K in keyof T]: Quantity & { readonly value: number };
  };
export const radius = (value: number | 'flat'): Quantity => ({ value, kind: 'radius' });
export const angle = (value: number): Quantity => ({ value, kind: 'angle' });

type Given<M, K extends keyof M> = Omit<M, 'kind' | 'id' | K>;

export const stroke = (id: string, path: Path, rest: Given<PathMark, 'path'>): PathMark => ({
  kind: 'path',
  id,
  path,
  ...rest,
});

/** A note's shift and the places over it that it may go to, each a line of text higher than the one before. */
export const rising = (dx: number, dy: number, rows: number): Required<Pick<NoteMark, 'shift' | 'or'>> => ({
  shift: { dx, dy },
  or: Array.from({ length: rows }, (_, k) => ({ shift: { dx, dy: dy - 1.25 * (k + 1) } })),
});

/** A straight stroke that is only shown. */
export const showLine = (id: string, from: Point, to: Point, line: PathMark['line'] = 'thin'): PathMark =>
  stroke(id, polyline([from, to], false), { line, purpose: 'show' });

export const note = (
  id: string,
  at: Point,
  label: Label,
  rest: Omit<Given<NoteMark, 'at' | 'label'>, 'anchor'> & { anchor?: NoteMark['anchor'] } = {},
): NoteMark => ({
  kind: 'note',
  id,
  at,
  label,
  ...rest,
  anchor: rest.anchor ?? 'middle',
});

const dimension =
  (along: 'x' | 'y') =>
  (
    id: string,
    from: Point,
    to: Point,
    base: number,
    ems: number,
    jobPath?: string,
    label: Label = [length(Math.abs(to[along] - from[along]))],
  ): DimensionMark => ({
    kind: 'dimension',
    id,
    from,
    to,
    along,
    at: { base, ems },
    label,
    ...(jobPath === undefined ? {} : { jobPath }),
  });

/** A dimension across the page; its line stands `ems` below (or above, if negative) the page height `base`. Without a label it says its length, mm. */
export const across = dimension('x');

/** A dimension up the page; its line stands `ems` to the right (or left, if negative) of the page's `base`. Without a label it says its length, mm. */
export const upright = dimension('y');

const flip = (p: Point): Point => ({ x: -p.x, y: p.y });
const swapped = { start: 'end', middle: 'middle', end: 'start' } as const;

const mirror = (mark: Mark): Mark => {
  switch (mark.kind) {
    case 'path':
      return {
        ...mark,
        path: mirrorX(mark.path),
        ...(mark.hatch ? { hatch: { ...mark.hatch, holes: mark.hatch.holes.map(mirrorX) } } : {}),
      };
    case 'note':
      return {
        ...flipBerth(mark),
        ...(mark.or && { or: mark.or.map(flipBerth) }),
        ...(mark.names && { names: mark.names.map(flip) as [Point, ...Point[]] }),
        ...(mark.keepsOff && { keepsOff: mark.keepsOff.map(flip) }),
      };
    case 'dimension':
      return {
        ...mark,
        from: flip(mark.from),
        to: flip(mark.to),
        at: mark.along === 'y' ? { base: -mark.at.base, ems: -mark.at.ems } : mark.at,
      };
  }
};

const flipBerth = <B extends Partial<Berth>>(berth: B): B => ({
  ...berth,
  ...(berth.at && { at: flip(berth.at) }),
  ...(berth.anchor && { anchor: swapped[berth.anchor] }),
  ...(berth.shift && { shift: { dx: -berth.shift.dx, dy: berth.shift.dy } }),
  ...(berth.leads && { leads: flip(berth.leads) }),
});

/** The same marks seen the other way round, left for right about x = 0; the words stay readable. */
export const mirrored = (marks: readonly Mark[]): readonly Mark[] => marks.map(mirror);

const shift = (p: Point, dx: number, dy: number): Point => ({ x: p.x + dx, y: p.y + dy });

const move = once((mark: Mark, dx: number, dy: number, prefix: string): Mark => {
  const id = `${prefix}${mark.id}`;
  switch (mark.kind) {
    case 'path':
      return {
        ...mark,
        id,
        path: translate(mark.path, dx, dy),
        ...(mark.hatch
          ? { hatch: { ...mark.hatch, holes: mark.hatch.holes.map((hole) => translate(hole, dx, dy)) } }
          : {}),
      };
    case 'note':
      return {
        ...mark,
        id,
        at: shift(mark.at, dx, dy),
        ...(mark.or && {
          or: mark.or.map((berth) => ({
            ...berth,
            ...(berth.at && { at: shift(berth.at, dx, dy) }),
            ...(berth.leads && { leads: shift(berth.leads, dx, dy) }),
          })),
        }),
        ...(mark.names && { names: mark.names.map((p) => shift(p, dx, dy)) as [Point, ...Point[]] }),
        ...(mark.keepsOff && { keepsOff: mark.keepsOff.map((p) => shift(p, dx, dy)) }),
        ...(mark.stagger ? { stagger: `${prefix}${mark.stagger}` } : {}),
      };
    case 'dimension':
      return {
        ...mark,
        id,
        from: shift(mark.from, dx, dy),
        to: shift(mark.to, dx, dy),
        at: { ...mark.at, base: mark.at.base + (mark.along === 'x' ? dy : dx) },
      };
  }
});

/** The same marks moved, mm, their ids put under `prefix`. */
export const moved = (marks: readonly Mark[], dx: number, dy: number, prefix = ''): readonly Mark[] =>
  marks.map((mark) => move(mark, dx, dy, prefix));

/** Marks seen from above or from the tail, mirrored for a left-handed guitar. */
export const forHand = (marks: readonly Mark[], hand: 'right' | 'left'): readonly Mark[] =>
  hand === 'left' ? mirrored(marks) : marks;
