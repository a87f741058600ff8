import { placesAcross } from '../instrument/spacing.ts';
import type { Job } from '../job.ts';
import { wantedAt } from '../saddle/heights.ts';
import type { Figure } from './figure.ts';
import { count, every, inputs, number } from './inputs.ts';
import { sources } from './sources.ts';

const gauges = (job: Job): readonly number[] => job.strings.list.map(({ gauge }) => gauge);

/** Where each string lies across, at a spread. */
const across = (
  id: string,
  title: string,
  about: string,
  path: 'guitar.nutSpread' | 'strings.spread',
  spread: (job: Job) => number,
): Figure => ({
  id,
  title,
  about,
  kind: 'length',
  per: 'string',
  value: (job, _, k) => placesAcross(spread(job), gauges(job), job.strings.spacing)[k],
  how: (job, design, k) =>
    job.strings.spacing === 'centres'
      ? {
          formula: 'y = −S/2 + S·(k − 1)/(n − 1)',
          inputs: inputs(job, design, k, { S: path, k: number(k), n: count(design) }),
          source: sources.definition,
        }
      : {
          formula:
            'y = −S/2 + Σ(g + (d_j + d_{j+1})/2) over the gaps before string k; g = (S − Σ(d_k + d_{k+1})/2)/(n − 1)',
          inputs: inputs(job, design, k, {
            S: path,
            k: number(k),
            n: count(design),
            d_k: every('strings.list.*.gauge'),
          }),
          source: 'Definition: equal gaps, the strings’ own diameters taken out.',
        },
});

export const acrossAtNut = across(
  'acrossAtNut',
  'Across, at the nut',
  'Where the string’s middle lies at the nut, from the centre line; + towards the treble.',
  'guitar.nutSpread',
  (job) => job.guitar.nutSpread,
);

export const acrossAtSaddle = across(
  'acrossAtSaddle',
  'Across, at the saddle',
  'Where the string’s middle lies over the saddle, from the centre line; + towards the treble.',
  'strings.spread',
  (job) => job.strings.spread,
);

export const actionWanted: Figure = {
  id: 'actionWanted',
  title: 'Wanted action',
  about: 'Underside of the open string to the crown of fret 12, as wanted in the end.',
  kind: 'length',
  per: 'string',
  value: (job, design, k) => wantedAt(job, k, design.strings.length).action,
  how: (job, design, k) => ({
    formula: 'a = a_b + (a_t − a_b)·(k − 1)/(n − 1)',
    inputs: inputs(job, design, k, { a_b: 'action.bass', a_t: 'action.treble', k: number(k), n: count(design) }),
    source: sources.wanted,
  }),
};

export const firstFretWanted: Figure = {
  id: 'firstFretWanted',
  title: 'Wanted first-fret clearance',
  about: 'Underside of the open string to the crown of fret 1, as wanted in the end.',
  kind: 'length',
  per: 'string',
  value: (job, design, k) => wantedAt(job, k, design.strings.length).firstFret,
  how: (job, design, k) => ({
    formula: 'c = c_b + (c_t − c_b)·(k − 1)/(n − 1)',
    inputs: inputs(job, design, k, {
      c_b: 'action.firstFretBass',
      c_t: 'action.firstFretTreble',
      k: number(k),
      n: count(design),
    }),
    source: sources.wanted,
  }),
};
