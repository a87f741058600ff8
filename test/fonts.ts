import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const face = (name: string) =>
  new Uint8Array(readFileSync(createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`)));

/** The bundled font's files, as the PDF writer takes them. */
export const fonts = { regular: face('DejaVuSans'), bold: face('DejaVuSans-Bold') };
