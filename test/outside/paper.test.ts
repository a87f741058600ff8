import { PDFDocument } from '@cantoo/pdf-lib';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Primitive, Purpose, Stroke } from '../../geometry/drawing.ts';
import { arc, circle } from '../../geometry/shape/arc.ts';
import { polyline } from '../../geometry/shape/path.ts';
import type { Cubic, Path, Point } from '../../geometry/shape/types.ts';
import { toPdf } from '../../templates/pdf.ts';
import { toSvg } from '../../templates/svg.ts';
import { svgWindow } from '../../templates/svg-window.ts';
import { fitCircle, pointAt } from '../fit-circle.ts';
import { fonts } from '../fonts.ts';
import { type PdfFile, readPdf, renderPdf } from '../read-pdf.ts';
import { type Pixels, readSvg, renderSvg } from '../read-svg.ts';

/*
 * What comes out on paper, read back and turned to pixels by programs that know nothing of the writers (pdf.js, resvg).
 * Sizes of paper: ISO 216 (A3, A4) and ANSI/ASME Y14.1 (A is Letter, 8.5 in × 11 in; B is Tabloid, 11 in × 17 in); an inch is 25.4 mm
 * exactly (international yard and pound agreement, 1959).
 */

const stroke = (id: string, path: Path, purpose: Purpose = 'cut', more: Partial<Stroke> = {}): Stroke => ({
  kind: 'stroke',
  id,
  path,
  line: 'outline',
  purpose,
  ...more,
});
const straight = (from: Point, to: Point) => polyline([from, to], false);

// Bars of 100 mm both ways, the second shut in by filled squares whose inner edges are its ends.
const square = (x: number, y: number) =>
  polyline(
    [
      { x, y },
      { x: x + 3, y },
      { x: x + 3, y: y + 3 },
      { x, y: y + 3 },
    ],
    true,
  );
const radius = 508;
const bow = arc({ x: 105, y: 150 + radius }, radius, -Math.PI / 2 - 0.08, 0.16);
const drawing: readonly Primitive[] = [
  stroke('across', straight({ x: 20, y: 30 }, { x: 120, y: 30 }), 'show'),
  stroke('down', straight({ x: 20, y: 40 }, { x: 20, y: 140 }), 'show'),
  stroke('left', square(37, 60), 'show', { matter: 'ink' }),
  stroke('right', square(140, 60), 'show', { matter: 'ink' }),
  stroke('upper', square(37, 100), 'show', { matter: 'ink' }),
  stroke('lower', square(37, 203), 'show', { matter: 'ink' }),
  stroke('bow', { segments: [bow], closed: false }),
  stroke('pin', circle({ x: 180, y: 200 }, 2.5), 'drill'),
];
const page = { width: 210, height: 297, title: 'Bars', primitives: drawing };
const options = { title: 'Bars', date: new Date(0), fonts };

/** Mean ink of the pixels of a row or column, from 0 to 1, at a place in mm. */
const darkness = ({ width, data }: Pixels, x: number, y: number): number =>
  1 - (data[(y * width + x) * 4] ?? 255) / 255;

/** Width in pixels of the white between two dark areas along a row or a column, grey edge pixels counted by their lightness. */
const whiteBetween = (image: Pixels, dpi: number, from: Point, to: Point): number => {
  const px = (mm: number) => Math.floor((mm / 25.4) * dpi);
  const along = from.y === to.y ? 'x' : 'y';
  let white = 0;
  for (let n = px(from[along]); n <= px(to[along]); n++) {
    white += 1 - (along === 'x' ? darkness(image, n, px(from.y)) : darkness(image, px(from.x), n));
  }
  return white;
};

