import { expect, it } from 'vitest';
import { openPage } from './harness.ts';

it('loads the built app, which asks for nothing outside its own origin and writes no error', async () => {
  const page = await openPage({ width: 1280, height: 800 });
  expect(await page.title()).toContain('Sagitta');
  await page.waitForLoadState('networkidle');
});

it('opens a window of the size, the touch and the colours asked for', async () => {
  const page = await openPage({ width: 360, height: 740, touch: true, dark: true });
  const seen = await page.evaluate(() => ({
    width: innerWidth,
    touch: navigator.maxTouchPoints > 0,
    dark: matchMedia('(prefers-color-scheme: dark)').matches,
  }));
  expect(seen).toEqual({ width: 360, touch: true, dark: true });
});
