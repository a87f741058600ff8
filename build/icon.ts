import { Resvg } from '@resvg/resvg-js';
import { sagitta } from '../geometry/shape/sagitta.ts';

/** The drawing's own units: a square of 32. */
const side = 32;
const radius = 15;
const chord = 26;
const base = 20;

/** The app's picture: an arc on its chord, and the height between them. `margin` is paper around it, as a part of the square. */
export const iconSvg = (margin = 0): string => {
  const left = (side - chord) / 2;
  const top = base - sagitta(radius, chord);
  const at = -margin * side;
  const size = side * (1 + 2 * margin);
  const lines = `M${left} ${base}A${radius} ${radius} 0 0 1 ${left + chord} ${base}ZM${side / 2} ${top.toFixed(3)}V${base}`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${at} ${at} ${size} ${size}">`,
    `<rect x="${at}" y="${at}" width="${size}" height="${size}" fill="#fffefa"/>`,
    `<path d="${lines}" fill="none" stroke="#22303c" stroke-width="2" stroke-linejoin="round"/>`,
    '</svg>',
  ].join('');
};

/** The same as a PNG file's bytes, so many pixels wide and high. */
export const iconPng = (width: number, margin: number): Uint8Array =>
  new Resvg(iconSvg(margin), { fitTo: { mode: 'width', value: width } }).render().asPng();
