import * as z from 'zod/mini';
import { choice, number, numberOr } from './field.ts';

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
  sectionAcross: number({
    label: 'Section along, at',
    help: 'Where the section along the guitar is taken: from the centre line; negative on the bass side.',
    kind: 'length',
    min: -130,
    max: 130,
    preset: 0,
  }),
  sectionAlong: numberOr('saddle', {
    label: 'Section across, at',
    help: 'Where the section across the guitar is taken: from the bridge’s front edge on the centre line; “saddle”: at the saddle line.',
    kind: 'length',
    min: -60,
    max: 90,
    preset: 'saddle',
  }),
});
