import type { Wing } from './wing.ts';

/** A straight slope from shoulder to tip. */
export const straight: Wing = {
  style: 'straight',
  needsWidth: () => false,
  line: ({ width, fall }) => [{ kind: 'line', from: { x: 0, y: 0 }, to: { x: width, y: fall } }],
};
