import * as z from 'zod/mini';
import { choice, number, numberOr } from './field.ts';

export const saddle = z.looseObject({
  crown: choice(
    'Crown by',
    'What the crown is cut to: the best radius over the wanted heights; the nearest radius gauge in the job’s unit; or each string’s own height.',
    { best: 'the best radius', gauge: 'the nearest gauge', heights: 'each string’s height' },
    'best',
  ),
  play: number({
    label: 'Play in the slot',
    help: 'How much thinner and shorter the saddle is than its slot: tight, but pulled out by hand.',
    kind: 'length',
    min: 0,
    max: 0.5,
    usual: [0.02, 0.08],
    preset: 0.05,
  }),
  proud: number({
    label: 'Left proud',
    help: 'How much higher than wanted the saddle is left for the first stringing, to be taken off the bottom by what is then measured.',
    kind: 'length',
    min: 0,
    max: 4,
    usual: [0.5, 1.5],
    preset: 1,
  }),
  under: number({
    label: 'Under the saddle',
    help: 'Thickness of what lies in the slot under the saddle, such as a pickup element; 0 if there is nothing.',
    kind: 'length',
    min: 0,
    max: 4,
    preset: 0,
  }),
  wireHole: numberOr('none', {
    label: 'Wire hole',
    help: 'Diameter of the hole in the slot’s floor for the element’s wire; “none” if there is none.',
    kind: 'length',
    min: 0.5,
    max: 6,
    preset: 'none',
  }),
  wireAcross: number({
    label: 'Wire hole, across',
    help: 'From the centre line to the middle of the wire hole, along the slot; negative on the bass side.',
    kind: 'length',
    min: -100,
    max: 100,
    preset: -32,
    only: { path: 'saddle.wireHole', isNot: 'none' },
  }),
});
