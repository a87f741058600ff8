import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { enumerate, inRow } from '../../geometry/enumerate.ts';
import {
  decimalText,
  formatQuantity,
  type LengthUnit,
  MM_PER_INCH,
  noteName,
  parseQuantity,
  type QuantityKind,
  type ShowUnits,
} from '../../geometry/units.ts';

const all = (unit: LengthUnit): ShowUnits => ({ length: unit, radius: unit, gauge: unit });

const read = (text: string, kind: QuantityKind = 'length', unit: LengthUnit = 'mm', word?: string) => {
  const parsed = parseQuantity(text, kind, unit, word === undefined ? {} : { word });
  if (!parsed.ok) throw new Error(parsed.says);
  return parsed.value;
};

const refused = (text: string, kind: QuantityKind = 'length', unit: LengthUnit = 'mm', word?: string) => {
  const parsed = parseQuantity(text, kind, unit, word === undefined ? {} : { word });
  if (parsed.ok) throw new Error(`“${text}” was read as ${parsed.value}`);
  return parsed.says;
};

describe('lengths as they are typed', () => {
  it('takes an inch as 25.4 mm exactly (international yard and pound agreement, 1959)', () => {
    expect(MM_PER_INCH).toBe(25.4);
    expect(read('1 in')).toBe(25.4);
    expect(read('36 in')).toBe(914.4);
    expect(read('3 ft')).toBe(914.4);
  });

  it.each([
    ['2.4', 2.4],
    ['2,4', 2.4],
    ['2.4 mm', 2.4],
    ['2.4MM', 2.4],
    ['.5', 0.5],
    ['3.', 3],
    ['+2', 2],
    ['-1.5', -1.5],
    ['−1.5', -1.5],
    ['1.2 cm', 12],
    ['7.6 m', 7600],
    ['2.4\u00a0mm', 2.4],
    ['2.4\u2009mm', 2.4],
    ['\u202f 2.4 ', 2.4],
    ['½ mm', 0.5],
  ])('reads %j in a field of mm as %f mm', (text, mm) => {
    expect(read(text)).toBe(mm);
  });

  it.each([
    ['3 5/32', 3 + 5 / 32],
    ['3-5/32', 3 + 5 / 32],
    ['3\u20115/32', 3 + 5 / 32],
    ['3\u00a05/32', 3 + 5 / 32],
    ['-3-5/32', -(3 + 5 / 32)],
    ['−1/64', -1 / 64],
    ['5/32"', 5 / 32],
    ['5⁄32', 5 / 32],
    ['1/8 in', 1 / 8],
    ['7/4', 7 / 4],
    ['25 1/2″', 25.5],
    ['25 1/2”', 25.5],
    ["25 1/2''", 25.5],
    ['½', 0.5],
    ['3½', 3.5],
    ['3 ⅞ in', 3.875],
    ['.093 in', 0.093],
    ['0.093 Inches', 0.093],
    ['25 ft', 300],
    ["25'", 300],
    ['25′', 300],
  ])('reads %j as inches wherever it is typed', (text, inches) => {
    for (const unit of ['mm', 'in', 'fraction'] as const)
      expect(read(text, 'length', unit)).toBeCloseTo(inches * 25.4, 9);
  });

  it('reads a bare number in its field’s unit', () => {
    expect(read('.093', 'gauge', 'in')).toBe(2.3622);
    expect(read('14', 'radius', 'in')).toBe(355.6);
    expect(read('3', 'length', 'fraction')).toBe(76.2);
    expect(read('3', 'length', 'mm')).toBe(3);
    expect(read('3 mm', 'length', 'in')).toBe(3);
  });

  it.each<[string, LengthUnit, number]>([
    ['3/8 + 1/32', 'fraction', (13 / 32) * 25.4],
    ['3/8+1/32', 'mm', (13 / 32) * 25.4],
    ['3/8" + 1/32"', 'mm', (13 / 32) * 25.4],
    ['1 1/4 - 1/16', 'fraction', (1 + 3 / 16) * 25.4],
    ['1¼ − 1⁄16', 'in', (1 + 3 / 16) * 25.4],
    ['1 - 1/16', 'fraction', (15 / 16) * 25.4],
    ['1-1/16', 'fraction', (1 + 1 / 16) * 25.4],
    ['12 + 0.5 mm', 'mm', 12.5],
    ['12 - 0,5', 'mm', 11.5],
    ['12 mm + 1/32', 'mm', 12 + 25.4 / 32],
    ['3/8 in - 0.2 mm', 'fraction', (3 / 8) * 25.4 - 0.2],
    ['1 cm + 2 mm + 1 - 3', 'mm', 10],
    ['-1/64 + 1/32', 'in', 25.4 / 64],
    ['- 2 - 3', 'mm', -5],
    ['0.1 + 0.2', 'mm', 0.3],
  ])('adds and takes away: %j in a field of %s is %f mm', (text, unit, mm) => {
    expect(read(text, 'length', unit)).toBeCloseTo(mm, 9);
  });

  it.each([
    ['3/8 +', 'one length on either side'],
    ['3/8 + + 1/32', 'one length on either side'],
    ['3/8 + -1/32', 'one length on either side'],
    ['3/8 + x', '“x” is not a length'],
    ['3/8 + 2 kg', '“kg”, which is no unit'],
    ['1/2 * 2', 'is not a length'],
    ['12 mm * 2', 'is not a length'],
    ['(1/2 + 1)', 'is not a length'],
    ['25-30', 'two numbers'],
    ['12 + 1/32', '“12 + 1/32” does not say what 12 is in; write 12 mm or 12 in'],
    ['1e-3 + 1', 'write the number out'],
    ['1 + 1.2.3', 'more than one decimal mark'],
  ])('refuses %j in a field of mm: %s', (text, words) => {
    expect(refused(text)).toContain(words);
  });

  it('finds nothing left of lengths that cancel out', () => {
    expect(read('0.1 + 0.2 - 0.3')).toBe(0);
    expect(read('1/64 + 1/32 - 3/64')).toBe(0);
  });

  it('leaves nothing open: a bare number beside inches in mm, or beside mm in inches, is asked for its unit', () => {
    expect(refused('12 + 0.5 mm', 'length', 'in')).toContain('does not say what 12 is in');
    expect(refused('12 + 0.5 mm', 'length', 'fraction')).toContain('does not say what 12 is in');
    expect(refused('0.5 in + 12')).toContain('does not say what 12 is in');
    expect(refused('E2 + 1', 'frequency')).toContain('is not a pitch');
    expect(refused('2 + 1', 'count')).toContain('is not a count');
  });

  it('reads what was written of several lengths and signs as their sum, whatever the unit', () => {
    const lengths = fc.array(fc.tuple(fc.integer({ min: -64 * 40, max: 64 * 40 }), fc.boolean()), {
      minLength: 1,
      maxLength: 6,
    });
    const units = fc.constantFrom<LengthUnit>('mm', 'in', 'fraction');
    fc.assert(
      fc.property(lengths, units, units, fc.constantFrom('point', 'comma'), (parts, shown, field, decimal) => {
        const show = { ...all(shown), decimal } as const;
        // 64ths of an inch are written as they are in fractions, in mm and inches to the last digit shown.
        const texts = parts.map(([n]) => formatQuantity((Math.abs(n) * 25.4) / 64, 'length', show, { unit: true }));
        const text = texts.reduce((so, one, k) => `${so}${parts[k]?.[1] ? ' − ' : ' + '}${one}`);
        const total = parts.reduce((sum, [n, isLess], k) => sum + (k > 0 && isLess ? -1 : 1) * Math.abs(n), 0);
        const digit = { mm: 0.05, in: 0.0005 * 25.4, fraction: 1e-9 }[shown];
        const got = Number(read(text, 'length', field));
        expect(Math.abs(got - (total * 25.4) / 64)).toBeLessThanOrEqual(digit * parts.length + 1e-9);
        // And shown in full it is read again as the same.
        expect(read(`${got} mm`, 'length', field)).toBeCloseTo(got, 9);
      }),
    );
  });

  it('reads a comma as a decimal comma always, never as a thousands mark', () => {
    expect(read('1,234')).toBe(1.234);
    expect(read('1.234')).toBe(1.234);
    expect(refused('1,234.5')).toContain('thousands are not separated');
    expect(refused('1.234,5')).toContain('thousands are not separated');
    expect(refused('1 234')).toContain('two numbers');
  });

  it('takes a word only where it is allowed', () => {
    expect(read(' Flat ', 'radius', 'in', 'flat')).toBe('flat');
    expect(refused('flat', 'radius')).toContain('“flat” is not a radius');
    expect(refused('round', 'radius', 'in', 'flat')).toMatch(/Or type “flat”\.$/);
  });
});

