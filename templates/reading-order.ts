import bidiFactory from 'bidi-js';

/*
 * A page draws glyphs at places and knows no reading direction: a line's stretches are put in the order in which they are seen by Unicode's bidirectional
 * algorithm (UAX 9), the line's own direction being that of its first strong letter (P2, P3).
 */

const { getEmbeddingLevels, getBidiCharTypeName, getMirroredCharacter, getReorderedIndices } = bidiFactory();

/** A stretch of a line whose letters all run one way. */
export interface Stretch<T> {
  /** In reading order. */
  readonly parts: readonly T[];
  readonly toLeft: boolean;
  /** Its place in reading order. */
  readonly order: number;
}

/** Whether a text has letters that are read from right to left. */
export const readsToLeft = (text: string): boolean =>
  [...text].some((character) => ['R', 'AL', 'RLE', 'RLO', 'RLI'].includes(getBidiCharTypeName(character)));

/** What stands for a character within letters that run to the left: ( for ), and itself for most (UAX 9, L4). */
export const mirrored = (text: string): string =>
  [...text].map((character) => getMirroredCharacter(character) ?? character).join('');

/**
 * A line's parts, of a character or more each, in stretches from left to right as they are to be seen (UAX 9, L2). Signs and spaces that run to the left with
 * no letter among them are a stretch each.
 */
export const inSight = <T extends { readonly text: string }>(line: readonly T[]): readonly Stretch<T>[] => {
  const text = line.map((part) => part.text).join('');
  if (!readsToLeft(text)) return line.length === 0 ? [] : [{ parts: line, toLeft: false, order: 0 }];
  const { levels } = getEmbeddingLevels(text, 'auto');
  const runs: { level: number; parts: T[] }[] = [];
  let index = 0;
  for (const part of line) {
    const level = levels[index] ?? 0;
    const last = runs.at(-1);
    if (last?.level === level) last.parts.push(part);
    else runs.push({ level, parts: [part] });
    index += part.text.length;
  }
  const apart = runs
    .flatMap(({ level, parts }) =>
      level % 2 === 1 && !readsToLeft(parts.map((part) => part.text).join(''))
        ? parts.map((part) => ({ level, parts: [part] }))
        : [{ level, parts }],
    )
    .map((run, order) => ({ ...run, order }));
  for (let level = Math.max(...apart.map((run) => run.level)); level > 0; level--) {
    for (let from = 0; from < apart.length; from++) {
      let to = from;
      while ((apart[to]?.level ?? -1) >= level) to++;
      apart.splice(from, to - from, ...apart.slice(from, to).reverse());
      from = to;
    }
  }
  return apart.map(({ level, parts, order }) => ({ parts, toLeft: level % 2 === 1, order }));
};

/** Some characters, and what draws them where not all are drawn by the same. */
interface Written {
  readonly text: string;
  readonly by?: unknown;
}

type Words = Stretch<Written>;

/** What stretches say, in reading order. */
export const textOf = (stretches: readonly Words[]): string =>
  stretches
    .toSorted((a, b) => a.order - b.order)
    .flatMap(({ parts }) => parts.map((part) => part.text))
    .join('');

/** What a program makes of characters that it finds side by side: it sees no paragraph, and takes them to run to the left as a whole when at least three in ten do. */
const turnedBack = (seen: readonly string[]): string => {
  const share = seen.filter((character) => readsToLeft(character)).length / seen.length;
  const text = seen.join('');
  const order = getReorderedIndices(text, getEmbeddingLevels(text, share < 0.3 ? 'ltr' : 'rtl'));
  return order.map((index) => text[index]).join('');
};

/**
 * Whether stretches that are written from left to right as they are seen read as they were typed to a program that turns them back by the same algorithm, each
 * font's characters by themselves.
 */
const readsBack = (stretches: readonly Words[]): boolean => {
  const runs: { by: unknown; seen: string[] }[] = [];
  for (const { parts, toLeft } of stretches) {
    for (const { text, by } of toLeft ? parts.toReversed() : parts) {
      const seen = toLeft ? [...text].reverse() : [...text];
      const last = runs.at(-1);
      if (last && last.by === by) last.seen.push(...seen);
      else runs.push({ by, seen });
    }
  }
  return runs.map(({ seen }) => turnedBack(seen)).join('') === textOf(stretches);
};

/** At most so many stretches are taken as one, so that a long line takes no long time. */
const most = 8;

/**
 * A line's stretches, given from left to right, in groups that each read as they were typed when they are written as they are seen: as few groups as can be, which
 * follow each other in reading order and step back to the left as little as can be.
 */
export const inGroups = <T extends Words>(stretches: readonly T[]): readonly (readonly T[])[] => {
  if (!stretches.some(({ toLeft }) => toLeft)) return stretches.map((one) => [one]);
  const read = stretches.map((one, place) => ({ one, place })).sort((a, b) => a.one.order - b.one.order);
  const best: { cost: number; groups: readonly (readonly T[])[] }[] = [{ cost: 0, groups: [] }];
  for (let end = 1; end <= read.length; end++) {
    const ways = Array.from({ length: Math.min(end, most) }, (_, k) => {
      const group = read.slice(end - k - 1, end).sort((a, b) => a.place - b.place);
      const [first, last] = [group[0]?.place ?? 0, group.at(-1)?.place ?? 0];
      const before = best[end - k - 1];
      const members = group.map(({ one }) => one);
      if (!before || (k > 0 && (last - first !== k || !readsBack(members)))) return undefined;
      const stepsBack = first < (read[end - k - 2]?.place ?? -1);
      return { cost: before.cost + (stepsBack ? 2 : 1), groups: [...before.groups, members] };
    });
    best.push(ways.filter((way) => way !== undefined).reduce((a, b) => (b.cost < a.cost ? b : a)));
  }
  return best.at(-1)?.groups ?? [];
};
