// What is typed survives whatever happens to its window. `npm run kill` kills two hundred of them; here a few.
import { isDeepStrictEqual } from 'node:util';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { seeded } from '../seeded.ts';
import { openPage, reopen } from './harness.ts';
import { desk, field } from './page.ts';

const kills = Number(process.env.SAGITTA_KILLS ?? 5);
/** What is typed is safe after this long, ms. */
const safe = 1000;

const thickness = (page: Page) => field(page, 'Thickness, centre');

/** Types one number after another into a field as fast as the page takes them, and says each with the time at which it stood there, ms since 1970. */
const typeOn = (page: Page, path: string, from: number, step: number, pause: number) =>
  page.evaluate(
    async ([id, first, by, wait]) => {
      const input = document.getElementById(id) as HTMLInputElement;
      const put = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set;
      input.focus();
      for (let k = 0; ; k += 1) {
        const value = (first + k * by).toFixed(3);
        put?.call(input, value);
        input.dispatchEvent(new Event('input', { bubbles: true }));
        await (window as unknown as { heard: (text: string) => Promise<void> }).heard(value);
        await new Promise((done) => setTimeout(done, wait));
      }
    },
    [`field-${path}`, from, step, pause] as const,
  );

describe('a window that is killed while a number is typed', () => {
  it(
    `finds at most the last second gone when it is opened again, ${kills} times`,
    async () => {
      const { even } = seeded(2025);
      let page = await openPage(desk);
      await thickness(page).fill('8.000');
      await page.waitForTimeout(safe);
      for (let k = 0; k < kills; k += 1) {
        const heard: { readonly value: number; readonly at: number }[] = [];
        await page.exposeFunction('heard', (text: string) => void heard.push({ value: Number(text), at: Date.now() }));
        const from = 8 + k / 250;
        // It ends with the page.
        typeOn(page, 'bridge.thickness', from, 0.001 / 50, Math.round(even(1, 40))).catch(() => {});
        await new Promise((done) => setTimeout(done, even(100, 1700)));
        const at = Date.now();
        const session = await page.context().newCDPSession(page);
        const crashed = page.waitForEvent('crash');
        session.send('Page.crash').catch(() => {});
        await crashed;
        page = await reopen(page);
        const found = Number(await thickness(page).evaluate((input) => (input as HTMLInputElement).value));
        const kept = heard.filter((one) => one.at < at - safe).at(-1)?.value ?? Math.min(from, 8);
        // Shown with two decimals.
        expect(found, `killed the ${k + 1}th time`).toBeGreaterThanOrEqual(kept - 0.005);
        expect(await page.locator('.drawing').first().isVisible()).toBe(true);
      }
    },
    kills * 20_000,
  );
});

/** Many edits of fields that both windows have, in the page itself. */
const editMany = (page: Page, seed: number, count: number) =>
  page.evaluate(
    async ([start, many]) => {
      let state = start;
      const next = (most: number) => {
        state = (Math.imul(state, 1103515245) + 12345) >>> 0;
        return Math.floor((state / 2 ** 32) * most);
      };
      const paths = ['bridge.thickness', 'slot.depth', 'action.bass', 'action.treble', 'guitar.relief'];
      const put = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set;
      for (let k = 0; k < many; k += 1) {
        const path = paths[next(paths.length)];
        const input = document.getElementById(`field-${path}`) as HTMLInputElement;
        const value =
          path === 'guitar.relief'
            ? next(40) / 100
            : path === 'bridge.thickness'
              ? 8 + next(200) / 100
              : 2 + next(200) / 100;
        put?.call(input, value.toFixed(2));
        input.dispatchEvent(new Event('input', { bubbles: true }));
        if (k % 5 === 0) await new Promise((done) => setTimeout(done, next(12)));
      }
      (document.activeElement as HTMLElement | null)?.blur();
    },
    [seed, count] as const,
  );

