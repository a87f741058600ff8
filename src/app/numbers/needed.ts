import { formatQuantity, type ShowUnits } from '../../../geometry/units.ts';

/** A setback that a string asks for, as it stands in the strings' table. */
export const neededText = (setback: number, show: ShowUnits): string =>
  formatQuantity(setback, 'length', show, { digits: show.length === 'mm' ? 2 : 3 });
