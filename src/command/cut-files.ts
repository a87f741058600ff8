import type { Design } from '../../geometry/design.ts';
import type { LayOut } from '../../geometry/layout.ts';
import type { Settled } from '../../geometry/settle.ts';
import { type CutHost, cutFiles } from '../../templates/cutter/cut-file.ts';
import { drawPiece } from '../../templates/pieces/index.ts';
import type { Piece, Template } from '../../templates/pieces/piece.ts';
import type { Shop } from '../../templates/shop/index.ts';
import type { NamedFile } from './write-files.ts';

export type CutMade =
  | { readonly ok: true; readonly files: readonly NamedFile[]; readonly lacking: readonly string[] }
  | { readonly ok: false; readonly lines: readonly string[] };

/** Whether there is anything in a drawing for a tool to follow. */
const isCut = ({ marks }: Template): boolean =>
  marks.some((mark) => mark.kind === 'path' && (mark.purpose === 'cut' || mark.purpose === 'drill'));

/** The files by which a cutter makes some pieces of a job; not ok, in words, where its tool does not get through one, or there is nothing to cut. */
export const cutFilesOf = async (
  pieces: readonly Piece[],
  job: Settled,
  design: Design,
  shop: Shop,
  host: Omit<CutHost, 'say'> & { readonly say: LayOut['say'] },
): Promise<CutMade> => {
  const drawings = pieces
    .filter(({ ownPage }) => !ownPage)
    .flatMap((piece) => drawPiece(piece, job, design, shop))
    .filter(isCut);
  if (drawings.length === 0)
    return { ok: false, lines: ['Nothing of these templates is cut or drilled. Leave out --cut, or ask for others.'] };
  const files: NamedFile[] = [];
  const lacking = new Set<string>();
  const problems: string[] = [];
  for (const drawing of drawings) {
    const made = await cutFiles(drawing, shop, host);
    if (!made.ok) problems.push(...made.problems);
    else {
      files.push(...made.files.map(({ id, svg }) => ({ name: `cut/${id}.svg`, content: svg })));
      for (const character of made.lacking) lacking.add(character);
    }
  }
  if (problems.length === 0) return { ok: true, files, lacking: [...lacking] };
  const wayOut = 'Change the settings as said, or leave these templates out with --pieces.';
  return { ok: false, lines: ['The cutter’s files cannot be made:', ...problems.map((says) => `  ${says}`), wayOut] };
};
