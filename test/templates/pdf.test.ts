import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { constants, inflateSync } from 'node:zlib';
import { PDFDict, PDFDocument, PDFStream } from '@cantoo/pdf-lib';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Primitive, Stroke, Text } from '../../geometry/drawing.ts';
import { arc, circle } from '../../geometry/shape/arc.ts';
import { polyline } from '../../geometry/shape/path.ts';
import { textWidth } from '../../geometry/text.ts';
import { type PdfOptions, type PdfPage, toPdf } from '../../templates/pdf.ts';
import { inSight } from '../../templates/reading-order.ts';
import { dashes, lineWidth } from '../../templates/style.ts';
import type { DrawText } from '../../templates/text-picture.ts';
import { fonts } from '../fonts.ts';
import { type PdfFile, readPdf, renderPdf } from '../read-pdf.ts';

const bar = polyline(
  [
    { x: 20, y: 30 },
    { x: 120, y: 30 },
  ],
  false,
);
const stroke = (id: string, more: Partial<Stroke> = {}): Stroke => ({
  kind: 'stroke',
  id,
  path: bar,
  line: 'outline',
  purpose: 'cut',
  ...more,
});
const text = (id: string, words: string, more: Partial<Text> = {}): Text => ({
  kind: 'text',
  id,
  at: { x: 50, y: 60 },
  text: words,
  size: 3.5,
  anchor: 'start',
  turn: 0,
  bold: false,
  ...more,
});
const options: PdfOptions = {
  title: 'Ærø, 木',
  author: 'A. Repairer',
  subject: 'Templates',
  keywords: ['bridge', 'saddle'],
  date: new Date('2024-02-29T12:00:00Z'),
  fonts,
};
const page = (primitives: readonly Primitive[], more: Partial<PdfPage> = {}): PdfPage => ({
  width: 210,
  height: 297,
  primitives,
  title: 'Sheet',
  ...more,
});
const write = async (primitives: readonly Primitive[]) => {
  const [first] = (await readPdf(await toPdf([page(primitives)], options))).pages;
  if (!first) throw new Error('no page');
  return first;
};

describe('a PDF file', () => {
  let file: PdfFile;
  beforeAll(async () => {
    const sheets = [page([stroke('bar'), text('a', 'one')]), page([], { width: 420, height: 297, title: 'Wide, ⌀' })];
    file = await readPdf(await toPdf(sheets, options));
  });

  it('tells what it is', () => {
    expect(file.info).toMatchObject({
      Title: 'Ærø, 木',
      Author: 'A. Repairer',
      Subject: 'Templates',
      Keywords: 'bridge saddle',
      CreationDate: 'D:20240229120000Z',
      ModDate: 'D:20240229120000Z',
    });
    expect(file.outline).toEqual(['Sheet', 'Wide, ⌀']);
  });

  it('names each piece of a page, where it is told them', async () => {
    const sheets = [page([], { title: 'A · B', bookmarks: ['A', 'B'] }), page([], { title: 'C' })];
    expect((await readPdf(await toPdf(sheets, options))).outline).toEqual(['A', 'B', 'C']);
  });

  it('has the four layers, which can be switched off', async () => {
    expect(file.layers).toEqual(['cut', 'drill', 'fold', 'show']);
    const sheet = page([stroke('bar'), text('a', 'one')]);
    const task = getDocument({ data: await toPdf([sheet], options) });
    const config = await (await task.promise).getOptionalContentConfig();
    const [cut, ...others] = [...config] as [string, { name: string; visible: boolean }][];
    expect([cut, ...others].map((layer) => layer?.[1].visible)).toEqual([true, true, true, true]);
    config.setVisibility(cut?.[0] ?? '', false);
    expect(config.getGroup(cut?.[0] ?? '').visible).toBe(false);
    expect(config.getGroup(others[0]?.[0] ?? '').visible).toBe(true);
    await task.destroy();
  });

  it('has every page in its own size', () => {
    expect(file.pages.map(({ widthMm }) => widthMm)).toEqual([expect.closeTo(210, 6), expect.closeTo(420, 6)]);
  });

  it('is the same, byte for byte, for the same drawing and date', async () => {
    const sheets = [page([stroke('bar', { line: 'centre' }), text('a', 'one'), text('b', 'two', { bold: true })])];
    expect(await toPdf(sheets, options)).toEqual(await toPdf(sheets, options));
  });

  it('has at least one page', async () => {
    await expect(toPdf([], options)).rejects.toThrow(RangeError);
  });
});

