import type { Page } from 'playwright-core';
import { starters } from '../../src/jobs/index.ts';

export const desk = { width: 1440, height: 900 };
export const tablet = { width: 820, height: 1180, touch: true };
export const phone = { width: 390, height: 844, touch: true };

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
