import * as z from 'zod/mini';
import { listKey, notTaken, numberOr, text } from './field.ts';

/** What was measured at one string. Its key is the string's own. */
const reading = z.looseObject({
  id: listKey('this reading'),
  action: numberOr(notTaken, {
    label: 'Action measured',
    help: 'Underside of this open string to the crown of fret 12, at pitch, relief and nut set. The two outer strings are needed; one between them that is not taken is reckoned from its neighbours.',
    kind: 'length',
    min: 0.2,
    max: 12,
    preset: notTaken,
  }),
  cents: numberOr(notTaken, {
    label: 'Cents heard',
    help: 'How many cents the note fretted at 12 is sharp of the octave, by an electronic tuner, with the open string in tune; negative if flat.',
    kind: 'cents',
    min: -60,
    max: 60,
    preset: notTaken,
  }),
});

/** One reading of the strung guitar after another, until it plays as wanted. */
const pass = z.looseObject({
  id: listKey('this pass'),
  note: text('Note', 'What was done, or when: free text.', 200, ''),
  readings: z.array(reading).check(z.maxLength(24)),
});

export const setup = z.looseObject({
  log: z.array(pass).check(z.maxLength(60)),
});
