import type { Page } from 'playwright-core';
import { expect, it, vi } from 'vitest';
import { readJob } from '../../geometry/job-file.ts';
import { readPdf } from '../read-pdf.ts';
import { readSvg } from '../read-svg.ts';
import { openPage, reopen } from './harness.ts';
import { addReading, bytesOf, desk, field, openStarter, phone, save, showFiles, tablet, text, textOf } from './page.ts';

vi.setConfig({ testTimeout: 120_000 });

/** Every text of the page that is seen, typed or read out and holds a number with such a mark, folded parts and all. */
const withMark = (page: Page, mark: '.' | ',') =>
  page.evaluate((sign) => {
    for (const fold of document.querySelectorAll('details')) fold.open = true;
    const said: string[] = [];
    const words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (words.nextNode()) said.push(words.currentNode.textContent ?? '');
    for (const one of document.body.querySelectorAll('*')) {
      for (const name of ['aria-label', 'aria-valuetext', 'placeholder', 'title'])
        said.push(one.getAttribute(name) ?? '');
      if (one instanceof HTMLInputElement && one.type === 'text') said.push(one.value);
    }
    const pattern = sign === '.' ? /\d\.\d/ : /\d,\d/;
    // The program's version, and the section of a book, are no measures.
    return said.map((one) => one.replace(/Sagitta [\d.]+|table [\d.]+/, '')).filter((one) => pattern.test(one));
  }, mark);

const choose = async (page: Page, mark: string) => {
  const drop = page.locator('details.drop-down', { has: page.getByText('Units', { exact: true }) });
  if ((await drop.getAttribute('open')) === null) await drop.locator('summary').click();
  await page.getByRole('radio', { name: mark, exact: true }).check();
  await page.keyboard.press('Escape');
};
const settled = (page: Page) => page.waitForTimeout(1500);

it('shows a German browser every number with a comma, and prints it so; files for machines keep the point', async () => {
  const page = await openPage({ ...desk, locale: 'de-DE' });
  await openStarter(page, 'starling');
  await page.getByRole('button', { name: 'Keep this design as an alternative' }).click();
  await addReading(page, '2,9', '2,3');
  // Typed with either mark, it stands as it was typed while it is typed at, and as the reader has it then.
  const thickness = field(page, 'Thickness, centre');
  await thickness.fill('9.25');
  expect(await thickness.inputValue()).toBe('9.25');
  await thickness.press('Tab');
  expect(await thickness.inputValue()).toBe('9,25');
  await thickness.fill('9,4');
  await thickness.press('Tab');
  await thickness.focus();
  await settled(page);
  // The advice is there, and one of its ways is put in by the program.
  await page
    .locator('.findings')
    .getByRole('button', { name: /^Do it/ })
    .first()
    .waitFor();
  expect(await withMark(page, '.')).toEqual([]);
  expect((await withMark(page, ',')).length).toBeGreaterThan(200);
  expect(await text(page, 'middle.bridge.thickness.value')).toBe('9,4');
  // How a figure came about, and what stands in a dialog.
  await page
    .getByRole('button', { name: /^Exposure.*How\?$/ })
    .first()
    .click();
  await page.locator('dialog.how').waitFor();
  expect(await withMark(page, '.')).toEqual([]);
  await page.keyboard.press('Escape');

  await showFiles(page);
  const job = readJob(await textOf(await save(page, 'Save job')));
  expect(job).toMatchObject({ ok: true, unknown: [], job: { bridge: { thickness: 9.4 } } });
  await page.getByRole('button', { name: 'Save templates' }).click();
  await page.locator('.page-frame text').first().waitFor();
  expect(await withMark(page, '.')).toEqual([]);
  const shown = await page.locator('.page-frame text').allTextContents();
  const pdf = await readPdf(await bytesOf(await save(page, 'Save PDF')));
  const lines = pdf.pages.flatMap(({ texts }) => texts.map((one) => one.text.replace(/Sagitta [\d.]+/, '')));
  expect(lines.filter((line) => /\d\.\d/.test(line))).toEqual([]);
  // What is printed is what was seen.
  expect(lines).toEqual(expect.arrayContaining(shown.filter((one) => /\d,\d/.test(one))));
  expect(lines.filter((line) => /\d,\d/.test(line)).length).toBeGreaterThan(10);
  const svg = await textOf(await save(page, 'SVG, three views'));
  const { elements } = readSvg(svg);
  expect(elements.filter((one) => /\d\.\d/.test(one.text.replace(/Sagitta [\d.]+/, '')))).toEqual([]);
  expect(elements.some((one) => one.tag === 'text' && one.text === '9,4')).toBe(true);
  // A coordinate with a comma in it would be two: none of a path's numbers has one.
  const paths = [...svg.matchAll(/\sd="([^"]*)"/g)].map(([, d]) => d);
  expect(paths.length).toBeGreaterThan(20);
  expect(paths.filter((d) => d?.includes(','))).toEqual([]);
});

it('shows what was chosen in place of it, in every window and the next time, and takes nothing of it into the job', async () => {
  const page = await openPage({ ...desk, locale: 'de-DE' });
  const undo = page.getByRole('button', { name: 'Undo', exact: true });
  await choose(page, 'point');
  expect(await text(page, 'middle.bridge.thickness.value')).toMatch(/^\d+\.\d$/);
  await settled(page);
  expect(await withMark(page, ',')).toEqual([]);
  expect(await undo.isDisabled()).toBe(true);
  const other = await reopen(page, { keepOpen: true });
  expect(await text(other, 'middle.bridge.thickness.value')).toMatch(/^\d+\.\d$/);
  await choose(other, 'comma');
  await page.locator('[data-mark="middle.bridge.thickness.value"]', { hasText: ',' }).waitFor();
  await choose(other, 'browser’s: comma');
  const again = await reopen(page);
  // From the very first drawing on.
  expect(await text(again, 'middle.bridge.thickness.value')).toMatch(/^\d+,\d$/);
});

it('shows an American browser the point, unless a comma is chosen', async () => {
  const page = await openPage({ ...desk, locale: 'en-US' });
  await settled(page);
  expect(await withMark(page, ',')).toEqual([]);
  expect((await withMark(page, '.')).length).toBeGreaterThan(100);
  await choose(page, 'comma');
  await settled(page);
  expect(await withMark(page, '.')).toEqual([]);
});

it.each([
  ['desk', desk],
  ['tablet', tablet],
  ['phone', phone],
  ['phone, lying', { width: 740, height: 360, touch: true }],
] as const)('offers the choice within the window of a %s, each way in a finger’s reach', async (_, window) => {
  const page = await openPage(window);
  await page.getByText('Units', { exact: true }).click();
  const ways = page.getByRole('group', { name: 'Decimals with' }).locator('label');
  expect(await ways.allTextContents()).toEqual(['browser’s: point', 'point', 'comma']);
  for (const way of await ways.all()) {
    await way.scrollIntoViewIfNeeded();
    const box = await way.boundingBox();
    expect(box?.x).toBeGreaterThanOrEqual(0);
    expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThanOrEqual(window.width);
    // WCAG 2.2, 2.5.5: 44 px where it is touched.
    if (window !== desk) expect(box?.height).toBeGreaterThanOrEqual(44);
  }
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(window.width);
});
