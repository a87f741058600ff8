import type { Page } from 'playwright-core';
import { expect, it, vi } from 'vitest';
import { scrolledSideways, tooSmall, unreadable } from './cut-off.ts';
import { openPage } from './harness.ts';
import { desk, openStarter, phone, showFiles, tablet, turnDrawer, walked } from './page.ts';

// One starter after the other, each with all that can be open.
vi.setConfig({ testTimeout: 240_000 });

/** Opens whatever is folded away. */
const unfold = async (page: Page) => {
  const closed = page.locator('.below, .numbers').locator('details:not([open]) > summary:visible');
  for (let left = await closed.count(); left > 0; left = await closed.count()) await closed.first().click();
};

/** The boxes that may be scrolled sideways: tables with a column for each string or design in a narrow place. */
const mayScroll = {
  [desk.width]: /^Gauges/,
  [tablet.width]: /^$/,
  [phone.width]: /^(Gauges|The strings|What differs|Reading)/,
};

it.each([
  ['a desk', desk, 24],
  ['a tablet', tablet, 44],
  ['a phone', phone, 44],
] as const)(
  'on %s no word is cut off or over another, what scrolls shows it, and targets are large enough',
  async (_, window, least) => {
    const page = await openPage({ ...window, still: true });
    await page.evaluate(() => document.fonts.ready);
    const hasDrawer = window.width < 1080;
    const faults = new Set<string>();
    const look = async (where: string) => {
      // Until what follows on a change stands there too.
      await page.waitForTimeout(300);
      for (const fault of [...(await unreadable(page)), ...(await tooSmall(page, least))])
        faults.add(`${where}: ${fault}`);
    };
    for (const { id, title } of walked) {
      await openStarter(page, id);
      await page.getByRole('heading', { name: 'What comes of it' }).waitFor();
      const name = page.getByRole('textbox', { name: /^Action measured, .*reading 1$/ });
      if ((await name.count()) === 0) await page.getByRole('button', { name: 'New reading' }).click();
      await name.first().fill('2.7');
      await name.last().fill('1.9');
      await page.getByRole('button', { name: 'Keep one of each' }).click();
      await page.getByRole('figure', { name: /^Gap between crown and bridge top/ }).waitFor();
      await unfold(page);
      await look(title);
      for (const { name, isShown } of await scrolledSideways(page)) {
        expect(name).toMatch(mayScroll[window.width] as RegExp);
        expect(isShown, `whether ${name} shows that it is wider, in ${title}`).toBe(true);
      }
      if (!hasDrawer) continue;
      await turnDrawer(page, true);
      await unfold(page);
      await look(`${title}, its numbers`);
      await turnDrawer(page, false);
    }
    await showFiles(page);
    await page.getByRole('button', { name: 'New job…' }).click();
    await page.getByLabel('I measured frets').check();
    await look('a new job');
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Save templates' }).click();
    await page.locator('.small-piece path').first().waitFor();
    await look('the templates');
    expect([...faults]).toEqual([]);
  },
);

it('finds what is cut off, past the edge, over another word or too small', async () => {
  const page = await openPage(desk);
  expect(await unreadable(page)).toEqual([]);
  await page.evaluate(() => {
    const stand = (text: string, style: Partial<CSSStyleDeclaration>) => {
      const one = document.createElement('button');
      one.textContent = text;
      Object.assign(one.style, { position: 'fixed', zIndex: '9', whiteSpace: 'nowrap', ...style });
      document.body.append(one);
    };
    stand('planted and cut', {
      top: '300px',
      left: '10px',
      width: '60px',
      overflow: 'hidden',
      textOverflow: 'ellipsis',
    });
    stand('planted past', { top: '300px', right: '-60px' });
    stand('planted over', { top: '400px', left: '300px', background: 'none' });
    stand('planted under', { top: '404px', left: '310px', background: 'none' });
    stand('run out', { top: '500px', left: '10px', width: '20px', height: '16px', minHeight: '0' });
  });
  const found = (await unreadable(page)).join('\n');
  expect(found).toMatch(/cut off: “planted and cut”/);
  expect(found).toMatch(/past the window’s edge: “planted past”/);
  expect(found).toMatch(/over each other: “planted over”.*“planted under”/);
  expect(found).toMatch(/runs out: “run out”/);
  expect((await tooSmall(page, 24)).join()).toMatch(/^22.0 × 16.0/);
});
