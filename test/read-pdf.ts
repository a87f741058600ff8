import { createCanvas } from '@napi-rs/canvas';
import { getDocument, OPS, type PDFPageProxy, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Point, Segment } from '../geometry/shape/types.ts';
import type { Pixels } from './read-svg.ts';

export interface PdfPath {
  /** Lines and cubics in mm from the page's left top corner, y down; closing lines are not added. */
  readonly segments: readonly Segment[];
  readonly closed: boolean;
  readonly filled: boolean;
  /** Line width and dashes, mm. */
  readonly width: number;
  readonly dash: readonly number[];
  /** The layer it stands in. */
  readonly layer: string | undefined;
}

export interface PdfText {
  readonly text: string;
  /** The beginning of its baseline, mm from the page's left top corner, y down. */
  readonly x: number;
  readonly y: number;
  readonly widthMm: number;
  /** Em size, mm, and degrees, + clockwise on the page. */
  readonly size: number;
  readonly turn: number;
}

export interface PdfFile {
  readonly pages: readonly {
    /** What is seen and printed: the crop box within the media box. */
    readonly widthMm: number;
    readonly heightMm: number;
    readonly paths: readonly PdfPath[];
    readonly texts: readonly PdfText[];
  }[];
  readonly printScaling: string | undefined;
  readonly info: Readonly<Record<string, unknown>>;
  readonly layers: readonly string[];
  readonly outline: readonly string[];
}

const mmPerPoint = 25.4 / 72;

type Matrix = readonly [number, number, number, number, number, number];

/** First m, then n. */
const chain = (m: Matrix, n: Matrix): Matrix => [
  n[0] * m[0] + n[2] * m[1],
  n[1] * m[0] + n[3] * m[1],
  n[0] * m[2] + n[2] * m[3],
  n[1] * m[2] + n[3] * m[3],
  n[0] * m[4] + n[2] * m[5] + n[4],
  n[1] * m[4] + n[3] * m[5] + n[5],
];

/** pdf.js keeps a path as numbers: 0 move, 1 line, 2 cubic, 4 close, each before its coordinates. */
const readPath = (data: ArrayLike<number>, at: (x: number, y: number) => Point) => {
  const parts: { segments: Segment[]; closed: boolean }[] = [];
  let from: Point = { x: 0, y: 0 };
  let n = 0;
  const next = () => at(data[n++] ?? Number.NaN, data[n++] ?? Number.NaN);
  while (n < data.length) {
    const command = data[n++];
    const part = parts.at(-1);
    if (command === 0) {
      from = next();
      parts.push({ segments: [], closed: false });
    } else if (command === 1) {
      const to = next();
      part?.segments.push({ kind: 'line', from, to });
      from = to;
    } else if (command === 2) {
      const [c1, c2, to] = [next(), next(), next()];
      part?.segments.push({ kind: 'cubic', from, c1, c2, to });
      from = to;
    } else if (command === 4 && part) part.closed = true;
    else throw new Error(`unknown path command ${command}`);
  }
  return parts;
};

const readPaths = async (page: PDFPageProxy, layerName: (id: string) => string): Promise<PdfPath[]> => {
  const { fnArray, argsArray } = await page.getOperatorList();
  const [x0 = 0, , , y1 = 0] = page.view;
  // From points with y up to mm with y down.
  let matrix: Matrix = [mmPerPoint, 0, 0, -mmPerPoint, -x0 * mmPerPoint, y1 * mmPerPoint];
  let width = 1;
  let dash: readonly number[] = [];
  const saved: { matrix: Matrix; width: number; dash: readonly number[] }[] = [];
  const layers: (string | undefined)[] = [];
  const paths: PdfPath[] = [];
  fnArray.forEach((operator: number, n: number) => {
    const args = argsArray[n] ?? [];
    if (operator === OPS.save) saved.push({ matrix, width, dash });
    else if (operator === OPS.restore) ({ matrix, width, dash } = saved.pop() ?? { matrix, width, dash });
    else if (operator === OPS.transform) matrix = chain(args as unknown as Matrix, matrix);
    else if (operator === OPS.setLineWidth) width = args[0];
    else if (operator === OPS.setDash) dash = args[0];
    else if (operator === OPS.beginMarkedContentProps) layers.push(layerName(args[1]?.id));
    else if (operator === OPS.beginMarkedContent) layers.push(undefined);
    else if (operator === OPS.endMarkedContent) layers.pop();
    else if (operator === OPS.constructPath && args[1][0]) {
      const [a, b, c, d, e, f] = matrix;
      const scale = Math.sqrt(Math.abs(a * d - b * c));
      const at = (x: number, y: number) => ({ x: a * x + c * y + e, y: b * x + d * y + f });
      const filled = args[0] !== OPS.stroke && args[0] !== OPS.closeStroke;
      for (const part of readPath(args[1][0], at)) {
        paths.push({
          ...part,
          filled,
          width: width * scale,
          dash: [...dash].map((length) => length * scale),
          layer: layers.findLast((layer) => layer !== undefined),
        });
      }
    }
  });
  return paths;
};

