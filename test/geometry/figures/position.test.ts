// Where a bridge sits over its old scar, of the footprints whose depth on the centre line is not their whole depth.
import { describe, expect, it } from 'vitest';
import { position } from '../../../geometry/bridge/position.ts';
import * as plateCap from '../../../geometry/figures/plate-cap.ts';
import * as figures from '../../../geometry/figures/position.ts';
import { formulas } from './formulas.ts';
import { changed } from './jobs.ts';
import { valuesOf } from './values.ts';

const over = [
  changed('a waisted bridge over a belly’s scar, its plate capped', {
    'bridge.footprint': 'waisted',
    'bridge.depth': 36,
    'scar.outline': 'belly',
    'scar.fromNut': 633.6,
    'scar.length': 154,
    'scar.depth': 37,
    'scar.wingDepth': 23,
    'plate.cap': 2,
    'plate.grain': 'across',
  }),
  changed('a free outline over a scar with its belly before, its plate capped', {
    'bridge.footprint': 'free',
    'bridge.mirrored': 'no',
    'bridge.points': [
      { id: 'a', across: -78, along: 0, turn: 'corner' },
      { id: 'b', across: 0, along: -1.5, turn: 'smooth' },
      { id: 'c', across: 72, along: 0, turn: 'corner' },
      { id: 'd', across: 70, along: 24, turn: 'corner' },
      { id: 'e', across: 6, along: 34, turn: 'smooth' },
      { id: 'f', across: -76, along: 25, turn: 'corner' },
    ],
    'scar.outline': 'bellyBefore',
    'scar.fromNut': 630,
    'plate.cap': 1.8,
    'plate.grain': 'slanted',
  }),
];

describe.each(over)('$name', ({ job, design }) => {
  it.each(Object.values({ ...figures, ...plateCap }))('$id follows from its inputs alone', (figure) => {
    const value = figure.value(job, design, 5);
    expect(formulas[figure.id]?.(valuesOf(figure.how(job, design, 5).inputs))).toBeCloseTo(value as number, 9);
  });
});

it('by hand, of a waisted bridge on a belly’s scar', () => {
  const [waisted] = over;
  if (waisted === undefined) throw new Error('no case');
  const { overlap } = position(waisted.job, waisted.design);
  // The waist is 28 deep at the preset, its front 9.6 before the saddle line; the scar runs from 633.6 over 37, 154 across against 152.
  const front = waisted.design.saddleLine.x - 9.6;
  expect(overlap?.front).toBeCloseTo(633.6 - front, 9);
  expect(overlap?.rear).toBeCloseTo(front + 28 - 670.6, 9);
  expect([overlap?.bassTip, overlap?.trebleTip]).toEqual([-1, -1]);
  // What shows most is behind, in the waist, where the belly is deepest.
  expect(overlap?.bare).toBeCloseTo(670.6 - front - 28, 9);
});
