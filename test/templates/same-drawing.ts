/** How far two numbers of a drawing may lie apart, mm: the last figure that is written, which the sines of another machine may round the other way; and what a sum of decimals is off. */
const nearly = 1e-6 + 1e-9;

/** The attributes that hold places and sizes, mm; all others, and what stands between the elements, are words. */
const measured = /^(?:d|x|y|cx|cy|r|width|height|viewBox|font-size|transform)$/;

const attribute = / ([\w:-]+)="([^"]*)"/g;
const number = /[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?/gi;

interface Piece {
  /** As it is written. */
  readonly text: string;
  /** Where it begins in the drawing. */
  readonly from: number;
  readonly value?: number;
}

/** What a match of `pattern` leaves between, and what `inside` makes of each match. */
const split = (
  text: string,
  from: number,
  pattern: RegExp,
  inside: (match: RegExpMatchArray, from: number) => readonly Piece[],
): readonly Piece[] => {
  const pieces: Piece[] = [];
  let end = 0;
  for (const match of text.matchAll(pattern)) {
    pieces.push({ text: text.slice(end, match.index), from: from + end });
    pieces.push(...inside(match, from + match.index));
    end = match.index + match[0].length;
  }
  return [...pieces, { text: text.slice(end), from: from + end }];
};

/** An SVG file as what must be as it was, character by character, and the numbers between. */
const piecesOf = (svg: string): readonly Piece[] =>
  split(svg, 0, attribute, (match, from) => {
    const [whole, name = '', value = ''] = match;
    if (!measured.test(name)) return [{ text: whole, from }];
    const begin = from + whole.length - value.length - 1;
    return [
      { text: whole.slice(0, begin - from), from },
      ...split(value, begin, number, ([figures], at) => [{ text: figures, from: at, value: Number(figures) }]),
      { text: '"', from: begin + value.length },
    ];
  });

/** A line and column as editors count them, the element's id beside it if it has one. */
const placeOf = (svg: string, at: number): string => {
  const before = svg.slice(0, at).split('\n');
  const line = svg.split('\n')[before.length - 1] ?? '';
  const id = / id="([^"]*)"/.exec(line)?.[1];
  return `line ${before.length}, column ${(before.at(-1)?.length ?? 0) + 1}${id === undefined ? '' : ` (${id})`}`;
};

const firstOther = (a: string, b: string): number => {
  let k = 0;
  while (k < a.length && a[k] === b[k]) k++;
  return k;
};

const around = (text: string, at: number): string =>
  at >= text.length ? 'nothing more' : `“${text.slice(at, at + 40).split('\n')[0]}”`;

/**
 * Where an SVG file differs from the one that is kept, in words, or undefined where it does not: places and sizes may lie 0.000 001 mm apart, all else is as it was, character by character.
 */
export const firstDifference = (kept: string, now: string): string | undefined => {
  if (kept === now) return;
  const was = piecesOf(kept);
  const is = piecesOf(now);
  for (const [k, a] of was.entries()) {
    const b = is[k];
    if (a.value !== undefined && b?.value !== undefined) {
      if (Math.abs(a.value - b.value) <= nearly) continue;
      return `${placeOf(kept, a.from)}: ${a.text} has become ${b.text}`;
    }
    if (a.text === b?.text && a.value === b.value) continue;
    const on = b === undefined ? 0 : firstOther(a.text, b.text);
    const [at, to] = [a.from + on, b === undefined ? now.length : b.from + on];
    return `${placeOf(kept, at)}: ${around(kept, at)} has become ${around(now, to)}`;
  }
  if (is.length > was.length) return `At its end stands more than before: ${around(now, is[was.length]?.from ?? 0)}.`;
};
