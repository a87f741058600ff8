import { gzipSync } from 'node:zlib';
import type { Browser } from 'playwright-core';
import type { Pages } from './builds.ts';
import { middle, type Row, times } from './row.ts';

interface Beginning {
  /** From the navigation's start to the first paint with content, ms. */
  readonly painted: number;
  /** What was loaded of JavaScript by then, bytes as gzip packs it. */
  readonly script: number;
  /** The longest task after that, ms; 0 where none is longer than the 50 ms from which the browser tells of them. */
  readonly longest: number;
  /** How far what was painted is moved by what comes after it: the layout shift by the Layout Instability specification, without a unit; more than 0.1 is felt. */
  readonly moved: number;
}

/** How long the page is looked at for long tasks, ms. */
const watched = 4000;

/** A page's beginning, in a context of its own that has nothing in store. Throws where `drawn` was not there when it was painted. */
const beginningOf = async (browser: Browser, url: string, drawn: string, isWatched: boolean): Promise<Beginning> => {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, serviceWorkers: 'block' });
  try {
    const page = await context.newPage();
    await page.addInitScript((selector) => {
      const seen = window as unknown as { there?: number; moved: number; long: { begin: number; lasts: number }[] };
      seen.long = [];
      seen.moved = 0;
      new PerformanceObserver((list) => {
        for (const shift of list.getEntries()) seen.moved += (shift as unknown as { value: number }).value;
      }).observe({ type: 'layout-shift', buffered: true });
      new PerformanceObserver((list) => {
        for (const { startTime, duration } of list.getEntries()) seen.long.push({ begin: startTime, lasts: duration });
      }).observe({ type: 'longtask', buffered: true });
      new MutationObserver((_, observer) => {
        if (document.querySelector(selector) === null) return;
        seen.there = performance.now();
        observer.disconnect();
      }).observe(document, { childList: true, subtree: true });
    }, drawn);
    await page.goto(url);
    await page.waitForFunction(() => performance.getEntriesByName('first-contentful-paint').length > 0);
    if (isWatched) await page.waitForTimeout(watched);
    const { painted, there, loaded, long, moved } = await page.evaluate(() => {
      const seen = window as unknown as { there?: number; moved: number; long: { begin: number; lasts: number }[] };
      const painted = performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? 0;
      const loaded = performance
        .getEntriesByType('resource')
        .filter((one) => one.name.endsWith('.js') && one.startTime < painted);
      return { painted, there: seen.there, moved: seen.moved, long: seen.long, loaded: loaded.map(({ name }) => name) };
    });
    if (there === undefined || there > painted) throw new Error(`What was painted first at ${url} is not ${drawn}.`);
    const scripts = await Promise.all(loaded.map(async (name) => Buffer.from(await (await fetch(name)).arrayBuffer())));
    return {
      painted,
      script: scripts.reduce((sum, script) => sum + gzipSync(script).length, 0),
      moved,
      longest: Math.max(0, ...long.filter(({ begin }) => begin >= painted).map(({ lasts }) => lasts)),
    };
  } finally {
    await context.close();
  }
};

/** The first drawing against an empty page of the same tools. */
export const benchFirst = async (browser: Browser, pages: Pages): Promise<readonly Row[]> => {
  const [ours, theirs]: [Beginning[], Beginning[]] = [[], []];
  // By turns, so that what else the machine does weighs on both alike; the first of each only warms up.
  for (let k = 0; k < 8; k += 1) {
    ours.push(await beginningOf(browser, pages.app, '.drawing path', k === 0));
    theirs.push(await beginningOf(browser, pages.bare, '#app > p', false));
  }
  const [painted, bare] = [ours, theirs].map((all) => middle(all.slice(1).map((one) => one.painted))) as [
    number,
    number,
  ];
  const [script, bareScript] = [ours[0]?.script ?? 0, theirs[0]?.script ?? 0];
  const { longest = 0, moved = 0 } = ours[0] ?? {};
  const ms = (value: number) => `${value.toFixed(0)} ms`;
  const kB = (bytes: number) => `${(bytes / 1000).toFixed(1)} kB`;
  return [
    {
      what: 'first drawing painted',
      measured: ms(painted),
      against: `${ms(bare)} an empty React page`,
      ratio: times(painted, bare),
      wanted: '1.5 ×',
    },
    {
      what: 'JavaScript for it, gzip',
      measured: kB(script),
      against: `${kB(bareScript)} bare react and react-dom`,
      ratio: times(script, bareScript),
      wanted: '1.8 ×',
    },
    {
      what: 'longest task after it',
      measured: longest === 0 ? 'under 50 ms' : ms(longest),
      against: '',
      ratio: '',
      wanted: 'under 50 ms',
    },
    { what: 'moved by what comes after it', measured: moved.toFixed(3), against: '', ratio: '', wanted: '0' },
  ];
};
