import type { Design } from '../design.ts';
import type { Quantity } from '../drawing.ts';
import type { Settled } from '../settle.ts';
import type { QuantityKind } from '../units.ts';

/** One of the numbers that a figure is made from: its name as in the formula, what it is, and its value. */
export interface Input {
  /** As it stands in the formula, such as `T_c`. */
  readonly symbol: string;
  /** What it is called, such as “thickness at the centre”. */
  readonly name: string;
  readonly value: Quantity['value'];
  readonly kind: QuantityKind;
  /** The job's field that it is, if it is one. */
  readonly path?: string;
  /** The figure that it is, if it is one: it can be asked “how?” in its turn. */
  readonly figure?: string;
}

/** How a figure came about. */
export interface How {
  /** The formula in the trade's symbols, such as `e = z_s − z_b`. */
  readonly formula: string;
  readonly inputs: readonly Input[];
  /** Where the formula comes from: a published source, a definition, or common practice, said to be so. */
  readonly source: string;
}

/** A derived number: what it is called, its value, and how it came about. `k` counts the strings from the bass; a figure of the whole job leaves it out of account. */
export interface Figure {
  readonly id: string;
  readonly title: string;
  /** One short sentence on what it means. */
  readonly about: string;
  readonly kind: QuantityKind;
  readonly per: 'job' | 'string';
  /** Undefined where it does not apply to this job. */
  readonly value: (job: Settled, design: Design, k: number) => number | 'flat' | undefined;
  readonly how: (job: Settled, design: Design, k: number) => How;
}
