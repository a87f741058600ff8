import * as z from 'zod/mini';
import { choice, listKey, number, text } from '../../geometry/schema/field.ts';
import { type Correction, uncorrected } from '../correction.ts';
import type { Shop } from './index.ts';

/** How far a printer's lengths may be off and still be corrected, as a share: beyond it the page was scaled, which is put right where it was asked for. */
export const mostError = 0.03;

const limits = { kind: 'share', min: 1 / (1 + mostError), max: 1 / (1 - mostError), preset: 1 } as const;

/** One bar as it came out of the printer. */
const reading = z.looseObject({
  id: listKey('this reading'),
  along: choice(
    'Direction',
    'Which way the bar runs on the sheet standing upright.',
    { across: 'across', down: 'down' },
    'across',
  ),
  bar: number({ label: 'Bar', help: 'The length that stands at the bar.', kind: 'length', min: 50, max: 300 }),
  reads: number({ label: 'Reads', help: 'What the rule or caliper reads.', kind: 'length', min: 25, max: 600 }),
});

/** A printer that was proved with the check bars. */
const printer = z.looseObject({
  id: listKey('this printer'),
  name: text('Printer’s name', 'What it is called at the bench.', 40, ''),
  across: number({
    label: 'Correction across',
    help: 'What lengths along the top edge of an upright sheet are multiplied by before they are printed.',
    ...limits,
  }),
  down: number({
    label: 'Correction down',
    help: 'What lengths along the side of an upright sheet are multiplied by before they are printed.',
    ...limits,
  }),
  date: text('Proved on', 'The day on which its bars were measured, as year-month-day.', 10, ''),
  readings: z.array(reading).check(z.maxLength(100)),
});

/** The printers that a shop knows, and the one that templates are printed on. */
export const printers = z.looseObject({
  chosen: text(
    'Printer',
    'The key of the printer that templates are printed on; none for one that was not proved.',
    40,
    '',
  ),
  list: z.array(printer).check(z.maxLength(100)),
});

/** A printer's name, whether its bars were ever measured, and its correction for an upright sheet. */
export interface KnownPrinter {
  readonly name: string;
  readonly isProved: boolean;
  readonly correction: Correction;
}

export type Printer = Shop['printers']['list'][number];

/** Whether a printer was measured: it says when, or it is corrected, as by a file written by hand. */
export const isProved = ({ across, down, date }: Printer): boolean => date !== '' || across !== 1 || down !== 1;

/** The chosen printer; undefined where none is, and pages are printed as they are. */
export const chosenPrinter = ({ chosen, list }: Shop['printers']): KnownPrinter | undefined => {
  const found = list.find(({ id }) => id === chosen);
  return (
    found && {
      name: found.name || found.id,
      isProved: isProved(found),
      correction: { across: found.across, down: found.down },
    }
  );
};

/** What pages printed on the chosen printer are corrected by, on an upright sheet. */
export const chosenCorrection = (known: KnownPrinter | undefined): Correction => known?.correction ?? uncorrected;

/** The shop with a printer put in the place of the one with its key, or added, and chosen. */
export const withPrinter = (shop: Shop, proved: Printer): Shop => {
  const { list } = shop.printers;
  const isThere = list.some(({ id }) => id === proved.id);
  return {
    ...shop,
    printers: {
      ...shop.printers,
      chosen: proved.id,
      list: isThere ? list.map((one) => (one.id === proved.id ? proved : one)) : [...list, proved],
    },
  };
};
