import { arcFromTo } from '../../shape/arc.ts';
import type { Span, Wing } from './wing.ts';

/** Radius of an arc that crosses a wing w wide falling by H and is level at one of its ends, mm: `(w² + H²)/(2H)`. */
export const levelRadius = ({ width, fall }: Span): number => (width ** 2 + fall ** 2) / (2 * fall);

/**
 * The least radius of a scoop, mm: a smaller one would go deeper than the tip before it reaches it, or overhang at the shoulder: `(w² + H²)/(2·min(w, H))`.
 */
export const leastScoop = ({ width, fall }: Span): number => (width ** 2 + fall ** 2) / (2 * Math.min(width, fall));

/** A circular scoop: level at the tip, or of a radius of its own. */
export const hollow: Wing = {
  style: 'hollow',
  needsWidth: ({ scoop }) => scoop === 'level',
  line: (span, { scoop }) => [
    arcFromTo({ x: 0, y: 0 }, { x: span.width, y: span.fall }, scoop === 'level' ? levelRadius(span) : scoop, -1),
  ],
};