describe('what is refused', () => {
  it.each([
    ['', 'Nothing is typed here'],
    ['   ', 'Nothing is typed here'],
    ['abc', '“abc” is not a length'],
    ['1/0', '0 under the fraction’s line'],
    ['3 5/4', 'not less than 1'],
    ['1.5/2', '“1.5/2” is not a length'],
    ['2..4', 'more than one decimal mark'],
    ['1,2,3', 'more than one decimal mark'],
    ['1e9', 'write the number out'],
    ['1E+9 mm', 'write the number out'],
    ['NaN', '“NaN” is not a length'],
    ['Infinity', '“Infinity” is not a length'],
    ['2.4 kg', '“kg”, which is no unit'],
    ['2.4 mm mm', '“mm mm”, which is no unit'],
    ['2.4 constructor', '“constructor”, which is no unit'],
    ['--5', '“--5” is not a length'],
    ['.', '“.” is not a length'],
    ['½½', '“½½” is not a length'],
    ['0x10', '“0x10” is not a length'],
    ['٣', '“٣” is not a length'],
  ])('refuses %j in words that quote it and say what is accepted', (text, words) => {
    const says = refused(text);
    expect(says).toContain(words);
    expect(says).toContain('2.4 mm, .093 in, 3 5/32, 25 ft or 3/8 + 1/32');
  });

  it('quotes no more than 40 characters, however many are typed', () => {
    const says = refused('x'.repeat(10_000));
    expect(says).toContain(`“${'x'.repeat(40)}…”`);
    expect(says.length).toBeLessThan(250);
  });

  it('refuses a number beyond all numbers', () => {
    expect(refused('9'.repeat(10_000))).toContain('too long');
  });

  it('never throws, and never reads anything but a finite number', () => {
    const kinds = fc.constantFrom<QuantityKind>('length', 'gauge', 'angle', 'force', 'frequency', 'count', 'slope');
    const near = fc.string({ unit: fc.constantFrom(...'0123456789.,/ -+e½"\'mincftHz#bE°') });
    fc.assert(
      fc.property(fc.oneof(near, fc.string({ unit: 'grapheme' })), kinds, (text, kind) => {
        const parsed = parseQuantity(text, kind, 'in');
        expect(parsed.ok ? Number.isFinite(parsed.value) : parsed.says.length > 20).toBe(true);
      }),
    );
  });
});

