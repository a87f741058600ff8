import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { openPage } from './harness.ts';
import { desk, drawn, field, followed, phone, text } from './page.ts';

const grip = (page: Page, id: string) => page.locator(`[data-grip="${id}"]`);

/** The middle of a handle, px. */
const middle = async (page: Page, id: string) => {
  const box = await grip(page, id).locator('.reach').boundingBox();
  if (box === null) throw new Error(`${id} is not in sight`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2, size: box.width };
};

it('a number is dragged with the mouse, stays under the hand, is one step to take back, and is told of once it rests', async () => {
  const page = await openPage(desk);
  const from = await middle(page, 'above.length');
  expect(from.size).toBeGreaterThanOrEqual(24);
  const scale = Number(await page.locator('.glass').getAttribute('data-scale'));
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  for (const part of [0.3, 0.6, 1]) {
    await page.mouse.move(from.x + part * 16, from.y + part * 5);
    await drawn(page);
  }
  await followed(page);
  const across = Number(await field(page, 'Length across').inputValue());
  // 16 px to the treble side move that tip by 16/scale mm and so the length, from tip to tip, by twice as much, on a whole 0.1 mm.
  expect(across).toBeCloseTo(156 + (2 * 16) / scale, 0);
  expect(across * 10).toBeCloseTo(Math.round(across * 10), 6);
  const held = await middle(page, 'above.length');
  expect(held.x - from.x).toBeCloseTo(16, 0);
  expect(held.y).toBeCloseTo(from.y, 0);
  expect(await page.locator('.readout').textContent()).toBe(`Length across: ${across.toFixed(1)} mm`);
  await page.mouse.up();
  expect(await text(page, 'above.bridge.length.value')).toBe(across.toFixed(1));
  await page.waitForFunction(() => document.querySelector('[data-told]')?.textContent !== '');
  expect(await page.locator('[data-told]').textContent()).toBe(
    `Length across ${across.toFixed(1)} mm: the exposure stays.`,
  );
  // Its row is lit in the column, and in sight.
  expect(await page.locator('[data-path="bridge.length"]').getAttribute('data-focus')).toBe('true');
  expect(await field(page, 'Length across').evaluate((e) => e.getBoundingClientRect().bottom < innerHeight)).toBe(true);
  await page.keyboard.press('Control+z');
  expect(await field(page, 'Length across').inputValue()).toBe('156.0');
  expect(await page.getByRole('button', { name: 'Undo', exact: true }).first().isDisabled()).toBe(true);

  // Put back on the way.
  const deck = await middle(page, 'middle.thickness');
  await page.mouse.move(deck.x, deck.y);
  await page.mouse.down();
  await page.mouse.move(deck.x, deck.y - 12);
  await followed(page);
  expect(Number(await field(page, 'Thickness, centre').inputValue())).toBeGreaterThan(9.5);
  await page.keyboard.press('Escape');
  await page.mouse.move(deck.x, deck.y - 20);
  await page.mouse.up();
  expect(await field(page, 'Thickness, centre').inputValue()).toBe('9.1');

  // By the keyboard alone: stepped, and typed where it stands.
  await grip(page, 'middle.thickness').focus();
  await page.keyboard.press('ArrowUp');
  expect(await field(page, 'Thickness, centre').inputValue()).toBe('9.2');
  await page.keyboard.press('Enter');
  await page.keyboard.type('9.4');
  await page.keyboard.press('Enter');
  expect(await text(page, 'middle.bridge.thickness.value')).toBe('9.4');
});

