// Makes the README's rows of pictures: the way from the first measurement to the templates at its telling moments, by the keys alone, by the mouse and by a finger.
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createCanvas, loadImage } from '@napi-rs/canvas';
import { it } from 'vitest';
import { openPage } from '../browser/harness.ts';
import { hands, walk } from '../browser/path.ts';

const folder = fileURLToPath(new URL('path', import.meta.url));

/** Whose hands are shown. */
const shown = ['keys', 'mouse', 'finger'] as const satisfies readonly (keyof typeof hands)[];

/** The width of a picture that stands among others, px. */
const most = 720;

const smaller = async (png: Buffer): Promise<Buffer> => {
  const image = await loadImage(png);
  const by = Math.min(1, most / image.width);
  const [width, height] = [Math.round(image.width * by), Math.round(image.height * by)];
  const canvas = createCanvas(width, height);
  const context = canvas.getContext('2d');
  context.imageSmoothingQuality = 'high';
  context.drawImage(image, 0, 0, width, height);
  return canvas.toBuffer('image/png');
};

it.each(shown)(
  '%s',
  async (name) => {
    await mkdir(folder, { recursive: true });
    const page = await openPage({ ...hands[name].window, still: true });
    await walk(page, hands[name], async (moment) => {
      // What is compared stands below the drawing: seen with it from as low as it takes.
      if (moment === 'compared')
        await page
          .getByRole('heading', { name: 'Beside each other' })
          .evaluate((e) => e.scrollIntoView({ block: 'center' }));
      // Till a finger's mark has faded.
      await page.waitForTimeout(600);
      await writeFile(join(folder, `${name}-${moment}.png`), await smaller(await page.screenshot()));
    });
  },
  120_000,
);