describe('other kinds', () => {
  // ISO 16: A4 = 440 Hz; equal temperament. Published to 3 decimals in any table of it.
  it.each([
    ['E2', 82.407],
    ['A2', 110],
    ['D3', 146.832],
    ['G3', 195.998],
    ['B3', 246.942],
    ['E4', 329.628],
    ['A4', 440],
    ['C4', 261.626],
    ['F#3', 184.997],
    ['Gb3', 184.997],
    ['f♯3', 184.997],
    ['Bb1', 58.27],
    ['b1', 61.735],
    ['B#3', 261.626],
  ])('reads the note %s as %f Hz', (note, hertz) => {
    expect(read(note, 'frequency')).toBeCloseTo(hertz, 3);
  });

  it('reads hertz, and refuses what is neither', () => {
    expect(read('82,41 Hz', 'frequency')).toBe(82.41);
    expect(read('110', 'frequency', 'in')).toBe(110);
    expect(refused('H2', 'frequency')).toContain('for example 82.41 Hz, E2, F#3 or Bb1');
    expect(refused('1/2', 'frequency')).toContain('write decimals');
  });

  it('names the note of a frequency within a twentieth of a cent', () => {
    expect(
      ['E2', 'A2', 'D3', 'G3', 'B3', 'E4', 'F#3'].map((note) => noteName(Number(read(note, 'frequency')))),
    ).toEqual(['E2', 'A2', 'D3', 'G3', 'B3', 'E4', 'F#3']);
    expect(noteName(82.407)).toBe('E2');
    expect(noteName(82.5)).toBeUndefined();
    expect(noteName(Number.NaN)).toBeUndefined();
  });

  it('reads degrees, newtons, whole numbers and slopes', () => {
    expect(read('26.5°', 'angle')).toBe(26.5);
    expect(read('26.5 degrees', 'angle', 'in')).toBe(26.5);
    expect(read('110 N', 'force')).toBe(110);
    expect(read('14', 'count', 'in')).toBe(14);
    expect(refused('14.5', 'count')).toContain('not a whole number');
    expect(refused('14 mm', 'count')).toContain('no unit');
    expect(read('1.2', 'slope', 'in')).toBe(0.012);
    expect(read('1.2 mm/100 mm', 'slope')).toBe(0.012);
    expect(read('-0,3 %', 'slope')).toBe(-0.003);
  });
});

