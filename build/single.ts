import type { Plugin, Rolldown } from 'vite';
import { licencesName } from './licences.ts';
import { withPolicy } from './policy.ts';

/** What the page is called that is one file. */
export const singleName = 'sagitta.html';

const textOf = (file: Rolldown.OutputAsset | Rolldown.OutputChunk | undefined): string => {
  if (file === undefined) throw new Error('The page asks for a file that was not built.');
  return file.type === 'chunk' ? file.code : String(file.source);
};

/** A program as it may stand between a page's script tags (HTML, 4.12.1.3): the same program, without what would end or hide it there. */
const asInline = (code: string): string => code.replaceAll('</script', '<\\/script').replaceAll('<!--', '\\x3C!--');

/** Puts the page's programs, styles, workers and fonts into the page itself, so that it is one file which can be carried and opened anywhere. */
export const singleFile = (): Plugin => ({
  name: 'single-file',
  apply: 'build',
  enforce: 'post',
  config: () => ({
    build: {
      assetsInlineLimit: () => true,
      cssCodeSplit: false,
      modulePreload: false,
      rolldownOptions: { output: { codeSplitting: false } },
    },
  }),
  // A worker's program goes into the page's own.
  resolveId: {
    order: 'pre',
    handler(source, importer) {
      return source.endsWith('?worker') ? this.resolve(`${source}&inline`, importer) : null;
    },
  },
  generateBundle: {
    order: 'post',
    handler(_, bundle) {
      const inline = (html: string, tag: RegExp, put: (file: string) => string) =>
        html.replace(tag, (_tag, name: string) => put(textOf(bundle[name])));
      const scripted = inline(
        textOf(bundle['index.html']),
        /<script type="module"[^>]* src="\.\/([^"]+)"><\/script>/g,
        (code) => `<script type="module">${asInline(code)}</script>`,
      );
      const styled = inline(
        scripted,
        /<link rel="stylesheet"[^>]* href="\.\/([^"]+)">/g,
        (css) => `<style>${css}</style>`,
      );
      // A licence asks to be where the program is.
      const licences = `<script type="text/plain" id="licences">${asInline(textOf(bundle[licencesName]))}</script>`;
      const html = styled.replace('</body>', () => `${licences}\n  </body>`);
      for (const name of Object.keys(bundle)) delete bundle[name];
      this.emitFile({ type: 'asset', fileName: singleName, source: withPolicy(html, true) });
    },
  },
});