describe('strokes', () => {
  it('stand in the layer of what they are for, with their width and dashes in mm', async () => {
    const lines = ['outline', 'thin', 'hidden', 'centre', 'phantom'] as const;
    for (const purpose of ['cut', 'drill', 'fold', 'show'] as const) {
      const { paths } = await write(lines.map((line) => stroke(line, { line, purpose })));
      expect(paths.map((p) => p.layer)).toEqual(lines.map(() => purpose));
      for (const [n, line] of lines.entries()) {
        expect(paths[n]?.width).toBeCloseTo(lineWidth[line], 6);
        expect(paths[n]?.dash).toEqual(dashes[line].map((length) => expect.closeTo(length, 5)));
      }
    }
  });

  it('of ink are filled, others not', async () => {
    const { paths } = await write([
      stroke('wood', { path: circle({ x: 30, y: 30 }, 5), matter: 'wood' }),
      stroke('ink', { path: circle({ x: 30, y: 30 }, 5), matter: 'ink' }),
    ]);
    expect(paths.map((p) => p.filled)).toEqual([false, true]);
    expect(paths.every((p) => p.closed)).toBe(true);
  });

  it.each([0.4, -Math.PI, 5, 2 * Math.PI])(
    'draw an arc of %s radians by cubics that end where it does',
    async (sweep) => {
      const drawn = arc({ x: 100, y: 100 }, 40, 1, sweep);
      const { paths } = await write([stroke('arc', { path: { segments: [drawn], closed: false } })]);
      const first = paths[0]?.segments[0];
      const last = paths[0]?.segments.at(-1);
      if (first?.kind !== 'cubic' || last?.kind !== 'cubic') throw new Error('no cubics');
      expect(first.from.x).toBeCloseTo(100 + 40 * Math.cos(1), 4);
      expect(first.from.y).toBeCloseTo(100 + 40 * Math.sin(1), 4);
      expect(last.to.x).toBeCloseTo(100 + 40 * Math.cos(1 + sweep), 4);
      expect(last.to.y).toBeCloseTo(100 + 40 * Math.sin(1 + sweep), 4);
      // It leaves its first point square to the radius, in the sense of the sweep.
      const along = (first.c1.y - first.from.y) * Math.cos(1) - (first.c1.x - first.from.x) * Math.sin(1);
      expect(Math.sign(along)).toBe(Math.sign(sweep));
      expect(paths[0]?.segments.length).toBe(Math.ceil(Math.abs(sweep) / (Math.PI / 4) - 1e-9));
    },
  );
});

