import { grainKept, plateCap } from '../bridge/plate-cap.ts';
import type { Settled } from '../settle.ts';
import { pinAcross, pinFromNut } from './break-angle.ts';
import type { Figure } from './figure.ts';
import { every, inputs } from './inputs.ts';
import { sources } from './sources.ts';

const square: Readonly<Record<Settled['plate']['grain'], string>> = {
  across: 's_k = x_k',
  along: 's_k = y_k',
  slanted: 's_k = (x_k − y_k)/√2',
};

export const capApart: Figure = {
  id: 'capApart',
  title: 'Cap’s holes apart, square to the grain',
  about: 'Least distance between the middles of two pin holes in the plate cap, square to its grain.',
  kind: 'length',
  per: 'job',
  value: (job, design) => plateCap(job, design)?.apart,
  how: (job, design, k) => ({
    formula: `a = the least |s_j − s_k| of two holes; ${square[job.plate.grain]}`,
    inputs: inputs(job, design, k, {
      ...(job.plate.grain !== 'along' && { x_k: every(pinFromNut) }),
      ...(job.plate.grain !== 'across' && { y_k: every(pinAcross) }),
    }),
    source: sources.geometry,
  }),
};

export const capStagger: Figure = {
  id: 'capStagger',
  title: 'Cap’s holes, to be staggered by',
  about:
    'How much farther apart, square to the grain, neighbouring holes would have to stand so that each grain line passes through one of them only.',
  kind: 'length',
  per: 'job',
  value: (job, design) => plateCap(job, design)?.stagger,
  how: (job, design, k) => ({
    formula: 's = d + e − a; 0 where that is less',
    inputs: inputs(job, design, k, {
      d: 'pins.hole',
      e: { name: 'kept between two holes’ grain lines', value: grainKept, kind: 'length' },
      a: capApart,
    }),
    source: 'Definition; how much is kept between two holes is common practice.',
  }),
};
