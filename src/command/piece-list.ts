import { quote } from '../../geometry/names.ts';
import { pieces } from '../../templates/pieces/index.ts';

/** How many of each piece are asked for, by its id. */
export type PieceList = Readonly<Record<string, number>>;

export type ReadPieces =
  | { readonly ok: true; readonly list: PieceList }
  | { readonly ok: false; readonly says: string };

/** As the settings allow. */
const most = 99;
const ids = pieces.map(({ id }) => id).join(', ');

/** Pieces as they are typed, `footprint:2,saddle`: each by its id, with how many of it where that is not 1. Not ok, in words, where one cannot be read. */
export const readPieces = (typed: string): ReadPieces => {
  const list: Record<string, number> = {};
  const wrong = (says: string): ReadPieces => ({ ok: false, says });
  for (const entry of typed.split(',').map((text) => text.trim())) {
    const [id = '', count = '1', ...more] = entry.split(':').map((text) => text.trim());
    if (!pieces.some((piece) => piece.id === id)) return wrong(`There is no piece ${quote(id)}: choose of ${ids}.`);
    if (more.length > 0 || !/^\d{1,2}$/.test(count) || Number(count) < 1)
      return wrong(
        `How many of ${id}? ${quote(entry)} says ${quote(count)}: give a whole number from 1 to ${most}, as in ${id}:2.`,
      );
    if (Object.hasOwn(list, id)) return wrong(`${id} is named twice among the pieces: name it once, as in ${id}:2.`);
    list[id] = Number(count);
  }
  return { ok: true, list };
};
