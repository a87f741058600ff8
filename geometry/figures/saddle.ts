import type { Figure } from './figure.ts';
import { inputs } from './inputs.ts';
import { sources } from './sources.ts';

const job = { kind: 'length', per: 'job' } as const;

export const saddleThickness: Figure = {
  ...job,
  id: 'saddleThickness',
  title: 'Saddle thickness',
  about: 'From the saddle’s front face to its back.',
  value: (_, design) => design.saddle.thickness,
  how: (settled, design, k) => ({
    formula: 't = w − play',
    inputs: inputs(settled, design, k, { w: 'slot.width', play: 'saddle.play' }),
    source: sources.definition,
  }),
};

export const saddleLength: Figure = {
  ...job,
  id: 'saddleLength',
  title: 'Saddle length',
  about: 'From end to end, along the slot.',
  value: (_, design) => design.saddle.length,
  how: (settled, design, k) => ({
    formula: 'l = l_s − play',
    inputs: inputs(settled, design, k, { l_s: 'slot.length', play: 'saddle.play' }),
    source: sources.definition,
  }),
};
