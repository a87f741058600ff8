import { boldAdvances, regularAdvances, unitsPerEm } from './advances.ts';

/*
 * Text is measured from a table of the bundled font, DejaVu Sans, so that no DOM is needed and screen, SVG and PDF agree.
 * Kerning and ligatures are off in all three: a text's width is then the sum of its characters' advances.
 */

/** Advance of a character outside the table, in ems: a full square, as East Asian writing and most symbols take. */
export const fallbackAdvance = 1;

/** Height of a capital over the baseline, in ems (DejaVu Sans: 1493 of 2048). */
export const capHeight = 1493 / 2048;
/** How far letters and their accents reach over and under the baseline at most, in ems (1901 and 483 of 2048). */
export const ascent = 1901 / 2048;
export const descent = 483 / 2048;

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

const regular = readTable(regularAdvances);
const bolds = readTable(boldAdvances);

/** Width of a line of text at the em size given, in the same unit (mm): the sum of its advances, without kerning or ligatures. */
export const textWidth = (text: string, size: number, bold = false): number => {
  const table = bold ? bolds : regular;
  let ems = 0;
  for (const character of text) ems += table.get(character.codePointAt(0) ?? 0) ?? fallbackAdvance;
  return ems * size;
};

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
