import { Resvg } from '@resvg/resvg-js';
import { JSDOM } from 'jsdom';
import type { Path } from '../geometry/shape/types.ts';
import { fontFiles } from './fonts.ts';
import { readPathData } from './read-path-data.ts';

export interface SvgElement {
  readonly tag: string;
  readonly id: string;
  /** `data-purpose` of the group it stands in. */
  readonly purpose: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** A path's sub-paths or a circle's one, in viewBox units; none for a text. */
  readonly paths: readonly Path[];
  readonly text: string;
}

export interface SvgFile {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly viewBox: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  readonly title: string;
  /** Every path, circle and text, in the file's order. */
  readonly elements: readonly SvgElement[];
}

export interface Pixels {
  readonly width: number;
  readonly height: number;
  /** Red, green, blue, alpha of each pixel, row by row. */
  readonly data: Uint8Array | Uint8ClampedArray;
}

const dom = new JSDOM();

const millimetres = (attribute: string | null): number => {
  const match = attribute?.match(/^([\d.]+)mm$/);
  if (!match) throw new Error(`${attribute} is not a length in mm`);
  return Number(match[1]);
};

const circlePath = (element: Element): Path => {
  const number = (name: string) => Number(element.getAttribute(name));
  const centre = { x: number('cx'), y: number('cy') };
  return { segments: [{ kind: 'arc', centre, radius: number('r'), start: 0, sweep: 2 * Math.PI }], closed: true };
};

const pathsOf = (element: Element): Path[] => {
  if (element.tagName === 'path') return readPathData(element.getAttribute('d') ?? '');
  return element.tagName === 'circle' ? [circlePath(element)] : [];
};

/** Reads an SVG file with jsdom's XML parser, which knows nothing of the writer. Throws unless it is well-formed and in mm. */
export const readSvg = (text: string): SvgFile => {
  const file = new dom.window.DOMParser().parseFromString(text, 'image/svg+xml');
  const root = file.documentElement;
  if (file.querySelector('parsererror') || root.tagName !== 'svg')
    throw new Error(`not well-formed: ${root.textContent}`);
  const [x = 0, y = 0, width = 0, height = 0] = (root.getAttribute('viewBox') ?? '').split(/[ ,]+/).map(Number);
  const elements = [...file.querySelectorAll('path, circle, text')].map(
    (element): SvgElement => ({
      tag: element.tagName,
      id: element.id,
      purpose: element.closest('[data-purpose]')?.getAttribute('data-purpose') ?? '',
      attributes: Object.fromEntries([...element.attributes].map((a) => [a.name, a.value])),
      paths: pathsOf(element),
      text: element.textContent ?? '',
    }),
  );
  return {
    widthMm: millimetres(root.getAttribute('width')),
    heightMm: millimetres(root.getAttribute('height')),
    viewBox: { x, y, width, height },
    title: root.querySelector('title')?.textContent ?? '',
    elements,
  };
};

/** Draws an SVG file in pixels on white with resvg, an engine of its own, at so many dots an inch. */
export const renderSvg = (text: string, dpi: number): Pixels => {
  const image = new Resvg(text, {
    dpi,
    background: '#ffffff',
    font: { loadSystemFonts: false, fontFiles },
  }).render();
  return { width: image.width, height: image.height, data: image.pixels };
};
