import { readFile } from 'node:fs/promises';
import type { Download, Page } from 'playwright-core';
import { roomy } from '../../src/app/media.ts';
import { starters } from '../../src/jobs/index.ts';

export const desk = { width: 1440, height: 900 };
export const tablet = { width: 820, height: 1180, touch: true };
export const phone = { width: 390, height: 844, touch: true };

/** Till what was done has been drawn. */
export const drawn = (page: Page) =>
  page.evaluate(() => new Promise<void>((done) => requestAnimationFrame(() => requestAnimationFrame(() => done()))));

/** Till the sheet and the numbers have followed a hand that holds a number still. */
export const followed = async (page: Page) => {
  const look = () =>
    page.evaluate(() => {
      const typed = [...document.querySelectorAll('input')].map(({ value }) => value).join();
      return `${document.querySelector('.sheet')?.outerHTML}${typed}`;
    });
  await drawn(page);
  for (let before = '', now = await look(); now !== before; [before, now] = [now, await look()])
    await page.waitForTimeout(250);
};

/** Till the drawing has followed its room: where columns stand side by side it takes all of it, as soon as the page has measured it. */
export const inRoom = (page: Page) =>
  page.waitForFunction((roomy) => {
    const [paper, glass] = ['.paper', '.glass'].map((name) => document.querySelector(name));
    return !matchMedia(roomy).matches || paper?.clientHeight === glass?.clientHeight;
  }, roomy);

/** What is saved when the button of this very name is pressed. */
export const save = async (page: Page, button: string): Promise<Download> => {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button, exact: true }).click(),
  ]);
  return download;
};
export const bytesOf = async (download: Download) => new Uint8Array(await readFile(await download.path()));
export const textOf = async (download: Download) => readFile(await download.path(), 'utf8');

/** The input of this very name: figures and ranges carry it within theirs. */
export const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });

/** The text of a mark in the drawing. */
export const text = (page: Page, mark: string) => page.locator(`[data-mark="${mark}"]`).first().textContent();

/** What a check has found that is not right. */
export const finding = (page: Page, check: string) => page.locator(`.findings .open [data-check="${check}"]`);

/** Shows the buttons of the files, where they lie behind one. */
export const showFiles = async (page: Page) => {
  const one = page.locator('.files summary');
  if (await one.isVisible()) await one.click();
};

/** What the slow walks go through, number by number: the demo and the two starters with most on them; every starter with SAGITTA_STARTERS=all, as `npm run prove` asks. */
export const walked = starters.filter(
  ({ id }, k) => process.env.SAGITTA_STARTERS === 'all' || k === 0 || id === 'starling' || id === 'lapwing',
);

/** Opens a starter in place of the demo. */
export const openStarter = async (page: Page, id: string) => {
  const title = starters.find((one) => one.id === id)?.title ?? '';
  await showFiles(page);
  await page.getByRole('button', { name: 'New job…' }).click();
  await page.getByRole('radio', { name: 'A starter' }).check();
  await page.getByRole('button', { name: `Open ${title}` }).click();
  await page.waitForFunction((name) => document.title.startsWith(name), title);
  // The dialog is gone, and the pointer must not point at what lay under it.
  await page.mouse.move(0, 0);
  await inRoom(page);
};

/** Opens or closes the drawer with the numbers, where they lie in one. */
export const turnDrawer = async (page: Page, isOpen: boolean) => {
  const opener = page.getByRole('button', { name: 'Numbers', exact: true });
  if ((await opener.count()) > 0 && (await opener.getAttribute('aria-expanded')) !== String(isOpen))
    await opener.click();
};

/** Begins a reading of the set-up, with the action at the two outer strings of the demo. */
export const addReading = async (page: Page, bass: string, treble: string) => {
  await page.getByRole('button', { name: 'New reading' }).click();
  await field(page, 'Action measured, E2, reading 1').fill(bass);
  await field(page, 'Action measured, E4, reading 1').fill(treble);
};
