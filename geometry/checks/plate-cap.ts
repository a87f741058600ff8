import { oneNumber } from './one-number.ts';

/** The thickness of the overlay on a worn bridge plate. */
export const plateCap = oneNumber({
  id: 'plateCap',
  path: 'plate.cap',
  value: ({ plate }) => plate.cap,
  says: (mm) => `Plate cap ${mm} thick`,
  means: {
    low: 'The ball ends wear through a thin cap.',
    high: 'A thick cap is stiff, and the pins may be too short for it.',
  },
});
