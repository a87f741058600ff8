import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { readShop } from '../../templates/shop/index.ts';
import { readPdf } from '../read-pdf.ts';
import { readSvg } from '../read-svg.ts';
import { openPage } from './harness.ts';
import { bytesOf, desk, field, phone, save, textOf } from './page.ts';

const open = async (page: Page) => {
  await page.getByRole('button', { name: 'Save templates' }).click();
  await page.getByRole('tab', { name: 'Templates' }).waitFor();
};
const tab = (page: Page, name: string) => page.getByRole('tab', { name }).click();

/** How wide a drawing's outline is, by the ends of its lines and cubics, mm. */
const widthOf = (svg: string): number => {
  const outline = readSvg(svg).elements.find(({ id }) => /outline/.test(id));
  const xs = outline?.paths[0]?.segments.flatMap((s) => (s.kind === 'arc' ? [] : [s.from.x, s.to.x])) ?? [];
  return Math.max(...xs) - Math.min(...xs);
};

it('saves the ticked templates, as often as asked, as a PDF at true size, and each as SVG for the hand and for the cutter', async () => {
  const page = await openPage(desk);
  await field(page, 'Job').fill('Curlew 木 / no. 3');
  await open(page);
  await page.getByRole('combobox', { name: 'Paper', exact: true }).selectOption('Letter');
  await page.getByRole('button', { name: 'None', exact: true }).click();
  await page.getByText('No template is ticked').waitFor();
  await page.getByRole('checkbox', { name: 'Footprint, slot and pins' }).check();
  await page.getByRole('button', { name: 'One more of Footprint, slot and pins' }).click();
  // The sheet that is shown is the one that is printed.
  await page.locator('.page-frame text', { hasText: '1 of 2' }).waitFor();
  const ofPage = await page.locator('.page-frame text').allTextContents();

  const pdf = await save(page, 'Save PDF');
  expect(pdf.suggestedFilename()).toBe('Curlew-no-3-templates-letter.pdf');
  const bytes = await bytesOf(pdf);
  const { pages, printScaling } = await readPdf(bytes.slice());
  expect(pages).toHaveLength(2);
  expect(printScaling).toBe('None');
  const [first, second] = pages;
  const said = (one: typeof first) => one?.texts.map(({ text }) => text.trim()).filter(Boolean);
  expect(said(first)).toEqual(expect.arrayContaining(['Footprint, slot and pins']));
  expect(said(second)).toEqual(expect.arrayContaining(['Footprint, slot and pins']));
  expect(ofPage).toEqual(expect.arrayContaining(['Footprint, slot and pins', 'treble', '100 mm']));
  // Letter is 8.5 × 11 in (ANSI/ASME Y14.1).
  const sides = [first?.widthMm ?? 0, first?.heightMm ?? 0].sort((a, b) => a - b);
  expect(sides[0]).toBeCloseTo(215.9, 3);
  expect(sides[1]).toBeCloseTo(279.4, 3);
  // What the PDF's own fonts lack is there as a picture where this device has a font for it, and is named where it has none.
  const status = page.getByRole('status').filter({ hasText: 'templates-letter.pdf is saved' });
  expect(Buffer.from(bytes).includes('/Subtype /Image')).toBe(
    !(await status.textContent())?.includes('No font on this device has 木'),
  );

  const views = readSvg(await textOf(await save(page, 'SVG, three views')));
  expect(views.elements.some(({ text }) => text.includes('From the tail'))).toBe(true);
  // True size: the demo’s bridge is 156 mm across.
  expect(widthOf(await textOf(await save(page, 'SVG, Footprint, slot and pins')))).toBeCloseTo(156, 3);

  // A 2 mm bit in the waste runs 1 mm outside the outline, on either side.
  await tab(page, 'Cutter');
  await field(page, 'Tool or kerf').fill('2');
  const cut = await save(page, 'Save the ticked template');
  expect(cut.suggestedFilename()).toBe('Curlew-no-3-footprint.cutter.svg');
  const followed = readSvg(await textOf(cut));
  const xs = followed.elements
    .filter(({ purpose }) => purpose === 'cut')
    .flatMap(({ paths }) => paths.flatMap(({ segments }) => segments))
    .flatMap((s) => (s.kind === 'arc' ? [] : [s.from.x, s.to.x]));
  expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(158, 3);
  // A file a purpose, all in one.
  await page.getByRole('combobox', { name: 'Files', exact: true }).selectOption('one a purpose');
  const zip = await save(page, 'Save the ticked template');
  expect(zip.suggestedFilename()).toBe('Curlew-no-3-cutter.zip');
  expect(Object.keys(unzipSync(await bytesOf(zip)))).toEqual(
    ['show', 'drill', 'cut'].map((purpose) => `Curlew-no-3-footprint.${purpose}.cutter.svg`),
  );
});

it('corrects for a printer that was proved, says so on the page and keeps it on the device', async () => {
  const page = await openPage(phone);
  await open(page);
  await tab(page, 'Printer');
  await field(page, 'Name of a printer to add').fill('Back room');
  await page.getByRole('dialog').getByRole('button', { name: 'Add', exact: true }).click();
  await field(page, '4 in across').fill('101.2');
  await field(page, '4 in down').fill('101,6');
  await page.getByRole('button', { name: 'Prove the print' }).click();
  await page.getByText('Corrected from now on.').waitFor();
  // Till it has gone to the storage.
  await page.waitForTimeout(600);
  await page.reload();
  await page.getByRole('navigation', { name: 'Files' }).waitFor();
  await open(page);
  await page.getByText('Corrected for Back room.').waitFor();
  // 101.6 / 101.2.
  const factor = 1.003953;
  await tab(page, 'Pages');
  await page.locator('.page-frame text', { hasText: 'corrected for Back room' }).waitFor();
  const { pages } = await readPdf(await bytesOf(await save(page, 'Save PDF')));
  const bars = pages[0]?.paths.flatMap(({ segments }) =>
    segments.length === 1 && segments[0]?.kind === 'line'
      ? [Math.hypot(segments[0].to.x - segments[0].from.x, segments[0].to.y - segments[0].from.y)]
      : [],
  );
  expect(bars?.some((length) => Math.abs(length - 100 * factor) < 0.002)).toBe(true);
  expect(bars?.some((length) => Math.abs(length - 100) < 0.002)).toBe(true);

  await tab(page, 'Settings');
  const settings = readShop(await textOf(await save(page, 'Save settings')));
  expect(settings.ok && settings.shop.printers.list[0]).toMatchObject({ name: 'Back room', readings: [{}, {}] });
});
