// Sentences for a person stand in the files of words, so that another language is a file like these.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const app = fileURLToPath(new URL('../../src/app', import.meta.url));
const ofWords = ['words.ts', 'first-words.ts'];

/** Comments say much, and nobody reads them in the app; an error that is thrown is for whoever works on it. */
const bare = (source: string): string =>
  source
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/^\s*\/\/.*$/gm, '')
    .replace(/new (Range|Type)?Error\([^;]*\)|new DOMException\([^;]*\)/g, '');

/** What begins like a sentence: a capital, and three words at least. */
const sentence = /^[A-Z][a-z’]*,?( [\w’:,–-]+){2}/;

/** Literals, and what stands between tags, that read as sentences. */
const sentencesIn = (source: string): readonly string[] =>
  [...bare(source).matchAll(/'((?:[^'\\\n]|\\.)*)'|"([^"\n]*)"|`([^`]*)`|>\s*([^<>{}=;]+?)\s*</g)]
    .map(([, ...parts]) => parts.find((part) => part !== undefined) ?? '')
    .filter((text) => sentence.test(text));

it('no sentence stands in the app but in its words', () => {
  const files = readdirSync(app, { recursive: true, encoding: 'utf8' }).filter((name) => /\.tsx?$/.test(name));
  expect(files.length).toBeGreaterThan(150);
  const found = files
    .filter((name) => !ofWords.includes(name))
    .flatMap((name) => sentencesIn(readFileSync(join(app, name), 'utf8')).map((text) => `${name}: ${text}`));
  expect(found).toEqual([]);
});

it('a sentence would be found, wherever it stood', () => {
  expect(sentencesIn("const says = 'Bridge and saddle templates';")).toEqual(['Bridge and saddle templates']);
  expect(sentencesIn('<p>\n  Lay it down flat.\n</p>')).toEqual(['Lay it down flat.']);
  // biome-ignore lint/suspicious/noTemplateCurlyInString: a template that is looked at
  expect(sentencesIn('`Bridge and saddle, on ${paper}`')).toHaveLength(1);
  expect(sentencesIn(readFileSync(join(app, 'words.ts'), 'utf8')).length).toBeGreaterThan(100);
});
