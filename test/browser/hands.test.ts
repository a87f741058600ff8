import type { CDPSession, Page } from 'playwright-core';
import { describe, expect, it, vi } from 'vitest';
import { openPage } from './harness.ts';
import { desk, drawn, followed, openStarter, phone, walked } from './page.ts';

// With every starter some three hundred grips are taken hold of, one after the other.
vi.setConfig({ testTimeout: 240_000 });

interface Finger {
  readonly x: number;
  readonly y: number;
}

/** Fingers on the screen, as the system tells of them. */
const fingersOf = async (page: Page) => {
  const session: CDPSession = await page.context().newCDPSession(page);
  return async (type: 'touchStart' | 'touchMove' | 'touchEnd' | 'touchCancel', ...fingers: readonly Finger[]) => {
    await session.send('Input.dispatchTouchEvent', { type, touchPoints: fingers.map((p, id) => ({ ...p, id })) });
    await drawn(page);
  };
};

/** The middle of a grip, px, once it is in sight. */
const middle = async (page: Page, id: string): Promise<Finger> => {
  const reach = page.locator(`[data-grip="${id}"] .reach`).first();
  await reach.scrollIntoViewIfNeeded();
  const box = await reach.boundingBox();
  if (box === null) throw new Error(`${id} is not in sight`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
};

const value = (page: Page, path: string) => page.locator(`[id="field-${path}"]`).inputValue();
const undoes = (page: Page) => page.getByRole('button', { name: /^Undo/ }).first().isEnabled();
/** The view that is held by its button, where one is seen at a time. */
const showView = async (page: Page, view: string) => {
  const button = page.locator('.view-names button', { hasText: view });
  if ((await button.count()) === 0) return;
  await button.click();
  await expect.poll(() => button.getAttribute('aria-pressed')).toBe('true');
  await drawn(page);
};
const viewNames = { above: 'From above', tail: 'From the tail', middle: 'Along the middle' } as const;

describe('a drag is put back, and is no step,', () => {
  it('by Escape, by what takes the pointer away, and not by leaving the window; the right button drags nothing', async () => {
    const page = await openPage(desk);
    const from = await middle(page, 'above.length');
    const drag = async () => {
      await page.mouse.move(from.x, from.y);
      await page.mouse.down();
      await page.mouse.move(from.x + 20, from.y, { steps: 3 });
      await followed(page);
      expect(Number(await value(page, 'bridge.length'))).toBeGreaterThan(160);
    };
    await drag();
    await page.keyboard.press('Escape');
    expect(await value(page, 'bridge.length')).toBe('156.0');
    expect(await page.locator('.readout').textContent()).toBe('Length across: 156.0 mm');
    await page.mouse.move(from.x + 60, from.y);
    await page.mouse.up();
    expect(await value(page, 'bridge.length')).toBe('156.0');

    await drag();
    await page.locator('[data-grip="above.length"]').dispatchEvent('pointercancel', { pointerId: 1 });
    expect(await value(page, 'bridge.length')).toBe('156.0');
    await page.mouse.up();
    expect(await undoes(page)).toBe(false);

    await page.mouse.move(from.x, from.y);
    await page.mouse.down({ button: 'right' });
    await page.mouse.move(from.x + 20, from.y, { steps: 3 });
    await drawn(page);
    await page.mouse.up({ button: 'right' });
    expect(await value(page, 'bridge.length')).toBe('156.0');
    expect(await undoes(page)).toBe(false);

    // Out of the window and back: it stays in hand, and what stands at the end counts as one step.
    await drag();
    await page.mouse.move(from.x, -40, { steps: 3 });
    await page.mouse.move(desk.width + 40, from.y, { steps: 3 });
    await drawn(page);
    expect(await value(page, 'bridge.length')).toBe('260.0');
    expect(await page.locator('.readout').textContent()).toContain('as far as it may go');
    await page.mouse.up();
    expect(await value(page, 'bridge.length')).toBe('260.0');
    await page.keyboard.press('Control+z');
    expect(await value(page, 'bridge.length')).toBe('156.0');
    expect(await undoes(page)).toBe(false);
  });

  it('by a second finger, which looks closer instead, and where the system takes the touch away', async () => {
    const page = await openPage(phone);
    const touch = await fingersOf(page);
    const scale = async () => Number(await page.locator('.glass').first().getAttribute('data-scale'));
    const fitted = await scale();
    const at = await middle(page, 'above.depth');
    const start = async () => {
      await touch('touchStart', at);
      await touch('touchMove', { x: at.x, y: at.y + 12 });
      await touch('touchMove', { x: at.x, y: at.y + 24 });
      await followed(page);
      // Its field rests in the drawer meanwhile.
      const now = await page.locator('[data-grip="above.depth"]').getAttribute('aria-valuenow');
      expect(Number(now)).toBeGreaterThan(41);
    };
    await start();
    await touch('touchCancel');
    await expect.poll(() => value(page, 'bridge.depth')).toBe('38.0');
    expect(await undoes(page)).toBe(false);

    await start();
    const held = { x: at.x, y: at.y + 24 };
    const other = (apart: number) => ({ x: at.x - apart, y: at.y - 20 });
    await touch('touchStart', held, other(40));
    await expect.poll(() => value(page, 'bridge.depth')).toBe('38.0');
    for (const apart of [60, 80, 100, 120]) await touch('touchMove', held, other(apart));
    expect(await scale()).toBeGreaterThan(1.5 * fitted);
    await touch('touchEnd', held);
    await touch('touchMove', { x: held.x, y: held.y + 30 });
    await touch('touchEnd');
    expect(await value(page, 'bridge.depth')).toBe('38.0');
    expect(await undoes(page)).toBe(false);

    // Nor does a finger take hold of a grip while another one rests beside it.
    await page.reload();
    await page.getByRole('navigation', { name: 'Files' }).waitFor();
    const depth = await middle(page, 'above.depth');
    const resting = { x: 30, y: depth.y + 60 };
    await touch('touchStart', resting);
    await touch('touchStart', resting, depth);
    await touch('touchMove', resting, { x: depth.x, y: depth.y + 30 });
    await touch('touchEnd');
    expect(await value(page, 'bridge.depth')).toBe('38.0');
  });
});

it('what is dragged rests on whole steps of the job’s unit and on gauges’ radii, and goes free with Alt', async () => {
  const page = await openPage(desk);
  const pull = async (id: string, dx: number, dy: number) => {
    const from = await middle(page, id);
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x + dx, from.y + dy, { steps: 4 });
    await drawn(page);
  };
  await pull('tail.topRadius', 0, 9);
  // Radii that gauges have, in inches [practice].
  expect(['7.25', '9.5', '10', '12', '14', '15', '16']).toContain(await value(page, 'bridge.topRadius'));
  expect(await page.locator('.readout').textContent()).toBe(
    `Bridge top radius: ${await value(page, 'bridge.topRadius')} in`,
  );
  await page.mouse.up();
  // Raised beyond every radius a deck is flat; lowered again it is an arc.
  await pull('tail.topRadius', 0, -80);
  await page.mouse.up();
  expect(await value(page, 'bridge.topRadius')).toBe('flat');
  await pull('tail.topRadius', 0, 12);
  await page.mouse.up();
  expect(Number(await value(page, 'bridge.topRadius'))).toBeGreaterThan(7);

  await pull('above.slot.width', 0, -5);
  const snapped = Number(await value(page, 'slot.width')) * 10;
  expect(snapped).toBeCloseTo(Math.round(snapped), 9);
  await page.keyboard.down('Alt');
  const from = await middle(page, 'above.slot.width');
  await page.mouse.move(from.x, from.y - 1.3);
  await drawn(page);
  await page.keyboard.up('Alt');
  await page.mouse.up();
  const free = (await page.locator('[data-grip="above.slot.width"]').getAttribute('aria-valuenow')) ?? '';
  expect(Number(free) * 10 - Math.round(Number(free) * 10)).not.toBeCloseTo(0, 4);
});

