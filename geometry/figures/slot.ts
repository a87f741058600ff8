import { leastMissLine, type SaddleLine } from '../bridge/slot.ts';
import type { Design } from '../design.ts';
import { crownEdgeKept, thicknessNeeded } from '../saddle/break-points.ts';
import type { Settled } from '../settle.ts';
import type { Figure, How } from './figure.ts';
import { bassOf, every, type Given, inputs, trebleOf } from './inputs.ts';
import { neededSetback } from './intonation.ts';
import { scale } from './scale.ts';
import { sources } from './sources.ts';
import { acrossAtSaddle } from './strings.ts';

/** What a saddle's crown keeps at each edge. */
export const kept: Given = { name: 'kept of the crown at each edge', value: crownEdgeKept, kind: 'length' };

/** The slot's best place: where the job's way puts it; where it is cut already, the line with the least largest miss. */
export const bestLine = (job: Settled, design: Design): SaddleLine =>
  job.slot.line === 'typed'
    ? leastMissLine(design.strings.map((s) => ({ x: s.acrossAtSaddle, y: job.guitar.scale + s.neededSetback })))
    : design.saddleLine;

type Part = 'x' | 'slant';

const least = (part: Part, job: Settled, design: Design, k: number): How => ({
  formula: `${part === 'x' ? 'x_0' : 'm'} of the line x_0 + m·y whose largest miss |L + s_k − x_0 − m·y_k| is least`,
  inputs: inputs(job, design, k, { L: scale, y_k: every(acrossAtSaddle), s_k: every(neededSetback) }),
  source: sources.leastMiss,
});

const outer = (part: Part, job: Settled, design: Design, k: number): How => {
  const ends = {
    y_b: bassOf(acrossAtSaddle),
    y_t: trebleOf(acrossAtSaddle),
    s_b: bassOf(neededSetback),
    s_t: trebleOf(neededSetback),
  };
  return part === 'slant'
    ? {
        formula: 'm = (s_t − s_b)/(y_t − y_b)',
        inputs: inputs(job, design, k, ends),
        source: sources.geometry,
      }
    : {
        formula: 'x_0 = L + s_b − y_b·(s_t − s_b)/(y_t − y_b)',
        inputs: inputs(job, design, k, { L: scale, ...ends }),
        source: sources.geometry,
      };
};

const typed = (part: Part, job: Settled, design: Design, k: number): How =>
  part === 'x'
    ? {
        formula: 'x_0 = the length typed, x_t',
        inputs: inputs(job, design, k, { x_t: 'slot.fromNut' }),
        source: sources.typed,
      }
    : {
        formula: 'm = the slant typed, m_t',
        inputs: inputs(job, design, k, { m_t: 'slot.slant' }),
        source: sources.typed,
      };

const line =
  (part: Part, isBest: boolean) =>
  (job: Settled, design: Design, k: number): How => {
    if (job.slot.line === 'outer') return outer(part, job, design, k);
    return job.slot.line === 'typed' && !isBest ? typed(part, job, design, k) : least(part, job, design, k);
  };

export const saddleLineFromNut: Figure = {
  id: 'saddleLineFromNut',
  title: 'Nut to saddle line',
  about: 'From the nut’s front edge to the slot’s centre line, on the guitar’s.',
  kind: 'length',
  per: 'job',
  value: (_, design) => design.saddleLine.x,
  how: line('x', false),
};

export const saddleSlant: Figure = {
  id: 'saddleSlant',
  title: 'Slant of the saddle line',
  about: 'How much nearer the tail the slot lies on the treble side, over so much across.',
  kind: 'slope',
  per: 'job',
  value: (_, design) => design.saddleLine.slant,
  how: line('slant', false),
};

export const bestSlotFromNut: Figure = {
  id: 'bestSlotFromNut',
  title: 'Slot’s best place',
  about: 'From the nut’s front edge to where the slot’s centre line would best cross the guitar’s.',
  kind: 'length',
  per: 'job',
  value: (job, design) => bestLine(job, design).x,
  how: line('x', true),
};

export const bestSlotSlant: Figure = {
  id: 'bestSlotSlant',
  title: 'Slot’s best slant',
  about: 'How much nearer the tail the slot would best lie on the treble side, over so much across.',
  kind: 'slope',
  per: 'job',
  value: (job, design) => bestLine(job, design).slant,
  how: line('slant', true),
};

/** The least thickness whose crown carries every break point, on a line. */
const thickness = (id: string, title: string, about: string, fromNut: Figure, slant: Figure): Figure => ({
  id,
  title,
  about,
  kind: 'length',
  per: 'job',
  value: (job, design) =>
    thicknessNeeded(
      { x: fromNut.value(job, design, 0) as number, slant: slant.value(job, design, 0) as number },
      design.strings.map((s) => ({ across: s.acrossAtSaddle, neededX: job.guitar.scale + s.neededSetback })),
    ),
  how: (job, design, k) => ({
    formula: 't = 2·(e + max|L + s_k − x_0 − m·y_k|/√(1 + m²))',
    inputs: inputs(job, design, k, {
      e: kept,
      L: scale,
      x_0: fromNut,
      m: slant,
      y_k: every(acrossAtSaddle),
      s_k: every(neededSetback),
    }),
    source: sources.crownEdge,
  }),
});

export const thicknessForAll = thickness(
  'saddleThicknessNeeded',
  'Saddle thickness needed',
  'The least thickness of a saddle in this slot whose crown carries every string’s needed break point.',
  saddleLineFromNut,
  saddleSlant,
);

export const bestThicknessForAll = thickness(
  'bestSlotThicknessNeeded',
  'Saddle thickness needed at the best place',
  'The least thickness whose crown carries every string’s needed break point, with the slot in its best place.',
  bestSlotFromNut,
  bestSlotSlant,
);
