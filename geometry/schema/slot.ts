import * as z from 'zod/mini';
import { choice, number } from './field.ts';

const placed = [
  { path: 'work', is: 'saddle' },
  { path: 'slot.line', is: 'typed' },
] as const;

export const slot = z.looseObject({
  width: number({
    label: 'Slot width',
    help: 'Across the slot, from wall to wall. The saddle is thinner by its play.',
    kind: 'length',
    min: 1,
    max: 12,
    usual: [2.3, 3.3],
    preset: 3.2,
  }),
  length: number({
    label: 'Slot length',
    help: 'From end to end along the slot, its round ends included; of a slot that is open at the deck’s ends, along the saddle in it.',
    kind: 'length',
    min: 20,
    max: 200,
    usual: [70, 85],
    preset: 76,
  }),
  depth: number({
    label: 'Slot depth',
    help: 'From the bridge’s top at the centre line down to the slot’s level floor.',
    kind: 'length',
    min: 0.5,
    max: 25,
    usual: [4, 6],
    preset: 5,
  }),
  ends: choice(
    'Slot ends',
    'Round as the cutter leaves them, or squared with a chisel, the saddle’s ends with them; or open: the slot runs out where the deck falls away into the wings, from shoulder to shoulder, and the saddle is as long as the slot’s length says.',
    { round: 'round', square: 'square', through: 'open at both ends' },
    'round',
  ),
  floor: choice(
    'Slot floor',
    'Level from end to end, or as far above the top everywhere: following its dome.',
    { level: 'level', dome: 'following the dome' },
    'level',
  ),
  line: choice(
    'Slot’s place',
    'Where the slot’s centre line runs: so that the largest miss over all strings is least; through the two outer strings; or as measured, where the slot is already cut.',
    { least: 'least miss over all', outer: 'through the outer strings', typed: 'as measured' },
    'least',
  ),
  fromNut: number({
    label: 'Nut to slot',
    help: 'From the nut’s front edge to the middle of the slot, on the centre line: of the slot that is cut in the bridge already.',
    kind: 'length',
    min: 300,
    max: 1020,
    preset: 642.6,
    only: placed,
  }),
  slant: number({
    label: 'Slot’s slant',
    help: 'How much nearer the tail the slot lies on the treble side, in per cent of the way across: as a rule negative, as the bass end lies nearer the tail.',
    kind: 'slope',
    min: -0.2,
    max: 0.2,
    preset: -0.03,
    only: placed,
  }),
});
