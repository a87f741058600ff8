import * as z from 'zod/mini';
import { choice, number, numberOr } from '../../geometry/schema/field.ts';

/** The router with which slots are cut, and what leads it. */
export const router = z.looseObject({
  guide: choice(
    'Led by',
    'What runs along the guide’s window: a guide bush round the cutter, or the router’s own base.',
    { bush: 'a guide bush', round: 'its round base', square: 'its square base' },
    'bush',
  ),
  bush: number({
    label: 'Guide bush',
    help: 'Outside diameter of the bush, by caliper.',
    kind: 'length',
    min: 2,
    max: 60,
    usual: [6, 20],
    preset: 10,
    only: { path: 'router.guide', is: 'bush' },
  }),
  base: number({
    label: 'Router’s base',
    help: 'Diameter of a round base, or the side of a square one, by caliper.',
    kind: 'length',
    min: 10,
    max: 300,
    usual: [60, 160],
    preset: 90,
    only: { path: 'router.guide', isNot: 'bush' },
  }),
  cutter: numberOr('slot', {
    label: 'Cutter',
    help: 'Diameter of the cutter, by caliper; “slot” if it is as wide as the slot itself.',
    kind: 'length',
    min: 0.5,
    max: 12,
    usual: [1.5, 3.2],
    preset: 'slot',
  }),
  pass: number({
    label: 'Depth of a pass',
    help: 'How deep the cutter goes at once.',
    kind: 'length',
    min: 0.2,
    max: 10,
    usual: [1, 2],
    preset: 1.5,
  }),
  frame: number({
    label: 'Frame of the guide',
    help: 'What is left round the window, to be clamped.',
    kind: 'length',
    min: 10,
    max: 120,
    usual: [20, 40],
    preset: 30,
  }),
});
