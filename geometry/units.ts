/** What a number measures. Stored: mm for length, radius and gauge; degrees; N; Hz; a bare number for count. */
export type QuantityKind = 'length' | 'radius' | 'gauge' | 'angle' | 'force' | 'frequency' | 'count' | 'slope';

/** Units for typing and showing lengths, radii and gauges: mm, decimal inch, inch fractions to 1/64. */
export type LengthUnit = 'mm' | 'in' | 'fraction';

/** The unit chosen for each kind of quantity. */
export interface ShowUnits {
  readonly length: LengthUnit;
  readonly radius: LengthUnit;
  readonly gauge: LengthUnit;
}
