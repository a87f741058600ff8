import { cp, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { expect, inject, it, onTestFinished } from 'vitest';
import { digest } from '../../build/policy.ts';
import { readPdf } from '../read-pdf.ts';
import { readSvg } from '../read-svg.ts';
import { buildApp } from './build-app.ts';
import { launch, openPage } from './harness.ts';
import { bytesOf, desk, field, save, text } from './page.ts';
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

const freshFolder = async (): Promise<string> => {
  const folder = await mkdtemp(join(tmpdir(), 'sagitta-built-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  return folder;
};

/** A later version of the built app: another word in the page, and all that follows from it. */
const laterVersion = async (): Promise<string> => {
  const folder = await freshFolder();
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
  expect((await readPdf(await bytesOf(await save(page, 'Save PDF')))).pages.length).toBeGreaterThan(1);
  const svg = new TextDecoder().decode(await bytesOf(await save(page, 'SVG, three views')));
  expect(readSvg(svg).widthMm).toBeGreaterThan(0);
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

  const other = await page.context().newPage();
  await other.goto(server.url);
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
  // Another window goes on with what it has.
  await other.getByText('was started in another window').waitFor();
  expect(await description(other)).toMatch(/^Design a/);
  // Nothing of the earlier one is left.
  expect(await page.evaluate(() => caches.keys())).toEqual([`sagitta ${server.url} later`]);
});

it('says when a part cannot be loaded any more, and offers to load the page anew', async () => {
  const page = await (await launch()).newPage({ serviceWorkers: 'block' });
  await page.route('**/svg-*.js', (route) => route.fulfill({ status: 404 }));
  await page.goto(inject('url'));
  await page.getByRole('button', { name: 'Save templates' }).click();
  await page.getByRole('button', { name: 'SVG, three views' }).click();
  await page.getByText('A part of the page could not be loaded').waitFor();
  await page.keyboard.press('Escape');
  await Promise.all([page.waitForEvent('load'), page.getByRole('button', { name: 'Reload' }).click()]);
  await page.close();
});

it('is one file as well, which is opened from a disk and asks for nothing beside it', async () => {
  const folder = await freshFolder();
  buildApp(folder, 'single');
  expect(await readdir(folder)).toEqual(['sagitta.html']);
  const page = await openPage(desk, { url: pathToFileURL(join(folder, 'sagitta.html')).href });
  await page.getByText('This is Sagitta as one file').waitFor();
  expect(await text(page, 'tail.gap.E2.value')).toMatch(/^\d\.\d\d$/);
  expect(await page.evaluate(() => document.fonts.check('14px "DejaVu Sans"', 'abc'))).toBe(true);
  // What the advising worker finds.
  await page.getByRole('button', { name: 'Do it' }).first().waitFor();
  await field(page, 'Thickness, centre').fill('9.25');
  await kept(page);
  await page.reload();
  await page.getByRole('navigation', { name: 'Files' }).waitFor();
  expect(await field(page, 'Thickness, centre').inputValue()).toBe('9.25');
  await page.getByRole('button', { name: 'Save templates' }).click();
  expect((await readPdf(await bytesOf(await save(page, 'Save PDF')))).pages.length).toBeGreaterThan(1);
});

it('is the same to the last byte whenever it is built', async () => {
  const folder = await freshFolder();
  buildApp(folder);
  const bytesIn = async (root: string) => {
    const names = (await readdir(root, { recursive: true, withFileTypes: true })).filter((entry) => entry.isFile());
    const files = names.map(({ parentPath, name }) => join(parentPath, name)).sort();
    return Promise.all(files.map(async (file) => [relative(root, file), digest(await readFile(file))]));
  };
  expect(await bytesIn(folder)).toEqual(await bytesIn(inject('built')));
});

it('names every package that is in it, at the version of the lock file and under a licence that allows it', async () => {
  const list = await readFile(join(inject('built'), 'LICENSES.txt'), 'utf8');
  const named = [...list.matchAll(/^(\S+) (\d+\.\d+\.\d+)\nLicence: (.+)$/gm)].map(([, ...all]) => all);
  const names = named.map(([name]) => name);
  expect(names).toEqual(expect.arrayContaining(['react-dom', '@cantoo/pdf-lib', 'fontkit', 'dejavu-fonts-ttf']));
  const lock = JSON.parse(await readFile(new URL('../../package-lock.json', import.meta.url), 'utf8'));
  // SPDX's names; the font's licence, Bitstream Vera's, has none of its own in its package.
  const allowed = ['0BSD', 'Apache-2.0', 'BSD-3-Clause', 'ISC', 'MIT', 'SEE LICENSE IN README.md AND LICENSE'];
  const wrong = named.filter(([name, version, licence]) => {
    const locked = lock.packages[name === lock.name ? '' : `node_modules/${name}`];
    return locked?.version !== version || !allowed.includes(licence ?? '');
  });
  expect(wrong).toEqual([]);
});

it('can be installed as a program of its own: the browser reads its manifest without an error, and its icons are as large as that says', async () => {
  const page = await openPage(desk);
  const session = await page.context().newCDPSession(page);
  const { url, data, errors } = await session.send('Page.getAppManifest');
  expect(errors).toEqual([]);
  const { name, start_url, icons } = JSON.parse(data ?? '');
  expect(name).toBe('Sagitta');
  expect(new URL(start_url, url).href).toBe(inject('url'));
  const sizes = await page.evaluate(
    (names: readonly string[]) =>
      Promise.all(
        names.map(async (name) => {
          const image = new Image();
          image.src = name;
          await image.decode();
          return `${image.naturalWidth}x${image.naturalHeight}`;
        }),
      ),
    icons.map((icon: { src: string }) => icon.src),
  );
  expect(sizes).toEqual(icons.map((icon: { sizes: string }) => icon.sizes));
});
