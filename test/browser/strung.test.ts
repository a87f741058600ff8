import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { openPage } from './harness.ts';
import { addReading, desk, field } from './page.ts';

/** Whether nothing lies over the middle of it, and it is in sight. */
const isSeen = (of: Locator) =>
  of.evaluate((it) => {
    const { left, right, top, bottom } = it.getBoundingClientRect();
    return it.contains(document.elementFromPoint((left + right) / 2, (top + bottom) / 2));
  });
const number = (text: string | null | undefined) => Number(text?.replace('−', '-').match(/-?\d+(\.\d+)?/)?.[0]);

describe('a figure asked how it came about', () => {
  // The one among the figures: the drawing's own number can be asked too.
  const asked = (page: Page, name: RegExp) => page.locator('button.ask').and(page.getByRole('button', { name }));
  const ask = (page: Page) => asked(page, /^Exposure, E2: .*How\?$/);
  const title = (page: Page) => page.locator('#how-title').textContent();

  it('answers with its formula, what went into it and the source, and leads on to what was reckoned itself', async () => {
    const page = await openPage(desk);
    const shown = number((await ask(page).getAttribute('aria-label'))?.split(':')[1]);
    await ask(page).click();
    const dialog = page.getByRole('dialog', { name: 'Exposure, E2' });
    expect(await dialog.locator('.formula').textContent()).toBe('e = zs − zb');
    expect(await dialog.textContent()).toContain('Source: Definition.');
    const inputs = await dialog.locator('tbody td:last-child').allTextContents();
    const [over, under] = inputs.map(number);
    expect((over ?? Number.NaN) - (under ?? Number.NaN)).toBeCloseTo(shown, 2);

    await dialog.getByRole('button', { name: 'Deck height: how?' }).click();
    expect(await title(page)).toMatch(/^Deck height/);
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    expect(await title(page)).toBe('Exposure, E2');
    await page.getByRole('button', { name: 'Close', exact: true }).click();
    expect(await page.getByRole('dialog').count()).toBe(0);
  });

  it('leads to the field of a number that was typed', async () => {
    const page = await openPage(desk);
    await asked(page, /^Straightedge clearance: /).click();
    await page.getByRole('button', { name: 'Go to Thickness, centre' }).click();
    expect(await page.getByRole('dialog').count()).toBe(0);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('field-bridge.thickness');
  });

  it('gives the focus back when it is closed, by Escape too, also after it led on', async () => {
    const page = await openPage(desk);
    const focused = () => page.evaluate(() => document.activeElement?.getAttribute('aria-label'));
    const label = await ask(page).getAttribute('aria-label');
    await ask(page).focus();
    await page.keyboard.press('Enter');
    await page.keyboard.press('Escape');
    await expect.poll(() => page.getByRole('dialog').count()).toBe(0);
    expect(await focused()).toBe(label);
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Deck height: how?' }).click();
    // What was pressed is gone with its table: the focus must stay in the dialog.
    expect(await page.evaluate(() => document.activeElement?.closest('dialog')?.className)).toBe('how');
    await page.getByRole('button', { name: 'Close', exact: true }).click();
    await expect.poll(focused).toBe(label);
  });
});

it('a table ends every figure where its column’s head ends', async () => {
  const page = await openPage(desk);
  await addReading(page, '2.7', '1.9');
  const astray = await page.locator('.figures').evaluateAll((tables) =>
    (tables as HTMLTableElement[]).flatMap((table) => {
      const heads = [...(table.tHead?.rows[0]?.cells ?? [])].map((head) => head.getBoundingClientRect().right);
      return [...table.rows].flatMap((row) =>
        [...row.cells].flatMap((cell, k) => {
          const figure = cell.querySelector('button.ask');
          if (figure === null || !figure.checkVisibility()) return [];
          const off = figure.getBoundingClientRect().right - (heads[k] ?? Number.NaN);
          return Math.abs(off) < 1 ? [] : [`${table.parentElement?.ariaLabel}: ${figure.ariaLabel} ${off} px`];
        }),
      );
    }),
  );
  expect(astray).toEqual([]);
});

