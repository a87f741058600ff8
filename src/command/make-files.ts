import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Design } from '../../geometry/design.ts';
import type { Job } from '../../geometry/job.ts';
import { sayWith } from '../../geometry/layout.ts';
import { readAs } from '../../geometry/read-as.ts';
import { report } from '../../geometry/report.ts';
import type { Settled } from '../../geometry/settle.ts';
import { threeViews } from '../../geometry/views/index.ts';
import { em } from '../../templates/block.ts';
import { fileInfo } from '../../templates/file-info.ts';
import { pieceSheet, viewSheet } from '../../templates/one-page.ts';
import { toPdf } from '../../templates/pdf.ts';
import { drawPiece, pieces, piecesOf, templatesOf } from '../../templates/pieces/index.ts';
import { codeOf } from '../../templates/set-line.ts';
import { laySheets, type Sheet } from '../../templates/sheets.ts';
import { type Shop, writeShop } from '../../templates/shop/index.ts';
import { toSvg } from '../../templates/svg.ts';
import { svgWindow } from '../../templates/svg-window.ts';
import { sheetInfo } from '../../templates/title-block.ts';
import { cutFilesOf } from './cut-files.ts';
import type { Draft } from './options.ts';
import type { NamedFile } from './write-files.ts';

export type Made =
  | { readonly ok: true; readonly files: readonly NamedFile[]; readonly notes: readonly string[] }
  | { readonly ok: false; readonly lines: readonly string[] };

/** What the files are made of. */
export interface Making {
  readonly job: Settled;
  readonly design: Design;
  /** The job as it stands in its file, where that is not settled. */
  readonly asRead?: Job;
  readonly shop: Shop;
  /** A font for what the bundled one lacks. */
  readonly other?: Uint8Array | undefined;
}

/** Which files are made. */
export type Wanted = Pick<Draft, 'pieces' | 'cut' | 'keepSettings'>;

const packageFile = new URL('../../package.json', import.meta.url);
const font = (name: string): Uint8Array =>
  readFileSync(createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`));

const lackingSays = (characters: readonly string[], named: boolean): string => {
  const shown = characters.slice(0, 20).map((character) => `${character} as ${codeOf(character)}`);
  const more = characters.length > 20 ? ` and ${characters.length - 20} more` : '';
  return `Not in ${named ? 'the bundled font, nor in yours' : 'the bundled font'}, so written as their codes: ${shown.join(', ')}${more}. Name a font that has them with --font.`;
};

/** Every file of a draft, ready to be written, and what is to be said of them; or why they cannot be made, line by line. */
export async function makeFiles(making: Making, wanted: Wanted): Promise<Made> {
  const { job, design, shop, other } = making;
  const plain = readAs(job, 'point');
  const asked = typeof wanted.pieces === 'object' ? wanted.pieces : undefined;
  const chosen = asked ? pieces.filter(({ id }) => Object.hasOwn(asked, id)) : piecesOf(job);
  const without = chosen.flatMap(({ id, whyNot }) => {
    const why = whyNot?.(job);
    return why === undefined ? [] : [`The job has no ${id}. ${why}`];
  });
  if (without.length > 0) return { ok: false, lines: [...without, 'Take it out of --pieces.'] };

  const { version } = JSON.parse(readFileSync(packageFile, 'utf8')) as { version: string };
  const info = sheetInfo(job, version);
  const say = sayWith(job.show);
  const templates = templatesOf(job, design, shop);
  if (templates.length === 0)
    return {
      ok: false,
      lines: ['The settings print none of the job’s templates (copies). Ask for some with --pieces.'],
    };
  let sheets: readonly Sheet[];
  try {
    sheets = laySheets(templates, shop, info, say);
  } catch (error) {
    if (error instanceof RangeError) return { ok: false, lines: [error.message] };
    throw error;
  }
  const fonts = { regular: font('DejaVuSans'), bold: font('DejaVuSans-Bold'), other };
  const lacking = new Set<string>();
  const pdf = await toPdf(sheets, {
    ...fileInfo(info, shop),
    fonts,
    tellLacking: (characters) => {
      for (const character of characters) lacking.add(character);
    },
  });
  const cut = wanted.cut
    ? await cutFilesOf(chosen, job, design, shop, { say, window: svgWindow(), fonts: () => fonts })
    : undefined;
  if (cut?.ok === false) return cut;
  for (const character of cut?.lacking ?? []) lacking.add(character);
  const svg = (sheet: Sheet) => toSvg(sheet.primitives, { ...sheet, window: svgWindow() });
  return {
    ok: true,
    notes: lacking.size > 0 ? [lackingSays([...lacking], other !== undefined)] : [],
    files: [
      { name: 'drawing.svg', content: svg(viewSheet(threeViews(job, design, em, say), info, say)) },
      // A page that is only read or written on is no template: it comes in the PDF, where it is asked for.
      ...chosen
        .filter(({ ownPage }) => !ownPage)
        .flatMap((piece) => drawPiece(piece, job, design, shop))
        .map((piece) => ({ name: `pieces/${piece.id}.svg`, content: svg(pieceSheet(piece, info, say)) })),
      ...(cut?.files ?? []),
      { name: 'templates.pdf', content: pdf },
      { name: 'report.json', content: `${JSON.stringify(report(plain, design, making.asRead ?? plain), null, 2)}\n` },
      ...(wanted.keepSettings ? [{ name: 'settings.json', content: writeShop(shop) }] : []),
    ],
  };
}
