import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it, vi } from 'vitest';
import { setAt } from '../../geometry/fields.ts';
import { writeJob } from '../../geometry/job-file.ts';
import { starters } from '../../src/jobs/index.ts';
import { jobOf } from '../solved.ts';
import { openPage } from './harness.ts';
import { addReading, desk, field, finding, phone, showFiles, tablet, turnDrawer } from './page.ts';

// Four times all of axe's rules over a page of many hundred nodes, on a busy machine.
vi.setConfig({ testTimeout: 120_000 });

const axe = createRequire(import.meta.url).resolve('axe-core/axe.min.js');
/** The folder in which pictures of every state are put, to be looked at, where one is named. */
const pictures = process.env.SAGITTA_PICTURES;

interface Found {
  readonly violations: readonly {
    readonly id: string;
    readonly nodes: readonly { readonly html: string; readonly failureSummary?: string }[];
  }[];
}
/** The rules that read colours: all that another colour scheme can break. */
const ofColours = ['color-contrast', 'link-in-text-block'];

/** What axe finds wrong by all of its rules, or by these. */
const faults = async (page: Page, rules?: readonly string[]) => {
  await page.evaluate(await readFile(axe, 'utf8'));
  const { violations } = await page.evaluate(
    (options) =>
      (window as unknown as { axe: { run: (options: object) => Promise<unknown> } }).axe.run(options) as Promise<Found>,
    rules ? { runOnly: [...rules] } : {},
  );
  return violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ html, failureSummary }) => `${html} ${failureSummary}`).join(' | ')}`,
  );
};

/** Opens whatever is folded away. */
const unfold = async (page: Page, where = '.stage, .below, .numbers') => {
  const closed = page.locator(where).locator('details:not([open]) > summary:visible');
  for (let left = await closed.count(); left > 0; left = await closed.count()) await closed.first().click();
};

/** The page with a gauge laid on the drawing, findings, a range, a reading, alternatives and every fold open. */
const openAll = async (page: Page) => {
  const tools = page.getByRole('button', { name: 'Tools', exact: true });
  if (await tools.isVisible()) await tools.click();
  await page.getByRole('button', { name: 'Gauge', exact: true }).click();
  await addReading(page, '2.7', '1.9');
  await page.getByRole('button', { name: 'Keep one of each' }).click();
  await page.getByRole('figure', { name: /^Gap between crown and bridge top/ }).waitFor();
  await turnDrawer(page, true);
  await unfold(page, '.numbers');
  await turnDrawer(page, false);
  await unfold(page);
  await page.getByRole('button', { name: 'Change the range: Exposure' }).click();
  await field(page, 'Exposure, right to').fill('4.4');
  await finding(page, 'exposure')
    .getByRole('button', { name: /^Do it/ })
    .first()
    .waitFor();
};

/** A printer by its name, its bars to be typed. */
const openPrinter = async (page: Page) => {
  await page.getByRole('tab', { name: 'Printer' }).click();
  await field(page, 'Name of a printer to add').fill('Back room');
  await page.getByRole('dialog').getByRole('button', { name: 'Add', exact: true }).click();
  await field(page, '100 mm across').fill('nought');
};

/** What a finger would miss: targets under 44 px, each with its size. */
const small = (page: Page) =>
  page
    .locator(
      ['button', 'summary', 'select', 'input[type="text"]', '.choices label'].map((one) => `${one}:visible`).join(),
    )
    .evaluateAll((all) =>
      all
        .map((e) => ({ box: e.getBoundingClientRect(), html: e.outerHTML.slice(0, 120) }))
        .filter(({ box }) => Math.min(box.width, box.height) < 43.5)
        .map(({ box, html }) => `${box.width.toFixed(1)} × ${box.height.toFixed(1)}: ${html}`),
    );

describe.each([
  ['a desk', desk],
  ['a phone', phone],
] as const)('on %s', (_, window) => {
  describe('axe finds no fault, in light and in dark,', () => {
    const open = async () => {
      const page = await openPage({ ...window, still: true });
      await page.evaluate(() => document.fonts.ready);
      const look = async (name: string) => {
        for (const colorScheme of ['light', 'dark'] as const) {
          await page.emulateMedia({ colorScheme });
          if (pictures !== undefined)
            await page.screenshot({ path: join(pictures, `${window.width}-${colorScheme}-${name}.png`) });
          expect(await faults(page, colorScheme === 'dark' ? ofColours : undefined)).toEqual([]);
        }
        await page.emulateMedia({ colorScheme: 'light' });
      };
      return { page, look };
    };

    it('at first sight, with what is wrong, and where templates are saved', async () => {
      const { page, look } = await open();
      await look('first');
      await turnDrawer(page, true);
      await field(page, 'Thickness, centre').fill('nine');
      await field(page, 'Slot depth').fill('9.4');
      if (window !== desk) await look('drawer');
      await turnDrawer(page, false);
      await page.getByText('How far each gauge misses').click();
      await page.getByText('Units', { exact: true }).click();
      await look('wrong');
      await page.keyboard.press('Escape');
      await page.getByRole('button', { name: 'Save templates' }).click();
      await look('blocked');
      await page.getByRole('button', { name: 'Close', exact: true }).click();
      await turnDrawer(page, true);
      await field(page, 'Slot depth').fill('5');
      await turnDrawer(page, false);
      await page.getByRole('button', { name: 'Save templates' }).click();
      await page.locator('.small-piece path').first().waitFor();
      await look('templates');
      await openPrinter(page);
      await look('printer');
      await page.getByRole('tab', { name: 'Cutter' }).click();
      await look('cutter');
      await page.getByRole('tab', { name: 'Settings' }).click();
      await page.getByText('Radius gauges', { exact: true }).click();
      await field(page, 'Margin').fill('90');
      await look('settings');
    });

    it('with the jobs of the device, the earlier states of one and its link', async () => {
      const { page, look } = await open();
      await field(page, 'Job').fill('Mine');
      await page.waitForTimeout(1000);
      await showFiles(page);
      await page.getByRole('button', { name: 'Jobs…' }).click();
      await page.getByRole('button', { name: 'Earlier states of Mine' }).click();
      await page.getByRole('button', { name: 'As it is' }).waitFor();
      await look('shelf');
      await page.getByRole('button', { name: 'Share Mine' }).click();
      await page.getByRole('img', { name: 'QR code of the link' }).waitFor();
      await look('share');
      if ('touch' in window) expect(await small(page)).toEqual([]);
    });

    it('where a new job begins', async () => {
      const { page, look } = await open();
      await showFiles(page);
      await page.getByRole('button', { name: 'New job…' }).click();
      await page.getByLabel('I measured frets').check();
      await look('new');
    });

    it('where a job cannot be drawn, and while a file is held over the page', async () => {
      const { page, look } = await open();
      await showFiles(page);
      const [chooser] = await Promise.all([
        page.waitForEvent('filechooser'),
        page.getByRole('button', { name: 'Open job…' }).click(),
      ]);
      const job = setAt(jobOf(starters[0]?.text ?? ''), 'slot.depth', 9.4);
      await chooser.setFiles({ name: 'deep.json', mimeType: 'application/json', buffer: Buffer.from(writeJob(job)) });
      await page.getByText('Nothing is drawn yet').waitFor();
      await look('undrawn');
      await page.evaluate(() => {
        const dataTransfer = new DataTransfer();
        dataTransfer.items.add(new File(['{}'], 'job.json', { type: 'application/json' }));
        document.body.dispatchEvent(new DragEvent('dragover', { dataTransfer, bubbles: true, cancelable: true }));
      });
      await page.locator('p.drop').waitFor();
      await look('drop');
    });

    it('where a part of the page, or all of it, has broken', async () => {
      const { page, look } = await open();
      // What React says of it on the console is not looked at here.
      await page.evaluate(() => {
        console.error = () => {};
        HTMLDialogElement.prototype.showModal = () => {
          throw new Error('the window has no frame');
        };
      });
      await page.getByRole('button', { name: /^Exposure, E2: .* mm\. How\?$/ }).click();
      await page.getByText('the window has no frame').waitFor();
      await look('broken');
      await page.evaluate(() => {
        const { title } = document;
        Object.defineProperty(document, 'title', {
          get: () => title,
          set: () => {
            throw new Error('the page has no name');
          },
        });
      });
      await field(page, 'Job').fill('Mine');
      await page.getByText('the page has no name').waitFor();
      await look('wreck');
      const boxes = await page
        .locator('.wreck button')
        .evaluateAll((all) =>
          all.map((one) => one.getBoundingClientRect()).map(({ width, height }) => ({ width, height })),
        );
      expect(boxes).toHaveLength(3);
      for (const { width, height } of boxes) expect(width).toBeGreaterThan(height);
      if ('touch' in window) expect(await small(page)).toEqual([]);
    });

    it('with every fold, a reading and a range open, and where a figure is asked how it came about', async () => {
      const { page, look } = await open();
      await openAll(page);
      await look('open');
      await page.getByRole('button', { name: /^Exposure, E2: / }).click();
      await look('how');
    });
  });
});

describe.each([
  ['a desk', desk],
  ['a phone', phone],
] as const)('on %s', (_, window) => {
  it('axe finds no fault with the ways past things, the steps, the ruler, the screen’s measuring, and what is typed on the drawing', async () => {
    const page = await openPage({ ...window, still: true });
    const clean = async () => expect(await faults(page)).toEqual([]);
    await page.keyboard.press('Tab');
    await clean();
    await turnDrawer(page, true);
    await field(page, 'Slot depth').fill('5.1');
    await turnDrawer(page, false);
    await page.getByRole('button', { name: 'Steps…' }).click();
    await clean();
    await page.keyboard.press('Escape');
    const tools = page.getByRole('button', { name: 'Tools', exact: true });
    if (await tools.isVisible()) await tools.click();
    await page.getByRole('button', { name: 'Ruler', exact: true }).click();
    await clean();
    await page.getByRole('button', { name: 'Ruler', exact: true }).click();
    await page.getByRole('button', { name: 'True size', exact: true }).click();
    await clean();
    await page.keyboard.press('Escape');
    const above = page.getByRole('button', { name: 'From above', exact: true });
    if ((await above.count()) > 0) await above.click();
    await page.getByRole('slider', { name: 'Depth, on the drawing', exact: true }).press('Enter');
    await page.locator('.typed input').waitFor();
    await clean();
  });

  it('in colours of the system’s own every mark and sketch takes them, and axe finds no fault', async () => {
    const page = await openPage({ ...window, forced: true, dark: true });
    await page.locator('.findings summary').first().waitFor();
    await unfold(page, '.findings');
    await turnDrawer(page, true);
    await field(page, 'Relief').focus();
    // The page's own colours are a light one's, the system's are white on black.
    await page.emulateMedia({ colorScheme: 'light', forcedColors: 'active' });
    const colours = await page.evaluate(() => {
      const probe = document.createElement('i');
      document.body.append(probe);
      const system = (name: string) => {
        probe.style.color = name;
        return getComputedStyle(probe).color;
      };
      const of = (selector: string, property: string) =>
        [...document.querySelectorAll(selector)].map((e) => getComputedStyle(e).getPropertyValue(property));
      const [ink, paper] = [system('CanvasText'), system('Canvas')];
      probe.remove();
      return { ink, paper, marks: of('.mark', 'color'), sketches: of('.help .sketch', 'background-color') };
    });
    expect(colours.marks.length).toBeGreaterThan(20);
    expect(new Set(colours.marks)).toEqual(new Set([colours.ink]));
    expect(colours.sketches).toEqual([colours.paper]);
    expect(await faults(page)).toEqual([]);
  });
});

it.each([
  ['a tablet', tablet],
  ['a phone', phone],
] as const)(
  'has targets of 44 px for a finger on %s, with findings, a range and a reading open too',
  async (_, window) => {
    const page = await openPage(window);
    expect(await small(page)).toEqual([]);
    await openAll(page);
    expect(await small(page)).toEqual([]);
    await turnDrawer(page, true);
    expect(await small(page)).toEqual([]);
    await turnDrawer(page, false);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(window.width);
    await page.getByRole('button', { name: /^Exposure, E2: / }).click();
    expect(await small(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Save templates' }).click();
    await page.locator('.small-piece path').first().waitFor();
    expect(await small(page)).toEqual([]);
    await page.getByRole('tab', { name: 'Pages' }).click();
    await page.getByRole('button', { name: 'True size' }).last().click();
    expect(await small(page)).toEqual([]);
    await openPrinter(page);
    expect(await small(page)).toEqual([]);
    await page.getByRole('tab', { name: 'Settings' }).click();
    await page.getByText('Radius gauges', { exact: true }).click();
    expect(await small(page)).toEqual([]);
    expect(await page.evaluate(() => document.querySelector('.panel-of-tab')?.scrollWidth)).toBeLessThanOrEqual(
      window.width,
    );
  },
);
