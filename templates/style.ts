import type { LineType, Purpose } from '../geometry/drawing.ts';

/*
 * How lines are drawn on paper. Everything is black on white: what a line is for is told by its type and by the legend of the sheet,
 * so that a grey printer, a photocopy or an eye that sees no colour loses nothing.
 */

export const ink = '#000000';

/** The purposes, in the order in which they are layered in a file. */
export const purposes: readonly Purpose[] = ['cut', 'drill', 'fold', 'show'];

/** Line widths in mm: line group 0.35 of ISO 128-2, wide lines twice the narrow ones. */
const wide = 0.35;
const narrow = 0.18;

export const lineWidth: Readonly<Record<LineType, number>> = {
  outline: wide,
  thin: narrow,
  hidden: narrow,
  centre: narrow,
  phantom: narrow,
};

/** Line elements as multiples of the line width (ISO 128-2): dash 12, gap 3, long dash 24, dot at most half. */
const dash = 12 * narrow;
const gap = 3 * narrow;
const longDash = 24 * narrow;
const dot = 0.5 * narrow;

/** Lengths drawn and left out by turns, in mm; none for a continuous line. */
export const dashes: Readonly<Record<LineType, readonly number[]>> = {
  outline: [],
  thin: [],
  hidden: [dash, gap],
  centre: [longDash, gap, dot, gap],
  phantom: [longDash, gap, dot, gap, dot, gap],
};
