import { describe, expect, it } from 'vitest';
import { layOut, sayWith } from '../../geometry/layout.ts';
import type { starters } from '../../src/jobs/index.ts';
import { em } from '../../templates/block.ts';
import { onPaper, type PaperId, papers } from '../../templates/paper.ts';
import { toPdf } from '../../templates/pdf.ts';
import { pieces, templatesOf } from '../../templates/pieces/index.ts';
import { laySheets } from '../../templates/sheets.ts';
import { newShop } from '../../templates/shop/index.ts';
import { lineWidth } from '../../templates/style.ts';
import { toSvg } from '../../templates/svg.ts';
import { svgWindow } from '../../templates/svg-window.ts';
import { sheetInfo } from '../../templates/title-block.ts';
import { fonts } from '../fonts.ts';
import { readPdf } from '../read-pdf.ts';
import { readSvg } from '../read-svg.ts';
import { built, jobOf } from '../solved.ts';
import { compareSheets } from './pixels.ts';
import { holdPdf, holdPlaced, holdSvg } from './read-back.ts';

const all = { ...newShop(), copies: Object.fromEntries(pieces.map(({ id }) => [id, 1])) };

/** Every paper that has a name, and one so small that templates are parted over pages. */
const shops = [
  ...(Object.keys(papers) as PaperId[]).map((paper) => ({ paper, shop: onPaper(all, paper) })),
  { paper: '190 mm by 250 mm', shop: { ...all, paper: { ...all.paper, size: 'typed', width: 190, height: 250 } } },
] as const;

/**
 * Every template of some starters, those that are printed only when asked as well, on every paper: read back by readers that did not write them, and compared in
 * pixels.
 */
export const proveSheets = (some: typeof starters): void => {
  describe.each(some)('$id', ({ text }) => {
    const { job, design } = built(jobOf(text));
    const say = sayWith(job.show);

    describe.each(shops)('on $paper', ({ shop }) => {
      const drawings = templatesOf(job, design, shop);
      const sheets = laySheets(drawings, shop, sheetInfo(job, '1.0.0'), say);

      it('lays every template as it was drawn', () => {
        for (const { id, marks } of drawings) holdPlaced(layOut(marks, { em, say }), sheets, `${id}.`);
      });

      it('draws every stroke in PDF within 0.01 mm and every arc within 0.1 %', async () => {
        const date = new Date('2024-02-29T12:00:00Z');
        const { pages } = await readPdf(await toPdf(sheets, { title: 'Templates', date, fonts }));
        expect(pages).toHaveLength(sheets.length);
        for (const [k, sheet] of sheets.entries()) holdPdf(pages[k] as (typeof pages)[number], sheet);
      });

      it('draws every stroke in SVG within 0.01 mm, every arc as an arc', () => {
        const window = svgWindow();
        for (const sheet of sheets) holdSvg(readSvg(toSvg(sheet.primitives, { ...sheet, window })), sheet);
      });

      it('lies in PDF and SVG nowhere a narrow line’s width apart, in pixels', async () => {
        for (const [k, { apart, inked }] of (await compareSheets(sheets)).entries()) {
          expect(inked, sheets[k]?.title).toBeGreaterThan(1000);
          expect(apart, sheets[k]?.title).toBeLessThan(lineWidth.thin);
        }
      });
    });
  });
};
