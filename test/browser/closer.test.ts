import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { openPage } from './harness.ts';
import { desk, phone, text } from './page.ts';

type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

const glass = (page: Page) => page.getByRole('application', { name: /^(Working drawing|From|Along)/ }).first();
/** Px per mm at which the drawing is looked at. */
const scale = async (page: Page) => Number(await glass(page).getAttribute('data-scale'));
/** Where a mark's line stands on the page, px, its width left out. */
const box = (page: Page, mark: string) =>
  page
    .locator(`[data-mark="${mark}"]`)
    .first()
    .evaluate((e) => {
      const { x, y, width, height } = (e as SVGPathElement).getBBox();
      const on = (e as SVGPathElement).getScreenCTM() as DOMMatrix;
      return { x: on.a * x + on.e, y: on.d * y + on.f, width: on.a * width, height: on.d * height };
    });
const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

describe('looking closer', () => {
  it('is done by wheel, hand, keys and buttons, and never traps the page', async () => {
    const page = await openPage(desk);
    const fitted = await scale(page);
    const at = await box(page, 'tail.saddle');
    const pointer = { x: Math.round(at.x), y: Math.round(at.y) };
    await page.mouse.move(pointer.x, pointer.y);
    // Without Ctrl, and as long as the drawing is not worked at, the wheel is the page's.
    await page.mouse.wheel(0, -200);
    expect(await scale(page)).toBe(fitted);
    await page.keyboard.down('Control');
    await page.mouse.wheel(0, -400);
    await page.keyboard.up('Control');
    await expect.poll(() => scale(page)).toBeGreaterThan(1.5 * fitted);
    const near = await box(page, 'tail.saddle');
    const times = (await scale(page)) / fitted;
    expect(near.width / at.width).toBeCloseTo(times, 3);
    // What lies under the pointer stays there.
    expect(near.x).toBeCloseTo(pointer.x + (at.x - pointer.x) * times, 1);
    expect(near.y).toBeCloseTo(pointer.y + (at.y - pointer.y) * times, 1);

    await page.mouse.down();
    await page.mouse.move(pointer.x + 40, pointer.y - 30, { steps: 3 });
    await page.mouse.up();
    expect((await box(page, 'tail.saddle')).x).toBeCloseTo(near.x + 40, 0);
    await page.keyboard.press('ArrowLeft');
    await expect.poll(async () => (await box(page, 'tail.saddle')).x).toBeGreaterThan(near.x + 60);
    await page.keyboard.press('0');
    await expect.poll(() => scale(page)).toBe(fitted);
    await page.keyboard.press('+');
    await expect.poll(() => scale(page)).toBeGreaterThan(fitted);
    await button(page, 'Fit').click();
    await button(page, 'Farther').click();
    await expect.poll(() => scale(page)).toBeLessThan(fitted);
  });

  it('is done by two fingers, while one scrolls the page', async () => {
    const page = await openPage(phone);
    const fitted = await scale(page);
    const paper = await glass(page).boundingBox();
    const [x, y] = [195, (paper?.y ?? 0) + 100];
    const fingers = await page.context().newCDPSession(page);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', ...points: { x: number; y: number }[]) =>
      fingers.send('Input.dispatchTouchEvent', { type, touchPoints: points.map((p, id) => ({ ...p, id })) });
    await touch('touchStart', { x: x - 30, y }, { x: x + 30, y });
    for (const apart of [45, 60, 75, 90]) await touch('touchMove', { x: x - apart, y }, { x: x + apart, y });
    await touch('touchEnd');
    await expect.poll(async () => (await scale(page)) / fitted).toBeGreaterThan(2);
    expect(await page.evaluate(() => [window.visualViewport?.scale, window.scrollY])).toEqual([1, 0]);
    await touch('touchStart', { x, y });
    for (const up of [20, 60, 100, 140]) await touch('touchMove', { x, y: y - up });
    await touch('touchEnd');
    await expect.poll(() => page.evaluate(() => window.scrollY)).toBeGreaterThan(50);
  });
});

