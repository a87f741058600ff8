import * as z from 'zod/mini';
import { choice, listKey, number } from '../../geometry/schema/field.ts';

/** A section of which a profile is made. */
const station = z.looseObject({
  id: listKey('this section'),
  runs: choice('Runs', 'Which way the section runs.', { along: 'along the guitar', across: 'across it' }, 'along'),
  at: number({
    label: 'At',
    help: 'Of a section along the guitar: from the centre line, negative on the bass side. Of one across: behind the bridge’s front edge on the centre line.',
    kind: 'length',
    min: -130,
    max: 130,
    preset: 0,
  }),
});

/** Of which sections of the bridge profiles are made, and how large they are. */
export const sections = z.looseObject({
  usual: choice(
    'Usual sections',
    'The middle and half-way down either wing, along the guitar, and those that are shown on screen; or only those that are listed.',
    { in: 'go in', out: 'only those listed' },
    'in',
  ),
  foot: number({
    label: 'Feet',
    help: 'How far a profile stands on the top before and behind the bridge.',
    kind: 'length',
    min: 4,
    max: 60,
    usual: [10, 20],
    preset: 15,
  }),
  back: number({
    label: 'Back',
    help: 'How much of a profile stands above the highest wood, to be held by.',
    kind: 'length',
    min: 20,
    max: 80,
    usual: [20, 35],
    preset: 22,
  }),
  stations: z.array(station).check(z.maxLength(20)),
});
