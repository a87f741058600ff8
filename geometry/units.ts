import { quote } from './names.ts';

/**
 * What a number measures. Stored: mm for length, radius and gauge; degrees; N; Hz; a bare number for count; mm per mm for slope; cents; a share of 1; N·mm for moment; MPa for
 * stress.
 */
export type QuantityKind =
  | 'length'
  | 'radius'
  | 'gauge'
  | 'angle'
  | 'force'
  | 'frequency'
  | 'count'
  | 'slope'
  | 'cents'
  | 'share'
  | 'moment'
  | 'stress';

/** The kinds of quantity whose unit can be chosen. */
type LengthKind = 'length' | 'radius' | 'gauge';

/** Units for typing and showing lengths, radii and gauges: mm, decimal inch, inch fractions to 1/64. */
export type LengthUnit = 'mm' | 'in' | 'fraction';

/** What stands before a number's decimals where it is shown: 2.5 or 2,5. Both are read, whichever is shown. */
export type DecimalMark = 'point' | 'comma';

/** How numbers are shown: the unit chosen for each kind of quantity, and the decimal mark; a point where none is named. */
export interface ShowUnits {
  readonly length: LengthUnit;
  readonly radius: LengthUnit;
  readonly gauge: LengthUnit;
  readonly decimal?: DecimalMark;
}

/** One inch in mm, exactly: International yard and pound agreement, 1959. */
export const MM_PER_INCH = 25.4;

export type Parsed =
  | { readonly ok: true; readonly value: number | string }
  | { readonly ok: false; readonly says: string };

interface KindWords {
  /** What it is called in a sentence, with its article. */
  readonly called: string;
  /** What is accepted, as a whole sentence. */
  readonly accepts: string;
  /** The stored value of one of each unit, by the unit's spellings (lower case). */
  readonly units: Readonly<Record<string, number>>;
}

const lengthNames: Readonly<Record<string, number>> = {
  mm: 1,
  millimetre: 1,
  millimetres: 1,
  cm: 10,
  m: 1000,
  in: MM_PER_INCH,
  'in.': MM_PER_INCH,
  inch: MM_PER_INCH,
  inches: MM_PER_INCH,
  '"': MM_PER_INCH,
  ft: 12 * MM_PER_INCH,
  foot: 12 * MM_PER_INCH,
  feet: 12 * MM_PER_INCH,
  "'": 12 * MM_PER_INCH,
};

const lengthAccepts = 'Type mm, cm, m, inches or feet, for example 2.4 mm, .093 in, 3 5/32, 25 ft or 3/8 + 1/32.';
const kinds: Readonly<Record<QuantityKind, KindWords>> = {
  length: { called: 'a length', accepts: lengthAccepts, units: lengthNames },
  radius: { called: 'a radius', accepts: lengthAccepts, units: lengthNames },
  gauge: { called: 'a gauge', accepts: lengthAccepts, units: lengthNames },
  angle: {
    called: 'an angle',
    accepts: 'Type degrees, for example 26.5.',
    units: { '°': 1, deg: 1, degree: 1, degrees: 1 },
  },
  force: { called: 'a force', accepts: 'Type newtons, for example 110 N.', units: { n: 1 } },
  frequency: {
    called: 'a pitch',
    accepts: 'Type hertz or a note with its octave, for example 82.41 Hz, E2, F#3 or Bb1.',
    units: { hz: 1 },
  },
  count: { called: 'a count', accepts: 'Type a whole number, for example 14.', units: {} },
  slope: {
    called: 'a slope',
    accepts: 'Type per cent: how far it rises over 100 of the same, for example 1.5.',
    units: { mm: 0.01, 'mm/100 mm': 0.01, 'mm/100mm': 0.01, 'mm per 100 mm': 0.01, '%': 0.01 },
  },
  cents: {
    called: 'a number of cents',
    accepts: 'Type cents, for example 4, or −2.5.',
    units: { c: 1, ct: 1, cent: 1, cents: 1 },
  },
  share: { called: 'a share', accepts: 'Type per cent, for example 50.', units: { '%': 0.01 } },
  moment: {
    called: 'a moment',
    accepts: 'Type newton millimetres, for example 8100.',
    units: { n·mm: 1, nmm: 1, 'n mm': 1 },
  },
  stress: { called: 'a stress', accepts: 'Type megapascals, for example 0.17.', units: { mpa: 1 } },
};

