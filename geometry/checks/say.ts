import { enumerate } from '../enumerate.ts';
import type { Job } from '../job.ts';
import { asFraction, formatQuantity, parseQuantity, type QuantityKind, unitFor } from '../units.ts';
import type { Fact, Found } from './check.ts';
import { levelAt } from './level.ts';
import { type Range, roundRange } from './ranges.ts';

const limits = ({ doubtfulFrom, from, to, doubtfulTo }: Range): readonly number[] =>
  [doubtfulFrom, from, to, doubtfulTo].filter((limit) => limit !== undefined);

/** Each limit of a range, by its name, with what stands for it in another. */
const limitsOf = (range: Range, other: Range): readonly (readonly [key: string, limit: number, shown: number])[] =>
  Object.entries(range).map(([key, limit]) => [key, limit, other[key as keyof Range] ?? limit]);

const near = (a: number, b: number) => Math.abs(a - b) <= 1e-9;

/** On which side of a limit a value lies: 0 on it. */
const side = (value: number, limit: number) => (near(value, limit) ? 0 : Math.sign(value - limit));

/** Units and limits in which a check is put into words. */
export interface InWords {
  readonly show: Job['show'];
  readonly range: Range;
}

/**
 * How a check of lengths (mm) is put into words, its values and limits all alike: in fractions only where each of them reads as one, else in decimal inches. A usual limit is as round in inches as it is in mm, unless that
 * would put one of the values on another side of it.
 */
export const inWords = (show: Job['show'], range: Range, own: Range, values: readonly number[]): InWords => {
  if (show.length === 'mm') return { show, range };
  const keepsSides = (limit: number, shown: number, read: (value: number) => number | undefined) => {
    const shownLimit = read(shown);
    return values.every((value) => {
      const shownValue = read(value);
      return (
        shownValue !== undefined && shownLimit !== undefined && side(shownValue, shownLimit) === side(value, limit)
      );
    });
  };
  const rounded = (units: Job['show']): Range => ({ ...roundRange(range, units), ...own });
  const pairs = limitsOf(range, rounded(show));
  if (show.length === 'fraction' && pairs.every(([, limit, shown]) => keepsSides(limit, shown, asFraction)))
    return { show, range: rounded(show) };
  const inches = { ...show, length: 'in' } as const;
  const kept = limitsOf(range, rounded(inches)).map(([key, limit, shown]) => [
    key,
    keepsSides(limit, shown, (value) => value) ? shown : limit,
  ]);
  return { show: inches, range: Object.fromEntries(kept) };
};

const mostDigits = 6;

/** Says values of a check in the reader's unit, each with as many digits as keep it on its own side of every limit as that is shown. */
export const sayer = (range: Range, kind: QuantityKind, show: Job['show']): ((value: number) => string) => {
  const read = (text: string): number => {
    const parsed = parseQuantity(text, kind, unitFor(kind, show));
    return parsed.ok && typeof parsed.value === 'number' ? parsed.value : Number.NaN;
  };
  const fewest = kind === 'length' && show.length !== 'mm' ? 4 : 2;
  const all = limits(range);
  const isFar = (value: number) => all.every((limit) => Math.abs(value - limit) > (kind === 'share' ? 0.002 : 0.2));
  return (value) => {
    const usual = formatQuantity(value, kind, show, { unit: true });
    // No rounding carries a number so far.
    if (isFar(value)) return usual;
    const sides = all.map((limit) => ({
      side: side(value, limit),
      shown: read(formatQuantity(limit, kind, show, { unit: true })),
    }));
    const holds = (text: string) => {
      const shown = read(text);
      return sides.every((one) => one.side === 0 || side(shown, one.shown) === one.side);
    };
    let text = usual;
    for (let digits = fewest; digits <= mostDigits && !holds(text); digits += 1)
      text = formatQuantity(value, kind, show, { unit: true, digits });
    // Between a limit and how that is shown no number of digits is enough.
    return holds(text) ? text : usual;
  };
};

/** The range that is right, with its unit: “usual 2.0 to 4.5 mm”, “at least 3.0 mm”, “your range 1.8 to 4.0 mm”. */
export const rangeText = (range: Range, kind: QuantityKind, show: Job['show'], isOwn: boolean): string => {
  const say = (value: number, unit: boolean) => formatQuantity(value, kind, show, { unit });
  const low = range.from ?? range.doubtfulFrom;
  const high = range.to ?? range.doubtfulTo;
  const both = low !== undefined && high !== undefined;
  const limit = both
    ? `${say(low, false)} to ${say(high, true)}`
    : low !== undefined
      ? `at least ${say(low, true)}`
      : high === undefined
        ? 'no limit'
        : high === 0
          ? isOwn
            ? 'none'
            : 'usual none'
          : `at most ${say(high, true)}`;
  return isOwn ? `your range ${limit}` : both ? `usual ${limit}` : limit;
};

/** A text's size without its sign. */
export const unsigned = (text: string): string => text.replace(/^\u2212/, '');

/** A number without its unit where the next one has the same. */
const withoutUnitOf = (text: string, next: string): string => {
  const unit = / ?[^\d.,]+$/.exec(text)?.[0];
  return unit !== undefined && next.endsWith(unit) ? text.slice(0, -unit.length) : text;
};

const mostNamed = 3;

/** A fact's number and its place: “4.65 mm at E2”. */
const placed = ({ say }: Found, { value, where }: Fact): string =>
  where === undefined ? say(value) : `${say(value)} at ${where}`;

/** The facts as a list: from the least to the greatest where all is right, else those that are not, worst first, with their places. */
export const listed = (found: Found): string => {
  const { facts, level, say, range } = found;
  if (level === 'right') {
    const values = facts.map(({ value }) => value);
    const [least, most] = [say(Math.min(...values)), say(Math.max(...values))];
    return least === most ? least : `${withoutUnitOf(least, most)} to ${most}`;
  }
  const out = facts.filter(({ value }) => levelAt(range, value) !== 'right');
  const named = out.slice(0, mostNamed).map((fact) => placed(found, fact));
  const more = out.length - named.length;
  const all = more > 0 ? [...named, `at ${more} other${more === 1 ? '' : 's'}`] : named;
  return enumerate(all);
};