describe('lengths as they are shown', () => {
  it.each<[number, QuantityKind, LengthUnit, string]>([
    [9.3, 'length', 'mm', '9.3 mm'],
    [4.65, 'length', 'mm', '4.65 mm'],
    [10, 'length', 'mm', '10.0 mm'],
    [152, 'length', 'mm', '152.0 mm'],
    [640.25, 'length', 'mm', '640.3 mm'],
    [-0.36, 'length', 'mm', '−0.36 mm'],
    [-0.004, 'length', 'mm', '0.0 mm'],
    [355.6, 'radius', 'mm', '355.6 mm'],
    [7600, 'radius', 'mm', '7600 mm'],
    [0.3683, 'gauge', 'mm', '0.368 mm'],
    [9.3, 'length', 'in', '0.366 in'],
    [355.6, 'radius', 'in', '14 in'],
    [377.93, 'radius', 'in', '14.88 in'],
    [254 * 0.75, 'radius', 'in', '7.5 in'],
    [0.053 * 25.4, 'gauge', 'in', '0.053 in'],
    [0.0145 * 25.4, 'gauge', 'in', '0.0145 in'],
    [80.16875, 'length', 'fraction', '3 5/32 in'],
    [0, 'length', 'fraction', '0 in'],
    [0.04, 'length', 'fraction', '0 in'],
    [0.1524, 'length', 'fraction', '0.006 in'],
    [-0.1, 'length', 'fraction', '−0.004 in'],
    [4.3, 'length', 'fraction', '0.169 in'],
    [-25.4 / 64, 'length', 'fraction', '−1/64 in'],
    [25.39, 'length', 'fraction', '1 in'],
    [12.7, 'length', 'fraction', '1/2 in'],
  ])('shows %f mm, a %s, in %s as %s', (value, kind, unit, text) => {
    expect(formatQuantity(value, kind, all(unit), { unit: true })).toBe(text);
    expect(formatQuantity(value, kind, all(unit))).toBe(text.replace(/ (mm|in)$/, ''));
  });

  it('shows other kinds with their own units', () => {
    const show = all('in');
    expect(formatQuantity(26.663, 'angle', show, { unit: true })).toBe('26.7°');
    expect(formatQuantity(101.97, 'force', show, { unit: true })).toBe('102.0 N');
    expect(formatQuantity(82.407, 'frequency', show, { unit: true })).toBe('82.41 Hz');
    expect(formatQuantity(14, 'count', show, { unit: true })).toBe('14');
    expect(formatQuantity(0.0125, 'slope', show, { unit: true })).toBe('1.25 %');
  });

  it('shows exactly as many digits as are asked for', () => {
    expect(formatQuantity(9.3, 'length', all('mm'), { digits: 2 })).toBe('9.30');
    expect(formatQuantity(640.257, 'length', all('mm'), { digits: 2 })).toBe('640.26');
    expect(formatQuantity(9.3, 'length', all('mm'), { digits: 0 })).toBe('9');
    expect(formatQuantity(101.97, 'force', all('mm'), { digits: 2, unit: true })).toBe('101.97 N');
  });

  it('shows words as they are, an infinite radius as flat and no number as a dash', () => {
    expect(formatQuantity('flat', 'radius', all('in'), { unit: true })).toBe('flat');
    expect(formatQuantity(Number.POSITIVE_INFINITY, 'radius', all('in'))).toBe('flat');
    expect(formatQuantity(Number.NaN, 'radius', all('in'))).toBe('–');
    expect(formatQuantity(Number.POSITIVE_INFINITY, 'length', all('in'))).toBe('–');
  });
});

