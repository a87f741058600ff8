import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { openPage } from './harness.ts';
import { field, showFiles, turnDrawer } from './page.ts';

const opener = (page: Page) => page.getByRole('button', { name: 'Numbers', exact: true });
const focused = (page: Page) => page.evaluate(() => document.activeElement?.id);
const box = async (page: Page, selector: string) => {
  const found = await page.locator(selector).first().boundingBox();
  if (found === null) throw new Error(`${selector} is not seen`);
  return found;
};

describe.each([
  ['a small phone', { width: 360, height: 740 }],
  ['a phone', { width: 390, height: 844 }],
  ['a phone that lies', { width: 844, height: 390 }],
  ['a tablet', { width: 820, height: 1180 }],
] as const)('on %s', (_, window) => {
  it('the sheet comes first, and the numbers come in a drawer and go again by keys alone', async () => {
    const page = await openPage({ ...window, touch: true });
    const sideways = () => page.evaluate(() => document.documentElement.scrollWidth);
    /** What is too small for a finger: less than 44 px (WCAG 2.2, 2.5.5 target size). */
    const small = () =>
      page
        .locator(
          ['button', 'summary', 'select', 'input[type="text"]', '.choices label', '.check']
            .map((one) => `${one}:visible`)
            .join(),
        )
        .evaluateAll((all) =>
          all
            // What follows on a change may take one away in the meantime.
            .filter((e) => e.isConnected)
            .map((e) => ({ box: e.getBoundingClientRect(), html: e.outerHTML.slice(0, 120) }))
            .filter((one) => Math.min(one.box.width, one.box.height) < 43.5)
            .map((one) => `${one.box.width} × ${one.box.height}: ${one.html}`),
        );
    expect((await box(page, '.sheet')).y).toBeLessThan(window.height / 2);
    const { y, height } = await box(page, '#drawer-opener');
    expect(y + height).toBeLessThan(window.height);
    expect(await page.locator('.drawer').evaluate((e) => (e as HTMLElement).inert)).toBe(true);
    expect(await sideways()).toBe(window.width);

    await opener(page).focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => opener(page).getAttribute('aria-expanded')).toBe('true');
    expect(await page.evaluate(() => document.activeElement?.closest('.drawer') !== null)).toBe(true);
    await field(page, 'Slot depth').fill('5.1');
    // The drawing stays beside the drawer or over it, and nothing lies under them both that keys could reach.
    const [paper, drawer] = [await box(page, '.paper'), await box(page, '.drawer')];
    expect(paper.y + paper.height <= drawer.y + 1 || paper.x >= drawer.x + drawer.width - 1).toBe(true);
    expect(await page.locator('.head, .below').evaluateAll((all) => all.map((e) => (e as HTMLElement).inert))).toEqual([
      true,
      true,
    ]);
    expect(await small()).toEqual([]);
    expect(await sideways()).toBe(window.width);

    // Escape puts back what is typed, and then closes.
    await page.keyboard.press('Escape');
    expect(await field(page, 'Slot depth').inputValue()).toBe('5.4');
    await page.keyboard.press('Escape');
    await expect.poll(() => focused(page)).toBe('drawer-opener');
    expect(await page.locator('.drawer').evaluate((e) => (e as HTMLElement).inert)).toBe(true);

    await showFiles(page);
    await page.getByRole('button', { name: 'New job…' }).click();
    await page.getByLabel('I measured frets').check();
    expect(await small()).toEqual([]);
    expect(await sideways()).toBe(window.width);
  });
});

it('shows on a phone what a gauge is laid on, and all of the light under it', async () => {
  const page = await openPage({ width: 390, height: 844, touch: true });
  await page.getByRole('button', { name: 'Tools', exact: true }).click();
  await page.getByRole('button', { name: 'Gauge', exact: true }).click();
  await page.getByLabel('Lay it on the').selectOption('deck');
  await page.getByLabel('Radius of the gauge').fill('12 in');
  const gauge = page.locator('[data-mark="gauge.edge"]').first();
  const [laid, frame] = [await gauge.boundingBox(), await box(page, '.paper')];
  expect(laid?.y).toBeGreaterThan(frame.y);
  expect((laid?.y ?? 0) + (laid?.height ?? 0)).toBeLessThan(frame.y + frame.height);
  const [wide, shown] = await page
    .getByRole('region', { name: 'Light under the gauge' })
    .evaluate((e) => [e.scrollWidth, e.clientWidth]);
  expect(wide).toBe(shown);
});

it('leads from what keeps a job from being built to its field in the drawer, and out of it to one that lies elsewhere', async () => {
  const page = await openPage({ width: 390, height: 844, touch: true });
  await turnDrawer(page, true);
  await field(page, 'Front edge to saddle line').fill('38');
  await turnDrawer(page, false);
  await page.locator('.problems summary').click();
  await page.getByRole('button', { name: 'Go to Front edge to saddle line' }).click();
  await expect.poll(() => focused(page)).toBe('field-bridge.frontToSaddle');
  expect(await opener(page).getAttribute('aria-expanded')).toBe('true');
});

it('keeps the field in sight beside the drawing while a keyboard takes half of a phone that lies', async () => {
  const page = await openPage({ width: 844, height: 390, touch: true });
  await turnDrawer(page, true);
  await field(page, 'Action, bass').fill('99');
  await page.setViewportSize({ width: 844, height: 210 });
  await expect
    .poll(async () => {
      const [row, head] = [await box(page, '[data-path="action.bass"]'), await box(page, '.drawer-head')];
      return row.y >= head.y + head.height - 1 && row.y + row.height <= 210;
    })
    .toBe(true);
});

it('keeps what is typed on the drawing while a keyboard takes half of a tablet', async () => {
  const page = await openPage({ width: 820, height: 1180, touch: true });
  const spot = await page.getByRole('button', { name: /^Deck width, 86/ }).boundingBox();
  await page.touchscreen.tap((spot?.x ?? 0) + (spot?.width ?? 0) / 2, (spot?.y ?? 0) + (spot?.height ?? 0) / 2);
  await page.setViewportSize({ width: 820, height: 530 });
  await page.waitForFunction(() => window.innerHeight === 530);
  await page.locator('.typed input:focus').waitFor({ timeout: 10_000 });
  const at = await page.locator('.typed input').boundingBox();
  expect((at?.y ?? 530) + (at?.height ?? 0)).toBeLessThan(530);
  await page.keyboard.type('90');
  await page.keyboard.press('Enter');
  await page.setViewportSize({ width: 820, height: 1180 });
  await page.getByRole('button', { name: /^Deck width, 90/ }).waitFor({ timeout: 10_000 });
});
