/** Gauss–Legendre abscissas and weights for eight points [Abramowitz & Stegun, Handbook of Mathematical Functions, table 25.4]. */
const gauss = [
  [0.1834346424956498, 0.362683783378362],
  [0.525532409916329, 0.3137066458778873],
  [0.7966664774136267, 0.2223810344533745],
  [0.9602898564975363, 0.1012285362903763],
] as const;

/** The integral of a smooth function over one stretch, by eight points of Gauss's. */
export const integral = (f: (x: number) => number, from: number, to: number): number => {
  const middle = (from + to) / 2;
  const half = (to - from) / 2;
  return half * gauss.reduce((sum, [x, w]) => sum + w * (f(middle - half * x) + f(middle + half * x)), 0);
};

/** How many parts the half turn below is cut into. */
const parts = 3;

/**
 * The same where the function's slope may be upright at the ends, as the depth of a round shape is: with `x = middle − half·cos φ` it is smooth in φ.
 */
export const roundedIntegral = (f: (x: number) => number, from: number, to: number): number => {
  const middle = (from + to) / 2;
  const half = (to - from) / 2;
  const inTurn = (phi: number) => f(middle - half * Math.cos(phi)) * half * Math.sin(phi);
  return Array.from({ length: parts }, (_, k) =>
    integral(inTurn, (Math.PI * k) / parts, (Math.PI * (k + 1)) / parts),
  ).reduce((sum, part) => sum + part, 0);
};
