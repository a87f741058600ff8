// Makes the pictures of the drawing that test/browser/screen.test.ts holds the app to.
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { it } from 'vitest';
import { shots, take } from '../browser/screen.ts';

const folder = fileURLToPath(new URL('../golden/screen/', import.meta.url));
mkdirSync(folder, { recursive: true });

it.each(shots)('$name', async (shot) => {
  for (const [name, png] of Object.entries(await take(shot))) writeFileSync(`${folder}${name}.png`, png);
});
