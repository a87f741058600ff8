import { isMarkedIn, markedIn } from '../../../geometry/saddle/gauges.ts';
import { formatQuantity, type ShowUnits } from '../../../geometry/units.ts';

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

/** The unit in which the reader takes radii. */
export const ownUnit = (show: ShowUnits): 'mm' | 'in' => (show.radius === 'mm' ? 'mm' : 'in');

const inUnit = (radius: number, show: ShowUnits, unit: 'mm' | 'in') =>
  formatQuantity(radius, 'radius', { ...show, radius: unit }, { unit: true });

/** A gauge by the name that is marked on it. */
export const gaugeName = (radius: number | 'flat', show: ShowUnits): string =>
  radius === 'flat' ? radius : inUnit(radius, show, markedIn(radius));

/** Whether a gauge is one of those in the reader's unit; a straightedge is in any. */
export const isOwn = (radius: number | 'flat', show: ShowUnits): boolean => isMarkedIn(radius, show.radius);

/** A gauge by its name, and in the reader's unit where that is another. */
export const gaugeText = (radius: number | 'flat', show: ShowUnits): string =>
  radius === 'flat' || isOwn(radius, show)
    ? gaugeName(radius, show)
    : `${gaugeName(radius, show)} (${inUnit(radius, show, ownUnit(show))})`;
