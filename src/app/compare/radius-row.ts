import { fieldAt } from '../../../geometry/fields.ts';
import { formatQuantity, type ShowUnits } from '../../../geometry/units.ts';
import { readField } from '../typing.ts';
import { words } from '../words.ts';

const says = words.compare;

/** Radii as they are typed in a row. */
export const rowText = (radii: readonly (number | 'flat')[], show: ShowUnits): string =>
  radii.map((radius) => formatQuantity(radius, 'radius', show)).join('; ');

/** A thousandth of a mm apart, no one could tell two radii from each other. */
const isSame = (a: number | 'flat', b: number | 'flat'): boolean =>
  a === b || (a !== 'flat' && b !== 'flat' && Math.abs(a - b) < 1e-3);

export type ReadRow =
  | { readonly ok: true; readonly radii: readonly (number | 'flat')[] }
  | { readonly ok: false; readonly says: string };

/**
 * A row of top radii as typed, parted by semicolons, in stored mm; or why it cannot be used, in words. `room` is how many alternatives there is still a letter for, `present` the radius that is there already.
 */
export const readRow = (text: string, show: ShowUnits, room: number, present: number | 'flat'): ReadRow => {
  const field = fieldAt('bridge.topRadius');
  const parts = text
    .split(/[;\n]/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  if (field === undefined || parts.length === 0) return { ok: false, says: says.rowEmpty };
  const radii: (number | 'flat')[] = [];
  for (const part of parts) {
    const read = readField(field, part, show);
    if (!read.ok) return { ok: false, says: read.says };
    const radius = read.value as number | 'flat';
    const name = formatQuantity(radius, 'radius', show, { unit: true });
    if (isSame(radius, present)) return { ok: false, says: says.rowPresent(name) };
    if (radii.some((one) => isSame(one, radius))) return { ok: false, says: says.rowTwice(name) };
    radii.push(radius);
  }
  return radii.length > room ? { ok: false, says: says.rowLong(radii.length, room) } : { ok: true, radii };
};
