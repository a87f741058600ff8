import * as z from 'zod/mini';
import { notTaken, numberOr } from './field.ts';
import { strungLabels } from './strung-labels.ts';

/** What is read on the guitar while its old strings still hang on it, at pitch. */
export const strung = z.looseObject({
  thickness: numberOr(notTaken, {
    label: strungLabels.thickness,
    help: 'Thickness of the old bridge at the middle, on the centre line, from the top up to the deck.',
    kind: 'length',
    min: 1,
    max: 30,
    preset: notTaken,
  }),
  exposure: numberOr(notTaken, {
    label: strungLabels.exposure,
    help: 'Old saddle standing above the old bridge, at the middle of the string row.',
    kind: 'length',
    min: 0,
    max: 25,
    preset: notTaken,
  }),
  actionBass: numberOr(notTaken, {
    label: strungLabels.actionBass,
    help: 'Underside of the open bass string to the crown of fret 12, at pitch, before anything is taken off.',
    kind: 'length',
    min: 0.2,
    max: 12,
    preset: notTaken,
  }),
  actionTreble: numberOr(notTaken, {
    label: strungLabels.actionTreble,
    help: 'Underside of the open treble string to the crown of fret 12, at pitch, before anything is taken off.',
    kind: 'length',
    min: 0.2,
    max: 12,
    preset: notTaken,
  }),
  firstFretBass: numberOr(notTaken, {
    label: strungLabels.firstFretBass,
    help: 'Underside of the open bass string to the crown of fret 1, at pitch.',
    kind: 'length',
    min: 0,
    max: 4,
    preset: notTaken,
  }),
  firstFretTreble: numberOr(notTaken, {
    label: strungLabels.firstFretTreble,
    help: 'Underside of the open treble string to the crown of fret 1, at pitch.',
    kind: 'length',
    min: 0,
    max: 4,
    preset: notTaken,
  }),
  relief: numberOr(notTaken, {
    label: strungLabels.relief,
    help: 'The largest gap between the fret crowns and a straightedge laid from fret 1 to the body joint, at pitch.',
    kind: 'length',
    min: 0,
    max: 3,
    preset: notTaken,
  }),
  light: numberOr(notTaken, {
    label: strungLabels.light,
    help: 'Straightedge on the frets at pitch, between the strings, carried over the old bridge: the light between it and the deck at the middle; negative by as much as it would lie below.',
    kind: 'length',
    min: -12,
    max: 15,
    preset: notTaken,
  }),
});
