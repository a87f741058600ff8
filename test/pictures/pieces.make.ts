// Makes a small picture of each template, for `templates/README.md`: the demo job's, or where it has none that of the first job that does.
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Resvg } from '@resvg/resvg-js';
import { expect, it } from 'vitest';
import { boundsOfPrimitives, layOut, sayWith } from '../../geometry/layout.ts';
import { starters } from '../../src/jobs/index.ts';
import { drawPiece, pieces } from '../../templates/pieces/index.ts';
import type { Template } from '../../templates/pieces/piece.ts';
import { newShop } from '../../templates/shop/index.ts';
import { toSvg } from '../../templates/svg.ts';
import { svgWindow } from '../../templates/svg-window.ts';
import { fontFiles } from '../fonts.ts';
import { built, jobOf } from '../solved.ts';
import { oldTop } from '../templates/full-job.ts';

const folder = fileURLToPath(new URL('pieces', import.meta.url));
mkdirSync(folder, { recursive: true });

const jobs = [...starters.map(({ text }) => jobOf(text)), oldTop()].map(built);
const window = svgWindow();
/** With a section across the wings besides the usual ones. */
const shop = {
  ...newShop(),
  sections: { ...newShop().sections, stations: [{ id: 'own', runs: 'across', at: 6 }] },
} as const;
const border = 4;
/** A drawing higher than this is not shown whole, but so much of it. All in mm. */
const highest = 200;
const shown = 100;
/** How many pixels a mm takes, and how many a picture has at most. */
const perMm = 5;
const widest = 1000;
const mostBytes = 60_000;

/** The area that a drawing's lines take, mm². */
const roomOf = ({ marks }: Template): number => {
  const { minX, minY, maxX, maxY } = boundsOfPrimitives(layOut(marks, { em: 3.5, say: () => '' }));
  return (maxX - minX) * (maxY - minY);
};

it.each(pieces)('$id', (piece) => {
  const made = jobs.find(({ job }) => piece.whyNot?.(job) === undefined);
  if (made === undefined) throw new Error(`No job here has a ${piece.title}.`);
  const { job, design } = made;
  // Of several drawings the one that shows most, of a page of words the first.
  const drawings = drawPiece(piece, job, design, shop);
  const [drawing] = piece.ownPage ? drawings : drawings.toSorted((a, b) => roomOf(b) - roomOf(a));
  if (drawing === undefined) throw new Error(`${piece.title} has no drawing.`);
  const primitives = layOut(drawing.marks, { em: 3.5, say: sayWith(job.show) });
  const { minX, minY, maxX, maxY } = boundsOfPrimitives(primitives);
  const width = maxX - minX + 2 * border;
  // Of a page of words its beginning, of long strips their ends at the bridge, so that they can be read.
  const whole = maxY - minY + 2 * border;
  const height = whole > highest ? shown : whole;
  const top = minY - border + (piece.ownPage ? 0 : whole - height);
  const svg = toSvg(primitives, {
    left: minX - border,
    top,
    width,
    height,
    title: drawing.title,
    window,
  });
  const pngOf = (across: number) =>
    new Resvg(svg, {
      background: '#fff',
      fitTo: { mode: 'width', value: Math.round(across) },
      font: { loadSystemFonts: false, fontFiles, defaultFontFamily: 'DejaVu Sans' },
    })
      .render()
      .asPng();
  let across = Math.min(width * perMm, widest);
  while (pngOf(across).length > mostBytes) across *= 0.95;
  const png = pngOf(across);
  expect(across / width, 'px a mm').toBeGreaterThan(1.5);
  writeFileSync(`${folder}/${piece.id}.png`, png);
});
