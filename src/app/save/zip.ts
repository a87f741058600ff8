import { strToU8, zipSync } from 'fflate';
import type { TextFile } from './files.ts';

/** Files packed into the bytes of one ZIP file, in their order; the same files give the same bytes. */
export const zipOf = (files: readonly TextFile[]): Uint8Array<ArrayBuffer> =>
  zipSync(Object.fromEntries(files.map(({ name, text }) => [name, strToU8(text)])), {
    level: 6,
    // The first day that a ZIP knows, for each; it is written as clocks show it here.
    mtime: new Date(1980, 0, 1),
  });
