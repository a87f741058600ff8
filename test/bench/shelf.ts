import type { Browser, Page } from 'playwright-core';
import type { Pages } from './builds.ts';
import { middle, type Row, times } from './row.ts';

/** What a shelf takes, ms: to open, to find one job by its name, and to be scrolled to its last row that is drawn. */
interface Shelf {
  readonly open: number;
  readonly search: number;
  readonly scroll: number;
}

/** Puts copies of the one job that lies on the shelf beside it, until there are so many. */
const fill = (page: Page, count: number) =>
  page.evaluate(async (many) => {
    const done = <T>(asked: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        asked.onsuccess = () => resolve(asked.result);
        asked.onerror = () => reject(asked.error);
      });
    const db = await done(indexedDB.open('sagitta'));
    const tx = db.transaction(['cards', 'bodies', 'states'], 'readwrite');
    const [cards, bodies, states] = ['cards', 'bodies', 'states'].map((name) => tx.objectStore(name)) as [
      IDBObjectStore,
      IDBObjectStore,
      IDBObjectStore,
    ];
    const [[card], [body], [state]] = await Promise.all([
      done(cards.getAll()),
      done(bodies.getAll()),
      done(states.getAll()),
    ]);
    for (let k = 1; k < many; k += 1) {
      const id = `copy-${k}`;
      cards.put({ ...card, id, name: `Job ${k}`, changed: card.changed - k });
      bodies.put({ ...body, id });
      states.put({ ...state, id });
    }
    await new Promise((resolve) => {
      tx.oncomplete = resolve;
    });
    db.close();
  }, count);

/** From doing something until the page shows it and has painted that. */
const timed = (page: Page, act: string, isThere: string): Promise<number> =>
  page.evaluate(
    async ([run, there]) => {
      const from = performance.now();
      new Function(run)();
      const look = new Function(`return ${there}`);
      while (!look()) await new Promise((next) => setTimeout(next));
      await new Promise((next) => requestAnimationFrame(() => setTimeout(next)));
      return performance.now() - from;
    },
    [act, isThere] as const,
  );

const shelfOf = async (browser: Browser, url: string, count: number): Promise<Shelf> => {
  // The measuring runs code from texts, which the page's own policy forbids.
  const context = await browser.newContext({
    viewport: { width: 1440, height: 900 },
    bypassCSP: true,
    serviceWorkers: 'block',
  });
  try {
    // The loader that runs this file names each function by a helper of its own, which the page has not.
    await context.addInitScript('globalThis.__name = (named) => named');
    const page = await context.newPage();
    await page.goto(url);
    const name = page.getByRole('textbox', { name: 'Job', exact: true });
    await name.fill('At the bench');
    await page.waitForTimeout(1500);
    await fill(page, count);
    const button = `[...document.querySelectorAll('nav.files button')].find((one) => one.textContent === 'Jobs…').click()`;
    const rows = 'document.querySelectorAll(".job-row").length';
    // Once to load what the shelf is made of.
    await timed(page, button, `${rows} >= 20`);
    await page.keyboard.press('Escape');
    await page.waitForFunction(() => document.querySelector('dialog.shelf') === null);
    const open = await timed(page, button, `${rows} >= 20`);
    const scroll = await timed(
      page,
      `document.querySelector('dialog.shelf').scrollTop = 1e6`,
      `document.querySelector('dialog.shelf').scrollTop > 0`,
    );
    const type = (text: string) =>
      `const input = document.querySelector('dialog.shelf input[type=search]');
       Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value').set.call(input, '${text}');
       input.dispatchEvent(new Event('input', { bubbles: true }));`;
    const search = await timed(page, type('at the bench'), `${rows} === 1`);
    return { open, search, scroll };
  } finally {
    await context.close();
  }
};

/** A shelf of 2,000 jobs against one of 20. */
export const benchShelf = async (browser: Browser, { app }: Pages): Promise<readonly Row[]> => {
  const [many, few]: [Shelf[], Shelf[]] = [[], []];
  for (let k = 0; k < 3; k += 1) {
    many.push(await shelfOf(browser, app, 2000));
    few.push(await shelfOf(browser, app, 20));
  }
  const row = (what: string, key: keyof Shelf): Row => {
    const [a, b] = [many, few].map((all) => middle(all.map((one) => one[key]))) as [number, number];
    return {
      what,
      measured: `${a.toFixed(0)} ms`,
      against: `${b.toFixed(0)} ms with 20`,
      ratio: times(a, b),
      wanted: '1.5 ×',
    };
  };
  return [
    row('a shelf of 2,000 jobs: opened', 'open'),
    row('a shelf of 2,000 jobs: searched', 'search'),
    row('a shelf of 2,000 jobs: scrolled', 'scroll'),
  ];
};
