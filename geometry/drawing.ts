import type { Path, Point } from './shape/types.ts';
import type { QuantityKind } from './units.ts';

/*
 * A drawing is data: marks on a plane of true millimetres, x to the right and y DOWN the page, as on paper.
 * Screen, SVG and PDF all read the same marks, lowered by layout.ts to strokes and texts.
 */

/**
 * Line types after ISO 128-2: `outline` 01.2 continuous wide, `thin` 01.1 continuous narrow, `hidden` 02.1 dashed narrow,
 * `centre` 04.1 long dash-dot narrow, `phantom` 05.1 long dash double-dot narrow (parts beside, positions, planes, the finished shape in its blank).
 */
export type LineType = 'outline' | 'thin' | 'hidden' | 'centre' | 'phantom';

/** What the line is for at the bench. */
export type Purpose = 'cut' | 'drill' | 'fold' | 'show';

/** What the area inside is made of, for a quiet tint on screen; `hole` is paper showing through. */
export type Matter = 'wood' | 'bone' | 'top' | 'pin' | 'hole' | 'ink';

/** A number inside a label: mm, degrees, newtons or Hz, formatted for the reader's unit only when it is laid out. */
export interface Quantity {
  readonly value: number | 'flat';
  readonly kind: QuantityKind;
  /** Always with two decimals in mm and three in inches, so that a row of them reads as one: fractions too, but those of which all that stands beside them reads as fractions. */
  readonly fixed?: boolean;
  /** Lengths that are read beside this one, mm: fractions only where each of them reads as one, else all are decimals. */
  readonly beside?: readonly number[];
}

export type Label = readonly (string | Quantity)[];

interface MarkBase {
  /** Stable and unique within its drawing, e.g. `footprint.outline`. */
  readonly id: string;
  /** The job's path that this mark shows, e.g. `bridge.thickness`: a number in focus lights it. */
  readonly jobPath?: string;
  /** The letter of the alternative that this shows, laid over the present design: tells its dashes and its colour. */
  readonly alternative?: string;
}

export interface PathMark extends MarkBase {
  readonly kind: 'path';
  readonly path: Path;
  readonly line: LineType;
  readonly purpose: Purpose;
  readonly matter?: Matter;
  /** A cut face, hatched after ISO 128-3; the holes are left out. Faces that touch are hatched at different angles (degrees, 45 if not given). */
  readonly hatch?: { readonly holes: readonly Path[]; readonly angle?: number };
}

/** Where a note stands: at a point, moved by so many ems. */
export interface Berth {
  readonly at: Point;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly shift?: { readonly dx: number; readonly dy: number };
  /** What a leader line leads to from there (ISO 128-2, leader lines), where it stands too far off to be read without. */
  readonly leads?: Point;
}

/** Text at a point, moved by so many ems (of the laid-out text height) so that it clears what it names at any scale. */
export interface NoteMark extends MarkBase, Berth {
  readonly kind: 'note';
  readonly label: Label;
  /**
   * Other places for it, the better first, each by what is not as at its own: it goes to the first at which it stands over no other word and is crossed by no line. A narrow line that
   * crosses it at every place is broken under it.
   */
  readonly or?: readonly Partial<Berth>[];
  /** Notes with the same group are spread over rows upwards until none overlaps. */
  readonly stagger?: string;
  /** Stands beside, over or under its point wherever it clears all other words, small shapes and lines, else farther off with a leader line; its anchor and shift count for nothing. */
  readonly roams?: boolean;
  /** Places on what it names, the better first: it stands off one of them, with a leader line to it; its own point and shift count for nothing. */
  readonly names?: readonly [Point, ...Point[]];
  /** Places that it keeps off, as something may lie over them: where numbers are taken hold of. */
  readonly keepsOff?: readonly Point[];
  readonly bold?: boolean;
  /** Text height in ems; 1 if not given. */
  readonly scale?: number;
  /** Degrees, + clockwise on the page. */
  readonly turn?: number;
}

/**
 * A dimension after ISO 129-1. `x` measures along the page's x (its line is horizontal), `y` along its y. The dimension line stands at
 * `at.base` (the page's other coordinate) moved by `at.ems` ems (+ right or down).
 */
export interface DimensionMark extends MarkBase {
  readonly kind: 'dimension';
  readonly from: Point;
  readonly to: Point;
  readonly along: 'x' | 'y';
  readonly at: { readonly base: number; readonly ems: number };
  readonly label: Label;
}

export type Mark = PathMark | NoteMark | DimensionMark;

/** One view or piece: its marks in its own millimetres. */
export interface Drawing {
  readonly id: string;
  readonly title: string;
  readonly marks: readonly Mark[];
}

/** What a writer draws: nothing but strokes and texts, in drawing order. */
export interface Stroke {
  readonly kind: 'stroke';
  readonly id: string;
  readonly path: Path;
  readonly line: LineType;
  readonly purpose: Purpose;
  readonly matter?: Matter;
  readonly jobPath?: string;
  readonly alternative?: string;
}

export interface Text {
  readonly kind: 'text';
  readonly id: string;
  /** The text's place on its baseline. */
  readonly at: Point;
  readonly text: string;
  /** Em size, mm. */
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly turn: number;
  readonly bold: boolean;
  readonly jobPath?: string;
  readonly alternative?: string;
}

export type Primitive = Stroke | Text;
