import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { readJob } from '../../geometry/job-file.ts';
import { starters } from '../../src/jobs/index.ts';
import { openPage } from './harness.ts';
import { desk, field, openStarter, phone, save, tablet, text, textOf, turnDrawer } from './page.ts';

const drawn = (page: Page) => page.locator('.drawing').evaluateAll((all) => all.map((e) => e.innerHTML).join());
/** Till what is typed has gone to the storage. */
const settled = (page: Page) => page.waitForTimeout(1200);

describe('the drawing', () => {
  it('stands there at first sight, drawn in three views that line up', async () => {
    const page = await openPage(desk);
    expect(await text(page, 'tail.gap.E2.value')).toMatch(/^\d\.\d\d$/);
    const box = async (mark: string) => {
      const b = await page.locator(`[data-mark="${mark}"]`).boundingBox();
      if (b === null) throw new Error(`${mark} is not there`);
      return b;
    };
    const above = await box('above.bridge.outline');
    const tail = await box('tail.bridge.profile');
    const middle = await box('middle.bridge.section');
    // One axis across, and one height (ISO 5456-2).
    expect(above.x).toBeCloseTo(tail.x, 0);
    expect(above.width).toBeCloseTo(tail.width, 0);
    expect(above.y + above.height).toBeLessThan(tail.y);
    expect(middle.x).toBeGreaterThan(tail.x + tail.width);
  });

  it('follows a number while it is typed, and the number is told in words for who does not see it', async () => {
    const page = await openPage(desk);
    const before = Number(await text(page, 'tail.gap.E2.value'));
    await field(page, 'Thickness, centre').fill('9');
    expect(Number(await text(page, 'tail.gap.E2.value'))).toBeCloseTo(before + 0.1, 2);
    const says = await page.getByRole('img', { name: 'Working drawing' }).locator('desc').textContent();
    expect(says).toContain(`E2 ${(before + 0.1).toFixed(2)} mm`);
  });

  it('stays while a bad text stands in its field with what is wrong with it', async () => {
    const page = await openPage(desk);
    const before = await drawn(page);
    await field(page, 'Thickness, centre').fill('nine');
    await field(page, 'Relief').focus();
    expect(await page.getByRole('alert').filter({ hasText: '“nine”' }).isVisible()).toBe(true);
    expect(await field(page, 'Thickness, centre').inputValue()).toBe('nine');
    await field(page, 'Job').focus();
    expect(await drawn(page)).toBe(before);
  });

  it('keeps what is said of a bad text in sight, at the end of the column too', async () => {
    const page = await openPage(desk);
    const input = field(page, 'Thickness, centre');
    await input.fill('nine');
    const said = page.locator('.numbers .says').filter({ hasText: '“nine”' });
    const isSeen = () =>
      said.evaluate((e) => {
        const [at, column] = [e.getBoundingClientRect(), e.closest('.numbers')?.getBoundingClientRect()];
        return column !== undefined && at.top >= column.top && at.bottom <= column.bottom;
      });
    await expect.poll(isSeen).toBe(true);
  });

  it('of numbers that cannot be built keeps the last that could, lists what is wrong, and keeps the value over a restart', async () => {
    const page = await openPage(desk);
    const outline = () => page.locator('[data-mark="above.bridge.outline"]').getAttribute('d');
    await field(page, 'Front edge to saddle line').fill('38');
    expect(await page.getByText('does not lie inside the footprint').first().isVisible()).toBe(true);
    expect(await page.getByText('Drawing of the last numbers that could be built').isVisible()).toBe(true);
    expect(await outline()).not.toBeNull();
    await page.getByRole('button', { name: 'Go to Front edge to saddle line' }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('field-bridge.frontToSaddle');
    await settled(page);
    await page.reload();
    expect(await field(page, 'Front edge to saddle line').inputValue()).toBe('38.0');
    await page.getByText('Drawing of the last numbers that could be built').waitFor();
    expect(await outline()).not.toBeNull();
  });

  it('stands for every starter', async () => {
    const page = await openPage(desk);
    for (const { id, title } of starters) {
      await openStarter(page, id);
      await expect.poll(() => field(page, 'Job').inputValue(), { message: id }).toBe(title);
      expect(await page.locator('.problems').count(), id).toBe(0);
      const gaps = page.locator('[data-mark^="tail.gap."][data-mark$=".value"]');
      expect(await gaps.count(), id).toBeGreaterThanOrEqual(6);
    }
  });

  it('draws heights as many times as large as is chosen, and leaves the numbers', async () => {
    const page = await openPage(desk);
    const height = async () => {
      const [saddle, bridge] = await Promise.all(
        ['tail.saddle', 'tail.bridge.profile'].map((m) => page.locator(`[data-mark="${m}"]`).boundingBox()),
      );
      return (saddle?.height ?? 0) / (bridge?.width ?? 1);
    };
    const gap = await text(page, 'tail.gap.A2.value');
    const three = await height();
    await page.getByLabel('Heights drawn').fill('1');
    const one = await height();
    expect(three / one).toBeCloseTo(3, 0);
    expect(await text(page, 'tail.gap.A2.value')).toBe(gap);
    expect(await text(page, 'tail.title')).not.toContain('×');
  });
});

describe('the files', () => {
  it('hold the job, which opens again', async () => {
    const page = await openPage(desk);
    await field(page, 'Job').fill('Curlew / no. 3');
    const job = await save(page, 'Save job');
    expect(job.suggestedFilename()).toBe('Curlew-no-3.json');
    const read = readJob(await textOf(job));
    expect(read.ok && read.job.name).toBe('Curlew / no. 3');
  });

  it('can be stopped while they are written', async () => {
    const page = await openPage(desk);
    // Fonts that do not come keep the writer waiting.
    await page.route('**/*Bold*.ttf', () => {});
    await page.getByRole('button', { name: 'Save templates' }).click();
    await page.getByRole('button', { name: 'Save PDF', exact: true }).click();
    await page.getByRole('button', { name: 'Stop' }).click();
    expect(await page.getByText('Stopped; nothing was saved.').isVisible()).toBe(true);
    expect(await page.getByRole('button', { name: 'Save PDF', exact: true }).isEnabled()).toBe(true);
  });

  it('are opened, or refused in words with the job left as it was', async () => {
    const page = await openPage(desk);
    const [picker] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Open job…' }).click(),
    ]);
    await picker.setFiles({ name: 'bad.json', mimeType: 'application/json', buffer: Buffer.from('{"format":') });
    await page.getByText('“bad.json” was not opened').waitFor();
    expect(await page.getByText(/The file is not JSON/).isVisible()).toBe(true);
    const wren = starters.find(({ id }) => id === 'wren');
    await picker.setFiles({ name: 'wren.json', mimeType: 'application/json', buffer: Buffer.from(wren?.text ?? '') });
    await page.waitForFunction((title) => document.title.startsWith(title), wren?.title ?? '');
    expect(await page.getByText('“bad.json” was not opened').count()).toBe(0);
  });
});

