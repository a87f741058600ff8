import type { Download, Locator, Page } from 'playwright-core';
import type { Window } from './harness.ts';
import { desk, drawn, field, followed, phone, tablet } from './page.ts';

/*
 * The way of somebody who is here for the first time: measure, shape, compare, choose, save. It is gone by three kinds of hands, each with nothing but
 * what it has: a mouse, a finger, or the keys alone, with which nothing is put in focus but by going there.
 */

/** The moments of the way that show what was done. */
export type Moment = 'measured' | 'shaping' | 'compared' | 'chosen' | 'saved';

/** What is done to the page, and by what. */
export interface Hands {
  readonly window: Window;
  /** Puts a text in the place of what stands in an input. */
  readonly type: (page: Page, input: Locator, text: string) => Promise<void>;
  readonly press: (page: Page, button: Locator) => Promise<void>;
  /** Takes a grip that lies on the drawing's lower edge farther down, or its number up; `held` comes before it is let go. */
  readonly pull: (page: Page, grip: Locator, held: () => Promise<void>) => Promise<void>;
}

const middleOf = async (grip: Locator) => {
  const box = await grip.locator('.reach').boundingBox();
  if (box === null) throw new Error('The grip is not in sight.');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
};

const mouse: Hands = {
  window: desk,
  type: async (page, input, text) => {
    await input.click({ clickCount: 3 });
    await page.keyboard.type(text);
  },
  press: (_, button) => button.click(),
  pull: async (page, grip, held) => {
    const { x, y } = await middleOf(grip);
    await page.mouse.move(x, y);
    await page.mouse.down();
    for (const down of [2, 4, 5]) await page.mouse.move(x, y + down);
    await drawn(page);
    await held();
    await page.mouse.up();
  },
};

/** Whether an element is there, and not behind what is closed. */
const seen = (element: Locator): Promise<boolean> =>
  element.evaluateAll((all) => all.some((e) => e.closest('[inert]') === null));

const closeDrawer = async (page: Page) => {
  const open = page.locator('.drawer[data-open="true"]');
  if ((await open.count()) > 0) await open.getByRole('button', { name: 'Close', exact: true }).tap();
};

const finger: Hands = {
  window: phone,
  type: async (page, input, text) => {
    // A phone has the numbers in a drawer.
    const numbers = page.getByRole('button', { name: 'Numbers', exact: true });
    if ((await input.count()) === 0 || !(await seen(input))) await numbers.tap();
    // Behind its last figure, as a phone's keys have nothing but a backspace.
    const width = (await input.boundingBox())?.width ?? 0;
    await input.tap({ position: { x: width - 3, y: 12 } });
    for (const _ of await input.inputValue()) await page.keyboard.press('Backspace');
    await page.keyboard.type(text);
  },
  press: (_, button) => button.tap(),
  pull: async (page, grip, held) => {
    await closeDrawer(page);
    // A phone shows one view at a time, and went to the one that shows what was typed.
    await page.getByRole('button', { name: 'From above', exact: true }).tap();
    await page.waitForFunction(() => document.querySelector('.view-strip')?.scrollLeft === 0);
    await drawn(page);
    await grip.scrollIntoViewIfNeeded();
    const { x, y } = await middleOf(grip);
    const fingers = await page.context().newCDPSession(page);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', down = 0) =>
      fingers.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: type === 'touchEnd' ? [] : [{ x, y: y + down }],
      });
    await touch('touchStart');
    for (const down of [3, 5, 6]) await touch('touchMove', down);
    await drawn(page);
    await held();
    await touch('touchEnd');
  },
};

/** More presses than any way on the page asks for. */
const endless = 600;