const readTexts = async (page: PDFPageProxy): Promise<PdfText[]> => {
  const [x0 = 0, , , y1 = 0] = page.view;
  const { items } = await page.getTextContent();
  return items.flatMap((item): PdfText[] => {
    if (!('str' in item) || item.str === '') return [];
    const [a, b, , , e, f] = item.transform as unknown as Matrix;
    return [
      {
        text: item.str,
        x: (e - x0) * mmPerPoint,
        y: (y1 - f) * mmPerPoint,
        widthMm: item.width * mmPerPoint,
        size: Math.hypot(a, b) * mmPerPoint,
        turn: (-Math.atan2(b, a) * 180) / Math.PI + 0,
      },
    ];
  });
};

const open = async <T>(
  bytes: Uint8Array,
  read: (file: Awaited<ReturnType<typeof getDocument>['promise']>) => Promise<T>,
): Promise<T> => {
  // pdf.js takes the bytes for itself, so it is given a copy.
  const task = getDocument({ data: bytes.slice(), verbosity: VerbosityLevel.ERRORS });
  try {
    return await read(await task.promise);
  } finally {
    await task.destroy();
  }
};

/** Reads a PDF file with pdf.js, which knows nothing of the writer. */
export const readPdf = (bytes: Uint8Array): Promise<PdfFile> =>
  open(bytes, async (file) => {
    const groups = [...(await file.getOptionalContentConfig())] as [string, { name: string | null }][];
    const names = new Map(groups.map(([id, group]) => [id, group.name ?? '']));
    const preferences = (await file.getViewerPreferences()) as { PrintScaling?: string } | null;
    const { info } = await file.getMetadata();
    const pages: PdfFile['pages'][number][] = [];
    for (let n = 1; n <= file.numPages; n++) {
      const page = await file.getPage(n);
      const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = page.view;
      pages.push({
        widthMm: (x1 - x0) * mmPerPoint,
        heightMm: (y1 - y0) * mmPerPoint,
        paths: await readPaths(page, (id) => names.get(id) ?? id),
        texts: await readTexts(page),
      });
    }
    return {
      pages,
      printScaling: preferences?.PrintScaling,
      info: info as Record<string, unknown>,
      layers: [...names.values()],
      outline: ((await file.getOutline()) ?? []).map(({ title }) => title),
    };
  });

/** Draws a page (the first is 0) in pixels on white with pdf.js, at so many dots an inch. */
export const renderPdf = (bytes: Uint8Array, page: number, dpi: number): Promise<Pixels> =>
  open(bytes, async (file) => {
    const proxy = await file.getPage(page + 1);
    const viewport = proxy.getViewport({ scale: dpi / 72 });
    const canvas = createCanvas(Math.round(viewport.width), Math.round(viewport.height));
    // The canvas of Node stands in for the browser's, whose type pdf.js asks for.
    await proxy.render({ canvas: canvas as unknown as HTMLCanvasElement, viewport }).promise;
    const { data } = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height);
    return { width: canvas.width, height: canvas.height, data };
  });
