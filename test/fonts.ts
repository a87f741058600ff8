import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const fileOf = (name: string) => createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`);

/** Where the bundled font's two faces lie. */
export const fontFiles = [fileOf('DejaVuSans'), fileOf('DejaVuSans-Bold')];

const face = (name: string) => new Uint8Array(readFileSync(fileOf(name)));

/** The bundled font's files, as the PDF writer takes them. */
export const fonts = { regular: face('DejaVuSans'), bold: face('DejaVuSans-Bold') };
