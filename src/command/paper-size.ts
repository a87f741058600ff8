import { checkField } from '../../geometry/job-file.ts';
import { quote } from '../../geometry/names.ts';
import { parseQuantity } from '../../geometry/units.ts';
import { isPaperId, papers } from '../../templates/paper.ts';
import { type Shop, shopSchema } from '../../templates/shop/index.ts';

/** What a shop's settings say of the paper's size. */
export type PaperSize = Pick<Shop['paper'], 'size'> & Partial<Pick<Shop['paper'], 'width' | 'height'>>;

export type ReadPaper =
  | { readonly ok: true; readonly paper: PaperSize }
  | { readonly ok: false; readonly says: string };

const choices = Object.keys(papers).join(', ');
export const paperWords = `${choices}, or a size such as 300x400mm or 12x18in`;

/**
 * A paper as it is typed: by its name, or by both sides, the longer taken upright; a side without a unit takes the other's. Not ok, in words, where there is no
 * such paper or it is out of the settings' range.
 */
export const readPaper = (typed: string): ReadPaper => {
  const name = typed.trim().toLowerCase();
  if (isPaperId(name)) return { ok: true, paper: { size: name } };
  const sides = typed.split(/\s*[x×]\s*/i);
  const wrong = (says: string): ReadPaper => ({ ok: false, says });
  if (sides.length !== 2) return wrong(`There is no paper ${quote(typed)}: choose one of ${paperWords}.`);
  const units = sides.map((side) => /[a-z"″]+\.?$/i.exec(side.trim())?.[0] ?? '');
  const unit = units[1] || units[0] || '';
  if (unit === '') return wrong(`The paper ${quote(typed)} has no unit: write ${typed.trim()}mm or ${typed.trim()}in.`);
  const lengths: number[] = [];
  for (const [n, side] of sides.entries()) {
    const read = parseQuantity(units[n] ? side : `${side}${unit}`, 'length', 'mm');
    if (!read.ok) return wrong(`The paper ${quote(typed)} cannot be read: ${read.says}`);
    lengths.push(Number(read.value));
  }
  const [width = 0, height = 0] = lengths.sort((a, b) => a - b);
  const says = checkField('paper.width', width, shopSchema) ?? checkField('paper.height', height, shopSchema);
  if (says !== undefined) return wrong(`The paper ${quote(typed)} does not go: ${says}`);
  return { ok: true, paper: { size: 'typed', width, height } };
};
