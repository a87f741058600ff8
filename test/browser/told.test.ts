import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { openPage } from './harness.ts';
import { desk, field, phone, turnDrawer } from './page.ts';

/** Has the page keep whatever its live regions say from now on, as a screen reader would read it out (WAI-ARIA 1.2: `status`, `alert`, `aria-live`). */
const listen = (page: Page) =>
  page.evaluate(() => {
    const heard: string[] = [];
    Object.assign(window, { heard });
    const live = '[role="status"], [role="alert"], [aria-live="polite"], [aria-live="assertive"]';
    new MutationObserver((changes) => {
      const regions = new Set(
        changes.flatMap(
          ({ target }) => (target instanceof Element ? target : target.parentElement)?.closest(live) ?? [],
        ),
      );
      for (const region of regions) if (region.textContent) heard.push(region.textContent);
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });

/** What was said since it was last asked: so much at least, and what comes till a change would long have rested. */
const heard = async (page: Page, least = 1) => {
  await page.waitForFunction((least) => (window as unknown as { heard: string[] }).heard.length >= least, least);
  await page.waitForTimeout(1500);
  return page.evaluate(() => (window as unknown as { heard: string[] }).heard.splice(0));
};

it.each([
  ['a desk', desk],
  ['a phone', phone],
] as const)(
  'on %s each change is told once when it rests: its number with its unit, and what it did',
  async (_, window) => {
    const page = await openPage({ ...window, still: true });
    await page.getByRole('heading', { name: 'What comes of it' }).waitFor();
    await listen(page);
    const told = async (what: RegExp) => expect(await heard(page)).toEqual([expect.stringMatching(what)]);

    await turnDrawer(page, true);
    await field(page, 'Thickness, centre').focus();
    await page.keyboard.press('Control+a');
    await page.keyboard.type('8.25');
    await told(
      /^Thickness, centre 8\.25 mm: exposure at E2 5\.46 mm and E4 4\.28 mm\. Now wrong: Straightedge clearance\.$/,
    );
    await page.keyboard.press('Control+z');
    await told(
      /^Thickness, centre 9\.1 mm: exposure at E2 4\.61 mm and E4 3\.43 mm\. Right again: Straightedge clearance\.$/,
    );
    await page.keyboard.press('Control+Shift+z');
    await told(/^Thickness, centre 8\.25 mm: exposure at E2 5\.46 mm and /);
    await page.keyboard.press('Control+z');
    await heard(page);
    await turnDrawer(page, false);

    // A key that is held.
    const above = page.getByRole('button', { name: 'From above', exact: true });
    if ((await above.count()) > 0) await above.click();
    await page.getByRole('slider', { name: 'Depth, on the drawing', exact: true }).focus();
    for (let k = 0; k < 12; k += 1) await page.keyboard.down('ArrowUp');
    await page.keyboard.up('ArrowUp');
    await told(/^Depth 39\.2 mm: the exposure stays\./);

    await page.getByRole('button', { name: 'Keep one of each' }).click();
    await page.getByRole('heading', { name: 'Beside each other' }).waitFor();
    await told(/^radii kept to compare: the exposure stays\.$/);
    await page.getByRole('button', { name: 'Make it the present one: alternative B' }).click();
    await told(/^alternative B made the present design: exposure at E2 [\d.]+ mm and E4 [\d.]+ mm\./);

    // What cannot be built is said at once, and then what it was that was typed.
    await turnDrawer(page, true);
    await field(page, 'Front edge to saddle line').fill('38');
    const [alert, number, ...more] = await heard(page, 2);
    expect(alert).toMatch(/keeps? this from being built/);
    expect(number).toBe('Front edge to saddle line 38.0 mm: cannot be built so; the drawing stays.');
    expect(more).toEqual([]);
  },
  180_000,
);
