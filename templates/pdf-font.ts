import { type PDFDocument, PDFName, type PDFRef, PDFString } from '@cantoo/pdf-lib';
import type { Face, SetGlyph } from './set-line.ts';

/** A face as it is embedded into a file: its name among the pages' resources, and the code by which a glyph is written. */
export interface PdfFont {
  readonly name: string;
  readonly ref: PDFRef;
  /** Four hexadecimal digits. */
  readonly codeOf: (glyph: SetGlyph, toLeft: boolean) => string;
  /** Whether anything was written with it. */
  readonly isUsed: () => boolean;
  /** Writes what was used of it into the file. */
  readonly embed: () => void;
}

const hex = (n: number): string => n.toString(16).padStart(4, '0');

const utf16 = (text: string): string => Array.from({ length: text.length }, (_, k) => hex(text.charCodeAt(k))).join('');

/** A map from codes to the characters that they stand for (ISO 32000-1, 9.10.3); at most a hundred lines stand in one block (Adobe Technical Note 5411). */
const toUnicode = (texts: readonly string[]): string => {
  const lines = texts.map((text, k) => `<${hex(k)}> <${utf16(text)}>`).slice(1);
  const blocks = Array.from({ length: Math.ceil(lines.length / 100) }, (_, k) => lines.slice(100 * k, 100 * (k + 1)));
  return [
    '/CIDInit /ProcSet findresource begin',
    '12 dict begin',
    'begincmap',
    '/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def',
    '/CMapName /Adobe-Identity-UCS def',
    '/CMapType 2 def',
    '1 begincodespacerange',
    '<0000> <ffff>',
    'endcodespacerange',
    ...blocks.flatMap((block) => [`${block.length} beginbfchar`, ...block, 'endbfchar']),
    'endcmap',
    'CMapName currentdict /CMap defineresource pop',
    'end',
    'end',
  ].join('\n');
};

/** A symbolic font, and one that is neither bold nor slanted by the reader (ISO 32000-1, table 123). */
const symbolic = 4;

/**
 * A face of which only the glyphs that are written go into the file (ISO 32000-1, 9.7: a composite font with the codes of its own). A glyph that stands for several
 * texts, as a bracket that is turned among letters that run to the left, has a code for each, so that what is copied or searched is what was typed.
 */
export const pdfFont = (file: PDFDocument, { font }: Face, name: string, fontName: string): PdfFont => {
  const { context } = file;
  const ref = context.nextRef();
  const subset = font.createSubset();
  const thousandths = 1000 / font.unitsPerEm;
  // The first is the glyph for what is missing, which nothing is written with.
  const texts = [''];
  const glyphs = [0];
  const widths = [0];
  const known = new Map<string, string>();
  const codeOf = ({ glyph, text }: SetGlyph, toLeft: boolean): string => {
    // Readers take what a line shows from left to right and turn what runs to the left; so do they with the characters of one glyph.
    const shown = toLeft ? [...text].reverse().join('') : text;
    // In the Compact Font Format a code is its glyph's number, so there a glyph has one.
    const key = subset.cff ? `${glyph.id}` : `${glyph.id} ${shown}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const index = subset.includeGlyph(glyph);
    const code = subset.cff ? index : texts.length;
    texts[code] = shown;
    glyphs[code] = index;
    widths[code] = glyph.advanceWidth * thousandths;
    known.set(key, hex(code));
    return hex(code);
  };
  const embed = () => {
    const isCff = Boolean(subset.cff);
    const { bbox, italicAngle, ascent, descent, capHeight, xHeight } = font;
    const data = context.register(context.flateStream(subset.encode(), isCff ? { Subtype: 'CIDFontType0C' } : {}));
    // Older fonts do not say how high their capitals and small letters are.
    const descriptor = context.register(
      context.obj({
        Type: 'FontDescriptor',
        FontName: fontName,
        Flags: symbolic,
        FontBBox: [bbox.minX, bbox.minY, bbox.maxX, bbox.maxY].map((n) => n * thousandths),
        ItalicAngle: italicAngle,
        Ascent: ascent * thousandths,
        Descent: descent * thousandths,
        CapHeight: (capHeight || ascent) * thousandths,
        XHeight: (xHeight || 0) * thousandths,
        StemV: 0,
        [isCff ? 'FontFile3' : 'FontFile2']: data,
      }),
    );
    const map = new Uint8Array(2 * glyphs.length);
    glyphs.forEach((index, code) => {
      map[2 * code] = index >> 8;
      map[2 * code + 1] = index & 0xff;
    });
    const descendant = context.register(
      context.obj({
        Type: 'Font',
        Subtype: isCff ? 'CIDFontType0' : 'CIDFontType2',
        BaseFont: fontName,
        CIDSystemInfo: { Registry: PDFString.of('Adobe'), Ordering: PDFString.of('Identity'), Supplement: 0 },
        FontDescriptor: descriptor,
        DW: 0,
        W: [0, [...widths]],
        ...(isCff ? {} : { CIDToGIDMap: context.register(context.flateStream(map)) }),
      }),
    );
    context.assign(
      ref,
      context.obj({
        Type: 'Font',
        Subtype: 'Type0',
        BaseFont: fontName,
        Encoding: PDFName.of('Identity-H'),
        DescendantFonts: [descendant],
        ToUnicode: context.register(context.flateStream(toUnicode([...texts]))),
      }),
    );
  };
  return { name, ref, codeOf, isUsed: () => texts.length > 1, embed };
};
