import { type DecimalMark, decimalText } from '../geometry/units.ts';

/** What lengths across and down a page are multiplied by before it is printed, so that the printer's own error is taken out. */
export interface Correction {
  readonly across: number;
  readonly down: number;
}

export const uncorrected: Correction = { across: 1, down: 1 };

/**
 * A correction belongs to the way the paper runs through the printer, so it is kept for the sheet standing upright: `across` along its top edge, `down` along its side. A page that lies on
 * its side is printed on the same sheet, fed the same way: what runs across the page runs down the sheet. This is the one for the page, and back.
 */
export const quarterTurnedCorrection = ({ across, down }: Correction): Correction => ({ across: down, down: across });

/** A correction in words, as a sheet says it. */
export const sayCorrection = ({ across, down }: Correction, decimal: DecimalMark | undefined): string =>
  `across ×${decimalText(across, 4, decimal)}, down ×${decimalText(down, 4, decimal)}`;
