import { type DecimalMark, decimalText } from '../geometry/units.ts';
import { type Correction, quarterTurnedCorrection, sayCorrection } from './correction.ts';
import { type Paper, papers } from './paper.ts';
import { mostError, type Printer } from './shop/printers.ts';

/** One check bar as a person measured it on a print, mm. */
export interface BarReading {
  /** Which way it runs on the page as the page is read. */
  readonly along: keyof Correction;
  /** The length that stands at the bar. */
  readonly bar: number;
  readonly reads: number;
}

/** A print that was measured. */
export interface PrintReading {
  /** The paper that the page was made for, upright. */
  readonly paper: Paper;
  /** How the page lies: on a lying one, what runs across it runs down the sheet as the printer takes it. */
  readonly lies: 'upright' | 'lying';
  /** What the page was corrected by when it was printed, for the sheet standing upright. */
  readonly printed: Correction;
  /** At least one bar each way; the more and the longer, the surer. */
  readonly readings: readonly BarReading[];
  /** What was read when the printer was last proved, on the sheet standing upright: the same again is no new print. */
  readonly last?: readonly BarReading[];
}

/** What the printer did, in words for the person, and for one that can be corrected by what from now on, for the sheet standing upright. */
export type PrintProof =
  | { readonly kind: 'true' | 'fitted' | 'refused'; readonly says: string }
  | { readonly kind: 'corrected'; readonly says: string; readonly correction: Correction };

/** A print is true that is off by no more than this, as a share. */
export const trueWithin = 0.001;
/** Both directions are scaled alike where they differ by no more than this: half a mm is misread on no bar, and a tenth is. */
const alike = 0.003;
/** A scale is known again within this. */
const known = 0.004;
/** What two bars of one direction may say that does not agree, mm [practice]. */
const mostDisagreement = 0.5;
/** What printers leave free at an edge, mm, least and most [practice]: a page that is fitted to what lies between is smaller by as much. */
const unprinted = [3, 6.5] as const;

const directions = ['across', 'down'] as const;

/** Of the true length what all readings of a direction say together: least squares through 0, so that long bars count for more. */
const shareOf = (readings: readonly BarReading[]): number =>
  readings.reduce((sum, { bar, reads }) => sum + bar * reads, 0) /
  readings.reduce((sum, { bar }) => sum + bar * bar, 0);

/** What two ways of fitting a page of one paper into another's room give. */
const fitInto = (paper: Paper, room: Paper, free: number): number =>
  Math.min((room.width - 2 * free) / paper.width, (room.height - 2 * free) / paper.height);

/** The ways in which a page comes to be scaled by a share, the likeliest first. */
const scalings = (share: number, paper: Paper): readonly string[] => {
  const between = (room: Paper) =>
    share >= fitInto(paper, room, unprinted[1]) - known / 4 && share <= fitInto(paper, room, unprinted[0]) + known / 4;
  const others = Object.values(papers).filter(
    ({ width, height }) => Math.abs(width - paper.width) > 0.5 || Math.abs(height - paper.height) > 0.5,
  );
  const onto = (exact: boolean) =>
    others
      .filter((room) => (exact ? Math.abs(share - fitInto(paper, room, 0)) <= known : between(room)))
      .map(({ name }) => `the page was made for ${paper.name} and printed to fit ${name}`);
  return [
    ...(between(paper) ? ['the page was shrunk to fit between the printer’s margins'] : []),
    ...onto(true),
    ...onto(false),
  ];
};

/** Readings of a page that lies so as those of its sheet standing upright, and back. */
export const turnedReadings = (lies: PrintReading['lies'], readings: readonly BarReading[]): readonly BarReading[] =>
  readings.map(({ along, bar, reads }) => {
    const other = along === 'across' ? 'down' : 'across';
    return { along: lies === 'lying' ? other : along, bar, reads };
  });

/** Whether the same bars read exactly the same, in whichever order. */
const areSame = (some: readonly BarReading[], others: readonly BarReading[]): boolean =>
  some.length === others.length &&
  some.every((one) =>
    others.some(({ along, bar, reads }) => along === one.along && bar === one.bar && reads === one.reads),
  );

