import * as z from 'zod/mini';
import { choice, numberOr } from './field.ts';

/** The bridge plate inside, under the pins. */
export const plate = z.looseObject({
  state: choice(
    'Bridge plate',
    'Whether the ball ends still bear on sound wood under the pins, or have worn their way into it.',
    { sound: 'sound', worn: 'worn' },
    'sound',
  ),
  cap: numberOr('none', {
    label: 'Plate cap',
    help: 'Thickness of a thin overlay glued on a worn plate; “none” if there is none.',
    kind: 'length',
    min: 0.3,
    max: 8,
    usual: [1.5, 2.5],
    preset: 'none',
  }),
});
