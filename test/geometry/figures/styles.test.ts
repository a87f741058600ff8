// The figures of strings, pins and the glued area in jobs that are not of the common kind, each worked out again from its inputs.
import { describe, expect, it } from 'vitest';
import * as breakAngle from '../../../geometry/figures/break-angle.ts';
import { bridgeFront, bridgeRear } from '../../../geometry/figures/bridge.ts';
import type { Figure } from '../../../geometry/figures/figure.ts';
import * as glue from '../../../geometry/figures/glue.ts';
import * as outline from '../../../geometry/figures/outline.ts';
import { saddleHeight } from '../../../geometry/figures/saddle-heights.ts';
import { passAction } from '../../../geometry/figures/set-up.ts';
import * as strings from '../../../geometry/figures/strings.ts';
import { withSet } from '../../../geometry/instrument/sets.ts';
import { workedExample } from '../../solved.ts';
import { formulas } from './formulas.ts';
import { type Case, changed } from './jobs.ts';
import { valuesOf } from './values.ts';

const isFigure = (value: unknown): value is Figure => typeof value === 'object' && value !== null && 'how' in value;

const followed: readonly Figure[] = [
  ...[breakAngle, glue, outline, strings].flatMap((family) => Object.values(family).filter(isFigure)),
  bridgeFront,
  bridgeRear,
  saddleHeight,
  passAction,
];

const twelve = withSet(workedExample(), 'twelve').strings;
const inPairs = {
  strings: { ...twelve, spread: 58, setbacks: 'computed' },
  'guitar.nutSpread': 40,
  'slot.line': 'least',
  'pins.leaves': 'pins',
};
const turning = (points: readonly (readonly [number, number, 'corner' | 'smooth'])[]) =>
  points.map(([across, along, turn], k) => ({ id: `p${k}`, across, along, turn }));
const corners = (points: readonly (readonly [number, number])[]) =>
  turning(points.map(([across, along]) => [across, along, 'corner']));

const cases: readonly Case[] = [
  changed('twelve strings in pairs, pins on an arc', {
    ...inPairs,
    'pins.row': 'arc',
    'pins.arcRise': 2.5,
    'bridge.depth': 44,
  }),
  changed('twelve strings in pairs, equal gaps, a hollow row and ramps', {
    ...inPairs,
    'strings.spacing': 'gaps',
    'pins.row': 'arc',
    'pins.arcRise': -1,
    'pins.ramp': 4,
    'pins.rampDepth': 1.2,
    'bridge.depth': 44,
    'setup.log': [
      {
        id: 'p1',
        note: '',
        readings: [
          { id: 'E3', action: 3.1, cents: 'not taken' },
          { id: 'D3', action: 2.9, cents: 'not taken' },
          { id: 'E4', action: 2.2, cents: 'not taken' },
        ],
      },
    ],
  }),
  changed('twelve strings in pairs, tied, pins square', { ...inPairs, 'pins.hold': 'tied', 'pins.row': 'square' }),
  changed('places typed, held at the back edge, the slot’s floor on the dome', {
    'strings.spacing': 'typed',
    'strings.list': workedExample().strings.list.map((string, k) => ({
      ...string,
      nutPlace: -18 + 7.1 * k,
      saddlePlace: -28 + 10.9 * k + (k === 2 ? 0.3 : 0),
    })),
    'pins.hold': 'behind',
    'pins.row': 'square',
    'slot.floor': 'dome',
  }),
  changed('a long flat ramp', { 'pins.leaves': 'pins', 'pins.ramp': 5, 'pins.rampDepth': 0.5 }),
  changed('a short deep ramp', { 'pins.leaves': 'pins', 'pins.ramp': 1, 'pins.rampDepth': 4 }),
  changed('a belly before', { 'bridge.footprint': 'bellyBefore', 'bridge.frontToSaddle': 20, 'bridge.depth': 42 }),
  changed('a waist', { 'bridge.footprint': 'waisted', 'bridge.waistDepth': 33 }),
  changed('eased corners', { 'bridge.footprint': 'rectangle', 'bridge.ends': 'eased', 'bridge.cornerRadius': 5 }),
  changed('half-round ends', { 'bridge.footprint': 'rectangle', 'bridge.ends': 'round' }),
  changed('a free outline, mirrored', {
    'bridge.footprint': 'free',
    'bridge.points': corners([
      [0, -2],
      [74, 1],
      [72, 25],
      [30, 37],
      [0, 35],
    ]),
  }),
  changed('a free outline, each side its own', {
    'bridge.footprint': 'free',
    'bridge.mirrored': 'no',
    'bridge.points': corners([
      [-77, 0],
      [0, -3],
      [74, 1],
      [72, 25],
      [20, 37],
      [-70, 27],
    ]),
  }),
  changed('a free outline, mirrored, smooth all round, one point given twice', {
    'bridge.footprint': 'free',
    'bridge.points': turning([
      [0, 0, 'smooth'],
      [50, -1, 'smooth'],
      [76, 9, 'smooth'],
      [76, 9, 'smooth'],
      [70, 24, 'smooth'],
      [26, 37, 'smooth'],
      [0, 39, 'smooth'],
    ]),
  }),
  changed('a free outline, one corner, its points the other way round', {
    'bridge.footprint': 'free',
    'bridge.mirrored': 'no',
    'bridge.points': turning([
      [0, 38, 'smooth'],
      [72, 29, 'smooth'],
      [78, 6, 'corner'],
      [0, 0, 'smooth'],
      [-74, 3, 'smooth'],
      [-72, 28, 'smooth'],
    ]),
  }),
];

describe.each(cases)('$name', ({ job, design }) => {
  it.each(followed)('$id follows from its inputs alone, and they stand in its formula', (figure) => {
    for (const k of figure.per === 'string' ? design.strings.keys() : [0]) {
      const value = figure.value(job, design, k);
      if (value === undefined) continue;
      const { formula, inputs } = figure.how(job, design, k);
      const worked = formulas[figure.id]?.(valuesOf(inputs)) as number;
      expect(
        Math.abs(worked / (value as number) - 1) < 1e-9 || Math.abs(worked - (value as number)) < 1e-9,
        `${k}: ${worked} is not ${value}`,
      ).toBe(true);
      const symbols = new Set(formula.match(/\p{L}[\p{L}\d]*(_[\p{L}\d]+)?/gu));
      for (const { symbol } of inputs)
        expect(symbols.has(symbol) || symbols.has(symbol.replace(/_\d+$/, '_k')), `${formula}: ${symbol}`).toBe(true);
    }
  });
});
