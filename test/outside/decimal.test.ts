import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimalText, formatQuantity } from '../../geometry/units.ts';
import { markOf } from '../../src/app/decimal.ts';

/*
 * The decimal mark of a language, against what is published of it and against how Intl writes numbers there.
 */

describe('the decimal mark of a language', () => {
  // Unicode CLDR, numbers, symbols, decimal [memory].
  it.each([
    ['de-DE', 'comma'],
    ['fr-FR', 'comma'],
    ['it-IT', 'comma'],
    ['es-ES', 'comma'],
    ['pt-BR', 'comma'],
    ['pl-PL', 'comma'],
    ['cs-CZ', 'comma'],
    ['sv-SE', 'comma'],
    ['nl-NL', 'comma'],
    ['ru-RU', 'comma'],
    ['en-US', 'point'],
    ['en-GB', 'point'],
    ['de-CH', 'point'],
    ['es-MX', 'point'],
    ['ja-JP', 'point'],
    ['zh-CN', 'point'],
    ['ko-KR', 'point'],
    ['he-IL', 'point'],
    // Among the digits 0 to 9: with their own, these two have a mark of their own.
    ['ar-EG', 'point'],
    ['fa-IR', 'point'],
  ] as const)('of %s is a %s, and numbers are written as Intl writes them there', (language, mark) => {
    expect(markOf([language])).toBe(mark);
    const show = { length: 'mm', radius: 'mm', gauge: 'mm', decimal: markOf([language]) } as const;
    const intl = (digits: number) =>
      new Intl.NumberFormat(language, {
        numberingSystem: 'latn',
        useGrouping: false,
        minimumFractionDigits: digits,
        maximumFractionDigits: digits,
      });
    const [none, two, four] = [intl(0), intl(2), intl(4)];
    fc.assert(
      // Sixteenths are told exactly by four decimals, so that neither has anything to round.
      fc.property(fc.integer({ min: 0, max: 200_000 }), (n) => {
        expect(decimalText(n / 16, 4, show.decimal)).toBe(four.format(n / 16));
        expect(formatQuantity(n / 100, 'length', show, { digits: 2 })).toBe(two.format(n / 100));
        expect(formatQuantity(n, 'count', show)).toBe(none.format(n));
      }),
      { numRuns: 100 },
    );
  });

  it('is that of the first language that is known, and a point where none is named or none is one', () => {
    expect(markOf(['de-DE', 'en-US'])).toBe('comma');
    expect(markOf(['en-US', 'de-DE'])).toBe('point');
    expect(markOf([])).toBe('point');
    expect(markOf(['no language'])).toBe('point');
  });
});
