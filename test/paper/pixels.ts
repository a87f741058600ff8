import { createCanvas } from '@napi-rs/canvas';
import { Resvg } from '@resvg/resvg-js';
import { getDocument, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Primitive } from '../../geometry/drawing.ts';
import { toPdf } from '../../templates/pdf.ts';
import type { Sheet } from '../../templates/sheets.ts';
import { lineWidth } from '../../templates/style.ts';
import { toSvg } from '../../templates/svg.ts';
import { svgWindow } from '../../templates/svg-window.ts';
import { fonts } from '../fonts.ts';

/*
 * A sheet's PDF drawn by pdf.js and its SVG drawn by resvg, in pixels at 600 dots an inch, tile by tile. Letters are left out: each engine smooths them in its own way.
 */

const dpi = 600;
const mm = 25.4 / dpi;
/** A tile's sides, in pixels: some 100 mm. */
const tile = 2400;
/** A pixel this dark (of 255) belongs to a line; one this dark or darker is looked for in the other picture. */
const faint = 200;
const dark = 100;

/** A picture's pixels, each as one number; paper and lines are grey, so the lowest byte, red, tells all. */
type Picture = Uint32Array;
const pictureOf = ({ buffer, byteOffset, byteLength }: Uint8Array | Uint8ClampedArray): Picture =>
  new Uint32Array(buffer, byteOffset, byteLength / 4);
const red = (pixel: number): number => pixel & 255;

/** How far, in pixels, the nearest pixel of a line lies from a place; at most `most`, past which it looks no more. */
const nearest = (picture: Picture, width: number, place: number, most: number): number => {
  const [x, y] = [place % width, Math.floor(place / width)];
  const bottom = Math.min(picture.length / width - 1, y + most);
  let found = most;
  for (let v = Math.max(0, y - most); v <= bottom; v++)
    for (let u = Math.max(0, x - most); u <= Math.min(width - 1, x + most); u++)
      if (red(picture[v * width + u] as number) <= faint) found = Math.min(found, Math.hypot(u - x, v - y));
  return found;
};

/** How many pixels of the first picture belong to lines, and how far the farthest pixel of a line of either lies from the other's lines, at most `most`. */
const compare = (one: Picture, other: Picture, width: number, most: number) => {
  let [apart, inked] = [0, 0];
  for (let i = 0; i < one.length; i++) {
    // Not as one pair: an array for each of a hundred million pixels takes longer than all else.
    const a = one[i] as number;
    const b = other[i] as number;
    if (red(a) <= dark) inked++;
    if (a === b) continue;
    if (red(a) <= dark && red(b) > faint) apart = Math.max(apart, nearest(other, width, i, most));
    if (red(b) <= dark && red(a) > faint) apart = Math.max(apart, nearest(one, width, i, most));
  }
  return { apart, inked };
};

export interface Agreement {
  /** The farthest that a line of one picture lies from any of the other, mm; a narrow line's width, or more, where they do not agree. */
  readonly apart: number;
  /** How many pixels of lines were looked at. */
  readonly inked: number;
}

/** Draws sheets by both engines, as PDF and as SVG, and compares them; the SVG may be given sheets of its own. */
export const compareSheets = async (
  sheets: readonly Sheet[],
  asSvg: readonly Sheet[] = sheets,
): Promise<readonly Agreement[]> => {
  const isStroke = ({ kind }: Primitive) => kind === 'stroke';
  const bare = sheets.map((sheet) => ({ ...sheet, primitives: sheet.primitives.filter(isStroke) }));
  const bytes = await toPdf(bare, { title: 'Pixels', date: new Date('2024-02-29T12:00:00Z'), fonts });
  const task = getDocument({ data: bytes, verbosity: VerbosityLevel.ERRORS });
  const window = svgWindow();
  const most = Math.ceil(lineWidth.thin / mm);
  try {
    const file = await task.promise;
    const found: Agreement[] = [];
    for (const [k, sheet] of bare.entries()) {
      const page = await file.getPage(k + 1);
      const primitives = (asSvg[k] as Sheet).primitives.filter(isStroke);
      const [across, down] = [Math.ceil(sheet.width / mm), Math.ceil(sheet.height / mm)];
      let [apart, inked] = [0, 0];
      for (let y = 0; y < down; y += tile)
        for (let x = 0; x < across; x += tile) {
          const [width, height] = [Math.min(tile, across - x), Math.min(tile, down - y)];
          const viewport = page.getViewport({ scale: dpi / 72, offsetX: -x, offsetY: -y });
          const canvas = createCanvas(width, height);
          // The canvas of Node stands in for the browser's, whose type pdf.js asks for.
          await page.render({ canvas: canvas as unknown as HTMLCanvasElement, viewport }).promise;
          const pdf = canvas.data();
          const view = { left: x * mm, top: y * mm, width: width * mm, height: height * mm };
          const text = toSvg(primitives, { ...view, title: sheet.title, window });
          const image = new Resvg(text, { background: '#ffffff', fitTo: { mode: 'width', value: width } }).render();
          if (image.height !== height) throw new Error(`${image.height} pixels in place of ${height}`);
          const part = compare(pictureOf(pdf), pictureOf(image.pixels), width, most);
          apart = Math.max(apart, part.apart);
          inked += part.inked;
        }
      found.push({ apart: apart * mm, inked });
    }
    return found;
  } finally {
    await task.destroy();
  }
};
