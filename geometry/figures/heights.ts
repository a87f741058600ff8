import { boardRadius, crownAt } from '../instrument/board.ts';
import { fretAt } from '../instrument/frets.ts';
import { acrossAt } from '../saddle/heights.ts';
import { breakPointFromNut } from './break-points.ts';
import type { Figure } from './figure.ts';
import { inputs } from './inputs.ts';
import { bodyJoint, fret1, fret12, lastFret } from './scale.ts';
import { saddleLineFromNut } from './slot.ts';
import { sources } from './sources.ts';
import { acrossAtNut, acrossAtSaddle, actionWanted, firstFretWanted } from './strings.ts';

/** `drop`, as it stands behind every formula that uses it. */
export const dropIs = 'drop(R, y) = R − √(R² − y²), 0 for flat';

const crown = (id: string, title: string, n: 1 | 12, at: Figure): Figure => ({
  id,
  title,
  about: `How high the crown of fret ${n} stands under this string, from the fret plane; lower if negative.`,
  kind: 'length',
  per: 'string',
  value: (job, design, k) => {
    const string = design.strings[k];
    const x = fretAt(job.guitar.scale, n);
    return string && crownAt(job.guitar, x, acrossAt(string, x));
  },
  how: (job, design, k) => ({
    formula: `z = −drop(R, y) − sag; R = R_n + (R_e − R_n)·x/x_e; y = y_n + (y_s − y_n)·x/x_s; sag = 4·r·(x − x_1)·(x_j − x)/(x_j − x_1)² before the body joint x_j, else 0; ${dropIs}`,
    inputs: inputs(job, design, k, {
      x: at,
      R_n: 'guitar.boardRadiusNut',
      R_e: 'guitar.boardRadiusEnd',
      x_e: lastFret,
      y_n: acrossAtNut,
      y_s: acrossAtSaddle,
      x_s: breakPointFromNut,
      r: 'guitar.relief',
      x_1: fret1,
      x_j: bodyJoint,
    }),
    source: sources.cone,
  }),
});

export const crownAtFret1 = crown('crownAtFret1', 'Crown of fret 1 under the string', 1, fret1);
export const crownAtFret12 = crown('crownAtFret12', 'Crown of fret 12 under the string', 12, fret12);

const throughBoth = {
  x_1: fret1,
  x_12: fret12,
  k_1: crownAtFret1,
  k_12: crownAtFret12,
  c: firstFretWanted,
  a: actionWanted,
};

export const slope: Figure = {
  id: 'slope',
  title: 'Slope of the string',
  about: 'How much the string rises from the fret plane on its way to the saddle.',
  kind: 'slope',
  per: 'string',
  value: (_, design, k) => design.strings[k]?.slope,
  how: (job, design, k) => ({
    formula: 'slope = (k_12 + a − k_1 − c)/(x_12 − x_1)',
    inputs: inputs(job, design, k, throughBoth),
    source: sources.definition,
  }),
};

export const heightAboveFretPlane: Figure = {
  id: 'heightAboveFretPlane',
  title: 'Height above the fret plane',
  about: 'How high the string’s underside has to stand over the fret plane at its break point.',
  kind: 'length',
  per: 'string',
  value: (_, design, k) => design.strings[k]?.heightAboveFretPlane,
  how: (job, design, k) => ({
    formula: 'z_s = k_1 + c + (k_12 + a − k_1 − c)·(x_s − x_1)/(x_12 − x_1)',
    inputs: inputs(job, design, k, { ...throughBoth, x_s: breakPointFromNut }),
    source: sources.definition,
  }),
};

export const boardRadiusAtSaddle: Figure = {
  id: 'boardRadiusAtSaddle',
  title: 'Board radius at the saddle',
  about: 'The radius across the fret crowns, the board carried on to the saddle line.',
  kind: 'radius',
  per: 'job',
  value: (job, design) => boardRadius(job.guitar, design.saddleLine.x),
  how: (job, design, k) => ({
    formula: 'R = R_n + (R_e − R_n)·x_0/x_e; flat for a flat board',
    inputs: inputs(job, design, k, {
      R_n: 'guitar.boardRadiusNut',
      R_e: 'guitar.boardRadiusEnd',
      x_0: saddleLineFromNut,
      x_e: lastFret,
    }),
    source: 'Definition of a cone (for strings that fan out: Hartstein, in American Lutherie).',
  }),
};
