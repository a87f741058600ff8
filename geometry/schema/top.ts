import * as z from 'zod/mini';
import { choice, listKey, number, numberOr, text } from './field.ts';

const across = {
  label: 'Across',
  help: 'From the centre line; negative on the bass side.',
  kind: 'length',
  min: -200,
  max: 200,
} as const;
const fromNut = {
  label: 'From the nut',
  help: 'From the nut’s front edge, along the centre line.',
  kind: 'length',
  min: 200,
  max: 1100,
} as const;

/** A hole that is there already in top or plate. */
const hole = z.looseObject({
  id: listKey('this hole'),
  what: choice(
    'What it is',
    'What the hole was made for.',
    { pin: 'pin hole', screw: 'screw or bolt', other: 'another hole' },
    'pin',
  ),
  across: number(across),
  fromNut: number(fromNut),
  diameter: number({
    label: 'Diameter',
    help: 'Across the hole, where it is narrowest.',
    kind: 'length',
    min: 0.5,
    max: 30,
  }),
  plan: choice(
    'Plan',
    'Kept: the new bridge is drilled to meet it. Plugged: filled, and of no more account. Moved: plugged, and drilled anew where the new bridge has it. Register: kept, and a pin through it holds the bridge in place for the glue-up.',
    { keep: 'kept', plug: 'plugged', move: 'moved', register: 'register pin' },
    'keep',
  ),
});

/** How far the top stands above or below its dome, measured at a point. */
const rise = z.looseObject({
  id: listKey('this reading'),
  across: number(across),
  fromNut: number(fromNut),
  height: number({
    label: 'Above the dome',
    help: 'How far the top stands above its own dome here; negative for a dip.',
    kind: 'length',
    min: -8,
    max: 8,
  }),
});

/** A brace under the top, as a line from end to end. */
const brace = z.looseObject({
  id: listKey('this brace'),
  name: text('Brace', 'What this brace is called.', 40, ''),
  across: number({ ...across, label: 'Across, one end' }),
  fromNut: number({ ...fromNut, label: 'From the nut, one end' }),
  acrossTo: number({ ...across, label: 'Across, other end' }),
  fromNutTo: number({ ...fromNut, label: 'From the nut, other end' }),
  width: number({
    label: 'Width',
    help: 'How wide the brace is.',
    kind: 'length',
    min: 1,
    max: 40,
    preset: 8,
  }),
});

/** The top where the bridge goes: what is there already. */
export const top = z.looseObject({
  radiusAlong: numberOr('flat', {
    label: 'Dome along the guitar',
    help: 'The radius of the top’s dome along the guitar where the bridge sits, measured apart from the one across. “flat” if there is none.',
    kind: 'radius',
    min: 500,
    max: 50000,
    preset: 'flat',
  }),
  holes: z.array(hole).check(z.maxLength(60)),
  rises: z.array(rise).check(z.maxLength(60)),
  braces: z.array(brace).check(z.maxLength(30)),
});