describe('the tools', () => {
  it('measure between two places, by the pointer and by the keys alone', async () => {
    const page = await openPage(desk);
    await page.getByLabel('Shown').selectOption('tail');
    await button(page, 'Ruler').click();
    const reading = page.getByRole('region', { name: 'Ruler' }).getByRole('status').first();
    const readOut = page.getByRole('region', { name: 'Ruler' }).getByRole('status').last();
    await reading.waitFor();
    const gap = await text(page, 'gap.A2.value');
    const line = await box(page, 'gap.A2');
    await page.mouse.click(line.x, line.y + 1);
    await page.mouse.click(line.x, line.y + line.height - 1);
    // The heights are stretched; the reading is true.
    await expect.poll(() => reading.textContent()).toContain(`Distance ${gap} mm`);
    expect(await reading.textContent()).toMatch(/end – end/);

    // Drawn out from one to the other: the drawing stays.
    const still = await box(page, 'bridge.profile');
    await glass(page).focus();
    await page.keyboard.press('Escape');
    await page.mouse.move(line.x, line.y + 1);
    await page.mouse.down();
    await page.mouse.move(line.x + 20, line.y + 10);
    await page.mouse.move(line.x, line.y + line.height - 1);
    await page.mouse.up();
    await expect.poll(() => reading.textContent()).toContain(`Distance ${gap} mm`);
    expect(await box(page, 'bridge.profile')).toEqual(still);

    await page.mouse.move(0, 0);
    await glass(page).focus();
    await page.keyboard.press('Escape');
    await page.keyboard.press('Enter');
    for (let k = 0; k < 5; k += 1) await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Shift+ArrowDown');
    // What catches the cross is read out while keys move it.
    await expect
      .poll(() => readOut.textContent())
      .toMatch(/^(end|crossing|centre|middle|square|on the edge|free).*, Distance/);
    await page.keyboard.press('n');
    await page.keyboard.press('Enter');
    await expect.poll(() => reading.textContent()).toMatch(/^Distance \d+\.\d+ mm · across \d/);
  });

  it('lay a gauge on the deck and read the light under it', async () => {
    const page = await openPage(desk);
    await button(page, 'Gauge').click();
    await page.getByLabel('Lay it on the').selectOption('deck');
    await page.getByLabel('Radius of the gauge').fill('12 in');
    // The demo’s deck is 86 mm wide and 18 in round: the difference of the sagittas at the outer string, 28 mm off the middle, less that at the ends.
    const drop = (r: number, y: number) => r - Math.sqrt(r * r - y * y);
    const off = (y: number) => drop(12 * 25.4, y) - drop(18 * 25.4, y);
    const light = page.locator('[data-light="string.E2"]');
    await expect.poll(() => light.textContent()).toBe((off(43) - off(28)).toFixed(2));
    expect(await page.getByRole('rowheader', { name: 'Light mm' }).count()).toBe(1);
    expect(await page.locator('.tool [data-mark="gauge.edge"]').count()).toBe(1);
    await page.getByLabel('Radius of the gauge').fill('30 mm');
    expect(await page.getByText('is too tight to span it').isVisible()).toBe(true);
  });

  it('show the bridge as large as it is once the screen is measured with a card, and keep that', async () => {
    const page = await openPage(desk);
    await page.getByLabel('Shown').selectOption('above');
    await button(page, 'True size').click();
    await page.getByLabel('Pixels to 100 mm').fill('4 hundred');
    expect(await page.getByText('“4 hundred” is no size').isVisible()).toBe(true);
    await page.getByLabel('Pixels to 100 mm').fill('412.5');
    // ISO/IEC 7810, ID-1: 85.60 × 53.98 mm.
    const frame = await page
      .locator('.card-frame rect')
      .evaluate((r) => [r.getAttribute('width'), r.getAttribute('height')].map(Number));
    expect(frame[0]).toBeCloseTo(85.6 * 4.125, 6);
    expect(frame[1]).toBeCloseTo(53.98 * 4.125, 6);
    await button(page, 'It is as large as the card').click();
    // The demo’s bridge is 156 mm across.
    const across = async () => (await box(page, 'bridge.outline')).width;
    await expect.poll(across).toBeCloseTo(156 * 4.125, 3);
    await page.reload();
    await page.getByRole('navigation', { name: 'Files' }).waitFor();
    await page.getByLabel('Shown').selectOption('above');
    await button(page, 'True size').click();
    await expect.poll(across).toBeCloseTo(156 * 4.125, 3);
    expect(await button(page, 'True size').getAttribute('aria-pressed')).toBe('true');
  });

  it('bring the bridge into the frame at true size where views stand about bare paper, and give the heights back', async () => {
    const page = await openPage(desk);
    await button(page, 'True size').click();
    await button(page, 'It is as large as the card').click();
    await expect.poll(() => button(page, 'True size').getAttribute('aria-pressed')).toBe('true');
    const frame = (await glass(page).boundingBox()) as Box;
    const bridge = await box(page, 'above.bridge.outline');
    expect(bridge.x).toBeGreaterThan(frame.x);
    expect(bridge.x + bridge.width).toBeLessThan(frame.x + frame.width);
    expect(bridge.y + bridge.height / 2).toBeCloseTo(frame.y + frame.height / 2, 0);
    expect(await page.getByLabel('Heights').inputValue()).toBe('1');
    await button(page, 'Fit').click();
    await expect.poll(() => page.getByLabel('Heights').inputValue()).toBe('3');
  });
});
