/*
 * PDF draws glyphs from left to right and knows no reading direction, so text is put in visual order first: the part of Unicode's
 * bidirectional algorithm (UAX 9) that one line of a left-to-right drawing needs. Explicit embeddings are left out.
 */

/** Hebrew, Arabic and their neighbours (UAX 9, bidirectional classes R and AL), as the inside of a character class. */
const right = '\\u0590-\\u08ff\\ufb1d-\\ufdff\\ufe70-\\ufefc';

/** A number, with a sign that belongs to it; read from left to right even among right-to-left letters (rules W4 and W5). */
const number = '\\p{Nd}+(?:[.,:/]\\p{Nd}+)*[%‰°]?';
const numbers = new RegExp(`(${number})`, 'u');
/** From a right-to-left letter to the last one, or the last number, that no left-to-right letter parts from it (rules W7 and N1). */
const span = new RegExp(`[${right}](?:(?:[${right}]|\\P{L})*(?:[${right}]|${number}))?`, 'gu');

const mirrored: Readonly<Record<string, string>> = { '(': ')', ')': '(', '[': ']', ']': '[', '«': '»', '»': '«' };

/** The text's runs from left to right as they are to be seen. Inside a run of right-to-left letters their order is the reading order. */
export const visualRuns = (text: string): string[] => {
  const runs: string[] = [];
  let done = 0;
  for (const match of text.matchAll(span)) {
    runs.push(text.slice(done, match.index));
    const inside = match[0].replace(/[()[\]«»]/g, (bracket) => mirrored[bracket] ?? bracket);
    runs.push(...inside.split(numbers).reverse());
    done = match.index + match[0].length;
  }
  runs.push(text.slice(done));
  return runs.filter((run) => run !== '');
};