const isLength = (kind: QuantityKind): kind is LengthKind => kind === 'length' || kind === 'radius' || kind === 'gauge';

/** The unit in which this kind of quantity is shown, and in which a bare number is read; mm where the kind has no choice. */
export const unitFor = (kind: QuantityKind, show: ShowUnits): LengthUnit => (isLength(kind) ? show[kind] : 'mm');

/** One spelling for each sign: ½ becomes a fraction, every kind of space a plain one, every dash a hyphen. */
const oneSpelling = (text: string): string =>
  text
    .replace(/[\u00bc-\u00be\u2150-\u215e]/g, (sign) => ` ${sign.normalize('NFKD')} `)
    .replace(/[\u2044\u2215]/g, '/')
    .replace(/[\u2010-\u2013\u2212]/g, '-')
    .replace(/[\u2018\u2019\u2032]/g, "'")
    .replace(/[\u201c\u201d\u2033]/g, '"')
    .replace(/''/g, '"')
    .replace(/\s+/g, ' ')
    .trim();

const shape = /^([+-]?) ?(?:(\d+)(?: ?- ?| ))??(?:(\d+) ?\/ ?(\d+)|(\d+[.,]?\d*|[.,]\d+)) ?([^\d\s.,+/-].*)?$/;
const steps: Readonly<Record<string, number>> = { c: 0, d: 2, e: 4, f: 5, g: 7, a: 9, b: 11 };

