import type { Page } from 'playwright-core';
import { expect, it, vi } from 'vitest';
import { fieldGroups, patternOf, setAt, stringFields } from '../../geometry/fields.ts';
import type { Job } from '../../geometry/job.ts';
import { writeJob } from '../../geometry/job-file.ts';
import { starters } from '../../src/jobs/index.ts';
import { jobOf } from '../solved.ts';
import { footprintJobs, fullJob, oldTop, twelveStrings } from '../templates/full-job.ts';
import { openPage } from './harness.ts';
import { desk, inRoom, showFiles } from './page.ts';

// One job after the other, until every field was in focus.
vi.setConfig({ testTimeout: 240_000 });

const heard = (job: Job): Job => ({
  ...job,
  strings: {
    ...job.strings,
    setbacks: 'heard',
    spacing: 'typed',
    list: job.strings.list.map((string, k) => ({ ...string, nutPlace: -18 + 7.1 * k, saddlePlace: -28 + 11.2 * k })),
  },
});

const jobs: readonly Job[] = [
  ...starters.slice(0, 1).map(({ text }) => jobOf(text)),
  setAt(setAt(fullJob(), 'show.length', 'fraction'), 'show.radius', 'in'),
  heard(jobOf(starters[0]?.text ?? '')),
  twelveStrings(),
  oldTop(),
  ...Object.values(footprintJobs).map((job) => job()),
  ...starters.slice(1).map(({ text }) => jobOf(text)),
];

/** Opens a job by a name of its own, and waits till the page is of it. */
const open = async (page: Page, job: Job, name: string) => {
  await showFiles(page);
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Open job…' }).click(),
  ]);
  await chooser.setFiles({
    name: 'one.json',
    mimeType: 'application/json',
    buffer: Buffer.from(writeJob({ ...job, name })),
  });
  await page.waitForFunction((own) => document.title.startsWith(`${own} `), name);
  await inRoom(page);
  const closed = page.locator('.below, .numbers').locator('details:not([open]) > summary:visible');
  for (let left = await closed.count(); left > 0; left = await closed.count()) await closed.first().click();
};

/** The fields that stand on the page, by their elements' ids. */
const fieldsOn = (page: Page) =>
  page
    .locator(':is(.numbers, .strings, .setup) :is(input, select):visible')
    .evaluateAll((all) => all.map(({ id }) => id).filter((id) => id.startsWith('field-')));

/** The fields that have a help of their own: those in the page's head have none beside the numbers, and the ranges of checks say little, and stand elsewhere. */
const fields = [
  ...fieldGroups.filter(({ id }) => id !== 'limits').flatMap(({ fields }) => fields),
  ...stringFields('*'),
].flatMap(({ path }) => (/^(name|date|show\.(length|radius|gauge))$/.test(path) ? [] : [path]));

/** Puts the focus into one field after the other, and tells in which of them the help has more than can be seen, and by how much, px. */
const overfull = (page: Page, ids: readonly string[]) =>
  page.evaluate(async (all) => {
    const help = document.querySelector('.help');
    const found: string[] = [];
    for (const id of all) {
      document.getElementById(id)?.focus();
      // What would move is told a little later.
      await new Promise((done) => setTimeout(done, 60));
      const over = help === null ? Number.NaN : help.scrollHeight - help.clientHeight;
      if (!(over <= 0)) found.push(`${id}, ${over} px: ${help?.textContent}`);
    }
    return found;
  }, ids);

it('shows all of the help of every field beside the numbers, without scrolling', async () => {
  const page = await openPage({ ...desk, still: true });
  await page.evaluate(() => document.fonts.ready);
  const left = new Set(fields);
  const hidden: string[] = [];
  for (const [k, job] of jobs.entries()) {
    if (left.size === 0) break;
    await open(page, job, `Job ${k + 1}`);
    const ids = (await fieldsOn(page)).filter((id) => {
      const path = id.replace(/^field-/, '');
      return left.delete(patternOf(path) ?? path);
    });
    hidden.push(...(await overfull(page, ids)));
  }
  expect(hidden).toEqual([]);
  expect([...left]).toEqual([]);
});
