import { boldAdvances, boldJoined, regularAdvances, regularJoined, unitsPerEm } from './advances.ts';
import { onceForText } from './once.ts';

/*
 * Text is measured from a table of the bundled font, DejaVu Sans, so that no DOM is needed and screen, SVG and PDF agree.
 * Kerning and ligatures are off in all three: a text's width is then the sum of its characters' advances, those of Arabic letters as they join.
 */

/** Advance of a character outside the table, in ems: a full square, as East Asian writing and most symbols take. */
export const fallbackAdvance = 1;

/** Height of a capital over the baseline, in ems (DejaVu Sans: 1493 of 2048). */
export const capHeight = 1493 / 2048;
/** How far letters and their accents reach over and under the baseline at most, in ems (1901 and 483 of 2048). */
export const ascent = 1901 / 2048;
export const descent = 483 / 2048;
/** How far a comma's tail reaches under it (291 of 2048 in bold). */
export const commaTail = 291 / 2048;

const readTable = (table: string): ReadonlyMap<number, number> => {
  const advances = new Map<number, number>();
  for (const line of table.trim().split('\n')) {
    const [first = '', widths = ''] = line.split(': ');
    let code = Number.parseInt(first, 16);
    for (const run of widths.split(' ')) {
      const [width, times = 1] = run.split('*').map(Number);
      for (let n = 0; n < times; n++) advances.set(code++, (width ?? 0) / unitsPerEm);
    }
  }
  return advances;
};

/** A letter's advances, in ems: joined to the one before; and, where it joins to the one behind too, to that, and to both. */
interface Joined {
  readonly final: number;
  readonly initial?: number | undefined;
  readonly medial?: number | undefined;
}

/** Two letters that are written as one: alone, and joined to the one before. */
interface Ligature {
  readonly isolated: number;
  readonly final: number;
}

interface Face {
  readonly advances: ReadonlyMap<number, number>;
  readonly joined: ReadonlyMap<number, Joined>;
  /** By the second letter; the first is a lam. */
  readonly withLam: ReadonlyMap<number, Ligature>;
}

const lam = 0x644;

const readFace = (table: string, joins: string): Face => {
  const joined = new Map<number, Joined>();
  const withLam = new Map<number, Ligature>();
  for (const line of joins.trim().split('\n')) {
    const [widths = '', letters = ''] = line.split(': ');
    const [first = 0, second = 0, third] = widths.split(' ').map((width) => Number(width) / unitsPerEm);
    for (const letter of letters.split(' ')) {
      const [one = '', other] = letter.split('+');
      if (other) withLam.set(Number.parseInt(other, 16), { isolated: first, final: second });
      else if (third === undefined) joined.set(Number.parseInt(one, 16), { final: first });
      else joined.set(Number.parseInt(one, 16), { final: first, initial: second, medial: third });
    }
  }
  return { advances: readTable(table), joined, withLam };
};

const regular = readFace(regularAdvances, regularJoined);
const bolds = readFace(boldAdvances, boldJoined);

/** Whether a text has Arabic letters. */
const arabic = /[\u0620-\u06ff]/;
/** Marks over and under a letter take no room of their own and do not keep it from joining; these two join to either side themselves (Unicode, 9.2). */
const mark = /\p{Mn}/u;
const joiners = [0x640, 0x200d];

const codesOf = (characters: readonly string[]): readonly number[] =>
  characters.map((character) => character.codePointAt(0) ?? 0);

const advanceOf = (code: number, { advances }: Face): number => advances.get(code) ?? fallbackAdvance;

/** A line's width in ems, its letters as they join (Unicode, 9.2, rules R1 to R7 and L1 to L3). */
const joinedWidth = (text: string, face: Face): number => {
  const codes = codesOf([...text].filter((character) => !mark.test(character)));
  const joinsOn = (code = 0) => joiners.includes(code) || face.joined.get(code)?.initial !== undefined;
  const joinsBack = (code = 0) => joiners.includes(code) || face.joined.has(code);
  let ems = 0;
  for (let n = 0; n < codes.length; n++) {
    const code = codes[n] ?? 0;
    const letter = face.joined.get(code);
    const isBehind = letter !== undefined && joinsOn(codes[n - 1]);
    const isBefore = letter?.initial !== undefined && joinsBack(codes[n + 1]);
    const both = code === lam ? face.withLam.get(codes[n + 1] ?? 0) : undefined;
    if (both) {
      ems += isBehind ? both.final : both.isolated;
      n += 1;
    } else {
      const joined = isBehind ? (isBefore ? letter.medial : letter.final) : isBefore ? letter.initial : undefined;
      ems += joined ?? advanceOf(code, face);
    }
  }
  return ems;
};

const emsIn = (face: Face) =>
  onceForText((text) =>
    arabic.test(text)
      ? joinedWidth(text, face)
      : codesOf([...text]).reduce((ems, code) => ems + advanceOf(code, face), 0),
  );
const regularEms = emsIn(regular);
const boldEms = emsIn(bolds);

/** Width of a line of text at the em size given, in the same unit (mm): the sum of its advances, without kerning; Arabic letters as they join. */
export const textWidth = (text: string, size: number, bold = false): number =>
  (bold ? boldEms : regularEms)(text) * size;

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/**
 * The text itself if it is no wider than `width`; else as many of its first whole characters (graphemes) as leave room for an
 * ellipsis after them. Empty if not even the ellipsis fits. Width and size in mm.
 */
export const fitText = (text: string, width: number, size: number, bold = false): string => {
  if (textWidth(text, size, bold) <= width) return text;
  const room = width - textWidth('…', size, bold);
  if (room < 0) return '';
  let kept = '';
  for (const { segment } of graphemes.segment(text)) {
    if (textWidth(kept + segment, size, bold) > room) break;
    kept += segment;
  }
  return `${kept.trimEnd()}…`;
};