describe('a file let go over the page', () => {
  it('is opened', async () => {
    const page = await openPage(desk);
    const kestrel = starters.find(({ id }) => id === 'kestrel');
    await page.evaluate((text) => {
      const data = new DataTransfer();
      data.items.add(new File([text], 'kestrel.json', { type: 'application/json' }));
      const over = { dataTransfer: data, bubbles: true, cancelable: true };
      const target = document.querySelector('.sheet') ?? document.body;
      target.dispatchEvent(new DragEvent('dragover', over));
      target.dispatchEvent(new DragEvent('drop', over));
    }, kestrel?.text ?? '');
    await expect.poll(() => field(page, 'Job').inputValue()).toBe(kestrel?.title);
  });
});

describe('the job', () => {
  it('stands as it was left after a restart, and one that was put aside lies on the shelf', async () => {
    const page = await openPage(desk);
    await field(page, 'Job').fill('Mine');
    await field(page, 'Slot depth').fill('5.1');
    await settled(page);
    await page.reload();
    await expect.poll(() => field(page, 'Slot depth').inputValue()).toBe('5.1');
    await page.getByRole('button', { name: 'New job…' }).click();
    const asked = page.getByRole('dialog', { name: 'New job' });
    await asked.getByRole('textbox', { name: 'Job', exact: true }).fill('Next');
    await asked.getByRole('textbox', { name: 'Scale length', exact: true }).fill('25.4 in');
    await asked.getByRole('button', { name: 'Begin the job' }).click();
    expect(await field(page, 'Scale length').inputValue()).toBe('645.2');
    await field(page, 'Slot depth').fill('4.9');
    await settled(page);
    await page.reload();
    expect(await field(page, 'Job').inputValue()).toBe('Next');
    await page.getByRole('button', { name: 'Jobs…' }).click();
    await page.getByRole('button', { name: 'Open Mine' }).click();
    await expect.poll(() => field(page, 'Slot depth').inputValue()).toBe('5.1');
  });

  it('can be worked on where the browser keeps nothing, which is said', async () => {
    const page = await openPage(desk);
    await page.addInitScript(() =>
      Object.defineProperty(window, 'indexedDB', {
        get() {
          throw new DOMException('denied', 'SecurityError');
        },
      }),
    );
    await page.reload();
    await page.getByText('does not let Sagitta keep the job').waitFor();
    const before = await text(page, 'tail.gap.E2.value');
    await field(page, 'Thickness, centre').fill('9');
    expect(await text(page, 'tail.gap.E2.value')).not.toBe(before);
  });

  it('takes steps back and forth from the keyboard', async () => {
    const page = await openPage(desk);
    await field(page, 'Relief').fill('0.2');
    await page.keyboard.press('Control+z');
    expect(await field(page, 'Relief').inputValue()).not.toMatch(/^0\.20?$/);
    await page.keyboard.press('Control+Shift+z');
    expect(await field(page, 'Relief').inputValue()).toMatch(/^0\.20?$/);
  });
});

