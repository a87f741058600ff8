import { expect, inject, it } from 'vitest';
import { launch, openPage } from './harness.ts';

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

it('runs and asks for nothing that is not its own, even where such a thing has got into it', async () => {
  const page = await (await launch()).newPage({ serviceWorkers: 'block' });
  await page.goto(inject('url'));
  const done = await page.evaluate(async () => {
    const tried: Record<string, string> = {};
    const attempt = async (what: string, act: () => unknown) => {
      try {
        await act();
        tried[what] = 'done';
      } catch (error) {
        tried[what] = (error as Error).name;
      }
    };
    // As a program of the page: what a test itself runs at once may do all.
    await new Promise((done) => setTimeout(done));
    await attempt('a text run as a program', () => new Function('return 1')());
    await attempt('an answer from elsewhere', () => fetch('http://127.0.0.1:9/'));
    const script = document.createElement('script');
    script.textContent = 'document.title = "taken over"';
    document.body.append(script);
    document.body.setAttribute('style', 'opacity: 0.5');
    tried.title = document.title.includes('taken over') ? 'changed' : 'kept';
    tried.opacity = getComputedStyle(document.body).opacity;
    return tried;
  });
  await page.close();
  // The errors are those that CSP Level 3 (4.4, 4.1.2) and Fetch name.
  expect(done).toEqual({
    'a text run as a program': 'EvalError',
    'an answer from elsewhere': 'TypeError',
    title: 'kept',
    opacity: '1',
  });
});
