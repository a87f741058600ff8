import * as z from 'zod/mini';
import { number } from './field.ts';

export const action = z.looseObject({
  bass: number({
    label: 'Action, bass',
    help: 'Underside of the open bass string to the crown of fret 12, as wanted in the end.',
    kind: 'length',
    min: 0.5,
    max: 8,
    usual: [2, 2.8],
    preset: 2.5,
  }),
  treble: number({
    label: 'Action, treble',
    help: 'Underside of the open treble string to the crown of fret 12, as wanted in the end.',
    kind: 'length',
    min: 0.5,
    max: 8,
    usual: [1.5, 2.2],
    preset: 1.9,
  }),
  firstFretBass: number({
    label: 'First-fret clearance, bass',
    help: 'Underside of the open bass string to the crown of fret 1, as wanted in the end.',
    kind: 'length',
    min: 0,
    max: 3,
    usual: [0.3, 0.6],
    preset: 0.45,
  }),
  firstFretTreble: number({
    label: 'First-fret clearance, treble',
    help: 'Underside of the open treble string to the crown of fret 1, as wanted in the end.',
    kind: 'length',
    min: 0,
    max: 3,
    usual: [0.3, 0.6],
    preset: 0.3,
  }),
});
