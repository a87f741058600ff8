import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { readPdf } from '../read-pdf.ts';
import { openPage } from './harness.ts';
import { bytesOf, text } from './page.ts';
import { hands, walk } from './path.ts';

/** What stands in a field, in a drawer that is closed too. */
const value = (page: Page, name: string) =>
  page.getByRole('textbox', { name, exact: true, includeHidden: true }).inputValue();

/** Tests the whole way by each of the hands that work in such windows: with the numbers beside the drawing, or in the drawer. */
export const testWholeWay = (where: 'beside' | 'in drawer') =>
  it.each(Object.entries(hands).filter(([, { window }]) => window.width < 1080 === (where === 'in drawer')))(
    'from two measurements to the templates, by nothing but: %s',
    async (_, by) => {
      const page = await openPage(by.window);
      const seen: Record<string, string | null> = {};
      const download = await walk(page, by, async (moment) => {
        if (moment === 'measured') {
          seen.line = await text(page, by.window.width > 800 ? 'above.fromNut' : 'fromNut');
          seen.height = await value(page, 'Straightedge to top');
        }
        // On the grip itself: what lies out of sight follows once it is let go.
        if (moment === 'shaping')
          seen.depth = await page
            .getByRole('slider', { name: 'Depth, on the drawing', exact: true })
            .getAttribute('aria-valuenow');
        if (moment === 'compared') seen.before = await value(page, 'Bridge top radius');
        if (moment === 'chosen') seen.after = await value(page, 'Bridge top radius');
      });
      // The demo's saddle line lies 647.4 mm from the nut at a scale of 645 mm; what is added to the scale is added to it.
      expect(seen.line).toContain('647.6 mm');
      expect(seen.height).toMatch(/^10\.10?$/);
      const depth = Number(seen.depth);
      expect(depth).toBeGreaterThan(38.5);
      expect(Number(await value(page, 'Depth'))).toBe(depth);
      expect([seen.before, seen.after]).toEqual(['18', '16']);

      const { pages } = await readPdf(await bytesOf(download));
      const said = pages.flatMap(({ texts }) => texts.map((one) => one.text)).join('\n');
      expect(said).toContain('16 in');
      // The footprint is cut as it was shaped: 156 mm across and as deep as it was drawn out, at true size.
      const isFootprint = pages.some(({ paths }) =>
        paths.some(({ segments }) => {
          const points = segments.flatMap((s) => (s.kind === 'arc' ? [] : [s.from, s.to]));
          const side = (along: 'x' | 'y') =>
            Math.max(...points.map((p) => p[along])) - Math.min(...points.map((p) => p[along]));
          const sides = [side('x'), side('y')].sort((a, b) => a - b);
          return Math.abs((sides[0] ?? 0) - depth) < 0.01 && Math.abs((sides[1] ?? 0) - 156) < 0.01;
        }),
      );
      expect(isFootprint).toBe(true);
    },
    // The keys go by hundreds of presses, each of which the page answers.
    240_000,
  );