/**
 * What a printer did to a page, from what its check bars measure: nothing that matters (true within 0.1 %), scaled it to fit some paper, which is known by its share, or drew it a little long or
 * short, which is corrected from then on. What the page was corrected by already is reckoned in, so that a corrected print can be measured again. A page that is off by more than 3 % is refused,
 * as are readings that do not agree, or are those of last time over again. `mm` says a length in the person's unit, `decimal` is the mark of other numbers.
 */
export const provePrint = (
  { paper, lies, printed, readings, last = [] }: PrintReading,
  mm: (length: number) => string = (length) => `${length.toFixed(2)} mm`,
  decimal?: DecimalMark,
): PrintProof => {
  const percent = (share: number): string => `${decimalText(100 * share, 2, decimal)} %`;
  const refused = (says: string): PrintProof => ({ kind: 'refused', says });
  for (const { along, bar, reads } of readings)
    if (!(bar > 0 && reads > 0 && Number.isFinite(bar) && Number.isFinite(reads)))
      return refused(
        `A bar of ${mm(bar)} ${along} cannot read ${mm(reads)}. Type what the caliper shows, more than 0.`,
      );
  const by = { across: readings.filter((r) => r.along === 'across'), down: readings.filter((r) => r.along === 'down') };
  for (const along of directions) {
    if (by[along].length === 0)
      return refused(`No bar ${along} the page was measured. Measure at least one each way, best the longest.`);
    const share = shareOf(by[along]);
    const odd = by[along].find(({ bar, reads }) => Math.abs(reads - share * bar) > mostDisagreement);
    if (odd)
      return refused(
        `The bars ${along} do not agree: that of ${mm(odd.bar)} reads ${mm(odd.reads)}, where all of them together say ${mm(share * odd.bar)}. Measure them again.`,
      );
  }
  const share = { across: shareOf(by.across), down: shareOf(by.down) };
  const measured = `across ${percent(share.across)}, down ${percent(share.down)} of the true length`;
  if (directions.every((along) => Math.abs(share[along] - 1) <= trueWithin))
    return { kind: 'true', says: `The print is true: ${measured}, which is within ${percent(trueWithin)}.` };

  if (Math.abs(share.across - share.down) <= alike) {
    const [first, second] = scalings((share.across + share.down) / 2, paper);
    if (first !== undefined)
      return {
        kind: 'fitted',
        says: `Both ways the print came out alike, ${measured}: ${[first, second].filter(Boolean).join(', or ')}. Load ${paper.name} and print again at 100 %, “actual size”, with nothing fitted or shrunk; then measure again.`,
      };
  }

  const isCorrected = printed.across !== 1 || printed.down !== 1;
  if (isCorrected && areSame(turnedReadings(lies, readings), last))
    return refused(
      'These are the very readings by which this printer was corrected last, and they are reckoned in already: nothing was changed. Print a page anew and measure that one; for the page of last time, choose what its title block says under “print”. If a new print does read the same to the last digit, measure another bar as well.',
    );
  const onPage = lies === 'lying' ? quarterTurnedCorrection(printed) : printed;
  for (const along of directions) {
    // What the printer itself does is what is left of the measured share when the correction is taken out.
    for (const [did, what] of [
      [share[along], 'the print'],
      [share[along] / onPage[along], 'the printer without its correction'],
    ] as const)
      if (Math.abs(did - 1) > mostError)
        return refused(
          `The bars ${along} say that ${what} draws ${percent(did)} of the true length; only ${percent(1 - mostError)} to ${percent(1 + mostError)} can be corrected. So much comes of scaling: print again at 100 %, with no fit to page, on ${paper.name}, and measure again; or take another printer.`,
        );
  }
  const better = { across: onPage.across / share.across, down: onPage.down / share.down };
  const correction = lies === 'lying' ? quarterTurnedCorrection(better) : better;
  return {
    kind: 'corrected',
    correction,
    says: `The print came out ${measured}. What is printed there from now on is corrected: ${sayCorrection(better, decimal)} on a page ${lies}, as the one that was measured. Print a page and measure it again.`,
  };
};

/** A printer as the shop keeps it once it was proved: its correction and what was measured, all for the sheet standing upright. */
export const provedPrinter = (
  { lies, readings }: PrintReading,
  correction: Correction,
  called: Pick<Printer, 'id' | 'name' | 'date'>,
): Printer => ({
  ...called,
  ...correction,
  readings: turnedReadings(lies, readings).map((reading, i) => ({ id: `${i + 1}`, ...reading })),
});