it.each([
  ['a desk', desk],
  ['a smaller desk', { width: 1360, height: 860 }],
  ['a tablet', tablet],
] as const)('keeps the buttons of the steps where they are on %s, whatever they are named by', async (_, size) => {
  const page = await openPage(size);
  /** Where each button begins and ends, and how high the rows are that they stand in. */
  const places = () =>
    page.locator('.bar, .opener, .steps button').evaluateAll((all) =>
      all.map((one) => {
        const { left, right, height } = one.getBoundingClientRect();
        return (one.tagName === 'BUTTON' ? [left, right] : [height]).map(Math.round);
      }),
    );
  const before = await places();
  const press = (name: RegExp) => page.getByRole('button', { name }).first().click();
  await page.getByRole('button', { name: 'New reading' }).click();
  await field(page, 'Action measured, E4, reading 1').fill('2.3');
  await page.evaluate(() => (document.activeElement as HTMLElement).blur());
  expect(await places()).toEqual(before);
  await press(/^Undo: Action measured/);
  expect(await places()).toEqual(before);
  await press(/^Undo: a reading added/);
  expect(await places()).toEqual(before);
});

it('keeps the focus on a step that is left when undo or redo is used up, and on a string when one is removed', async () => {
  const page = await openPage(desk);
  const focused = () => page.evaluate(() => document.activeElement?.textContent ?? '');
  await field(page, 'Relief').fill('0.2');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect.poll(focused).toMatch(/^Redo/);
  await page.getByRole('button', { name: /^Redo/ }).click();
  await expect.poll(focused).toMatch(/^Undo/);
  await page.getByRole('button', { name: 'Remove D3' }).click();
  await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe('Remove G3');
  await page.getByRole('button', { name: 'Add one on the bass side' }).click();
  await expect.poll(() => page.evaluate(() => (document.activeElement as HTMLInputElement).value)).toBe('B1');
});

