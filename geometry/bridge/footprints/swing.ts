/*
 * Belly and waist swing by an S of two equal arcs from one level line to another: over a half width a and a depth b each arc's radius is `(a² + b²)/(4b)` [two arcs tangent to both levels and to each other].
 */

/** The least depth that an S may have, mm: any less is no caliper's reading, and its arcs would be straight lines. */
export const leastSwing = 0.1;

/** Numbers that miss a limit by less than this (mm) are at it. */
export const slack = 1e-9;

/** Radius of the two equal arcs of an S over a width a and a depth b, mm. At b = a both are quarter circles; a deeper one would overhang. */
export const swingRadius = (a: number, b: number): number => (a * a + b * b) / (4 * b);
