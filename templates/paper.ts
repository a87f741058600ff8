import { type DecimalMark, decimalText } from '../geometry/units.ts';
import type { Size } from './packing.ts';
import type { Shop } from './shop/index.ts';

/** A sheet of paper, upright, mm. */
export interface Paper {
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

const inch = 25.4;

/** The papers that templates are laid on, upright: A3 and A4 after ISO 216, Letter and Tabloid (A and B) after ANSI/ASME Y14.1; mm. */
export const papers = {
  a4: { name: 'A4', width: 210, height: 297 },
  letter: { name: 'Letter', width: 8.5 * inch, height: 11 * inch },
  a3: { name: 'A3', width: 297, height: 420 },
  tabloid: { name: 'Tabloid', width: 11 * inch, height: 17 * inch },
} as const satisfies Readonly<Record<string, Paper>>;

export type PaperId = keyof typeof papers;

/** Whether a word names a paper. */
export const isPaperId = (word: string): word is PaperId => Object.hasOwn(papers, word);

/** A paper's size in words, mm. */
export const sizeText = ({ width, height }: Size, decimal: DecimalMark | undefined): string =>
  `${decimalText(width, 1, decimal)} × ${decimalText(height, 1, decimal)}`;

/** The paper that a shop prints on: one that has a name, or a size that was typed. */
export const paperOf = ({ paper: { size, width, height } }: Shop, decimal?: DecimalMark): Paper =>
  size === 'typed' ? { name: `${sizeText({ width, height }, decimal)} mm`, width, height } : papers[size];

/** The same shop with another paper. */
export const onPaper = (shop: Shop, size: PaperId): Shop => ({ ...shop, paper: { ...shop.paper, size } });

/** The same paper laid on its side, or upright if it lay there. */
export const quarterTurned = (paper: Paper): Paper => ({ ...paper, width: paper.height, height: paper.width });
