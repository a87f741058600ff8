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
`;
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  writeFileSync(new URL('../../geometry/advances.ts', import.meta.url), writeAdvances());
}
