import type { Page } from 'playwright-core';
import { describe, expect, it, vi } from 'vitest';
import { openPage } from './harness.ts';
import { desk, drawn, field, followed } from './page.ts';

// Every grip of the sheet is dragged, one after the other.
vi.setConfig({ testTimeout: 240_000 });

/** What was told by the worker that follows a hand: how often a change that could be put in at once, how often with a check that came to another level, and how often none. */
interface Told {
  at: number;
  levels: number;
  not: number;
}
/** What the page says: of what is found, and else. */
interface Seen {
  readonly found: string;
  readonly else: string;
}
type Watched = Window & { readonly told: Told; seen: readonly Seen[] };

/** Counts what the worker tells, and notes at each frame what the page says: all that follows a hand, as far as it is in sight. */
const watch = (page: Page) =>
  page.addInitScript(() => {
    const told: Told = { at: 0, levels: 0, not: 0 };
    window.Worker = class extends Worker {
      constructor(url: string | URL, options?: WorkerOptions) {
        super(url, options);
        if (!String(url).includes('swift')) return;
        this.addEventListener('message', ({ data }) => {
          if (data === 'here') return;
          if (data.change === undefined) told.not += 1;
          else told.at += 1;
          if (data.change?.findings) told.levels += 1;
        });
      }
    };
    const watched = Object.assign(window, { told, seen: [] as Seen[] });
    const isIn = (element: Element) => {
      const { top, bottom } = element.getBoundingClientRect();
      return bottom > 0 && top < window.innerHeight && element.checkVisibility();
    };
    const look = () => {
      // What is not drawn any more may still be there, with nothing to draw or to say.
      const drawing = (document.querySelector('.sheet .paper')?.innerHTML ?? '').replace(
        /<path[^>]* d=""[^>]*><\/path>|<text[^>]*><\/text>/g,
        '',
      );
      const said = (selector: string) =>
        [...document.querySelectorAll(selector)].flatMap((one) =>
          isIn(one) ? (one instanceof HTMLInputElement ? one.value : (one.textContent ?? '')) : [],
        );
      const others = said('.numbers input, .strings output, .outcome button, .outcome td, .fact, .counts, .summary');
      const now = { found: said('.finding').join('\n'), else: [drawing, ...others].join('\n') };
      const before = watched.seen.at(-1);
      if (now.found !== before?.found || now.else !== before.else) watched.seen.push(now);
      requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  });

const told = (page: Page) => page.evaluate(() => ({ ...(window as unknown as Watched).told }));

/** The first line in which two looks at the page differ. */
const difference = (a = '', b = ''): readonly string[] => {
  const [before, now] = [a.split(/\n|(?=<)/), b.split(/\n|(?=<)/)];
  const k = now.findIndex((line, at) => line !== before[at]);
  return [before[k] ?? '', now[k] ?? ''];
};

const middle = async (page: Page, id: string) => {
  const box = await page.locator(`[data-grip="${id}"] .reach`).first().boundingBox();
  if (box === null) throw new Error(`${id} is not in sight`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
};

/** Opens the demo, its hand followed at once. */
const open = async (): Promise<Page> => {
  const page = await openPage(desk);
  await watch(page);
  await page.reload();
  await page.locator('.outcome').waitFor();
  await followed(page);
  return page;
};

describe('while a hand drags a number, the page says at once what it says when all of it has followed,', () => {
  it('beside four alternatives', async () => {
    const page = await open();
    await page.locator('.radii button').click();
    await followed(page);
    const grips = await page
      .locator('.sheet [data-grip][tabindex="0"]')
      .evaluateAll((all) => all.map((one) => (one as SVGElement).dataset.grip ?? ''));
    expect(grips.length).toBeGreaterThan(10);
    let moved = 0;
    for (const id of grips) {
      const { x, y } = await middle(page, id);
      await page.mouse.move(x, y);
      await page.mouse.down();
      for (const by of [4, 6, 8]) {
        await page.mouse.move(x + by, y + by);
        await drawn(page);
      }
      await followed(page);
      const before = await told(page);
      await page.evaluate(() => {
        const watched = window as unknown as Watched;
        watched.seen = watched.seen.slice(-1);
      });
      await page.mouse.move(x + 9, y + 9);
      await followed(page);
      const after = await told(page);
      const seen = await page.evaluate(() => (window as unknown as Watched).seen);
      // Where strings alone changed, they did so once, and stayed when the bench followed.
      // What comes to another level goes to its place only once the hand rests.
      const looks = seen.map((one) => (after.levels > before.levels ? one.else : `${one.else}\n${one.found}`));
      const others = looks.filter((look, k) => look !== looks[k - 1]);
      if (after.at > before.at && after.not === before.not && others.length > 1) {
        moved += 1;
        expect(others.length, `${id}: ${difference(others[1], others[2]).join(' became ')}`).toBe(2);
      }
      await page.keyboard.press('Escape');
      await page.mouse.up();
      await drawn(page);
    }
    // Most grips move without more becoming another than strings.
    expect(moved).toBeGreaterThan(grips.length / 2);
  });
});

it('what comes right under a hand stays where it is till the hand rests', async () => {
  const page = await open();
  const exposure = page.locator('.findings .open [data-check="exposure"]');
  expect(await exposure.getAttribute('data-level')).toBe('doubtful');
  const { x, y } = await middle(page, 'tail.topRadius');
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x, y - 4);
  await followed(page);
  // How high it is among those that are not right, by its level.
  await page.evaluate(() => {
    const heights: Record<string, number> = {};
    const look = () => {
      const one = document.querySelector<HTMLElement>('.findings .open [data-check="exposure"]');
      if (one) heights[one.dataset.level ?? ''] = one.offsetHeight;
    };
    look();
    new MutationObserver(look).observe(document.body, { subtree: true, childList: true, attributes: true });
    Object.assign(window, { heights });
  });
  for (let up = 5; up < 60; up += 1) {
    await page.mouse.move(x, y - up);
    await drawn(page);
  }
  const { doubtful = 0, right = 0 } = await page.evaluate(
    () => (window as unknown as { heights: { doubtful?: number; right?: number } }).heights,
  );
  expect(doubtful).toBeGreaterThan(100);
  expect(Math.abs(right - doubtful)).toBeLessThan(20);
  await followed(page);
  expect(await exposure.count()).toBe(0);
  await page.mouse.up();
});

it('a hand that moves on and on is followed at once, and what it did is one step', async () => {
  const page = await open();
  const { x, y } = await middle(page, 'above.length');
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 5, y);
  await drawn(page);
  const from = await told(page);
  for (let k = 0; k < 40; k += 1) {
    await page.mouse.move(x + 5 + (k % 20), y);
    await drawn(page);
  }
  expect((await told(page)).at).toBeGreaterThan(from.at + 10);
  await page.mouse.up();
  const across = await field(page, 'Length across').inputValue();
  expect(Number(across)).toBeGreaterThan(156);
  expect(await page.locator('[data-mark="above.bridge.length.value"]').textContent()).toBe(across);
  await page.keyboard.press('Control+z');
  expect(await field(page, 'Length across').inputValue()).toBe('156.0');
  expect(await page.getByRole('button', { name: 'Undo', exact: true }).first().isDisabled()).toBe(true);
});

it('a hand is followed, too, where the worker does not answer', async () => {
  const page = await openPage(desk);
  await page.addInitScript(() => {
    window.Worker = class extends Worker {
      constructor(url: string | URL, options?: WorkerOptions) {
        super(url, options);
        if (String(url).includes('swift'))
          this.addEventListener('message', (event) => event.stopImmediatePropagation());
      }
    };
  });
  await page.reload();
  await page.locator('.outcome').waitFor();
  const { x, y } = await middle(page, 'above.length');
  await page.mouse.move(x, y);
  await page.mouse.down();
  const across = async () => Number(await field(page, 'Length across').inputValue());
  let before = 156;
  for (const by of [5, 10, 16]) {
    await page.mouse.move(x + by, y);
    await drawn(page);
    expect(await across()).toBeGreaterThan(before);
    before = await across();
  }
  await page.mouse.up();
  expect(await across()).toBe(before);
});
