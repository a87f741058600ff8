import type { Design } from '../design.ts';
import { fretAt } from '../instrument/frets.ts';
import type { Settled } from '../settle.ts';
import type { Figure, How } from './figure.ts';
import { type Given, inputs } from './inputs.ts';
import { sources } from './sources.ts';

/** The measured frets, their numbers and distances by turns. */
const measured = (job: Settled): Readonly<Record<string, string>> =>
  Object.fromEntries(
    job.guitar.measured.flatMap(({ id }, k) => [
      [`n_${k + 1}`, `guitar.measured.${id}.fret`],
      [`x_${k + 1}`, `guitar.measured.${id}.distance`],
    ]),
  );

const fitted = (job: Settled, design: Design, k: number): How => ({
  formula: 'L = Σ x_k·u_k / Σ u_k², u_k = 1 − 2^(−n_k/12)',
  inputs: inputs(job, design, k, measured(job)),
  source: sources.leastSquares,
});

export const scaleByFrets: Figure = {
  id: 'scaleByFrets',
  title: 'Scale by the measured frets',
  about: 'The scale length that fits the measured frets best.',
  kind: 'length',
  per: 'job',
  value: (_, design) => design.readings.frets?.scale,
  how: fitted,
};

export const scaleError: Figure = {
  id: 'scaleError',
  title: 'Standard error of that scale',
  about: 'What the spread of the measured frets alone says of the scale worked out from them.',
  kind: 'length',
  per: 'job',
  value: (_, design) => design.readings.frets?.error,
  how: (job, design, k) => ({
    formula: 'u(L) = √(Σ(x_k − L·u_k)² / ((m − 1)·Σ u_k²)), u_k = 1 − 2^(−n_k/12), m frets',
    inputs: inputs(job, design, k, {
      L: scaleByFrets,
      m: { name: 'how many frets were measured', value: job.guitar.measured.length, kind: 'count' },
      ...measured(job),
    }),
    source: sources.leastSquares,
  }),
};

export const scale: Figure = {
  id: 'scale',
  title: 'Scale length',
  about: 'Twice the distance from the nut to fret 12; what all else is reckoned from.',
  kind: 'length',
  per: 'job',
  value: (job) => job.guitar.scale,
  how: (job, design, k) =>
    design.readings.scaleFrom === 'frets'
      ? fitted(job, design, k)
      : {
          formula: 'L = the length typed, L_t',
          inputs: inputs(job, design, k, { L_t: 'guitar.scale' }),
          source: sources.typed,
        },
};

const fret = (id: string, title: string, n: number | 'guitar.bodyJoint' | 'guitar.frets', about: string): Figure => {
  const source: Given | string = typeof n === 'string' ? n : { name: 'the fret', value: n, kind: 'count' };
  const numberIn = (job: Settled) =>
    n === 'guitar.bodyJoint' ? job.guitar.bodyJoint : n === 'guitar.frets' ? job.guitar.frets : n;
  return {
    id,
    title,
    about,
    kind: 'length',
    per: 'job',
    value: (job) => fretAt(job.guitar.scale, numberIn(job)),
    how: (job, design, k) => ({
      formula: 'x_n = L·(1 − 2^(−n/12))',
      inputs: inputs(job, design, k, { L: scale, n: source }),
      source: sources.temperament,
    }),
  };
};

export const fret1 = fret('fret1', 'Nut to fret 1', 1, 'From the nut’s front edge to the crown of fret 1.');
export const fret12 = fret(
  'fret12',
  'Nut to fret 12',
  12,
  'From the nut’s front edge to the crown of fret 12: half the scale.',
);
export const bodyJoint = fret(
  'bodyJoint',
  'Nut to body joint',
  'guitar.bodyJoint',
  'From the nut’s front edge to the fret at which neck and body meet.',
);
export const lastFret = fret(
  'lastFret',
  'Nut to last fret',
  'guitar.frets',
  'From the nut’s front edge to the last fret, where the board’s end radius is taken.',
);
