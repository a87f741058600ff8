// Pictures of the drawing as the browser shows it, held to those in test/golden/screen: after a change that is meant, `npm run pictures` makes them anew; look at them.
import { readFile } from 'node:fs/promises';
import { createCanvas, loadImage } from '@napi-rs/canvas';
import pixelmatch from 'pixelmatch';
import { expect, it } from 'vitest';
import { shots, take } from './screen.ts';

const pixelsOf = async (png: Uint8Array) => {
  const image = await loadImage(png);
  const { width, height } = image;
  const context = createCanvas(width, height).getContext('2d');
  context.drawImage(image, 0, 0);
  return { width, height, data: context.getImageData(0, 0, width, height).data };
};

/**
 * What may differ: edges that are smoothed otherwise, as another version of the browser does, and beside them so many pixels in any square of 24 × 24 px, in which a figure of the drawing stands. A figure that is another
 * differs by more, as does a line that lies 1 px elsewhere.
 */
const side = 24;
const most = 12;

/** How many pixels of the square that differs most are others than in the picture that is kept, for each picture. */
const differing = async (pictures: Awaited<ReturnType<typeof take>>) =>
  Promise.all(Object.entries(pictures).map(([name, seen]) => differs(name, seen)));

const differs = async (name: string, seen: Uint8Array) => {
  const kept = await pixelsOf(await readFile(new URL(`../golden/screen/${name}.png`, import.meta.url)));
  const now = await pixelsOf(seen);
  expect([now.width, now.height], 'its size, px').toEqual([kept.width, kept.height]);
  return pixelmatch(kept.data, now.data, undefined, now.width, now.height, { windowSize: side });
};

it.each(shots)('$name looks as it did', async (shot) => {
  for (const pixels of await differing(await take(shot))) expect(pixels).toBeLessThanOrEqual(most);
});

it('one figure of the drawing that is another is seen', async () => {
  const [shot] = shots;
  if (shot === undefined) throw new Error('There is no picture.');
  // 3.0 mm in the demo.
  for (const pixels of await differing(await take(shot, ['Tip thickness, bass', '3.1'])))
    expect(pixels).toBeGreaterThan(2 * most);
});