describe('the decimal mark', () => {
  const comma: ShowUnits = { ...all('mm'), decimal: 'comma' };

  it('is a comma where the reader has one, in every kind of number; fractions and words stay', () => {
    expect(formatQuantity(2.5, 'length', comma, { unit: true })).toBe('2,5 mm');
    expect(formatQuantity(-2.5, 'length', comma)).toBe('−2,5');
    expect(formatQuantity(0.305, 'gauge', { ...comma, gauge: 'in' }, { unit: true })).toBe('0,012 in');
    expect(formatQuantity(26.5, 'angle', comma, { unit: true })).toBe('26,5°');
    expect(formatQuantity(0.015, 'slope', comma, { unit: true })).toBe('1,5 %');
    expect(formatQuantity((3 + 5 / 32) * 25.4, 'length', { ...comma, length: 'fraction' })).toBe('3 5/32');
    expect(formatQuantity('flat', 'radius', comma)).toBe('flat');
    expect(formatQuantity(14, 'count', comma)).toBe('14');
    expect(decimalText(0.99, 4, 'comma')).toBe('0,9900');
    expect(decimalText(0.99, 4, undefined)).toBe('0.9900');
  });

  it('stands in the examples of what could be typed', () => {
    const parsed = parseQuantity('x', 'angle', 'mm', { decimal: 'comma' });
    expect(parsed).toMatchObject({ ok: false, says: '“x” is not an angle. Type degrees, for example 26,5.' });
  });

  it('parts the numbers of a list by semicolons, so that none is taken for two', () => {
    expect(enumerate(['2.5', '3.1', '4'])).toBe('2.5, 3.1 and 4');
    expect(enumerate(['2,5', '3,1', '4'])).toBe('2,5; 3,1 and 4');
    expect(enumerate(['2,5 mm', '3'], 'or')).toBe('2,5 mm or 3');
    expect(enumerate(['E2'])).toBe('E2');
    expect(inRow(['2.5', '3.1'])).toBe('2.5, 3.1');
    expect(inRow(['2,5', '3,1'])).toBe('2,5; 3,1');
    expect(inRow(['E2, bass', 'A2'])).toBe('E2, bass, A2');
  });
});

describe('what is shown can be typed again', () => {
  // Half of the last digit or fraction shown, in the stored unit.
  const finest: Record<QuantityKind, Record<LengthUnit, number>> = {
    length: { mm: 0.05, in: 0.0005 * 25.4, fraction: 25.4 / 128 },
    radius: { mm: 0.05, in: 0.005 * 25.4, fraction: 25.4 / 128 },
    gauge: { mm: 0.0005, in: 0.00005 * 25.4, fraction: 25.4 / 128 },
    angle: { mm: 0.05, in: 0.05, fraction: 0.05 },
    force: { mm: 0.05, in: 0.05, fraction: 0.05 },
    frequency: { mm: 0.005, in: 0.005, fraction: 0.005 },
    count: { mm: 0, in: 0, fraction: 0 },
    slope: { mm: 0.00005, in: 0.00005, fraction: 0.00005 },
    cents: { mm: 0.05, in: 0.05, fraction: 0.05 },
    share: { mm: 0.005, in: 0.005, fraction: 0.005 },
    moment: { mm: 5, in: 5, fraction: 5 },
    stress: { mm: 0.0005, in: 0.0005, fraction: 0.0005 },
  };
  const kinds = Object.keys(finest) as readonly QuantityKind[];

  it('to within half of the last digit shown, with or without its unit', () => {
    const numbers = fc.double({ min: -60_000, max: 60_000, noNaN: true });
    const units = fc.constantFrom<LengthUnit>('mm', 'in', 'fraction');
    fc.assert(
      fc.property(numbers, fc.constantFrom(...kinds), units, fc.boolean(), (number, kind, unit, withUnit) => {
        const value = kind === 'count' ? Math.round(number) : kind === 'slope' ? number / 1e6 : number;
        const text = formatQuantity(value, kind, all(unit), { unit: withUnit });
        const back = Number(read(text, kind, unit));
        expect(Math.abs(back - value)).toBeLessThanOrEqual(finest[kind][unit] * (1 + 1e-9) + 1e-9);
      }),
      { numRuns: 500 },
    );
  });

  it('with a decimal comma as with a point: the same value comes back', () => {
    const numbers = fc.double({ min: -60_000, max: 60_000, noNaN: true });
    const units = fc.constantFrom<LengthUnit>('mm', 'in', 'fraction');
    const digits = fc.option(fc.integer({ min: 0, max: 6 }), { nil: undefined });
    const asked = fc.tuple(numbers, fc.constantFrom(...kinds), units, fc.boolean(), digits);
    fc.assert(
      fc.property(asked, ([number, kind, unit, withUnit, places]) => {
        const value = kind === 'count' ? Math.round(number) : kind === 'slope' ? number / 1e6 : number;
        const options = { unit: withUnit, ...(places !== undefined && kind !== 'count' && { digits: places }) };
        const [point, comma] = (['point', 'comma'] as const).map((decimal) =>
          formatQuantity(value, kind, { ...all(unit), decimal }, options),
        ) as [string, string];
        expect(point).toBe(formatQuantity(value, kind, all(unit), options));
        expect(comma).toBe(point.replace('.', ','));
        expect(comma).not.toContain('.');
        expect(read(comma, kind, unit)).toBe(read(point, kind, unit));
      }),
      { numRuns: 2000 },
    );
  });
});
