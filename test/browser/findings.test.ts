import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { openPage } from './harness.ts';
import { desk, field, finding, openStarter } from './page.ts';

/** The first way out of a finding; a worker looks for it. */
const firstWay = (page: Page, check: string) =>
  finding(page, check)
    .getByRole('button', { name: /^Do it/ })
    .first();
const level = (page: Page, check: string) =>
  page.locator(`.findings [data-check="${check}"]`).getAttribute('data-level');
const focused = (page: Page) => page.evaluate(() => document.activeElement?.className);
const counts = (page: Page) => page.locator('.findings .counts').textContent();

describe('what the checks say', () => {
  it('names what is doubtful in the demo, with its number, its usual range and where that comes from', async () => {
    const page = await openPage(desk);
    const exposure = finding(page, 'exposure');
    await exposure.getByRole('img', { name: 'doubtful' }).waitFor();
    expect(await exposure.textContent()).toMatch(/4\.61 mm at E2.*usual 2\.0 to 4\.5 mm; common practice, from memory/);
    expect(await counts(page)).toMatch(/^0 wrong, 2 doubtful, \d+ right$/);
  });

  it('is brought right by the first way out, and Undo brings it back', async () => {
    const page = await openPage(desk);
    const before = await counts(page);
    await firstWay(page, 'exposure').click();
    await expect.poll(() => finding(page, 'exposure').count()).toBe(0);
    expect(await level(page, 'exposure')).toBe('right');
    // Who pressed it by the keyboard goes on from what has become of the checks.
    expect(await focused(page)).toBe('counts');
    await page.getByRole('button', { name: 'Undo: advice on exposure' }).click();
    await finding(page, 'exposure').waitFor();
    expect(await counts(page)).toBe(before);
  });

  it('offers no way out that is for another job: what is typed meanwhile is asked about anew', async () => {
    const page = await openPage(desk);
    await firstWay(page, 'exposure').waitFor();
    await field(page, 'Thickness, centre').fill('8.9');
    await expect.poll(() => finding(page, 'exposure').textContent()).toContain('4.81 mm at E2');
    expect(await finding(page, 'exposure').textContent()).not.toContain('instead of 9.1 mm');
    await firstWay(page, 'exposure').waitFor();
    expect(await finding(page, 'exposure').textContent()).toContain('instead of 8.9 mm');
  });

  it('goes by a range that is the job’s own, says so, and by the usual one again', async () => {
    const page = await openPage(desk);
    await page.getByRole('button', { name: 'Change the range: Exposure' }).click();
    const to = field(page, 'Exposure, right to');
    expect(await to.getAttribute('placeholder')).toBe('4.5');
    await to.pressSequentially('4.75');
    await expect.poll(() => level(page, 'exposure')).toBe('right');
    // It stays under the hand while its range is typed at, and goes to the others once that is closed.
    expect(await to.inputValue()).toBe('4.75');
    expect(await finding(page, 'exposure').textContent()).toMatch(/your range 2\.0 to 4\.75 mm; set for this job/);
    await page.getByRole('button', { name: 'Change the range: Exposure' }).click();
    expect(await finding(page, 'exposure').count()).toBe(0);
    expect(await focused(page)).toBe('counts');
    const right = page.locator('.findings .right [data-check="exposure"]');
    await page.getByText(/checks are right$/).click();
    await right.getByRole('button', { name: 'Change the range: Exposure' }).click();
    await right.getByRole('button', { name: 'Back to the usual range' }).click();
    await expect.poll(() => level(page, 'exposure')).toBe('doubtful');
    expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe(
      'Exposure, doubtful from',
    );
    await right.getByRole('button', { name: 'Change the range: Exposure' }).click();
    expect(await finding(page, 'exposure').textContent()).toContain('usual 2.0 to 4.5 mm');
  });

  it('says nothing of ways out while the numbers cannot be built', async () => {
    const page = await openPage(desk);
    await firstWay(page, 'exposure').waitFor();
    await field(page, 'Front edge to saddle line').fill('38');
    const exposure = finding(page, 'exposure');
    await expect.poll(() => exposure.locator('.ways').count()).toBe(0);
    // As long as a worker would have needed.
    await page.waitForTimeout(1500);
    expect(await exposure.textContent()).toMatch(/slot’s front wall is at risk\.$/);
    await field(page, 'Front edge to saddle line').fill('9.8');
    await firstWay(page, 'exposure').waitFor();
  });

  it('finds nothing to mend in the other starters, where no worker is asked', async () => {
    const page = await openPage(desk);
    await openStarter(page, 'wren');
    await expect.poll(() => counts(page)).toMatch(/^0 wrong, 0 doubtful, \d+ right$/);
    expect(await page.getByText('Looking for what would bring it right…').count()).toBe(0);
  });
});
