import * as z from 'zod/mini';
import { choice } from './field.ts';

const lengthUnits = { mm: 'mm', in: 'inch', fraction: '1/64 in' } as const;

export const show = z.looseObject({
  length: choice(
    'Lengths in',
    'The unit in which lengths are shown, and in which a bare number is read.',
    lengthUnits,
    'mm',
  ),
  radius: choice(
    'Radii in',
    'The unit in which radii are shown, and in which a bare number is read.',
    lengthUnits,
    'in',
  ),
  gauge: choice(
    'String gauges in',
    'The unit in which string diameters are shown, and in which a bare number is read.',
    lengthUnits,
    'in',
  ),
});
