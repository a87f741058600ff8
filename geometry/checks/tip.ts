import { oneNumber } from './one-number.ts';

/** The thickness of the wing tips. */
export const tip = oneNumber({
  id: 'tip',
  path: 'bridge.tipThickness',
  value: ({ bridge }) => bridge.tipThickness,
  says: (mm) => `Tips ${mm} thick`,
  means: { low: 'Thin tips break or curl up off the top.', high: 'Thick tips stiffen the top more than they hold.' },
});
