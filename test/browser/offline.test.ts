import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, inject, it, onTestFinished } from 'vitest';
import { digest } from '../../build/policy.ts';
import { readPdf } from '../read-pdf.ts';
import { readSvg } from '../read-svg.ts';
import { launch, openPage } from './harness.ts';
import { desk, field } from './page.ts';
import { serveFolder } from './serve.ts';

/** Till the app lies by and answers for itself. */
const putBy = (page: Page) =>
  page.evaluate(async () => {
    const { serviceWorker } = navigator;
    if (serviceWorker.controller) return;
    await new Promise((done) => serviceWorker.addEventListener('controllerchange', done, { once: true }));
  });

/** Till what is typed has gone to the database. */
const kept = (page: Page) => page.waitForTimeout(1200);

const description = (page: Page) => page.locator('meta[name="description"]').getAttribute('content');

/** A later version of the built app: another word in the page, and all that follows from it. */
const laterVersion = async (): Promise<string> => {
  const folder = await mkdtemp(join(tmpdir(), 'sagitta-later-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  await cp(inject('built'), folder, { recursive: true });
  const [page, worker] = [join(folder, 'index.html'), join(folder, 'service-worker.js')];
  const before = await readFile(page, 'utf8');
  const after = before.replace('Design a guitar’s', 'Draw a guitar’s');
  await writeFile(page, after);
  const program = await readFile(worker, 'utf8');
  await writeFile(worker, program.replace(digest(before), digest(after)).replace(/version="\w+"/, 'version="later"'));
  return folder;
};

it('needs no network after the first visit, in whatever folder it lies: nothing is lost, and files are written', async () => {
  const server = await serveFolder(inject('built'), '/a/b/');
  const page = await openPage(desk, { url: server.url, serviceWorkers: 'allow' });
  await putBy(page);
  await server.stop();
  await field(page, 'Thickness, centre').fill('9.25');
  await kept(page);
  await page.reload();
  await page.getByRole('navigation', { name: 'Files' }).waitFor();
  expect(await field(page, 'Thickness, centre').inputValue()).toBe('9.25');

  await page.getByRole('button', { name: 'Save templates' }).click();
  const save = async (name: string) => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name, exact: true }).click(),
    ]);
    return readFile(await download.path());
  };
  const pdf = await readPdf(new Uint8Array(await save('PDF')));
  expect(pdf.pages.length).toBeGreaterThan(1);
  const svg = await save('SVG, three views');
  expect(readSvg(svg.toString()).widthMm).toBeGreaterThan(0);
});

it('tells of a new version and takes it only when asked, with the job as it stands', async () => {
  const server = await serveFolder(inject('built'), '/a/b/');
  const page = await openPage(desk, { url: server.url, serviceWorkers: 'allow' });
  await putBy(page);
  server.put(await laterVersion());
  await page.reload();
  const start = page.getByRole('button', { name: 'Start the new version' });
  await start.waitFor();
  expect(await description(page)).toMatch(/^Design a/);

  // What cannot be used would be lost: first that is said.
  await field(page, 'Relief').fill('much');
  await field(page, 'Thickness, centre').fill('9.25');
  await start.click();
  await page.getByText('The page was not reloaded').waitFor();
  expect(await description(page)).toMatch(/^Design a/);
  await field(page, 'Relief').fill('0.2');
  const again = page.getByRole('button', { name: 'Try again' });
  await Promise.all([page.waitForEvent('load'), again.click()]);
  await page.getByRole('navigation', { name: 'Files' }).waitFor();
  expect(await description(page)).toMatch(/^Draw a/);
  expect(await field(page, 'Thickness, centre').inputValue()).toBe('9.25');
  expect(await field(page, 'Relief').inputValue()).toBe('0.2');
  // Nothing of the earlier one is left.
  expect(await page.evaluate(() => caches.keys())).toEqual([`sagitta ${server.url} later`]);
});

it('says when a part cannot be loaded any more, and offers to load the page anew', async () => {
  const context = await (await launch()).newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.route('**/svg-*.js', (route) => route.fulfill({ status: 404 }));
  await page.goto(inject('url'));
  await page.getByRole('button', { name: 'Save templates' }).click();
  await page.getByRole('button', { name: 'SVG, three views' }).click();
  await page.getByText('A part of the page could not be loaded').waitFor();
  await page.keyboard.press('Escape');
  await Promise.all([page.waitForEvent('load'), page.getByRole('button', { name: 'Reload' }).click()]);
  await context.close();
});
