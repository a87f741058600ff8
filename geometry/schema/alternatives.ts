import * as z from 'zod/mini';
import { bridge } from './bridge.ts';
import { choice, text } from './field.ts';
import { pins } from './pins.ts';
import { saddle } from './saddle.ts';
import { slot } from './slot.ts';
import { stock } from './stock.ts';

/** The letters that alternatives go by: at most so many stand beside the present design. */
export const letters = ['A', 'B', 'C', 'D', 'E', 'F'] as const;

/**
 * Another design for the same guitar: all that is chosen, and nothing that is measured, which is the job's own. Where a slot lies that is cut already is measured, so its place is none of an
 * alternative's.
 */
const alternative = z.looseObject({
  id: choice(
    'Letter',
    'What the alternative goes by on every drawing.',
    Object.fromEntries(letters.map((letter) => [letter, letter])) as { readonly [L in (typeof letters)[number]]: L },
    'A',
  ),
  name: text('Name', 'What this alternative is called.', 60, ''),
  bridge,
  slot: z.omit(slot, { fromNut: true, slant: true }),
  saddle,
  pins,
  stock,
});

export const alternatives = z.looseObject({
  present: text('Name', 'What the present design is called.', 60, 'first design'),
  list: z.array(alternative).check(z.maxLength(letters.length)),
});
