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

/** A gauge as it is marked: in inches where it is of quarters of an inch, else in mm; and in the reader's unit where that is another. */
export const gaugeText = (radius: number | 'flat', show: ShowUnits): string => {
  if (radius === 'flat') return radius;
  const quarters = (radius / MM_PER_INCH) * 4;
  const marked = Math.abs(quarters - Math.round(quarters)) < 1e-9 ? 'in' : 'mm';
  const as = (unit: ShowUnits['radius']) => formatQuantity(radius, 'radius', { ...show, radius: unit }, { unit: true });
  const wanted = show.radius === 'mm' ? 'mm' : 'in';
  return marked === wanted ? as(marked) : `${as(marked)} (${as(wanted)})`;
};