describe('on a phone', () => {
  it('turns to the view that shows the number being typed, or the gaps that it moves', async () => {
    const page = await openPage(phone);
    await turnDrawer(page, true);
    const pressed = (name: string) => page.getByRole('button', { name }).getAttribute('aria-pressed');
    await field(page, 'Tip thickness, bass').focus();
    await expect.poll(() => pressed('From the tail')).toBe('true');
    await field(page, 'Thickness, centre').focus();
    await expect.poll(() => pressed('Along the middle')).toBe('true');
    await field(page, 'Length across').focus();
    await expect.poll(() => pressed('From above')).toBe('true');
    await field(page, 'Action, bass').focus();
    await expect.poll(() => pressed('From the tail')).toBe('true');
  });

  it('keeps the field, what is said of it and the drawing in sight when a keyboard takes half the window', async () => {
    const page = await openPage(phone);
    await turnDrawer(page, true);
    const input = field(page, 'Action, bass');
    await input.fill('99');
    await page.setViewportSize({ width: phone.width, height: 480 });
    const inSight = () =>
      page.evaluate(() => {
        const row = document.querySelector('[data-path="action.bass"]')?.getBoundingClientRect();
        const stage = document.querySelector('.stage')?.getBoundingClientRect();
        const [sheet, glass] = ['.sheet', '.glass'].map((one) => document.querySelector(one)?.getBoundingClientRect());
        if (!row || !stage || !sheet || !glass) return false;
        const seen = Math.min(sheet.bottom, glass.bottom) - Math.max(sheet.top, glass.top);
        return row.top >= stage.bottom && row.bottom <= innerHeight && stage.top >= 0 && seen >= 100;
      });
    await expect.poll(inSight).toBe(true);
  });

  it('has, where a keyboard leaves half of the window, most of the drawing, what the field means and three rows in sight; all else comes back with the room', async () => {
    const page = await openPage(phone);
    await turnDrawer(page, true);
    const undo = page.getByRole('button', { name: /^Undo/ }).first();
    expect(await undo.isVisible()).toBe(true);
    await page.setViewportSize({ width: phone.width, height: 440 });
    await field(page, 'Thickness, centre').fill('9.2');
    const seen = () =>
      page.evaluate(() => {
        const boxOf = (one: string) => document.querySelector(one)?.getBoundingClientRect() ?? new DOMRect();
        const [sheet, glass, help, drawer, typed] = [
          '.sheet',
          '.glass',
          '.help',
          '.drawer',
          '[data-path="bridge.thickness"]',
        ].map(boxOf) as [DOMRect, DOMRect, DOMRect, DOMRect, DOMRect];
        const rows = [...document.querySelectorAll('.drawer .field')].map((row) => row.getBoundingClientRect());
        const isIn = ({ top, bottom }: DOMRect) => top >= drawer.top - 1 && bottom <= drawer.bottom + 1;
        return {
          drawing: (Math.min(sheet.bottom, glass.bottom) - Math.max(sheet.top, glass.top, 0)) / glass.height,
          help: help.top >= sheet.bottom - 1 && help.bottom <= drawer.top + 1,
          typed: isIn(typed),
          // A row's name and number stand in its middle.
          rows: rows.filter(({ top, height }) => height > 0 && isIn(new DOMRect(0, top + height / 4, 1, height / 2)))
            .length,
        };
      });
    await expect.poll(seen).toEqual({ drawing: expect.any(Number), help: true, typed: true, rows: expect.any(Number) });
    const { drawing, rows } = await seen();
    expect(drawing).toBeGreaterThan(0.8);
    expect(rows).toBeGreaterThanOrEqual(3);
    await page.setViewportSize(phone);
    await expect.poll(() => undo.isVisible()).toBe(true);
  });

  it('shows one view at a time, whole, with texts of 12 px and more, and never scrolls sideways', async () => {
    const page = await openPage(phone);
    const shown = async () => {
      const boxes = await page
        .locator('.drawing')
        .evaluateAll((all) => all.map((e) => e.getBoundingClientRect().toJSON()));
      return boxes.findIndex(({ left, right }) => left >= -1 && right <= innerWidth() + 1);
    };
    const innerWidth = () => phone.width;
    expect(await page.locator('.drawing').count()).toBe(3);
    expect(await shown()).toBe(0);
    for (const [index, name] of ['From above', 'From the tail', 'Along the middle'].entries()) {
      const button = page.getByRole('button', { name });
      await button.tap();
      await expect.poll(shown).toBe(index);
      await expect.poll(() => button.getAttribute('aria-pressed')).toBe('true');
      const view = page.locator('.drawing').nth(index);
      const small = await view
        .locator('text')
        .evaluateAll((all) =>
          all
            .filter(
              (t) =>
                Number(t.getAttribute('font-size')) * ((t as SVGTextElement).getScreenCTM()?.d || 1) < 12 &&
                !t.hasAttribute('transform'),
            )
            .map((t) => t.textContent),
        );
      expect(small).toEqual([]);
      const cut = await view.evaluate((svg) => {
        const room = svg.getBoundingClientRect();
        return [...svg.querySelectorAll('text')].filter((t) => {
          const b = t.getBoundingClientRect();
          return (
            b.left < room.left - 1 || b.right > room.right + 1 || b.top < room.top - 1 || b.bottom > room.bottom + 1
          );
        }).length;
      });
      expect(cut).toBe(0);
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(phone.width);
  });
});