describe('a PDF on paper', () => {
  let bytes: Uint8Array;
  let file: PdfFile;
  beforeAll(async () => {
    bytes = await toPdf([page], options);
    file = await readPdf(bytes);
  });
  const onlyPath = (layer: string, kind: 'line' | 'cubic') =>
    file.pages[0]?.paths.filter((p) => p.layer === layer && !p.filled && p.segments[0]?.kind === kind) ?? [];

  it.each([
    ['A4', 210, 297],
    ['A3', 297, 420],
    ['Letter', 8.5 * 25.4, 11 * 25.4],
    ['Tabloid', 11 * 25.4, 17 * 25.4],
  ])('has the page box of %s within 0.01 mm', async (_, width, height) => {
    const written = await toPdf([{ ...page, width, height }], options);
    const [read] = (await readPdf(written)).pages;
    expect(Math.abs((read?.widthMm ?? 0) - width)).toBeLessThan(0.01);
    expect(Math.abs((read?.heightMm ?? 0) - height)).toBeLessThan(0.01);
    // What pdf.js shows is the crop box within the media box: the media box is no larger. User space is 1/72 in (ISO 32000-1, 8.3.2.3).
    const media = (await PDFDocument.load(written)).getPage(0).getMediaBox();
    expect(media.width).toBeCloseTo((width / 25.4) * 72, 9);
    expect(media.height).toBeCloseTo((height / 25.4) * 72, 9);
    expect([media.x, media.y]).toEqual([0, 0]);
  });

  it('asks viewers not to scale it', () => {
    // ISO 32000-1, 12.2, table 150.
    expect(file.printScaling).toBe('None');
  });

  it('has a bar of 100 mm within 0.01 mm, both ways and where it belongs', () => {
    const ends = onlyPath('show', 'line').map(({ segments: [s] }) => (s?.kind === 'line' ? [s.from, s.to] : []));
    const wanted = [
      [
        { x: 20, y: 30 },
        { x: 120, y: 30 },
      ],
      [
        { x: 20, y: 40 },
        { x: 20, y: 140 },
      ],
    ];
    expect(ends.length).toBe(2);
    wanted.flat().forEach((point, n) => {
      const read = ends.flat()[n];
      expect(Math.hypot((read?.x ?? 0) - point.x, (read?.y ?? 0) - point.y)).toBeLessThan(0.01);
    });
  });

  it('has an arc whose fitted radius is true within 0.1 %', () => {
    const [read] = onlyPath('cut', 'cubic');
    const points = (read?.segments ?? []).flatMap((s) =>
      s.kind === 'cubic' ? Array.from({ length: 21 }, (_, n) => pointAt(s, n / 20)) : [],
    );
    const fitted = fitCircle(points);
    expect(Math.abs(fitted.radius / radius - 1)).toBeLessThan(0.001);
    for (const p of points) expect(Math.abs(Math.hypot(p.x - 105, p.y - 150 - radius) - radius)).toBeLessThan(0.003);
  });

  it('has a pin hole true within 0.001 mm all round', () => {
    const [read] = onlyPath('drill', 'cubic');
    expect(read?.segments.length).toBe(8);
    for (const s of read?.segments ?? []) {
      for (let n = 0; n <= 20; n++) {
        const p = pointAt(s as Cubic, n / 20);
        expect(Math.abs(Math.hypot(p.x - 180, p.y - 200) - 2.5)).toBeLessThan(0.001);
      }
    }
  });

  it('measures 100 mm within a pixel at 600 dots an inch, both ways', async () => {
    const image = await renderPdf(bytes, 0, 600);
    const true100 = (100 / 25.4) * 600;
    expect(image.width).toBe(Math.round((210 / 25.4) * 600));
    expect(Math.abs(whiteBetween(image, 600, { x: 38, y: 61.5 }, { x: 142, y: 61.5 }) - true100)).toBeLessThan(1);
    expect(Math.abs(whiteBetween(image, 600, { x: 38.5, y: 101 }, { x: 38.5, y: 205 }) - true100)).toBeLessThan(1);
  }, 30_000);
});

describe('an SVG on paper', () => {
  const written = toSvg(drawing, { ...page, window: svgWindow() });

  it('says its size in mm, and has a user unit of one mm', () => {
    const { widthMm, heightMm, viewBox } = readSvg(written);
    expect([widthMm, heightMm]).toEqual([210, 297]);
    expect([viewBox.width, viewBox.height]).toEqual([210, 297]);
  });

  it('has 96 px to the inch for those who reckon in px', () => {
    // CSS Values 4, 6.2, and SVG 2, 8.9: 1 in = 2.54 cm = 96 px.
    const image = renderSvg(written, 96);
    expect(image.width).toBe(Math.round((210 / 25.4) * 96));
    expect(image.height).toBe(Math.round((297 / 25.4) * 96));
  });

  it('keeps the arc’s radius as it is', () => {
    const bowed = readSvg(written).elements.find((e) => e.id === 'bow')?.paths[0]?.segments;
    expect(bowed?.map((s) => (s.kind === 'arc' ? s.radius : 0))).toEqual([expect.closeTo(radius, 6)]);
  });

  it('measures 100 mm within a pixel at 300 dots an inch, both ways', () => {
    const image = renderSvg(written, 300);
    const true100 = (100 / 25.4) * 300;
    expect(Math.abs(whiteBetween(image, 300, { x: 38, y: 61.5 }, { x: 142, y: 61.5 }) - true100)).toBeLessThan(1);
    expect(Math.abs(whiteBetween(image, 300, { x: 38.5, y: 101 }, { x: 38.5, y: 205 }) - true100)).toBeLessThan(1);
  });
});