/** Frequency of a note in equal temperament, Hz, with A4 = 440 Hz (ISO 16); undefined if the text is no note. */
function noteFrequency(text: string): number | undefined {
  const found = /^([a-g])([#♯b♭]?)(-?\d)$/i.exec(text);
  if (!found) return undefined;
  const [, letter = '', accidental = '', octave = ''] = found;
  const bend = accidental === '' ? 0 : /[#♯]/.test(accidental) ? 1 : -1;
  const above = (steps[letter.toLowerCase()] ?? 0) + bend - 9 + 12 * (Number(octave) - 4);
  return 440 * 2 ** (above / 12);
}

/** The sign between two lengths: a plus, or a minus with a blank on either side; tight, as in 3-5/32, it is a hyphen. */
const betweenLengths = /( ?\+ ?| - )/;
const bareNumber = /^[+-]? ?[\d.,]+$/;
const metric = /\d[.,]? ?(?:[cm]?m|millimetres?)$/i;

/**
 * Lengths added to each other and taken away, in one spelling, each read by `read`; undefined where there is but one. A bare number beside a length of
 * the other system than its field’s is refused: nobody can tell what it is in.
 */
function readSum(
  typed: string,
  unit: LengthUnit,
  read: (length: string) => Parsed,
  refuse: (why: string) => Parsed,
): Parsed | undefined {
  const [, lead = '', rest = ''] = /^([+-] ?)?(.*)$/.exec(typed) ?? [];
  const parts = rest.split(betweenLengths);
  if (parts.length === 1) return undefined;
  const lengths = parts.filter((_, k) => k % 2 === 0).map((part, k) => (k === 0 ? lead + part : part));
  const ways = parts.filter((_, k) => k % 2 === 1).map((sign) => (sign === ' - ' ? -1 : 1));
  if (lengths.some((length, k) => length === '' || (k > 0 && /^[+-]/.test(length))))
    return refuse(`${quote(typed)} does not have one length on either side of each sign.`);
  const bare = lengths.find((length) => bareNumber.test(length));
  const isOther = (length: string) => !bareNumber.test(length) && metric.test(length) !== (unit === 'mm');
  if (bare !== undefined && lengths.some(isOther))
    return refuse(`${quote(typed)} does not say what ${bare} is in; write ${bare} mm or ${bare} in.`);
  let total = 0;
  for (const [k, length] of lengths.entries()) {
    const one = read(length);
    if (!one.ok) return one;
    total += k === 0 ? Number(one.value) : (ways[k - 1] ?? 1) * Number(one.value);
  }
  // What is left of lengths that cancel out is noise.
  return { ok: true, value: plain(Number(total.toFixed(10))) };
}

/** Fourteen digits, so that 14 in is stored as the 355.6 a person would write, without the last bits' noise; no zero has a sign. */
const plain = (value: number): number => Number(value.toPrecision(14)) || 0;

/**
 * Reads what a person typed. Returns the value in the stored unit (mm, degrees, N, Hz, mm per mm), or `word` where that is
 * allowed and typed, or else why it is refused, in words. A bare number takes `unit`; a bare fraction is inches. A comma is
 * always a decimal comma, as a point is: `1,234` is 1.234, and thousands are never separated. Lengths can be added and taken away, each in its own unit:
 * `3/8 + 1/32`, `12 - 0.5 mm`. Ranges are not looked at here.
 * `decimal` is the mark in the examples of what would be taken.
 */
export function parseQuantity(
  text: string,
  kind: QuantityKind,
  unit: LengthUnit,
  options: { readonly word?: string; readonly decimal?: DecimalMark | undefined } = {},
): Parsed {
  const { called, accepts, units } = kinds[kind];
  const { word, decimal: mark } = options;
  const alternative = word === undefined ? '' : ` Or type “${word}”.`;
  const refuse = (why: string): Parsed => ({
    ok: false,
    says: `${why} ${withMark(accepts, mark)}${alternative}`,
  });
  const seen = quote(text);

  // Nothing that can be meant is this long; the cap keeps the matching below quick on any text.
  if (text.length > 100) return refuse(`${seen} is too long for ${called}.`);
  const typed = oneSpelling(text);
  if (typed === '') return refuse('Nothing is typed here.');
  if (word !== undefined && typed.toLowerCase() === word) return { ok: true, value: word };
  const note = kind === 'frequency' ? noteFrequency(typed) : undefined;
  if (note !== undefined) return { ok: true, value: note };

  if (/^[+-]?[\d.,]+e[+-]?\d+/i.test(typed)) return refuse(`${seen} has an exponent; write the number out.`);
  const readOne = (length: string) => parseQuantity(length, kind, unit, { decimal: mark });
  const sum = isLength(kind) ? readSum(typed, unit, readOne, refuse) : undefined;
  if (sum !== undefined) return sum;
  const found = shape.exec(typed);
  if (/[.,]\d*[.,]/.test(typed)) {
    return refuse(
      `${seen} has more than one decimal mark; a point or a comma marks decimals, and thousands are not separated.`,
    );
  }
  if (!found) return refuse(`${seen} is not ${called}.`);
  const [, sign, whole, above, below, decimal, suffix] = found;
  if (whole !== undefined && decimal !== undefined) return refuse(`${seen} has two numbers where one is wanted.`);
  if (below !== undefined) {
    if (!isLength(kind)) return refuse(`${seen} is a fraction; write decimals.`);
    if (Number(below) === 0) return refuse(`${seen} has 0 under the fraction’s line.`);
    if (whole !== undefined && Number(above) >= Number(below)) {
      return refuse(`${seen} has a fraction that is not less than 1 behind its whole number.`);
    }
  }
  const factor =
    suffix !== undefined
      ? Object.hasOwn(units, suffix.toLowerCase())
        ? units[suffix.toLowerCase()]
        : undefined
      : kind === 'slope' || kind === 'share'
        ? 0.01
        : isLength(kind) && (below !== undefined || unit !== 'mm')
          ? MM_PER_INCH
          : 1;
  if (factor === undefined) {
    return refuse(
      /\d/.test(suffix ?? '')
        ? `${seen} is not ${called}.`
        : `${seen} ends in ${quote(suffix ?? '')}, which is no unit for ${called}.`,
    );
  }
  const size =
    below !== undefined
      ? Number(whole ?? 0) + Number(above) / Number(below)
      : Number((decimal ?? '').replace(',', '.'));
  if (!Number.isFinite(size)) return refuse(`${seen} is too large.`);
  if (kind === 'count' && !Number.isInteger(size)) return refuse(`${seen} is not a whole number.`);
  return { ok: true, value: plain(sign === '-' ? -size * factor : size * factor) };
}

const minus = '\u2212';

/** Numbers written with points, in the midst of words too, with the mark that is wanted. */
const withMark = (text: string, mark: DecimalMark | undefined): string =>
  mark === 'comma' ? text.replace(/(?<=\d)\.(?=\d)/g, ',') : text;

/** A bare number with exactly so many decimals, as people read it. */
export const decimalText = (value: number, digits: number, mark: DecimalMark | undefined): string =>
  withMark(decimals(value, digits, digits), mark);

/** Decimals between a least and a greatest number, without a sign before a zero. */
function decimals(value: number, least: number, greatest: number): string {
  const fixed = Math.abs(value).toFixed(greatest);
  const point = fixed.indexOf('.');
  const end = point < 0 ? fixed.length : least === 0 ? point : point + 1 + least;
  let text = fixed;
  while (point >= 0 && text.length > end && /[0.]$/.test(text)) text = text.slice(0, -1);
  return value < 0 && /[1-9]/.test(text) ? minus + text : text;
}

/** How far a length may lie from a 64th of an inch to be shown as one, mm: 0.002 in, finer than a rule or a fraction caliper reads. */
const nearFraction = 0.002 * MM_PER_INCH;

/** The nearest 64th of an inch, mm. */
const nearest64th = (value: number): number => (Math.round((value / MM_PER_INCH) * 64) / 64) * MM_PER_INCH;

/** The length as it reads where it is shown as a fraction, mm; undefined where it lies too far from a 64th of an inch for that. */
export const asFraction = (value: number): number | undefined => {
  const shown = nearest64th(value);
  return Math.abs(value - shown) <= nearFraction ? shown : undefined;
};

/** The units in which lengths (mm) that are read beside each other are all written alike: in fractions only where each of them reads as one, else in decimal inches. */
export const alikeIn = <S extends ShowUnits>(show: S, lengths: readonly number[]): S =>
  show.length === 'fraction' && lengths.some((length) => asFraction(length) === undefined)
    ? { ...show, length: 'in' }
    : show;

/** How finely sizes of common practice are meant in inches, by what they lie under, inches: in decimals and in fractions. */
const meant: Readonly<
  Record<'length' | 'radius', readonly (readonly [under: number, Record<'in' | 'fraction', number>])[]>
> = {
  length: [
    [1 / 32, { in: 1 / 1000, fraction: 1 / 1000 }],
    [1 / 2, { in: 1 / 200, fraction: 1 / 64 }],
    [2, { in: 1 / 20, fraction: 1 / 16 }],
    [Number.POSITIVE_INFINITY, { in: 1 / 10, fraction: 1 / 8 }],
  ],
  radius: [
    [50, { in: 1 / 4, fraction: 1 / 4 }],
    [Number.POSITIVE_INFINITY, { in: 1, fraction: 1 }],
  ],
};

/** A length or radius of common practice (mm), which is round in mm, as the number nearest to it that is round in the reader's unit; mm again. */
export const roundIn = (value: number, kind: QuantityKind, unit: LengthUnit): number => {
  if (unit === 'mm' || (kind !== 'length' && kind !== 'radius')) return value;
  const size = Math.abs(value) / MM_PER_INCH;
  const step = (meant[kind].find(([under]) => size < under)?.[1][unit] ?? 1) * MM_PER_INCH;
  return Math.round(value / step) * step;
};

/** The nearest 64th of an inch, reduced: `3 5/32`, `0`, `−1/64`. */
function fraction(value: number): string {
  const all = Math.round((Math.abs(value) / MM_PER_INCH) * 64);
  const whole = Math.floor(all / 64);
  let above = all % 64;
  let below = 64;
  while (above > 0 && above % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  const part = above === 0 ? '' : `${above}/${below}`;
  const text = whole === 0 ? part || '0' : part ? `${whole} ${part}` : `${whole}`;
  return value < 0 && all > 0 ? minus + text : text;
}

/** Least and greatest number of decimals, for people; gauges keep the ten-thousandths in which cores are sold. */
function usualDecimals(value: number, kind: QuantityKind, unit: LengthUnit): readonly [number, number] {
  const size = Math.abs(value);
  switch (kind) {
    case 'length':
      return unit === 'in' ? [3, 3] : [1, size < 100 ? 2 : 1];
    case 'radius':
      return unit === 'in' ? [0, 2] : [0, size < 100 ? 2 : 1];
    case 'gauge':
      return unit === 'in' ? [3, 4] : [2, 3];
    case 'frequency':
    case 'slope':
      return [1, 2];
    case 'angle':
    case 'force':
      return [1, 1];
    case 'cents':
      return [0, 1];
    case 'share':
      return [0, 1];
    case 'stress':
      return [3, 3];
    case 'moment':
    case 'count':
      return [0, 0];
  }
}

const suffixes: Readonly<Record<Exclude<QuantityKind, LengthKind>, string>> = {
  angle: '°',
  force: ' N',
  frequency: ' Hz',
  count: '',
  slope: ' %',
  cents: ' cents',
  share: ' %',
  moment: ' N·mm',
  stress: ' MPa',
};

/**
 * A stored value (mm, degrees, N, Hz, mm per mm) as people read it, in the unit chosen for its kind and with the decimal mark they read; a word such as `flat`
 * as it is. `unit` adds the unit; `digits` asks for exactly so many decimals. In fractions a length within 0.002 in of a 64th is shown as that fraction, any
 * other, and any with `digits`, in decimal inches, so that no reading is lost. A slope is
 * shown as mm rise over 100 mm. An infinite radius is `flat`; any other value that is not finite shows as a dash. What it writes for a
 * finite number, `parseQuantity` reads back.
 */
export function formatQuantity(
  value: number | string,
  kind: QuantityKind,
  show: ShowUnits,
  options: { readonly unit?: boolean; readonly digits?: number } = {},
): string {
  if (typeof value === 'string') return value;
  if (!Number.isFinite(value)) return kind === 'radius' && !Number.isNaN(value) ? 'flat' : '–';
  const unit = unitFor(kind, show);
  const suffix = options.unit !== true ? '' : isLength(kind) ? (unit === 'mm' ? ' mm' : ' in') : suffixes[kind];
  if (unit === 'fraction' && options.digits === undefined && asFraction(value) !== undefined)
    return fraction(value) + suffix;
  const decimal = unit === 'fraction' ? 'in' : unit;
  const shown = kind === 'slope' || kind === 'share' ? value * 100 : decimal === 'in' ? value / MM_PER_INCH : value;
  const [least, greatest] =
    options.digits === undefined ? usualDecimals(shown, kind, decimal) : [options.digits, options.digits];
  return withMark(decimals(shown, least, greatest), show.decimal) + suffix;
}

const noteNames = ['C', 'C#', 'D', 'D#', 'E', 'F', 'F#', 'G', 'G#', 'A', 'A#', 'B'] as const;

/** The note's name where the frequency (Hz) is within a twentieth of a cent of equal temperament at A4 = 440 Hz, else undefined. */
export function noteName(frequency: number): string | undefined {
  const above = 12 * Math.log2(frequency / 440);
  const nearest = Math.round(above);
  if (!(Math.abs(above - nearest) < 0.0005)) return undefined;
  const step = nearest + 9 + 4 * 12;
  const name = noteNames[((step % 12) + 12) % 12];
  return name === undefined ? undefined : `${name}${Math.floor(step / 12)}`;
}
