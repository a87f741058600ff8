import type { Check } from './check.ts';

/** How far each measured fret lies off the scale that all of them give together. */
export const frets: Check = {
  id: 'frets',
  path: 'guitar.measured',
  facts: ({ guitar }, { readings: { frets: fitted } }) =>
    fitted === undefined
      ? []
      : guitar.measured.map(({ fret }, k) => ({ where: `fret ${fret}`, value: Math.abs(fitted.misses[k] ?? 0) })),
  says: ({ worst, say, level }) =>
    level === 'right'
      ? `Measured frets lie within ${say(worst.value)} of one scale`
      : `The reading at ${worst.where} lies ${say(worst.value)} off the scale that all give together`,
  means: { high: 'One of them is misread, or its number is: measure it again, or leave it out.' },
  fixes: [],
};
