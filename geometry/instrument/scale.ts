/** A fret's crown, measured from the nut's front edge, mm. */
export interface MeasuredFret {
  readonly fret: number;
  readonly distance: number;
}

export interface FittedScale {
  /** The scale length, mm. */
  readonly scale: number;
  /** Standard error of the scale, mm: what the spread of the readings alone says of it. */
  readonly error: number;
  /** Reading less fitted, fret by fret, mm. */
  readonly misses: readonly number[];
}

/** The fewest readings that can say something of their own error. */
export const fewestFrets = 3;

/**
 * The scale length that fits the measured frets best, least squares of `L·(1 − 2^(−n/12))`, and its standard error `√(Σmiss²/((n − 1)·Σu²))`, u = 1 − 2^(−n/12).
 * Undefined for fewer than three readings. Source: equal temperament; one-parameter linear regression through the origin.
 */
export const fitScale = (frets: readonly MeasuredFret[]): FittedScale | undefined => {
  if (frets.length < fewestFrets) return undefined;
  const parts = frets.map(({ fret }) => 1 - 2 ** (-fret / 12));
  const square = parts.reduce((sum, u) => sum + u * u, 0);
  const scale = frets.reduce((sum, { distance }, k) => sum + distance * (parts[k] ?? 0), 0) / square;
  const misses = frets.map(({ distance }, k) => distance - scale * (parts[k] ?? 0));
  const left = misses.reduce((sum, miss) => sum + miss * miss, 0);
  return { scale, error: Math.sqrt(left / (frets.length - 1) / square), misses };
};
