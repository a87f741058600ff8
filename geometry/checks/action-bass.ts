import { oneNumber } from './one-number.ts';

/** The bass string's wanted action. */
export const actionBass = oneNumber({
  id: 'actionBass',
  path: 'action.bass',
  value: ({ action }) => action.bass,
  says: (mm) => `Wanted action ${mm} on the bass side`,
  means: {
    low: 'The string may buzz when played hard.',
    high: 'The string is hard to press, and goes sharp as it is.',
  },
});
