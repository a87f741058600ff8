import { oneNumber } from './one-number.ts';

/** The bridge's thickness at its centre. */
export const thickness = oneNumber({
  id: 'thickness',
  path: 'bridge.thickness',
  value: ({ bridge }) => bridge.thickness,
  says: (mm) => `Bridge ${mm} thick at the centre`,
  means: {
    low: 'A thin bridge cracks, and leaves little wood under the slot.',
    high: 'A thick bridge is heavy and stiff.',
  },
});
