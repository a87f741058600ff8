import { fieldAt } from '../../../geometry/fields.ts';
import { sayWith } from '../../../geometry/layout.ts';
import { type CutHost, cutFiles } from '../../../templates/cutter/cut-file.ts';
import { drawPiece } from '../../../templates/pieces/index.ts';
import type { Piece } from '../../../templates/pieces/piece.ts';
import { type Shop, shopSchema } from '../../../templates/shop/index.ts';
import type { Built } from '../store.ts';
import { words } from '../words.ts';
import type { TextFile } from './files.ts';
import { fetchFonts, fontPlaces } from './fonts.ts';
import type { Progress } from './paper-work.ts';

/** What came of it: the files, and the sentences that say which templates the tool cannot follow, and what letters lack. */
export interface Cut {
  readonly files: readonly TextFile[];
  readonly problems: readonly string[];
}

/** A sentence that names settings by their places in a file, as the terminal's reader needs them, with what they are called here. */
const named = (sentence: string): string =>
  sentence.replace(/\((cutter\.[a-z]+)\)/gi, (whole, path: string) => {
    const label = fieldAt(path, shopSchema)?.label;
    return label === undefined ? whole : `(“${label}”)`;
  });

/** The page is free between two templates, and a press of “Stop” is heard. */
const pause = () => new Promise<void>((done) => setTimeout(done));

/** Templates as files for the shop's cutter, one by one; undefined where `isStopped` says so. Rejects with what is to be said to the person. */
export const cutAll = async (
  { job, design }: Built,
  pieces: readonly Piece[],
  shop: Shop,
  { tell, isStopped }: { readonly tell: (progress: Progress) => void; readonly isStopped: () => boolean },
): Promise<Cut | undefined> => {
  const fonts = shop.cutter.letters === 'outlines' ? await fetchFonts(fontPlaces()) : undefined;
  const host: CutHost = {
    say: sayWith(job.show),
    window,
    fonts: () => fonts ?? fetchFonts(fontPlaces()),
  };
  const files: TextFile[] = [];
  const problems: string[] = [];
  const lacking = new Set<string>();
  for (const [k, piece] of pieces.entries()) {
    tell({ says: words.templates.steps.cut(k + 1, pieces.length, piece.title), share: k / pieces.length });
    for (const drawing of drawPiece(piece, job, design, shop)) {
      await pause();
      if (isStopped()) return undefined;
      const cut = await cutFiles(drawing, shop, host);
      if (cut.ok) {
        files.push(...cut.files.map(({ id, svg }) => ({ name: `${id}.cutter`, text: svg })));
        for (const character of cut.lacking) lacking.add(character);
      } else problems.push(...cut.problems.map(named));
    }
  }
  return { files, problems: lacking.size > 0 ? [...problems, words.cutter.lacking([...lacking])] : problems };
};
