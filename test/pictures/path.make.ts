// Makes the README's row of pictures: the way from the first measurement to the templates, at its telling moments, by the keys, the mouse and a finger.
import { fileURLToPath } from 'node:url';
import { it } from 'vitest';
import { openPage } from '../browser/harness.ts';
import { hands, type Moment, walk } from '../browser/path.ts';

const folder = fileURLToPath(new URL('.', import.meta.url));

/** Whose hands are shown at which moments. */
const shown = {
  keys: ['measured'],
  mouse: ['shaping', 'compared'],
  finger: ['compared', 'saved'],
} as const satisfies Readonly<Partial<Record<keyof typeof hands, readonly Moment[]>>>;

it.each(Object.keys(shown) as (keyof typeof shown)[])(
  '%s',
  async (name) => {
    const page = await openPage({ ...hands[name].window, still: true });
    await walk(page, hands[name], async (moment) => {
      const moments: readonly Moment[] = shown[name];
      if (!moments.includes(moment)) return;
      // What is compared stands below the drawing: seen with it from as low as it takes.
      if (moment === 'compared')
        await page
          .getByRole('heading', { name: 'Beside each other' })
          .evaluate((e) => e.scrollIntoView({ block: 'center' }));
      await page.screenshot({ path: `${folder}path-${moment}-${name}.png` });
    });
  },
  120_000,
);
