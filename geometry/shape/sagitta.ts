const positive = (value: number, what: string): void => {
  if (!(value > 0)) throw new RangeError(`The ${what} is ${value} mm; it must be more than 0 mm.`);
};

/**
 * How far an arc of radius R has fallen at distance y from its middle, mm: `R − √(R² − y²)`, written as
 * `κy²/(1 + √(1 − κ²y²))` with κ = 1/R, so that nothing cancels when R is large. 0 for 'flat'.
 * Throws RangeError when y lies beyond the arc's own radius.
 */
export const drop = (radius: number | 'flat', y: number): number => {
  if (radius === 'flat') return 0;
  positive(radius, 'radius');
  if (!(Math.abs(y) <= radius))
    throw new RangeError(
      `An arc of radius ${radius} mm does not reach ${Math.abs(y)} mm from its middle; choose a radius of at least ${Math.abs(y)} mm.`,
    );
  const k = y / radius;
  return (k * y) / (1 + Math.sqrt(1 - k * k));
};

/** The height of an arc over its chord, mm (the minor arc); 0 for 'flat'. Throws RangeError when the chord is longer than the diameter. */
export const sagitta = (radius: number | 'flat', chord: number): number => drop(radius, chord / 2);

/**
 * The radius of the arc that stands a sagitta s above its chord c, mm: `s/2 + c²/(8s)`.
 * Throws RangeError unless both are more than 0.
 */
export const radiusFromSagitta = (chord: number, s: number): number => {
  positive(chord, 'chord');
  positive(s, 'sagitta');
  return s / 2 + (chord * chord) / (8 * s);
};
