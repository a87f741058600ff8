import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { createCanvas, GlobalFonts } from '@napi-rs/canvas';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fallbackAdvance, fitText, textWidth } from '../../geometry/text.ts';
import { writeAdvances } from '../../src/command/advances.ts';
import { type Face, readFace, setLine } from '../../templates/set-line.ts';

const fontFile = (name: string) => createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`);

describe('the advance table', () => {
  it('equals a fresh reading of the bundled font', () => {
    const committed = readFileSync(new URL('../../geometry/advances.ts', import.meta.url), 'utf8');
    expect(committed).toBe(writeAdvances());
  });
});

describe('textWidth', () => {
  // The outside world here is another text engine (Skia, through @napi-rs/canvas) measuring the same font file.
  GlobalFonts.registerFromPath(fontFile('DejaVuSans'), 'Measured');
  GlobalFonts.registerFromPath(fontFile('DejaVuSans-Bold'), 'Measured Bold');
  const context = createCanvas(10, 10).getContext('2d');
  context.fontKerning = 'none';

  it.each([
    ['R 355.6 (14 in)', false],
    ['Bridge top radius: 508 ± 0.5 mm — “flat” ≤ 1⁄64', false],
    ['AVAVA To Ty', true],
    ['Ærøskøbing Łódź', true],
    ['Ζυγός 38,5', false],
    ['Подставка № 7', false],
    ['⌀5 → 27.66° ½ ∅', false],
    ['גשר לגיטרה', false],
    ['שָׁלוֹם', true],
    ['جسر القيثارة رقم ٣', false],
    ['السلام عليكم لا إلا لآن', true],
    ['لآن لأن لإبل', false],
    ['بَيتُ العُود', false],
    ['پل گیتار ژاله', true],
    ['لـا ب\u200dا ب\u200cا', false],
  ] as const)('measures “%s” (bold %s) as Skia does', (text, bold) => {
    context.font = `1000px "${bold ? 'Measured Bold' : 'Measured'}"`;
    expect(textWidth(text, 1000, bold)).toBeCloseTo(context.measureText(text).width, 0);
  });

  it('gives a decimal comma no more room than a point, so that words which clear each other with one do with the other', () => {
    for (const isBold of [false, true]) expect(textWidth(',', 1, isBold)).toBe(textWidth('.', 1, isBold));
  });

  it("measures any Arabic letters beside each other as the font's own rules shape them", () => {
    const letters = fc.string({
      unit: fc.integer({ min: 0x620, max: 0x6d3 }).map((code) => String.fromCodePoint(code)),
      maxLength: 8,
    });
    const faces = [readFace(readFileSync(fontFile('DejaVuSans'))), readFace(readFileSync(fontFile('DejaVuSans-Bold')))];
    fc.assert(
      fc.property(letters, fc.boolean(), (text, bold) => {
        const face = faces[Number(bold)] as Face;
        fc.pre([...text].every((letter) => face.characters.has(letter.codePointAt(0) ?? 0)));
        expect(setLine(text, bold, { faces: [face] }).ems).toBeCloseTo(textWidth(text, 1, bold), 9);
      }),
      { numRuns: 300 },
    );
  });

  it('grows with the size and the number of characters', () => {
    expect(textWidth('mm', 7)).toBeCloseTo(4 * textWidth('m', 3.5), 12);
    expect(textWidth('', 3.5)).toBe(0);
  });

  it('gives a character outside the table a whole em, once for a surrogate pair', () => {
    expect(textWidth('木🎸', 2)).toBe(2 * 2 * fallbackAdvance);
  });
});

describe('fitText', () => {
  it('leaves a text that fits alone', () => {
    expect(fitText('New bridge', 100, 3.5)).toBe('New bridge');
  });

  it('cuts to the width with an ellipsis, and not sooner than needed', () => {
    const name = 'A bridge with a name that runs on';
    for (const width of [8, 20, 35]) {
      const cut = fitText(name, width, 3.5);
      expect(cut.endsWith('…')).toBe(true);
      expect(textWidth(cut, 3.5)).toBeLessThanOrEqual(width);
      const more = name.slice(0, [...cut].length + 1);
      expect(textWidth(`${more}…`, 3.5)).toBeGreaterThan(width);
    }
  });

  it('never parts a letter from its accent nor an emoji from its joiners', () => {
    const accented = 'e\u0301'.repeat(10);
    expect(fitText(accented, textWidth('eee…', 1), 1)).toBe(`${'e\u0301'.repeat(3)}…`);
    const family = '👨\u200d👩\u200d👧';
    expect(fitText(family + family, 5, 1)).toBe(`${family}…`);
  });

  it('gives nothing where not even the ellipsis fits', () => {
    expect(fitText('bridge', 1, 3.5)).toBe('');
  });
});