/** The middles of a view's grips, px, by their ids. */
const middles = (page: Page, view: string): Promise<readonly (Finger & { readonly id: string })[]> =>
  page.locator(`.grip[data-grip^="${view}."] .reach`).evaluateAll((reaches) =>
    reaches.map((reach) => {
      const { left, right, top, bottom } = reach.getBoundingClientRect();
      const { grip = '' } = (reach.parentElement as unknown as SVGElement).dataset;
      return { id: grip, x: (left + right) / 2, y: (top + bottom) / 2 };
    }),
  );

/** How near two places may be that are still told apart, px: some 1.5 mm by a finger's middle, and by a mouse. */
const apart = { finger: 10, mouse: 5 };

it.each([
  ['mouse', desk],
  ['finger', phone],
] as const)('every grip can be taken by a %s, and none stands too close to another', async (by, window) => {
  const page = await openPage({ ...window, still: true });
  const session = await page.context().newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchEnd', ...touchPoints: Finger[]) =>
    session.send('Input.dispatchTouchEvent', { type, touchPoints });
  const wrong: string[] = [];
  for (const { id: starter } of walked) {
    if (starter !== walked[0]?.id) await openStarter(page, starter);
    for (const view of Object.keys(viewNames) as (keyof typeof viewNames)[]) {
      await showView(page, viewNames[view]);
      const all = await middles(page, view);
      expect(all.length).toBeGreaterThan(0);
      for (const { id, ...at } of all) {
        if (by === 'finger') await touch('touchStart', at);
        else {
          await page.mouse.move(at.x, at.y);
          await page.mouse.down();
        }
        const taken = await page.evaluate(() => (document.activeElement as SVGElement | null)?.dataset.grip);
        if (taken !== id) wrong.push(`${starter}: ${taken} was taken in place of ${id}`);
        // Put back before it is let go, so that a press opens no number under it.
        await page.keyboard.press('Escape');
        if (by === 'finger') await touch('touchEnd');
        else await page.mouse.up();
      }
      all.forEach((a, k) => {
        const near = all.slice(k + 1).filter((b) => Math.hypot(a.x - b.x, a.y - b.y) < apart[by]);
        wrong.push(...near.map((b) => `${starter}: ${a.id} and ${b.id} stand too close together`));
      });
    }
  }
  expect(wrong).toEqual([]);
});