describe('texts', () => {
  it('are real text, each at its place, size, turn and anchor, as wide as was measured', async () => {
    const words = 'Scale 640 AVA fi ½ ⌀5 → ≤';
    const { texts } = await write([
      text('start', words),
      text('end', words, { anchor: 'end', at: { x: 150, y: 80 }, bold: true }),
      text('turned', words, { anchor: 'middle', at: { x: 30, y: 150 }, turn: -90, size: 5 }),
    ]);
    expect(texts.map((t) => t.text)).toEqual([words, words, words]);
    const [first, last, turned] = texts;
    expect(first).toMatchObject({ x: expect.closeTo(50, 3), y: expect.closeTo(60, 3), size: expect.closeTo(3.5, 5) });
    expect(first?.widthMm).toBeCloseTo(textWidth(words, 3.5), 2);
    expect(last?.x).toBeCloseTo(150 - textWidth(words, 3.5, true), 2);
    expect(turned?.turn).toBeCloseTo(-90, 3);
    expect(turned?.x).toBeCloseTo(30, 3);
    expect(turned?.y).toBeCloseTo(150 + textWidth(words, 5) / 2, 2);
  });

  it('show a character that the font lacks as its code, within the room measured for it', async () => {
    const words = 'Bridge 木 for 🎸';
    const { texts } = await write([text('a', words)]);
    expect(texts.map((t) => t.text)).toEqual(['Bridge [U+6728] for [U+1F3B8]']);
    expect(texts[0]?.widthMm).toBeLessThanOrEqual(textWidth(words, 3.5) + 1e-3);
  });

  it('are set in another font where the first lacks them, and tell what no font has', async () => {
    // DejaVu Serif has arrows that DejaVu Sans has not.
    const other = new Uint8Array(
      readFileSync(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSerif.ttf')),
    );
    let lacking: readonly string[] = [];
    const file = await readPdf(
      await toPdf([page([text('a', 'Bridge ⤀⤁ 木 木'), text('b', '⤀', { bold: true })])], {
        ...options,
        fonts: { ...fonts, other },
        tellLacking: (characters) => {
          lacking = characters;
        },
      }),
    );
    expect(file.pages[0]?.texts.map((t) => t.text).join('')).toBe('Bridge ⤀⤁ [U+6728] [U+6728]⤀');
    expect(lacking).toEqual(['木']);
    // Letters that run to the left stay behind what stands before them, whoever draws that.
    const mixed = await readPdf(
      await toPdf([page([text('a', 'Bridge ⤀ for שלום')])], { ...options, fonts: { ...fonts, other } }),
    );
    expect(mixed.pages[0]?.texts.map((t) => t.text).join('')).toBe('Bridge ⤀ for שלום');
  });

  it('are drawn as a picture where no font has them, within the room measured for them, on their baseline', async () => {
    const asked: string[] = [];
    // A picture of twice the room: black from half an em above the baseline to a quarter below it.
    const drawText: DrawText = (words, { perEm }) => {
      asked.push(`${words} ${perEm}`);
      if (!words.startsWith('木')) return undefined;
      const [width, height] = [2 * perEm * words.length, (3 * perEm) / 4];
      const rgba = new Uint8Array(4 * width * height).map((_, n) => (n % 4 === 3 ? 255 : 0));
      return { rgba, width, height, left: 0, above: perEm / 2, advance: width, perEm };
    };
    const bytes = await toPdf([page([text('a', '木木 🎸', { size: 10.16 })])], { ...options, drawText });
    // 10.16 mm at 600 dots an inch are 240 pixels.
    expect([...new Set(asked)]).toEqual(['木 240', '🎸 240', '木木 240']);
    const { data, width } = await renderPdf(bytes, 0, 254);
    const dark = (xMm: number, yMm: number) =>
      (data[4 * (Math.round(yMm * 10) * width + Math.round(xMm * 10))] ?? 255) < 128;
    // Two characters outside the table have two ems of room: the line is set smaller for the code behind them.
    const code = ' [U+1F3B8]';
    const size = (10.16 * textWidth('木木 🎸', 1)) / (2 + textWidth(code, 1));
    expect(dark(50.3, 60 - size / 4 + 0.3)).toBe(true);
    expect(dark(50.3, 60 - size / 4 - 0.3)).toBe(false);
    expect(dark(50.3, 60 + size / 8 - 0.3)).toBe(true);
    expect(dark(50 + 2 * size - 0.3, 60)).toBe(true);
    expect(dark(50 + 2 * size + 0.3, 60 - size / 8)).toBe(false);
    expect(dark(49.7, 60)).toBe(false);
    const [only] = (await readPdf(bytes)).pages;
    expect(
      only?.texts
        .map((t) => t.text)
        .join('')
        .trim(),
    ).toBe('[U+1F3B8]');
  });

  it.each([
    ['markup', '</text><script>alert(1)</script> ]]> <!--'],
    ['words of the format', '%PDF-1.7 endstream endobj trailer %%EOF stream xref (\\) ) ( << >> [ ] BT ET'],
    ['escapes', '\\( \\) \\012 #41 /Name <48> \\'],
    ['control characters', 'a\u0000b\u0007c\nd\re\tf\u007fg\u0085h'],
    ['lone surrogates', 'a\ud800b\udfffc'],
    ['what turns and hides', 'a\u202eb\u2066c\u200bd\ufeffe\u00adf\u2069\u202c'],
    ['5,000 letters', 'Saddle ⌀ שלום 12 '.repeat(300)],
  ])('stay what they are, in a file that is whole: %s', async (_, words) => {
    const bytes = await toPdf(
      [page([text('a', words), text('b', 'after')], { title: words, bookmarks: [words] }), page([text('c', 'last')])],
      { ...options, title: words, author: words, subject: words, keywords: [words] },
    );
    const { pages, outline, layers } = await readPdf(bytes);
    expect(pages.at(0)?.texts.at(-1)?.text).toBe('after');
    expect(pages.at(1)?.texts.map((t) => t.text)).toEqual(['last']);
    expect(outline).toHaveLength(2);
    expect(layers).toHaveLength(4);
    // By another reader, strictly; and nothing in it acts (ISO 32000-1, 12.6).
    const again = await PDFDocument.load(bytes, { throwOnInvalidObject: true, updateMetadata: false });
    expect(again.getPageCount()).toBe(2);
    const keys = again.context.enumerateIndirectObjects().flatMap(([, object]) => {
      const dict = object instanceof PDFDict ? object : object instanceof PDFStream ? object.dict : undefined;
      return dict?.keys().map((key) => key.asString()) ?? [];
    });
    expect(keys).toContain('/Type');
    for (const acting of ['/JS', '/AA', '/A', '/OpenAction', '/URI', '/Launch', '/EmbeddedFiles', '/Names'])
      expect(keys).not.toContain(acting);
  });

  it('take whatever a name may hold', async () => {
    const words = '</text><script>alert("1")</script> (\\) [] <</Type>> % \u0001';
    const { texts } = await write([text('a', words), text('b', ''), text('c', '\ud800')]);
    expect(texts.map((t) => t.text)).toEqual([words.replace('\u0001', '[U+0001]'), '[U+D800]']);
  });

  it('compose a letter and its accent', async () => {
    expect((await write([text('a', 'Rene\u0301')])).texts[0]?.text).toBe('René');
  });

  // What a reader finds and copies: pdf.js knows nothing of the writer.
  it.each([
    'Ærø Łódź ñandú ß ẹ',
    'Γέφυρα κιθάρας ΆΈΉ',
    'Подставка № 7 — Ёлка',
    '≤ → ⌀5 27.66° 5″ ½ × ± − … “x” – ’',
    'A bridge and saddle for שלום 12.5 עולם, new',
    'Bridge for سلام 12, new',
    'גשר לגיטרה 2024-05-01, 38.5',
    'السلام عليكم (٣٢) لا 12.5',
    'שָׁלוֹם לב',
    'گیتار “نو” 7',
  ])('come back as typed: %s', async (words) => {
    const { texts } = await write([
      text('a', words),
      text('b', words, { turn: 90, bold: true, at: { x: 80, y: 100 } }),
    ]);
    expect(texts.map((t) => t.text).join('')).toBe(words + words);
  });
});

describe('a reader that asks for what was typed', () => {
  /** What a file says beside its glyphs: every ActualText (ISO 32000-1, 14.9.4) of its compressed streams. */
  const said = async (words: string) => {
    const bytes = Buffer.from(await toPdf([page([text('a', words)])], options));
    const streams = [...bytes.toString('latin1').matchAll(/stream\r?\n/g)].flatMap(({ index, 0: { length } }) => {
      try {
        return [
          inflateSync(bytes.subarray(index + length), { finishFlush: constants.Z_SYNC_FLUSH }).toString('latin1'),
        ];
      } catch {
        return [];
      }
    });
    const found = streams.flatMap((stream) => [...stream.matchAll(/ActualText <FEFF([0-9A-F]*)>/g)]);
    return found.map(([, hex = '']) => Buffer.from(hex, 'hex').swap16().toString('utf16le')).join('');
  };

  // Here readers that go by the glyphs alone lose spaces between numbers and words.
  it.each([
    'שלום (עולם) 12.5, x [2]',
    'גשר לגיטרה 2024-05-01, 38.5 mm',
    'السلام عليكم (٣٢) لا 12.5 mm',
    'שָׁלוֹם בּ',
    'لآن لأن إبل',
  ])('is told: %s', async (words) => {
    const { texts } = await write([text('a', words)]);
    const bare = (of: string) => of.replace(/\s/g, '').normalize('NFC');
    expect(bare(texts.map((t) => t.text).join(''))).toBe(bare(words));
    // A part whose glyphs say it themselves needs no word beside them.
    const rest = ['12.5', '2024-05-01', '38.5', 'x [2]', 'mm'].filter((part) => words.includes(part));
    const spoken = await said(words);
    for (const piece of words.split(' ').filter((part) => !rest.some((r) => r.includes(part.replace(',', '')))))
      expect(spoken).toContain(piece.normalize('NFC'));
  });
});

describe('the order in which letters are seen', () => {
  // After UAX 9, worked by hand, the line’s direction being its first strong letter’s (P2); letters of a stretch are turned when they are shaped.
  it.each([
    ['saddle 3.2', ['saddle 3.2']],
    ['a שלום b', ['a ', '<שלום', ' b']],
    ['a שלום 12.5 עולם b', ['a ', '< עולם', '12.5', '<שלום ', ' b']],
    ['x שלום (עולם) x', ['x ', '<שלום (עולם)', ' x']],
    ['שלום x עולם', ['< עולם', 'x', '<שלום ']],
    ['7 שלום 12 x', ['x', '< ', '12', '< שלום ', '7']],
    ['x שלום, 5°.', ['x ', '5°', '<שלום, ', '.']],
    ['a \u202ebcd\u202c e', ['a \u202e', '<\u202c', '<d', '<c', '<b', ' e']],
  ])('of “%s”', (words, seen) => {
    const stretches = inSight([...words].map((character) => ({ text: character })));
    expect(stretches.map(({ parts, toLeft }) => (toLeft ? '<' : '') + parts.map((part) => part.text).join(''))).toEqual(
      seen,
    );
  });
});
