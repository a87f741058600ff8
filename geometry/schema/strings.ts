import * as z from 'zod/mini';
import { choice, listKey, notTaken, number, numberOr, text } from './field.ts';

/** One string, bass first in the list. A job's lists are keyed by `id`, never by position. */
const string = z.looseObject({
  id: listKey('this string'),
  name: text('String', 'What the string is called, as a rule its note.', 24, ''),
  pitch: number({
    label: 'Pitch',
    help: 'The open string’s frequency, or its note (A4 = 440 Hz).',
    kind: 'frequency',
    min: 20,
    max: 1500,
  }),
  gauge: number({ label: 'Gauge', help: 'The string’s outside diameter.', kind: 'gauge', min: 0.15, max: 3 }),
  core: numberOr('plain', {
    label: 'Core',
    help: 'Diameter of a wound string’s core; “plain” for a string without a wrap.',
    kind: 'gauge',
    min: 0.1,
    max: 3,
  }),
  material: choice(
    'Material',
    'What a plain string, or a wound one’s core, is made of.',
    { steel: 'steel', nylon: 'nylon', fluorocarbon: 'fluorocarbon' },
    'steel',
  ),
  wrap: choice(
    'Wrap',
    'What a wound string is wrapped with; a plain one has none.',
    { 'phosphor bronze': 'phosphor bronze', 'silvered copper': 'silvered copper', steel: 'steel' },
    'phosphor bronze',
    { path: 'strings.list.*.core', isNot: 'plain' },
  ),
  nutPlace: number({
    label: 'Place at the nut',
    help: 'From the centre line to this string at the nut; negative on the bass side.',
    kind: 'length',
    min: -60,
    max: 60,
    preset: 0,
    only: { path: 'strings.spacing', is: 'typed' },
  }),
  saddlePlace: number({
    label: 'Place at the saddle',
    help: 'From the centre line to this string over the saddle; negative on the bass side.',
    kind: 'length',
    min: -110,
    max: 110,
    preset: 0,
    only: { path: 'strings.spacing', is: 'typed' },
  }),
  setback: number({
    label: 'Setback',
    help: 'How far this string’s break point lies beyond the nominal scale length: as it is to be, or, where it was heard, as it is now.',
    kind: 'length',
    min: -5,
    max: 20,
    usual: [1.5, 5.5],
    only: [{ path: 'strings.setbacks', isNot: 'computed' }],
  }),
  cents: numberOr(notTaken, {
    label: 'Heard at fret 12',
    help: 'How many cents the note fretted at 12 is sharp of the octave, by an electronic tuner, with the open string in tune; negative if flat.',
    kind: 'cents',
    min: -60,
    max: 60,
    preset: notTaken,
    only: { path: 'strings.setbacks', is: 'heard' },
  }),
});

/** How many strings a job may have. */
export const stringCount = { min: 4, max: 12 } as const;

export const strings = z.looseObject({
  spacing: choice(
    'Spacing',
    'Equal from centre to centre, with equal gaps between the strings, their own diameters taken out, or each string’s place typed.',
    { centres: 'equal centres', gaps: 'equal gaps', typed: 'as typed' },
    'centres',
  ),
  courses: choice(
    'Courses',
    'Single strings; or pairs, two neighbours to a course, as on a guitar with twelve strings.',
    { single: 'single strings', pairs: 'pairs' },
    'single',
  ),
  pairGap: number({
    label: 'Within a pair',
    help: 'Centre to centre of the two strings of a pair, over the saddle; at the nut a little less is usual, and is taken in the proportion of the spreads.',
    kind: 'length',
    min: 0.5,
    max: 6,
    usual: [2, 3],
    preset: 2.4,
    only: { path: 'strings.courses', is: 'pairs' },
  }),
  spread: number({
    label: 'String spread at the saddle',
    help: 'Centre to centre, outer string to outer string, over the saddle’s crown.',
    kind: 'length',
    min: 15,
    max: 200,
    usual: [52, 60],
    preset: 55.5,
    only: { path: 'strings.spacing', isNot: 'typed' },
  }),
  setbacks: choice(
    'Setbacks',
    'Where the setbacks come from: from each string’s stretch and stiffness, which is good to about 1 mm; from what was heard at fret 12 with the break points as they are; or as typed.',
    { computed: 'from stretch and stiffness', heard: 'from cents heard', typed: 'as typed' },
    'computed',
  ),
  finger: number({
    label: 'Finger’s allowance',
    help: 'What is added to each computed setback, as the finger presses behind the fret and stretches the string a little more.',
    kind: 'length',
    min: 0,
    max: 4,
    usual: [0.5, 1.5],
    preset: 1,
    only: { path: 'strings.setbacks', is: 'computed' },
  }),
  list: z.array(string).check(z.minLength(stringCount.min), z.maxLength(stringCount.max)),
});
