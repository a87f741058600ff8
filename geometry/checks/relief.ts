import { oneNumber } from './one-number.ts';

/** The neck's relief at pitch. */
export const relief = oneNumber({
  id: 'relief',
  path: 'guitar.relief',
  value: ({ guitar }) => guitar.relief,
  says: (mm) => `Relief ${mm}`,
  means: {
    low: 'A neck so straight may buzz in the lower frets.',
    high: 'So much bow raises the action in the middle of the neck.',
  },
});
