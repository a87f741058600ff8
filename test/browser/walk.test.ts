import type { Page } from 'playwright-core';
import { expect, it, vi } from 'vitest';
import { openPage } from './harness.ts';
import { desk, drawn, openStarter, phone, walked } from './page.ts';

// Every number of each is gone to.
vi.setConfig({ testTimeout: 240_000 });

/** The views by their buttons, where one is seen at a time; else all of them at once. */
const eachView = async (page: Page, look: () => Promise<void>) => {
  const names = page.locator('.view-names button');
  const count = await names.count();
  if (count === 0) return look();
  for (let k = 0; k < count; k += 1) {
    await names.nth(k).click();
    await expect.poll(() => names.nth(k).getAttribute('aria-pressed')).toBe('true');
    await drawn(page);
    await look();
  }
};

/** A place in the window, px, and what stands there. */
interface Number {
  readonly x: number;
  readonly y: number;
  readonly id: string;
  readonly isAsked: boolean;
  readonly cursor: string;
}

/** The middles of the numbers in sight that can be typed or asked. */
const numbers = (page: Page): Promise<readonly Number[]> =>
  page.locator('.drawing .spot').evaluateAll((spots) =>
    spots.map((spot) => {
      const id = (spot as SVGElement).dataset.of ?? '';
      const text = spot.closest('svg')?.querySelector(`text[data-mark="${CSS.escape(id)}"]`);
      if (!text) throw new Error(`${id} stands nowhere`);
      const { left, right, top, bottom } = text.getBoundingClientRect();
      const isAsked = spot.classList.contains('asks');
      return { id, isAsked, x: (left + right) / 2, y: (top + bottom) / 2, cursor: getComputedStyle(spot).cursor };
    }),
  );

it.each([
  ['mouse', desk],
  ['finger', phone],
] as const)(
  'every number on the drawing is typed where it stands, or says how it came about, by a %s',
  async (by, window) => {
    const page = await openPage({ ...window, still: true });
    const wrong: string[] = [];
    for (const { id: starter } of walked) {
      if (starter !== walked[0]?.id) await openStarter(page, starter);
      const seen = { typed: 0, asked: 0 };
      await eachView(page, async () => {
        const count = (await numbers(page)).length;
        for (let k = 0; k < count; k += 1) {
          await drawn(page);
          // The drawing may have been laid anew since the one before was left.
          const number = (await numbers(page))[k];
          if (number === undefined) throw new Error(`${starter}: a number has gone`);
          const { id, isAsked, x, y, cursor } = number;
          if (cursor !== (isAsked ? 'help' : 'text')) wrong.push(`${starter}: ${id} is shown by ${cursor}`);
          if (by === 'finger') await page.touchscreen.tap(x, y);
          else await page.mouse.click(x, y);
          seen[isAsked ? 'asked' : 'typed'] += 1;
          const open = isAsked ? page.locator('dialog[open]') : page.locator('.typed input');
          const isOpen = await open
            .waitFor({ timeout: 10_000 })
            .then(() => true)
            .catch(() => false);
          if (!isOpen) wrong.push(`${starter}: ${id} does not open`);
          await page.keyboard.press('Escape');
          if (isOpen) await open.waitFor({ state: 'detached' });
        }
      });
      expect(seen.typed).toBeGreaterThan(5);
      expect(seen.asked).toBeGreaterThan(5);
    }
    expect(wrong).toEqual([]);
  },
);