it('the chart of the gaps is seen whole on a desk, with its heading', async () => {
  const page = await openPage(desk);
  await page.getByRole('button', { name: 'Keep one of each' }).click();
  const chart = page.getByRole('figure', { name: /^Gap between crown and bridge top along the saddle, mm/ });
  const plot = chart.locator('svg.chart');
  await plot.waitFor();
  const room = await page.locator('.works').evaluate((works) => works.clientHeight);
  const tall = await plot.evaluate(
    (svg) => svg.getBoundingClientRect().bottom - (svg.closest('figure')?.getBoundingClientRect().top ?? Number.NaN),
  );
  expect(tall).toBeLessThan(room);
});

describe('the set-up', () => {
  it('says what to take off as soon as both outer strings are measured', async () => {
    const page = await openPage(desk);
    await page.getByRole('button', { name: 'New reading' }).click();
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute('aria-label')))
      .toBe('Action measured, E2, reading 1');
    const says = page.locator('.setup .sentences');
    await page.keyboard.type('2.7');
    expect(await says.textContent()).toContain('Still to measure: the action at E4');
    await field(page, 'Action measured, E4, reading 1').fill('1.9');
    const [, bass, treble] =
      (await says.textContent())?.match(
        /^Take (\d\.\d\d) mm off the bottom at the bass end and (\d\.\d\d) mm at the treble end\./,
      ) ?? [];
    // The pivot rule: twice at the saddle what is wanted at fret 12, and a little more for the setback; the ends lie beyond the strings.
    expect(Number(bass)).toBeGreaterThan(2 * 0.3);
    expect(Number(bass)).toBeLessThan(2 * 0.3 + 0.1);
    expect(Number(treble)).toBeGreaterThan(2 * 0.1 - 0.1);
    expect(Number(treble)).toBeLessThan(2 * 0.1 + 0.01);
  });

  it('keeps what to take off in sight of whoever types the last string’s reading', async () => {
    const page = await openPage(desk);
    await page.getByRole('button', { name: 'New reading' }).click();
    for (const action of ['2.7', '2.5', '2.4', '2.3', '2.2', '1.9']) {
      await page.keyboard.type(action);
      await page.keyboard.press('Enter');
    }
    const says = page.locator('.setup .sentences p', { hasText: /^Take \d\.\d\d mm off the bottom/ });
    await says.waitFor();
    await expect.poll(() => isSeen(says)).toBe(true);
    // Nor does it lie over what is typed.
    for (const string of ['E4', 'D3', 'E2']) {
      const reading = field(page, `Action measured, ${string}, reading 1`);
      await reading.focus();
      await expect.poll(() => isSeen(reading)).toBe(true);
    }
  });

  it('keeps its readings in the job over a restart', async () => {
    const page = await openPage(desk);
    await addReading(page, '2.7', '1.9');
    const says = () => page.locator('.setup .sentences').textContent();
    const before = await says();
    await field(page, 'Note, reading 1').fill('strung up');
    await page.waitForTimeout(500);
    await page.reload();
    expect(await field(page, 'Note, reading 1').inputValue()).toBe('strung up');
    expect(await says()).toBe(before);
  });
});

describe('the help', () => {
  it('tells what would move if the number in focus were a little larger, and typing it does so', async () => {
    const page = await openPage(desk);
    const gap = async () => number(await page.locator('[data-mark="tail.gap.E2.value"]').first().textContent());
    const before = await gap();
    await field(page, 'Thickness, centre').focus();
    const says = await page.locator('.help .what-if').textContent();
    expect(says).toMatch(/^0\.1 mm more here: exposure /);
    const told = number(says?.split('exposure')[1]);
    await field(page, 'Thickness, centre').fill('9.2');
    expect((await gap()) - before).toBeCloseTo(told, 2);
    await field(page, 'Heel depth').focus();
    expect(await page.locator('.help .what-if').textContent()).toContain('neither exposure nor break angle moves.');
    await page.getByRole('button', { name: 'Change the range: Exposure' }).click();
    await field(page, 'Exposure, right to').focus();
    await expect.poll(() => page.locator('.help').textContent()).toContain('Where the range that is right ends.');
    expect(await page.locator('.help .what-if').count()).toBe(0);
  });
});
