import * as z from 'zod/mini';
import { number } from '../../geometry/schema/field.ts';

/** The mask by which the top's finish is cleared, or kept off, under the bridge. */
export const mask = z.looseObject({
  inset: number({
    label: 'Knife line inside the outline',
    help: 'How far inside the bridge’s outline the finish is scored and the glue’s ground begins: what is left under the edge hides the line.',
    kind: 'length',
    min: 0,
    max: 10,
    usual: [0.5, 2],
    preset: 1,
  }),
});
