import type { Design } from '../design.ts';
import type { Settled } from '../settle.ts';
import type { Figure } from './figure.ts';
import { inputs } from './inputs.ts';
import { neededSetback } from './intonation.ts';
import { saddleThickness } from './saddle.ts';
import { scale } from './scale.ts';
import { kept, saddleLineFromNut, saddleSlant } from './slot.ts';
import { sources } from './sources.ts';
import { acrossAtSaddle } from './strings.ts';

const length = { kind: 'length', per: 'string' } as const;

/** How far off the crown's middle, square to its face, the break point gets. */
const off = 'o = w, but within ±(t/2 − e); w = (L + s_n − x_0 − m·y)/√(1 + m²)';
const onCrown = (job: Settled, design: Design, k: number) =>
  inputs(job, design, k, {
    L: scale,
    s_n: neededSetback,
    x_0: saddleLineFromNut,
    m: saddleSlant,
    y: acrossAtSaddle,
    t: saddleThickness,
    e: kept,
  });

export const missed: Figure = {
  ...length,
  id: 'missed',
  title: 'Break point off the crown',
  about:
    'How far, along the string, the needed break point lies behind what the crown can carry; before it if negative, 0 where it is reached.',
  value: (_, design, k) => design.strings[k]?.missed,
  how: (job, design, k) => ({
    formula: `missed = (w − o)·√(1 + m²); ${off}`,
    inputs: onCrown(job, design, k),
    source: sources.crownEdge,
  }),
};

export const fromFront: Figure = {
  ...length,
  id: 'fromFront',
  title: 'Break point from the front face',
  about: 'From the saddle’s front face back to the string’s break point, square to the face: where the file goes.',
  value: (_, design, k) => design.strings[k]?.fromFront,
  how: (job, design, k) => ({
    formula: `b = t/2 + o; ${off}`,
    inputs: onCrown(job, design, k),
    source: sources.crownEdge,
  }),
};

export const setback: Figure = {
  ...length,
  id: 'setback',
  title: 'Setback',
  about: 'How far beyond the nominal scale length the break point lies, on the crown that is made.',
  value: (_, design, k) => design.strings[k]?.setback,
  how: (job, design, k) => ({
    formula: 's = s_n − missed',
    inputs: inputs(job, design, k, { s_n: neededSetback, missed }),
    source: sources.definition,
  }),
};

export const breakPointFromNut: Figure = {
  ...length,
  id: 'breakPointFromNut',
  title: 'Nut to break point',
  about: 'From the nut’s front edge to where the string leaves the crown.',
  value: (_, design, k) => design.strings[k]?.breakX,
  how: (job, design, k) => ({
    formula: 'x_s = L + s',
    inputs: inputs(job, design, k, { L: scale, s: setback }),
    source: sources.definition,
  }),
};

export const behindSlotMiddle: Figure = {
  ...length,
  id: 'behindSlotMiddle',
  title: 'Break point behind the slot’s middle',
  about: 'How far, along the string, the break point lies behind the slot’s centre line; before it if negative.',
  value: (_, design, k) => design.strings[k]?.behindMiddle,
  how: (job, design, k) => ({
    formula: 'b = x_s − (x_0 + m·y)',
    inputs: inputs(job, design, k, {
      x_s: breakPointFromNut,
      x_0: saddleLineFromNut,
      m: saddleSlant,
      y: acrossAtSaddle,
    }),
    source: sources.geometry,
  }),
};
