import { footprints } from '../bridge/footprints/index.ts';
import type { Design } from '../design.ts';
import type { Settled } from '../settle.ts';
import type { Figure } from './figure.ts';
import { dropIs } from './heights.ts';
import { type Given, inputs } from './inputs.ts';
import { neckPlaneHeight, rise } from './neck.ts';
import { depthOf, lengthOf } from './outline.ts';
import { saddleLineFromNut, saddleSlant } from './slot.ts';
import { sources } from './sources.ts';
import { acrossAtSaddle } from './strings.ts';

const job = { kind: 'length', per: 'job' } as const;

/** The line from which front edge and pins are measured: the saddle line, or where the bridge stays the slot's that is cut in it. */
export const datum = (settled: Settled) =>
  settled.work === 'saddle' ? { x_0: 'slot.fromNut', m: 'slot.slant' } : { x_0: saddleLineFromNut, m: saddleSlant };

export const topHeight: Figure = {
  ...job,
  id: 'topHeight',
  title: 'Height of the bare top',
  about: 'The bare top at the middle of the bridge, at pitch, from the fret plane; below it if negative.',
  value: (_, design) => design.topHeight,
  how: (settled, design, k) => ({
    formula: 'z_t = −h + rise',
    inputs: inputs(settled, design, k, { h: neckPlaneHeight, rise }),
    source: sources.definition,
  }),
};

export const deckCentre: Figure = {
  ...job,
  id: 'deckCentre',
  title: 'Deck height at the centre',
  about: 'The bridge’s upper surface at its middle, from the fret plane; below it if negative.',
  value: (_, design) => design.deckCentre,
  how: (settled, design, k) => ({
    formula: 'z_c = z_t + T_c',
    inputs: inputs(settled, design, k, { z_t: topHeight, T_c: 'bridge.thickness' }),
    source: sources.definition,
  }),
};

/** Height of the deck at a place across. */
const surface = { formula: `z_t + T_c − drop(R_b, y) + tilt·y; ${dropIs}` };
const surfaceTakes = { z_t: topHeight, T_c: 'bridge.thickness', R_b: 'bridge.topRadius', tilt: 'bridge.tilt' };

export const deckHeight: Figure = {
  id: 'deckHeight',
  title: 'Deck height',
  about: 'The bridge’s upper surface under this string, from the fret plane; below it if negative.',
  kind: 'length',
  per: 'string',
  value: (_, design, k) => design.strings[k]?.deck,
  how: (settled, design, k) => ({
    formula: `z_b = ${surface.formula}`,
    inputs: inputs(settled, design, k, { ...surfaceTakes, y: acrossAtSaddle }),
    source: sources.definition,
  }),
};

const shoulder = (id: string, title: string, sign: '−' | '+', value: (design: Design) => number): Figure => ({
  ...job,
  id,
  title,
  about: 'Where the deck ends and the wing begins, from the fret plane; below it if negative.',
  value: (_, design) => value(design),
  how: (settled, design, k) => ({
    formula: `z = ${surface.formula}; y = ${sign === '−' ? '−' : ''}w/2`,
    inputs: inputs(settled, design, k, { ...surfaceTakes, w: 'bridge.deckWidth' }),
    source: sources.definition,
  }),
});

export const shoulderBass = shoulder(
  'shoulderBass',
  'Shoulder height, bass',
  '−',
  ({ profile }) => profile.shoulderBass,
);
export const shoulderTreble = shoulder(
  'shoulderTreble',
  'Shoulder height, treble',
  '+',
  ({ profile }) => profile.shoulderTreble,
);

export const tipTop: Figure = {
  ...job,
  id: 'tipTop',
  title: 'Height of the wing tips',
  about: 'The upper edge of the wings at their tips, from the fret plane; below it if negative.',
  value: (_, design) => design.profile.tipTop,
  how: (settled, design, k) => ({
    formula: `z = z_t − drop(R_t, y) + T_t; y = l/2; ${dropIs}`,
    inputs: inputs(settled, design, k, {
      z_t: topHeight,
      R_t: 'guitar.topRadius',
      T_t: 'bridge.tipThickness',
      l: lengthOf(settled),
    }),
    source: sources.definition,
  }),
};

export const bridgeFront: Figure = {
  ...job,
  id: 'bridgeFront',
  title: 'Nut to the bridge’s front edge',
  about: 'From the nut’s front edge to the bridge’s foremost point.',
  value: (_, design) => design.bridgeFront,
  how: (settled, design, k) => {
    const before = footprints[settled.bridge.footprint].frontAtCentre?.(settled.bridge) ?? 0;
    const foremost: Given = {
      name: 'the foremost point before the front edge on the centre line',
      value: before,
      kind: 'length',
    };
    return {
      formula: before === 0 ? 'x_f = x_0 − f' : 'x_f = x_0 − f − v',
      inputs: inputs(settled, design, k, {
        x_0: datum(settled).x_0,
        f: 'bridge.frontToSaddle',
        v: before === 0 ? undefined : foremost,
      }),
      source: sources.definition,
    };
  },
};

export const bridgeRear: Figure = {
  ...job,
  id: 'bridgeRear',
  title: 'Nut to the bridge’s rear edge',
  about: 'From the nut’s front edge to the rearmost point of the bridge.',
  value: (_, design) => design.bridgeRear,
  how: (settled, design, k) => ({
    formula: 'x_r = x_f + d',
    inputs: inputs(settled, design, k, { x_f: bridgeFront, d: depthOf(settled) }),
    source: sources.definition,
  }),
};

export const slotFloor: Figure = {
  ...job,
  id: 'slotFloor',
  title: 'Height of the slot’s floor',
  about: 'The slot’s level floor, from the fret plane; below it if negative.',
  value: (_, design) => design.slotFloor,
  how: (settled, design, k) => ({
    formula: 'z_f = z_c − D',
    inputs: inputs(settled, design, k, { z_c: deckCentre, D: 'slot.depth' }),
    source: sources.definition,
  }),
};

export const woodUnderSlot: Figure = {
  ...job,
  id: 'woodUnderSlot',
  title: 'Wood under the slot',
  about: 'What is left of the bridge between the slot’s floor and the top: least, at the middle.',
  value: (_, design) => design.woodUnderSlot,
  how: (settled, design, k) => ({
    formula: 'wood = z_f − z_t',
    inputs: inputs(settled, design, k, { z_f: slotFloor, z_t: topHeight }),
    source: sources.definition,
  }),
};
