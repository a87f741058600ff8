import type { Plugin } from 'vite';

/** Tells a browser that knows it that nearly all of a script is called as soon as it is loaded (WICG, Explicit JavaScript Compile Hints). */
const hint = '//# allFunctionsCalledOnLoad';

/** Lets browsers compile the script of the first drawing whole while it is loaded, off the main thread, and not function by function as they are called. */
export const compileHint = (): Plugin => ({
  name: 'compile-hint',
  apply: 'build',
  enforce: 'post',
  generateBundle: {
    // After all others, which still write into the files; before what takes their digests.
    order: 'post',
    handler(_, bundle) {
      for (const file of Object.values(bundle))
        if (file.type === 'chunk' && file.name === 'first') file.code = `${hint}\n${file.code}`;
    },
  },
});