/** Goes to an element by the tab key alone, forwards or back as it lies. It must then be seen whole, and nothing may lie over it. */
const reach = async (page: Page, element: Locator) => {
  const target = await element.elementHandle();
  const lies = (e: Node | null) => {
    const now = document.activeElement;
    if (e === null || e === now) return 'here';
    // Nothing has the focus yet, or what had it is gone: forwards is from the page's beginning.
    return now !== null && now !== document.body && now.compareDocumentPosition(e) & Node.DOCUMENT_POSITION_PRECEDING
      ? 'before'
      : 'behind';
  };
  for (let presses = 0; presses < endless; presses += 1) {
    const where = await page.evaluate(lies, target);
    if (where === 'here') {
      const isSeen = await page.evaluate((e) => {
        const { left, right, top, bottom } = (e as Element).getBoundingClientRect();
        const over = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
        return top >= -1 && bottom <= innerHeight + 1 && over !== null && (e as Element).contains(over);
      }, target);
      if (!isSeen) throw new Error(`${await element.evaluate((e) => e.outerHTML)} has the focus and is not in sight.`);
      return;
    }
    await page.keyboard.press(where === 'before' ? 'Shift+Tab' : 'Tab');
  }
  throw new Error(`${element} cannot be reached with the tab key.`);
};

/** By the keys alone, in a window; what lies in a closed drawer, or behind an open one, is gone to by its button first. */
const keysAt = (window: Window): Hands => {
  const turnDrawer = async (page: Page, isOpen: boolean) => {
    const opener = page.getByRole('button', { name: 'Numbers', exact: true });
    if ((await opener.count()) === 0 || (await opener.getAttribute('aria-expanded')) === String(isOpen)) return;
    await reach(page, opener);
    await page.keyboard.press('Enter');
    // It slides in, and is in sight a moment later.
    await drawn(page);
    await page.waitForTimeout(300);
  };
  return {
    window,
    type: async (page, input, text) => {
      // What is shut off has no role.
      if ((await input.count()) === 0)
        await turnDrawer(page, (await page.locator('.drawer[data-open="true"]').count()) === 0);
      await reach(page, input);
      // Who comes by the tab key finds what stands there selected.
      await page.keyboard.type(text);
    },
    press: async (page, button) => {
      await turnDrawer(page, false);
      await button.waitFor();
      await reach(page, button);
      await page.keyboard.press('Enter');
    },
    pull: async (page, grip, held) => {
      await turnDrawer(page, false);
      // A phone shows one view at a time, and went to the one that shows what was typed.
      const above = page.getByRole('button', { name: 'From above', exact: true });
      if ((await above.count()) > 0) {
        await reach(page, above);
        await page.keyboard.press('Enter');
        await page.waitForFunction(() => document.querySelector('.view-strip')?.scrollLeft === 0);
      }
      await reach(page, grip);
      for (let step = 0; step < 12; step += 1) await page.keyboard.press('ArrowUp');
      await drawn(page);
      await held();
    },
  };
};

export const hands = {
  mouse,
  finger,
  keys: keysAt(desk),
  'keys, on a tablet': keysAt(tablet),
  'keys, on a phone': keysAt(phone),
} as const;

/** Goes the whole way, and gives the templates' PDF as it was downloaded. */
export const walk = async (
  page: Page,
  by: Hands,
  at: (moment: Moment) => Promise<void> = async () => {},
): Promise<Download> => {
  const button = (name: string) => page.getByRole('button', { name, exact: true });
  await by.type(page, field(page, 'Scale length'), '645.2');
  await by.type(page, field(page, 'Straightedge to top'), '10.1');
  await at('measured');
  await by.pull(page, page.getByRole('slider', { name: 'Depth, on the drawing', exact: true }), async () => {
    await followed(page);
    await at('shaping');
  });
  await by.type(page, page.getByLabel('The same bridge at top radii of'), '14; 16; 20');
  await by.press(page, button('Keep one of each'));
  await page.getByRole('heading', { name: 'Beside each other' }).waitFor();
  await at('compared');
  await by.press(page, button('Make it the present one: alternative B'));
  await at('chosen');
  await by.press(page, button('Save templates').first());
  const coming = page.waitForEvent('download');
  await by.press(page, button('Save PDF'));
  const download = await coming;
  await page.getByRole('status').filter({ hasText: 'is saved' }).waitFor();
  await at('saved');
  return download;
};
