import type { Browser } from 'playwright-core';
import type { Pages } from './builds.ts';
import { type Row, times } from './row.ts';

/** Half an hour of dragging: so many drags of so many steps each, as fast as the page takes them. */
const [drags, steps] = [60, 60];
/** Before it is measured first: what is kept at hand, up to a limit, is there. */
const warmUps = 30;

/** What stays in the heap after half an hour of dragging, against what was there before it. */
export const benchHeap = async (browser: Browser, { app }: Pages): Promise<readonly Row[]> => {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, serviceWorkers: 'block' });
  try {
    const page = await context.newPage();
    await page.goto(app);
    await page.locator('.outcome').waitFor();
    const cdp = await context.newCDPSession(page);
    await cdp.send('Performance.enable');
    const held = async (): Promise<number> => {
      await cdp.send('HeapProfiler.collectGarbage');
      const { metrics } = await cdp.send('Performance.getMetrics');
      return metrics.find(({ name }) => name === 'JSHeapUsedSize')?.value ?? 0;
    };
    const drag = async (): Promise<void> => {
      const box = await page.locator('[data-grip="tail.topRadius"] .reach').first().boundingBox();
      if (box === null) throw new Error('The top radius has no grip on the drawing.');
      const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
      await page.mouse.move(x, y);
      await page.mouse.down();
      for (let k = 1; k <= steps; k += 1) await page.mouse.move(x, y + 30 * Math.sin((k * Math.PI * 4) / steps));
      await page.mouse.move(x, y);
      await page.mouse.up();
      await page.waitForTimeout(50);
    };
    for (let k = 0; k < warmUps; k += 1) await drag();
    const before = await held();
    for (let k = 0; k < drags; k += 1) await drag();
    // Till what follows a drag has come to rest.
    await page.waitForTimeout(2000);
    const after = await held();
    const megabytes = (bytes: number) => `${(bytes / 1e6).toFixed(2)} MB`;
    return [
      {
        what: `heap after ${drags * steps} steps`,
        measured: megabytes(after),
        against: `${megabytes(before)} before them`,
        ratio: times(after, before),
        wanted: 'flat',
      },
    ];
  } finally {
    await context.close();
  }
};
