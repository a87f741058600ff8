// Every stroke of every template of the demo job, read back from PDF (pdf.js) and SVG (a DOM parser) against its exact path; `npm run prove` holds every starter on every paper to it.
import { expect, it } from 'vitest';
import { layOut, sayWith } from '../../geometry/layout.ts';
import { starters } from '../../src/jobs/index.ts';
import { em } from '../../templates/block.ts';
import { pieceSheet } from '../../templates/one-page.ts';
import { toPdf } from '../../templates/pdf.ts';
import { toSvg } from '../../templates/svg.ts';
import { svgWindow } from '../../templates/svg-window.ts';
import { sheetInfo } from '../../templates/title-block.ts';
import { drawnPieces } from '../drawn.ts';
import { fonts } from '../fonts.ts';
import { holdPdf, holdPlaced, holdSvg } from '../paper/read-back.ts';
import { readPdf } from '../read-pdf.ts';
import { readSvg } from '../read-svg.ts';
import { built, jobOf } from '../solved.ts';

const { job, design } = built(jobOf(starters[0]?.text ?? ''));
const say = sayWith(job.show);
const drawings = drawnPieces(job, design);
const sheets = drawings.map((drawing) => pieceSheet(drawing, sheetInfo(job, '1.0.0'), say));

it('lays each on its sheet as it was drawn', () => {
  drawings.forEach(({ marks }, k) => {
    holdPlaced(layOut(marks, { em, say }), [sheets[k] as (typeof sheets)[number]], '');
  });
});

it('draws every stroke on paper within 0.01 mm and every arc within 0.1 %', { timeout: 60_000 }, async () => {
  const date = new Date('2024-02-29T12:00:00Z');
  const { pages } = await readPdf(await toPdf(sheets, { title: 'Templates', date, fonts }));
  expect(pages).toHaveLength(sheets.length);
  sheets.forEach((sheet, k) => {
    holdPdf(pages[k] as (typeof pages)[number], sheet);
  });
});

it('draws every stroke in SVG within 0.01 mm, every arc as an arc', { timeout: 60_000 }, () => {
  const window = svgWindow();
  for (const sheet of sheets) holdSvg(readSvg(toSvg(sheet.primitives, { ...sheet, window })), sheet);
});
