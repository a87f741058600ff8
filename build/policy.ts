import { createHash } from 'node:crypto';
import type { Plugin } from 'vite';

/** A text's digest as a content security policy names it (CSP Level 3, 2.3.1; Subresource Integrity uses the same). */
export const digest = (bytes: string | Uint8Array): string =>
  `sha256-${createHash('sha256').update(bytes).digest('base64')}`;

/** What stands between the tags of each script or style of a page that has no source of its own. */
const inlineOf = (html: string, tag: 'script' | 'style'): readonly string[] =>
  [...html.matchAll(new RegExp(`<${tag}(?<attributes>[^>]*)>(?<text>[^]*?)</${tag}>`, 'g'))]
    .filter(({ groups }) => !/\bsrc=|type="text\/plain"/.test(groups?.attributes ?? ''))
    .map(({ groups }) => groups?.text ?? '');

const hashes = (html: string, tag: 'script' | 'style') => inlineOf(html, tag).map((text) => `'${digest(text)}'`);

/**
 * The content security policy of a built page: it runs, shows and asks for its own files only, whatever a job's text holds. A page that is one file has no files beside it: what stands in it is named by
 * its digest, and its workers and fonts are made of its own text.
 */
export const policyOf = (html: string, isSingle: boolean): string => {
  const own = isSingle ? [] : ["'self'"];
  const sources = {
    'default-src': ["'none'"],
    'script-src': [...own, ...hashes(html, 'script')],
    'worker-src': isSingle ? ['blob:'] : own,
    'style-src': [...own, ...hashes(html, 'style')],
    'img-src': [...own, 'data:', 'blob:'],
    'font-src': isSingle ? ['data:'] : own,
    'connect-src': isSingle ? ['data:'] : own,
    ...(!isSingle && { 'manifest-src': own }),
    'base-uri': ["'none'"],
    'form-action': ["'none'"],
  };
  return Object.entries(sources)
    .map(([name, allowed]) => `${name} ${allowed.join(' ')}`)
    .join('; ');
};

const charset = '<meta charset="utf-8" />';

/** A built page with its content security policy in it, before anything that it holds for. */
export const withPolicy = (html: string, isSingle: boolean): string => {
  if (!html.includes(charset)) throw new Error(`index.html has no ${charset} to write the policy behind.`);
  const meta = `<meta http-equiv="Content-Security-Policy" content="${policyOf(html, isSingle)}" />`;
  return html.replace(charset, () => `${charset}\n    ${meta}`);
};

/** Writes the content security policy into the page. Only when the app is built: the development server writes scripts of its own. */
export const contentPolicy = (): Plugin => ({
  name: 'content-policy',
  apply: 'build',
  enforce: 'post',
  generateBundle: {
    // After all others, which still write into the files.
    order: 'post',
    handler(_, bundle) {
      const page = bundle['index.html'];
      if (page?.type !== 'asset') throw new Error('The build has no index.html to write the policy into.');
      page.source = withPolicy(String(page.source), false);
    },
  },
});
