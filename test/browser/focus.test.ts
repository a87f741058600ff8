import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { openPage } from './harness.ts';
import { desk, phone, tablet, turnDrawer } from './page.ts';

/** More stops than the page has. */
const endless = 700;

/** Has the page note whatever takes the focus, and whether other things lie over all of it or it lies out of sight. */
const note = (page: Page) =>
  page.evaluate(() => {
    const noted: { stops: number; hidden: string[] } = { stops: 0, hidden: [] };
    Object.assign(window, { noted });
    const parts = [0.1, 0.5, 0.9];
    document.addEventListener('focusin', ({ target }) => {
      if (!(target instanceof Element)) return;
      noted.stops += 1;
      // What the page itself scrolls or opens for it comes first.
      setTimeout(() => {
        if (document.activeElement !== target) return;
        const { left, top, width, height } = target.getBoundingClientRect();
        const isSeen = parts.some((x) =>
          parts.some((y) => {
            const at = document.elementFromPoint(left + width * x, top + height * y);
            // Grips stand close together on the drawing.
            return at !== null && (target.contains(at) || at.closest('.drawing, label')?.contains(target));
          }),
        );
        if (!isSeen) noted.hidden.push(`${target.getAttribute('aria-label') ?? target.textContent} at ${top} px`);
      });
    });
  });

/** Goes from stop to stop till the page is left. */
const goThrough = async (page: Page, key: 'Tab' | 'Shift+Tab') => {
  await note(page);
  for (let presses = 0; presses < endless; presses += 1) {
    await page.keyboard.press(key);
    if (await page.evaluate(() => document.activeElement === document.body))
      return page.evaluate(() => (window as unknown as { noted: { stops: number; hidden: string[] } }).noted);
  }
  throw new Error('The page holds the focus and does not let it go.');
};

// WCAG 2.2, 2.4.11 focus not obscured (minimum), and 2.1.2 no keyboard trap.
it.each([
  ['forwards', 'a desk', 'Tab', desk],
  ['forwards', 'a small desk, where the sheet stays over what is below it', 'Tab', { width: 1100, height: 800 }],
  ['back', 'a tablet', 'Shift+Tab', tablet],
  ['forwards', 'a phone', 'Tab', phone],
] as const)(
  'whatever the tab key goes to, %s on %s, is seen, and it goes through all of the page',
  async (...[, , key, window]) => {
    const page = await openPage({ ...window, still: true });
    await page.getByRole('heading', { name: 'What comes of it' }).waitFor();
    const { stops, hidden } = await goThrough(page, key);
    expect(hidden).toEqual([]);
    expect(stops).toBeGreaterThan(180);
  },
  120_000,
);

it('whatever the tab key goes to, back through the drawer on a phone, is seen', async () => {
  const page = await openPage({ ...phone, still: true });
  await turnDrawer(page, true);
  await page.locator('.drawer summary').last().focus();
  const { stops, hidden } = await goThrough(page, 'Shift+Tab');
  expect(hidden).toEqual([]);
  expect(stops).toBeGreaterThan(80);
}, 120_000);
