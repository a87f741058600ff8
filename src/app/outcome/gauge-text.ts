import { formatQuantity, MM_PER_INCH, type ShowUnits } from '../../../geometry/units.ts';

/** A miss to a thousandth of a mm or a ten-thousandth of an inch, 64ths being too coarse for it; with its unit unless it is `bare`, with a + unless it is not `signed`. */
export const missText = (
  value: number,
  show: ShowUnits,
  options: { readonly bare?: boolean; readonly signed?: boolean } = {},
): string => {
  const isMm = show.length === 'mm';
  const text = formatQuantity(
    value,
    'length',
    { ...show, length: isMm ? 'mm' : 'in' },
    { digits: isMm ? 3 : 4, unit: !options.bare },
  );
  return options.signed && value > 0 && /[1-9]/.test(text) ? `+${text}` : text;
};

/** The unit in which a gauge is marked: inches where it is of quarters of an inch, else mm. */
const markedIn = (radius: number): 'mm' | 'in' => {
  const quarters = (radius / MM_PER_INCH) * 4;
  return Math.abs(quarters - Math.round(quarters)) < 1e-9 ? 'in' : 'mm';
};

/** The unit in which the reader takes radii. */
export const ownUnit = (show: ShowUnits): 'mm' | 'in' => (show.radius === 'mm' ? 'mm' : 'in');

const inUnit = (radius: number, show: ShowUnits, unit: 'mm' | 'in') =>
  formatQuantity(radius, 'radius', { ...show, radius: unit }, { unit: true });

/** A gauge by the name that is marked on it. */
export const gaugeName = (radius: number | 'flat', show: ShowUnits): string =>
  radius === 'flat' ? radius : inUnit(radius, show, markedIn(radius));

/** Whether a gauge is one of those in the reader's unit; a straightedge is in any. */
export const isOwn = (radius: number | 'flat', show: ShowUnits): boolean =>
  radius === 'flat' || markedIn(radius) === ownUnit(show);

/** A gauge by its name, and in the reader's unit where that is another. */
export const gaugeText = (radius: number | 'flat', show: ShowUnits): string =>
  radius === 'flat' || isOwn(radius, show)
    ? gaugeName(radius, show)
    : `${gaugeName(radius, show)} (${inUnit(radius, show, ownUnit(show))})`;
