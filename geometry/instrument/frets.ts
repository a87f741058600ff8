/**
 * Distance of a fret from the nut's front edge, mm, for a scale length in mm: `x_n = L·(1 − 2^(−n/12))`.
 * Source: equal temperament of twelve steps to the octave.
 */
export const fretAt = (scale: number, fret: number): number => scale * (1 - 2 ** (-fret / 12));
