// Makes the README's pictures: the app in a real browser, and the sheets as they leave the command.
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createCanvas } from '@napi-rs/canvas';
import { it } from 'vitest';
import { openPage, type Window } from '../browser/harness.ts';
import { renderPdf } from '../read-pdf.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = fileURLToPath(new URL('.', import.meta.url));
mkdirSync(folder, { recursive: true });

const shots: readonly (Window & { name: string })[] = [
  { name: 'app-1440', width: 1440, height: 900 },
  { name: 'app-820', width: 820, height: 1180, touch: true },
  { name: 'app-390', width: 390, height: 844, touch: true },
  { name: 'app-1440-dark', width: 1440, height: 900, dark: true },
];

it.each(shots)('$name', async ({ name, ...window }) => {
  const page = await openPage(window);
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  // The ways out come from a worker, a check at a time.
  await page.getByRole('button', { name: 'Do it' }).first().waitFor({ state: 'attached' });
  await page.waitForFunction(() => !document.body.textContent?.includes('Looking for what would bring it right…'));
  await page.screenshot({ path: join(folder, `${name}.png`) });
});

it('sheets', async () => {
  const out = mkdtempSync(join(tmpdir(), 'sagitta-pictures-'));
  try {
    execFileSync(
      process.execPath,
      [join(root, 'node_modules/tsx/dist/cli.mjs'), 'src/command/draft.ts', '--out', out],
      { cwd: root },
    );
    const { width, height, data } = await renderPdf(new Uint8Array(readFileSync(join(out, 'templates.pdf'))), 0, 72);
    const canvas = createCanvas(width, height);
    const context = canvas.getContext('2d');
    const image = context.createImageData(width, height);
    image.data.set(data);
    context.putImageData(image, 0, 0);
    writeFileSync(join(folder, 'sheet-1.png'), canvas.toBuffer('image/png'));
  } finally {
    rmSync(out, { recursive: true, force: true });
  }
});