describe('two windows on one job', () => {
  it('end equal after a thousand interleaved edits, and a third one that is closed on the way', async () => {
    const one = await openPage(desk);
    await field(one, 'Job').fill('Shared');
    await one.waitForTimeout(safe);
    const [two, three] = [await reopen(one, { keepOpen: true }), await reopen(one, { keepOpen: true })];
    expect(await field(two, 'Job').inputValue()).toBe('Shared');
    // The third one ends with its window.
    const work = [editMany(one, 1, 400), editMany(two, 2, 400), editMany(three, 3, 400).catch(() => {})];
    await three.waitForTimeout(700);
    await three.close();
    await Promise.all(work);
    const names = ['Thickness, centre', 'Slot depth', 'Action, bass', 'Action, treble', 'Relief'];
    const values = (page: Page) =>
      Promise.all(
        names.map((name) => field(page, name).evaluate((input) => Number((input as HTMLInputElement).value))),
      );
    // Until the last word of one has come to the other.
    await expect
      .poll(async () => [await values(one), await values(two)], { timeout: 15_000 })
      .toSatisfy(([a, b]) => isDeepStrictEqual(a, b));
    const fresh = await reopen(one, { keepOpen: true });
    expect(await values(fresh)).toEqual(await values(one));
  }, 180_000);

  it('the one that was overwritten has its number back by undo', async () => {
    const one = await openPage(desk);
    await thickness(one).fill('8.80');
    await one.waitForTimeout(safe);
    const two = await reopen(one, { keepOpen: true });
    await thickness(two).fill('9.10');
    await thickness(two).blur();
    await expect.poll(() => thickness(one).evaluate((input) => (input as HTMLInputElement).value)).toMatch(/^9\.1/);
    await one.bringToFront();
    await one.locator('.brand').click();
    await one.keyboard.press('Control+z');
    expect(await thickness(one).evaluate((input) => (input as HTMLInputElement).value)).toMatch(/^8\.8/);
    await expect.poll(() => thickness(two).evaluate((input) => (input as HTMLInputElement).value)).toMatch(/^8\.8/);
  });
});

describe('a storage that is full', () => {
  it('is told of with the job as a file, and what was typed is kept once there is room', async () => {
    const page = await openPage(desk);
    await thickness(page).fill('8.70');
    await page.waitForTimeout(safe);
    // Chromium cannot be given a small disk from here, so its database is made to refuse as it does on a full one.
    await page.evaluate(() => {
      const { put } = IDBObjectStore.prototype;
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
      };
      Object.assign(window, { makeRoom: () => Object.assign(IDBObjectStore.prototype, { put }) });
    });
    await thickness(page).fill('8.60');
    const told = page.getByText('could not be kept in this browser (its storage is full)');
    await told.waitFor();
    expect(await page.locator('.notice').getByRole('button', { name: 'Save job' }).count()).toBe(1);
    await page.evaluate(() => (window as unknown as { makeRoom: () => void }).makeRoom());
    await told.waitFor({ state: 'detached' });
    const again = await reopen(page);
    expect(await thickness(again).inputValue()).toMatch(/^8\.6/);
  });
});

describe('a clock that is set back', () => {
  it('loses nothing', async () => {
    const page = await openPage(desk);
    await thickness(page).fill('8.70');
    await page.waitForTimeout(safe);
    await page.clock.setSystemTime(new Date('2001-01-01T00:00:00Z'));
    await thickness(page).fill('8.50');
    await page.waitForTimeout(safe);
    const again = await reopen(page);
    expect(await thickness(again).inputValue()).toMatch(/^8\.5/);
  });
});

describe('a job sent as a link', () => {
  it('comes in beside, once, and its address is clean after', async () => {
    const page = await openPage(desk);
    await field(page, 'Job').fill('Sent');
    await page.waitForTimeout(safe);
    await page.getByRole('button', { name: 'Jobs…' }).click();
    await page.getByRole('button', { name: 'Share Sent' }).click();
    const link = await page.getByLabel('Link', { exact: true }).inputValue();
    expect(await page.getByRole('img', { name: 'QR code of the link' }).isVisible()).toBe(true);
    const other = await openPage(desk);
    await other.goto(link);
    await expect.poll(() => field(other, 'Job').inputValue()).toBe('Sent');
    expect(other.url()).not.toContain('#');
    await other.waitForTimeout(safe);
    await other.reload();
    await other.getByRole('button', { name: 'Jobs…' }).click();
    await expect.poll(() => other.getByRole('button', { name: 'Earlier states of Sent' }).count()).toBe(1);
  });
});
