import { textWidth } from '../geometry/text.ts';

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** A word in as many parts as a width needs: one, as a rule. */
const broken = (word: string, width: number, size: number, bold: boolean): readonly string[] => {
  if (textWidth(word, size, bold) <= width) return [word];
  const parts = [''];
  for (const { segment } of graphemes.segment(word)) {
    const longer = `${parts.at(-1)}${segment}`;
    if (parts.at(-1) === '' || textWidth(longer, size, bold) <= width) parts[parts.length - 1] = longer;
    else parts.push(segment);
  }
  return parts;
};

/** The blank between a number and its unit, at which no line ends. */
const beforeUnit = /(?<=[\d¼½¾⅛⅜⅝⅞]) (?=(?:mm|in|N|N·mm|Hz|MPa|g|cents|%)(?![\p{L}·]))/gu;
const tied = '\u00a0';

/** The words of a sentence in as many lines as a width needs; width and em size in mm. A word that is wider than that alone is broken; a number keeps its unit. */
export const wrap = (sentence: string, width: number, size: number, bold = false): readonly string[] => {
  const lines: string[] = [];
  for (const word of sentence
    .replace(beforeUnit, tied)
    .split(' ')
    .flatMap((one) => broken(one, width, size, bold))) {
    const longer = lines.length === 0 ? word : `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && textWidth(longer, size, bold) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines.map((line) => line.replaceAll(tied, ' '));
};