it('a number that is dragged or stepped past what can be built stops there and says what is in the way; the next goes on from there', async () => {
  const page = await openPage(desk);
  const value = async (name: string) => Number(await field(page, name).inputValue());
  const readout = async () => (await page.locator('.readout text').allTextContents()).join(' ');
  const pull = async (id: string, dx: number, dy: number) => {
    const from = await middle(page, id);
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    for (const part of [0.5, 1]) {
      await page.mouse.move(from.x + part * dx, from.y + part * dy);
      await drawn(page);
    }
    await followed(page);
    return from;
  };
  const slot = await pull('above.slot.length', 160, 0);
  // Its end has gone with the hand as far as it can, and the hand reads why.
  expect((await middle(page, 'above.slot.length')).x).toBeGreaterThan(slot.x + 8);
  const read = await readout();
  await page.mouse.up();
  const longest = await value('Slot length');
  // The demo's deck is 86 mm wide: the slot reaches to its shoulders, and one step more would not fit.
  expect(longest).toBe(86);
  expect(read).toMatch(/^Slot length: 86\.0 mm No farther can be built\. .* 86\.1 mm .* 86\.0 mm wide/);
  expect(await page.locator('.problems').count()).toBe(0);
  await page.waitForFunction(() => /No farther/.test(document.querySelector('[data-told]')?.textContent ?? ''));
  expect(await page.locator('[data-told]').textContent()).toMatch(/^Slot length .* mm: .* No farther can be built\. /);
  // A step more by the keys stays too.
  await page.keyboard.press('ArrowRight');
  expect(await value('Slot length')).toBe(longest);

  const depth = await value('Depth');
  await pull('above.depth', 0, 12);
  await page.mouse.up();
  expect(await value('Depth')).toBeGreaterThan(depth);
  await pull('above.slot.length', -20, 0);
  await page.mouse.up();
  expect(await value('Slot length')).toBeLessThan(longest);
});

/** The words of the drawing that what is read beside the hand lies over. */
const underReadout = (page: Page) =>
  page.evaluate(() => {
    const frame = document.querySelector('.readout rect')?.getBoundingClientRect();
    if (frame === undefined) throw new Error('nothing is read beside the hand');
    return [...document.querySelectorAll('.sheet .drawing [role="img"] text')].flatMap((one) => {
      const { left, right, top, bottom } = one.getBoundingClientRect();
      // A line of text is higher than its words.
      const spare = (bottom - top) / 4;
      const isUnder =
        left < frame.right && right > frame.left && top + spare < frame.bottom && bottom - spare > frame.top;
      return isUnder ? [one.textContent] : [];
    });
  });

it('what is read beside the hand covers no word of the drawing', async () => {
  const page = await openPage(desk);
  for (const id of ['above.strings.spread', 'above.frontToSaddle', 'tail.topRadius', 'tail.action.treble']) {
    const from = await middle(page, id);
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    for (const by of [4, 8, 12]) {
      await page.mouse.move(from.x + by, from.y + by / 2);
      await drawn(page);
      expect(await underReadout(page), id).toEqual([]);
    }
    await page.keyboard.press('Escape');
    await page.mouse.up();
  }
});

it('a number is dragged by a finger without the page being scrolled; beside it the finger scrolls the page', async () => {
  const page = await openPage(phone);
  const cdp = await page.context().newCDPSession(page);
  const swipe = async (x: number, y: number, dx: number, dy: number) => {
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', part: number) =>
      cdp.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: type === 'touchEnd' ? [] : [{ x: x + part * dx, y: y + part * dy }],
      });
    await touch('touchStart', 0);
    for (const part of [0.25, 0.5, 0.75, 1]) {
      await touch('touchMove', part);
      await drawn(page);
    }
    await touch('touchEnd', 1);
    await drawn(page);
  };
  const top = () => page.evaluate(() => window.scrollY);
  await grip(page, 'above.depth').scrollIntoViewIfNeeded();
  const at = await middle(page, 'above.depth');
  expect(at.size).toBeGreaterThanOrEqual(44);
  const before = await top();
  await swipe(at.x, at.y, 0, 24);
  // The numbers lie in a drawer that is closed.
  const typed = (path: string) => page.locator(`[id="field-bridge.${path}"]`).inputValue();
  expect(Number(await typed('depth'))).toBeGreaterThan(42);
  expect(await top()).toBe(before);

  // Where the room for two fingers' grips overlaps, the nearer one is meant: the tip, not the wing beside it.
  const [tip, wing] = [await middle(page, 'above.length.bass'), await middle(page, 'above.wingDepth')];
  expect(Math.hypot(tip.x - wing.x, tip.y - wing.y)).toBeLessThan(tip.size / 2);
  await swipe(tip.x, tip.y, -12, 0);
  expect(Number(await typed('length'))).toBeGreaterThan(160);
  expect(await typed('wingDepth')).toBe('25.0');

  const title = await page.locator('[data-mark="title"]').first().boundingBox();
  await swipe((title?.x ?? 0) + 20, (title?.y ?? 0) + 150, 0, -60);
  await page.waitForFunction((was) => window.scrollY > was, before);
});
