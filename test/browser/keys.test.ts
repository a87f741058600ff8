import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { openPage } from './harness.ts';
import { desk, field, phone, tablet, turnDrawer } from './page.ts';

/*
 * The ways past things that are not wanted (WCAG 2.2, 2.4.1 bypass blocks), gone by the keys alone.
 */

const windows = [
  ['a desk', desk],
  ['a tablet', tablet],
  ['a phone', phone],
] as const;

const hasFocus = (elements: Locator): Promise<boolean> =>
  elements.evaluateAll((all) => all.some((e) => e === document.activeElement));

/** Presses the tab key till an element has the focus, and gives how often. */
const tabTo = async (page: Page, element: Locator, key: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<number> => {
  for (let presses = 1; presses <= 60; presses += 1) {
    await page.keyboard.press(key);
    if (await hasFocus(element)) return presses;
  }
  throw new Error(`${element} is not reached by 60 presses of ${key}.`);
};

/** What has the focus: its text, and whether it is seen whole as far as the window can hold it, with nothing over it and no part of the page that is shut. */
const focused = (page: Page) =>
  page.evaluate(() => {
    const e = document.activeElement as HTMLElement;
    const { left, right, top } = e.getBoundingClientRect();
    const over = document.elementFromPoint((left + right) / 2, top + 4);
    return {
      says: e.textContent ?? '',
      part: e.closest('section, header, .drawer')?.className ?? '',
      isSeen: over !== null && (e.contains(over) || over.contains(e)) && e.closest('[inert]') === null,
      outline: getComputedStyle(e).outlineStyle,
    };
  });

const skips = (page: Page) => page.getByRole('navigation', { name: 'Skip to' }).getByRole('link');
const elsewhere = (page: Page) => page.getByRole('link', { name: 'Skip elsewhere' });

/** Where each link leads: the part of the page, and what has the focus there. */
const places = [
  ['The numbers', /numbers|drawer/, 'The numbers'],
  ['The drawing', /^sheet$/, 'The drawing'],
  ['What the checks say', /^findings$/, 'What the checks say'],
  ['Alternatives', /^compare$/, 'Alternatives'],
  ['Save templates', /^bar$/, 'Save templates'],
] as const;

describe.each(windows)('on %s', (_, window) => {
  const open = async () => {
    const page = await openPage({ ...window, still: true });
    await page.getByRole('heading', { name: 'What comes of it' }).waitFor();
    return page;
  };

  it('the first stop leads to each part of the page, which is then seen and not shut, from a closed drawer and from an open one', async () => {
    const page = await open();
    await page.keyboard.press('Tab');
    expect(await skips(page).allTextContents()).toEqual(places.map(([name]) => name));
    // Each from where the one before it led: the numbers last once more, and from them to the drawing.
    for (const [name, part, says] of [...places, places[0], places[1]]) {
      if (!(await hasFocus(skips(page).filter({ hasText: name })))) {
        await skips(page).first().focus();
        if (name !== places[0][0]) await tabTo(page, skips(page).filter({ hasText: name }));
      }
      expect((await focused(page)).isSeen, name).toBe(true);
      await page.keyboard.press('Enter');
      const now = await focused(page);
      expect(now.says, name).toContain(says);
      expect(now.part, name).toMatch(part);
      expect(now.outline, name).toBe('solid');
      await expect.poll(async () => (await focused(page)).isSeen, { message: name }).toBe(true);
    }
  });

  it('headings lead down by one level at a time, and each part of the page has a name of its own', async () => {
    const page = await open();
    const levels = () =>
      page
        .locator(':is(h1, h2, h3, h4, h5, h6)')
        .evaluateAll((all) =>
          all.filter((e) => !e.closest('[inert]') && e.checkVisibility()).map((e) => Number(e.tagName[1])),
        );
    const parts = await page
      .locator('main, header, nav, section:is([aria-label], [aria-labelledby])')
      .evaluateAll((all) =>
        all.map((e) => {
          const by = document.getElementById(e.getAttribute('aria-labelledby') ?? '');
          return `${e.tagName} ${by?.textContent ?? e.getAttribute('aria-label') ?? ''}`;
        }),
      );
    expect(new Set(parts).size).toBe(parts.length);
    for (const isOpen of [false, true]) {
      await turnDrawer(page, isOpen);
      const found = await levels();
      expect(found[0]).toBe(1);
      for (const [k, level] of found.entries())
        expect(level - (found[k - 1] ?? 0), `heading ${k}`).toBeLessThanOrEqual(1);
    }
  });

  it('each group of the numbers is gone past to the head of the next, which is then seen', async () => {
    const page = await open();
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    const ons = page.locator('.numbers').getByRole('link', { name: /^Skip to “/ });
    const count = await ons.count();
    expect(count).toBeGreaterThan(5);
    for (let k = 0; k < count; k += 1) {
      const [, title = ''] = /“(.*)”/.exec((await ons.nth(k).textContent()) ?? '') ?? [];
      await ons.nth(k).focus();
      expect((await focused(page)).isSeen, title).toBe(true);
      await page.keyboard.press('Enter');
      const now = await focused(page);
      expect(now.says).toMatch(new RegExp(`^${title}`));
      expect(now.isSeen, title).toBe(true);
      expect(now.outline, title).toBe('solid');
    }
  });

  it('from a measurement it is not far to the templates’ PDF', async () => {
    const page = await open();
    // From load to the scale.
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await tabTo(page, field(page, 'Scale length'));
    await page.keyboard.type('645.2');
    // As far as any number is from a way on.
    const farthest = await page.evaluate(() => {
      const stops = [...document.querySelectorAll('.numbers :is(input, select, button, summary, a)')].filter((e) =>
        e.checkVisibility(),
      );
      const ways = stops.flatMap((e, k) => (e.closest('.skip-on') ? [k] : []));
      return Math.max(...stops.map((_, k) => Math.min(...ways.map((way) => Math.abs(way - k)))));
    });
    expect(farthest).toBeLessThanOrEqual(20);

    let presses = await tabTo(page, elsewhere(page), 'Shift+Tab');
    await page.keyboard.press('Enter');
    presses += await tabTo(page, skips(page).filter({ hasText: 'Save templates' }));
    await page.keyboard.press('Enter');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Save PDF', exact: true }).waitFor();
    presses += 3 + (await tabTo(page, page.getByRole('button', { name: 'Save PDF', exact: true })));
    const coming = page.waitForEvent('download');
    await page.keyboard.press('Enter');
    expect((await coming).suggestedFilename()).toMatch(/\.pdf$/);
    expect(presses).toBeLessThanOrEqual(12);
  });
});
