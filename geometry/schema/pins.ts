import * as z from 'zod/mini';
import { choice, number, numberOr } from './field.ts';

export const pins = z.looseObject({
  spread: number({
    label: 'Pin spread',
    help: 'Centre to centre, outer pin to outer pin.',
    kind: 'length',
    min: 15,
    max: 200,
    usual: [52, 62],
    preset: 55.5,
  }),
  fromSaddle: number({
    label: 'Saddle line to pins',
    help: 'From the middle of the slot back to the middle of the pin row, on the centre line.',
    kind: 'length',
    min: 3,
    max: 80,
    usual: [9, 16],
    preset: 12.5,
  }),
  row: choice(
    'Pin row',
    'Square to the centre line, or slanted with the slot.',
    { square: 'square', slanted: 'slanted with the slot' },
    'slanted',
  ),
  hole: number({
    label: 'Pin hole',
    help: 'Diameter of the pin holes at the bridge’s top.',
    kind: 'length',
    min: 1,
    max: 12,
    usual: [4.8, 5.8],
    preset: 5,
  }),
  leaves: numberOr('pins', {
    label: 'String leaves the bridge',
    help: 'How far behind its break point each string next touches the bridge. “pins”: at the front edge of its pin hole, as drawn.',
    kind: 'length',
    min: 1,
    max: 80,
    preset: 'pins',
  }),
});
