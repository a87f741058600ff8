/// <reference path="../../templates/fontkit.d.ts" />
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { type Face, readFace } from '../../templates/set-line.ts';

/** The Unicode blocks whose advances are kept: what names, numbers and drawings are written with. */
const blocks: readonly (readonly [first: number, last: number])[] = [
  [0x0020, 0x007f], // Latin
  [0x00a0, 0x017f], // Latin-1 and Latin Extended-A
  [0x0300, 0x03ff], // combining marks, Greek
  [0x0400, 0x04ff], // Cyrillic
  [0x0590, 0x06ff], // Hebrew, Arabic
  [0x2000, 0x20bf], // punctuation, superscripts, currency
  [0x2100, 0x23ff], // letter-like, fractions, arrows, maths, technical
];
const perLine = 16;

/** The table of one face as text: a line `first code point: advance advance*times …` for each unbroken run of up to 16. */
const tableOf = ({ font: face }: Face): string => {
  const lines: string[] = [];
  for (const [first, last] of blocks) {
    let line: { width: number; times: number }[] = [];
    let start = first;
    const flush = () => {
      if (line.length > 0) {
        const widths = line.map(({ width, times }) => (times > 1 ? `${width}*${times}` : `${width}`));
        lines.push(`${start.toString(16)}: ${widths.join(' ')}`);
      }
      line = [];
    };
    for (let code = first; code <= last; code++) {
      if (code % perLine === 0) flush();
      if (!face.hasGlyphForCodePoint(code)) {
        flush();
        continue;
      }
      if (line.length === 0) start = code;
      const width = face.glyphForCodePoint(code).advanceWidth;
      const before = line.at(-1);
      if (before?.width === width) before.times += 1;
      else line.push({ width, times: 1 });
    }
    flush();
  }
  return lines.join('\n');
};

/** What joins on either side and is no letter. */
const stroke = '\u0640';
const shaping = { kern: false, liga: false, clig: false, dlig: false, calt: false };

/**
 * The advances of one face's Arabic letters where they join, as text: a line `final initial medial: code points …` for letters that join on both sides, `final: …`
 * for those that join to the one before alone, and `isolated final: lam+alef …` for the two as one.
 */
const joinedOf = ({ font, characters }: Face): string => {
  const shape = (text: string) => font.layout(text, shaping, 'arab', undefined, 'rtl');
  const width = (text: string) => shape(text).positions.reduce((sum, { xAdvance }) => sum + xAdvance, 0);
  const joint = width(stroke);
  const lines = new Map<string, string[]>();
  const add = (widths: readonly number[], what: string) => {
    const line = lines.get(widths.join(' ')) ?? [];
    line.push(what);
    lines.set(widths.join(' '), line);
  };
  // Whether a letter joins shows in its neighbour, as some have no shapes of their own.
  const neighbour = '\u0628';
  const alone = shape(neighbour).glyphs[0]?.id;
  const joinsBefore = (letter: string) => shape(neighbour + letter).glyphs.at(-1)?.id !== alone;
  const joinsAfter = (letter: string) => shape(letter + neighbour).glyphs[0]?.id !== alone;
  for (let code = 0x620; code <= 0x6ff; code++) {
    const letter = String.fromCodePoint(code);
    if (!/\p{L}/u.test(letter) || !characters.has(code)) continue;
    const final = width(stroke + letter) - joint;
    const hex = code.toString(16);
    if (joinsAfter(letter))
      add([final, width(letter + stroke) - joint, width(stroke + letter + stroke) - 2 * joint], hex);
    else if (joinsBefore(letter)) add([final], hex);
  }
  for (const alef of [0x622, 0x623, 0x625, 0x627]) {
    // With its sign apart, as it is set.
    const both = `\u0644${String.fromCodePoint(alef).normalize('NFD')}`;
    add([width(both), width(stroke + both) - joint], `644+${alef.toString(16)}`);
  }
  return [...lines].map(([widths, what]) => `${widths}: ${what.join(' ')}`).join('\n');
};

const faceOf = (name: string) =>
  readFace(readFileSync(createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`)));

/** The source of `geometry/advances.ts`, read afresh from the two bundled faces. */
export const writeAdvances = (): string => {
  const regular = faceOf('DejaVuSans');
  const bold = faceOf('DejaVuSans-Bold');
  return `// Written by \`npm run advances\` from DejaVu Sans 2.37: do not edit.
// A line: the first code point (hexadecimal), then one advance for it and each that follows, in font units; \`a*n\` is n times a.

export const unitsPerEm = ${regular.font.unitsPerEm};

export const regularAdvances = \`
${tableOf(regular)}
\`;

export const boldAdvances = \`
${tableOf(bold)}
\`;

// Arabic letters that join: \`final initial medial: code points\`, \`final: code points\`, \`isolated final: lam+alef\`.

export const regularJoined = \`
${joinedOf(regular)}
\`;

export const boldJoined = \`
${joinedOf(bold)}
\`;
`;
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  writeFileSync(new URL('../../geometry/advances.ts', import.meta.url), writeAdvances());
}
