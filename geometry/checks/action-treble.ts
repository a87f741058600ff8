import { oneNumber } from './one-number.ts';

/** The treble string's wanted action. */
export const actionTreble = oneNumber({
  id: 'actionTreble',
  path: 'action.treble',
  value: ({ action }) => action.treble,
  says: (mm) => `Wanted action ${mm} on the treble side`,
  means: {
    low: 'The string may buzz when played hard.',
    high: 'The string is hard to press, and goes sharp as it is.',
  },
});
