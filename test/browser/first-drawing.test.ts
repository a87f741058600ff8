import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, inject, it, onTestFinished } from 'vitest';
import { launch, openPage } from './harness.ts';
import { desk, field, phone, save, tablet, text } from './page.ts';

/** What is loaded after the first drawing. */
const rest = '**/take-over-*.js';

/** A page that keeps in `first` the elements of its first drawing, as they stand when they come. */
const watched = async ({ width, height }: { width: number; height: number }): Promise<Page> => {
  const page = await (await launch()).newPage({ viewport: { width, height }, serviceWorkers: 'block' });
  onTestFinished(() => page.close());
  await page.addInitScript(() => {
    new MutationObserver((_, observer) => {
      if (document.querySelector('.drawing path') === null) return;
      Object.assign(window, { first: [...document.querySelectorAll('.sheet, .sheet *')] });
      observer.disconnect();
    }).observe(document, { childList: true, subtree: true });
  });
  return page;
};

describe('the first drawing', () => {
  it.each([
    ['a desk', desk],
    ['a tablet', tablet],
    ['a phone', phone],
  ])('at %s stays when the page is whole, element by element', async (_, window) => {
    const page = await watched(window);
    await page.goto(inject('url'));
    await page.getByRole('navigation', { name: 'Files' }).waitFor();
    await page.locator('[data-grip]').first().waitFor({ state: 'attached' });
    const { before, gone } = await page.evaluate(() => {
      const { first } = globalThis as unknown as { first: Element[] };
      return { before: first.length, gone: first.filter((one) => !one.isConnected).map((one) => one.outerHTML) };
    });
    expect(await page.locator('#app').evaluate((app: HTMLElement) => app.inert)).toBe(false);
    expect(before).toBeGreaterThan(150);
    expect(gone).toEqual([]);
  });

  it('is of the job as it was left, before anything else is there', async () => {
    const page = await openPage(desk);
    const ofDemo = await text(page, 'tail.gap.E2.value');
    await field(page, 'Thickness, centre').fill('9.25');
    const gap = await text(page, 'tail.gap.E2.value');
    expect(gap).not.toBe(ofDemo);
    await page.waitForTimeout(1200);
    await page.context().route(rest, () => {});
    const next = await page.context().newPage();
    await page.close();
    await next.goto(inject('url'));
    expect(await text(next, 'tail.gap.E2.value')).toBe(gap);
    expect(await next.getByRole('navigation', { name: 'Files' }).count()).toBe(0);
    // Nothing on it takes what would come to nothing yet.
    expect(await next.locator('#app').evaluate((app: HTMLElement) => app.inert)).toBe(true);
  });

  it('needs nothing of React, which comes later, and is compiled while it is loaded', async () => {
    const folder = join(inject('built'), 'assets');
    const codeOf = (name: string) => readFile(join(folder, name), 'utf8');
    const hasReact = async (name: string) => (await codeOf(name)).includes('react.dev/errors');
    const page = await watched(desk);
    await page.goto(inject('url'));
    await page.waitForFunction(() => performance.getEntriesByName('first-contentful-paint').length > 0);
    const scripts = await page.evaluate(() => {
      const painted = performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? 0;
      const loaded = performance.getEntriesByType('resource').filter(({ startTime }) => startTime < painted);
      return loaded.flatMap(({ name }) => (name.endsWith('.js') ? [name.split('/').at(-1) ?? ''] : []));
    });
    expect(scripts).not.toEqual([]);
    for (const name of scripts) {
      expect(await hasReact(name), name).toBe(false);
      // A hint has to be the first thing in a file.
      expect(await codeOf(name)).toMatch(/^\/\/# allFunctionsCalledOnLoad\n/);
    }
    const later = (await readdir(folder)).filter((name) => /^take-over-.*\.js$/.test(name));
    expect(await Promise.all(later.map(hasReact))).toContain(true);
  });

  it('gives way to what is wrong where the rest cannot be loaded, and the job can be saved', async () => {
    const page = await watched(desk);
    await page.route(rest, (route) => route.fulfill({ status: 404 }));
    await page.goto(inject('url'));
    await page.getByRole('heading', { name: 'Sagitta cannot go on' }).waitFor();
    expect((await save(page, 'Save job')).suggestedFilename()).toBe('job.json');
    await page.unroute(rest);
    await Promise.all([page.waitForEvent('load'), page.getByRole('button', { name: 'Reload', exact: true }).click()]);
    await page.getByRole('navigation', { name: 'Files' }).waitFor();
  });
});
