import * as z from 'zod/mini';
import { choice, number, numberOr } from './field.ts';

const capped = { path: 'plate.cap', isNot: 'none' } as const;

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
  length: number({
    label: 'Cap, length across',
    help: 'The cap’s size across the guitar: it must clear the braces and cover the worn holes.',
    kind: 'length',
    min: 20,
    max: 220,
    usual: [70, 110],
    preset: 85,
    only: capped,
  }),
  depth: number({
    label: 'Cap, depth',
    help: 'The cap’s size along the guitar.',
    kind: 'length',
    min: 8,
    max: 90,
    usual: [18, 35],
    preset: 24,
    only: capped,
  }),
  grain: choice(
    'Cap’s grain',
    'Which way the cap’s grain runs: holes in a row along the grain split it.',
    { across: 'across the guitar', along: 'along the guitar', slanted: 'at 45°' },
    'along',
    capped,
  ),
});
