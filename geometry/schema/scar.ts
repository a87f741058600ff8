import * as z from 'zod/mini';
import { choice, number } from './field.ts';

const measured = { path: 'scar.outline', isNot: 'none' } as const;
const belly = [
  { path: 'scar.outline', is: 'belly' },
  { path: 'scar.outline', is: 'bellyBefore' },
] as const;

/** The old bridge's outline on the top, which the new footprint has to cover. */
export const scar = z.looseObject({
  outline: choice(
    'Old scar',
    'The outline that the old bridge left on the top; “not measured” if there is none to cover.',
    {
      none: 'not measured',
      belly: 'belly behind',
      bellyBefore: 'belly before',
      rectangle: 'rectangular',
    },
    'none',
  ),
  fromNut: number({
    label: 'Nut to the scar’s front',
    help: 'From the nut’s front edge to the front edge of the scar, on the centre line.',
    kind: 'length',
    min: 250,
    max: 1000,
    preset: 633,
    only: measured,
  }),
  length: number({
    label: 'Scar, length across',
    help: 'From tip to tip of the scar, across the guitar.',
    kind: 'length',
    min: 40,
    max: 260,
    preset: 150,
    only: measured,
  }),
  depth: number({
    label: 'Scar, depth',
    help: 'From the scar’s front edge to its rearmost point, along the guitar.',
    kind: 'length',
    min: 10,
    max: 90,
    preset: 37,
    only: measured,
  }),
  wingDepth: number({
    label: 'Scar, depth at the tips',
    help: 'A belly scar’s depth along the guitar at its tips.',
    kind: 'length',
    min: 8,
    max: 80,
    preset: 23,
    only: belly,
  }),
  bellyWidth: number({
    label: 'Scar, belly width',
    help: 'How wide the scar’s belly is across the guitar, from where its curve leaves the straight rear edge to the same place on the other side.',
    kind: 'length',
    min: 20,
    max: 260,
    preset: 138,
    only: belly,
  }),
});
