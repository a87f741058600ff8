import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';

/** The file's name beside the page. */
export const licencesName = 'LICENSES.txt';

const here = fileURLToPath(new URL('..', import.meta.url));
const folder = 'node_modules/';

/** The folder of the package that a module of the build comes from; undefined for the app's own. What the builders put in themselves carries their names. */
export const packageOf = (id: string): string | undefined => {
  const [path = ''] = id.replace(/^\0/, '').split('?');
  const builder = /^(?:vite|rolldown)(?=\/)/.exec(path)?.[0];
  if (id.startsWith('\0') && builder) return join(here, folder, builder);
  const at = path.lastIndexOf(`/${folder}`);
  if (at < 0) return path.startsWith(folder) ? packageOf(join(here, path)) : undefined;
  const inside = path.slice(at + folder.length + 1).split('/');
  return join(path.slice(0, at + 1), folder, ...inside.slice(0, inside[0]?.startsWith('@') ? 2 : 1));
};

interface Licensed {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  readonly text: string;
}

/** What a package says of itself. Throws an Error where it names no licence: it may not be shipped then. */
const licensed = (root: string): Licensed => {
  const { name, version, license } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  if (typeof license !== 'string')
    throw new Error(`${name} ${version} names no licence in its package.json, and may not be shipped. Leave it out.`);
  const files = readdirSync(root).filter((file) => /^(?:licen[cs]e|copying)/i.test(file));
  const texts = files.map((file) => readFileSync(join(root, file), 'utf8').replace(/\r\n/g, '\n').trim());
  // What a builder holds itself does not come into the page with the few lines of its own that do.
  const [text = ''] = texts.join('\n\n').split(/^#+ Licenses of bundled dependencies/m);
  return { name, version, licence: license, text: text.trim() };
};

const rule = '-'.repeat(72);
const entry = ({ name, version, licence, text }: Licensed): string =>
  [`${name} ${version}`, `Licence: ${licence}`, ...(text === '' ? [] : ['', text])].join('\n');

/**
 * Writes beside the page which packages are in it, each with its version, its licence and that licence's text. Gives two plugins: for the page, and for its workers, which are built by themselves and
 * before it.
 */
export const licences = (): { readonly page: Plugin; readonly workers: Plugin } => {
  const roots = new Set<string>();
  const gather: Plugin['generateBundle'] = (_, bundle) => {
    for (const file of Object.values(bundle))
      for (const id of file.type === 'chunk' ? file.moduleIds : file.originalFileNames) {
        const root = packageOf(id);
        if (root !== undefined) roots.add(root);
      }
  };
  return {
    workers: { name: 'licences-of-workers', apply: 'build', generateBundle: gather },
    page: {
      name: 'licences',
      apply: 'build',
      generateBundle(...args) {
        gather.apply(this, args);
        const all = [here, ...[...roots].sort()].map(licensed);
        const source = `Sagitta, and what is in it of others.\n\n${all.map(entry).join(`\n\n${rule}\n\n`)}\n`;
        this.emitFile({ type: 'asset', fileName: licencesName, source });
      },
    },
  };
};
