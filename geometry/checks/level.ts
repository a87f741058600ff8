import type { Fact, Level } from './check.ts';
import type { Range } from './ranges.ts';

/** Rounding in the last bits puts nothing on the wrong side of a limit. */
const hair = 1e-9;

/** How bad: 0 right, 1 doubtful, 2 wrong. */
export const rank: Readonly<Record<Level, number>> = { right: 0, doubtful: 1, wrong: 2 };

/** The least and greatest that is right; infinite on a side without a limit. */
export const rightIn = ({ doubtfulFrom, from, to, doubtfulTo }: Range): readonly [number, number] => [
  from ?? doubtfulFrom ?? Number.NEGATIVE_INFINITY,
  to ?? doubtfulTo ?? Number.POSITIVE_INFINITY,
];

/** The least and greatest that is at most doubtful. */
export const doubtfulIn = ({ doubtfulFrom, doubtfulTo }: Range): readonly [number, number] => [
  doubtfulFrom ?? Number.NEGATIVE_INFINITY,
  doubtfulTo ?? Number.POSITIVE_INFINITY,
];

/** By how much a value lies beyond the nearer of two limits; negative by its distance from it where it lies between them. */
export const beyond = ([low, high]: readonly [number, number], value: number): number =>
  Math.max(low - value, value - high);

/** Right between the range's limits, doubtful as far as its outer ones, wrong beyond. */
export const levelAt = (range: Range, value: number): Level =>
  beyond(rightIn(range), value) <= hair ? 'right' : beyond(doubtfulIn(range), value) <= hair ? 'doubtful' : 'wrong';

/** On which side of what is right a value lies. */
export const sideOf = (range: Range, value: number): 'low' | 'high' | undefined => {
  const [low, high] = rightIn(range);
  return value < low - hair ? 'low' : value > high + hair ? 'high' : undefined;
};

/** Facts worst first: by level, then by how far they lie beyond what is right. */
export const worstFirst = (range: Range, facts: readonly Fact[]): readonly Fact[] =>
  facts
    .map((fact) => ({
      fact,
      rank: rank[levelAt(range, fact.value)],
      beyond: beyond(rightIn(range), fact.value),
    }))
    .sort((a, b) => b.rank - a.rank || b.beyond - a.beyond)
    .map(({ fact }) => fact);

/** The worst level of these facts; right where there are none. */
export const worstLevel = (range: Range, facts: readonly Fact[]): Level =>
  facts.reduce<Level>((worst, { value }) => {
    const level = levelAt(range, value);
    return rank[level] > rank[worst] ? level : worst;
  }, 'right');
