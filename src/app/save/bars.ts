import type { Correction } from '../../../templates/correction.ts';
import type { Sheet } from '../../../templates/sheets.ts';

/** A check bar as it stands on a page: which way it runs as the page is read, and its length, mm and as it stands at the bar. */
export interface Bar {
  readonly key: string;
  readonly along: keyof Correction;
  readonly length: number;
  readonly says: string;
}

const lengths: Readonly<Record<string, readonly [length: number, says: string]>> = {
  '100': [100, '100 mm'],
  '4in': [101.6, '4 in'],
  '150': [150, '150 mm'],
  '200': [200, '200 mm'],
};
const isBar = /^check\.(?:far\.)?([xy])(100|4in|150|200)$/;

/** Those that stand on every page, and are there where no page is laid. */
const always = ['x100', 'x4in', 'y100', 'y4in'];

const barOf = (key: string): Bar => {
  const [length, says] = lengths[key.slice(1)] ?? [100, '100 mm'];
  return { key, along: key.startsWith('x') ? 'across' : 'down', length, says };
};

/** Whether a page lies on its side. */
export const liesOf = ({ width, height }: Sheet): 'upright' | 'lying' => (width > height ? 'lying' : 'upright');

/** The check bars that stand on pages lying so, the longest first. */
export const barsOn = (sheets: readonly Sheet[], lies: 'upright' | 'lying'): readonly Bar[] => {
  const keys = sheets
    .filter((sheet) => liesOf(sheet) === lies)
    .flatMap(({ primitives }) =>
      primitives.flatMap(({ id }) => {
        const found = isBar.exec(id);
        return found ? [`${found[1]}${found[2]}`] : [];
      }),
    );
  return [...new Set([...always, ...keys])]
    .map(barOf)
    .sort((a, b) => a.along.localeCompare(b.along) || b.length - a.length);
};
