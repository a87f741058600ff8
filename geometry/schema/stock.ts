import * as z from 'zod/mini';
import { woods } from '../bridge/woods.ts';
import { choice, number } from './field.ts';

/** What the bridge is sawn from. */
export const stock = z.looseObject({
  wood: choice(
    'Bridge wood',
    'What the bridge is made of: tells its weight, by a handbook’s mean density.',
    Object.fromEntries(Object.entries(woods).map(([id, { name }]) => [id, name])) as Record<keyof typeof woods, string>,
    'rosewoodIndian',
  ),
  allowance: number({
    label: 'Allowance',
    help: 'How much larger than the piece the blank is on every side, for saw and plane.',
    kind: 'length',
    min: 0,
    max: 20,
    usual: [1.5, 5],
    preset: 3,
  }),
});
