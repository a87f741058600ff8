import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { packageOf } from '../../build/licences.ts';

const root = new URL('../../', import.meta.url).pathname.replace(/\/$/, '');

it.each([
  ['/house/src/app/main.ts', undefined],
  ['/house/node_modules/idb/build/index.js', '/house/node_modules/idb'],
  ['/house/node_modules/@cantoo/pdf-lib/es/api/index.js?commonjs', '/house/node_modules/@cantoo/pdf-lib'],
  ['/house/node_modules/fontkit/node_modules/clone/clone.js', '/house/node_modules/fontkit/node_modules/clone'],
  ['node_modules/dejavu-fonts-ttf/ttf/DejaVuSans.ttf', `${root}/node_modules/dejavu-fonts-ttf`],
  ['\0vite/preload-helper.js', `${root}/node_modules/vite`],
])('finds the package of %s', (id, folder) => {
  expect(packageOf(id)).toBe(folder);
});

it('pins every package to one version', () => {
  const { dependencies, devDependencies } = JSON.parse(readFileSync(`${root}/package.json`, 'utf8'));
  const loose = Object.entries({ ...dependencies, ...devDependencies }).filter(
    ([, version]) => !/^\d+\.\d+\.\d+$/.test(String(version)),
  );
  expect(loose).toEqual([]);
});
