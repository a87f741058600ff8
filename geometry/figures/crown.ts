import type { Design } from '../design.ts';
import { isMarkedIn } from '../saddle/gauges.ts';
import { type CrownFit, crownHeight as heightOf, straightTurn } from '../saddle/radius.ts';
import type { Settled } from '../settle.ts';
import type { Figure, How } from './figure.ts';
import { dropIs, heightAboveFretPlane } from './heights.ts';
import { every, type Given, inputs } from './inputs.ts';
import { acrossAtSaddle } from './strings.ts';

const points = { y_k: every(acrossAtSaddle), z_k: every(heightAboveFretPlane) };
const source = 'Vertical least squares over the strings’ wanted heights.';

/** The crown line of a given radius that lies best over the heights. */
const laid = `c + m·y − drop(R, y); m = Σ(y_k − ȳ)·(v_k − v̄)/Σ(y_k − ȳ)², c = v̄ − m·ȳ, v_k = z_k + drop(R, y_k), ȳ and v̄ the means; ${dropIs}`;

const straight: Given = {
  name: 'the turn (mm per mm) from the middle to the outermost string below which no crown is told from a flat one',
  value: straightTurn,
  kind: 'slope',
};

export const bestRadius: Figure = {
  id: 'bestRadius',
  title: 'Best saddle radius',
  about: 'The radius of the circle that lies best over the strings’ wanted heights.',
  kind: 'radius',
  per: 'job',
  value: (_, design) => design.crown.radius,
  how: (job, design, k) => ({
    formula: `R, with c and m, so that Σ(c + m·y_k − drop(R, y_k) − z_k)² is least, and flat where max|y_k|/R is less than α; ${dropIs}`,
    inputs: inputs(job, design, k, { ...points, α: straight }),
    source,
  }),
};

export const bestTilt: Figure = {
  id: 'bestTilt',
  title: 'Tilt of the best circle',
  about: 'How much the best circle is turned up towards the treble.',
  kind: 'slope',
  per: 'job',
  value: (_, design) => design.crown.t,
  how: (job, design, k) => ({
    formula: `m = Σ(y_k − ȳ)·(v_k − v̄)/Σ(y_k − ȳ)²; v_k = z_k + drop(R, y_k), ȳ and v̄ the means; ${dropIs}`,
    inputs: inputs(job, design, k, { R: bestRadius, ...points }),
    source,
  }),
};

/** Every gauge among which one is chosen. */
const gauges = (radii: readonly (number | 'flat')[]): Readonly<Record<string, Given>> =>
  Object.fromEntries(
    radii.map((value, j) => [`R_${j + 1}`, { name: 'a gauge at the bench', value, kind: 'radius' }] as const),
  );

const nearest = (radii: readonly (number | 'flat')[], job: Settled, design: Design, k: number): How => ({
  formula: `the R_j whose largest miss max|z − z_k| is least; z = ${laid}`,
  inputs: inputs(job, design, k, { ...points, ...gauges(radii) }),
  source: 'Vertical least squares; which gauges a bench has is common practice.',
});

export const nearestGauge: Figure = {
  id: 'nearestGauge',
  title: 'Nearest gauge',
  about: 'The radius gauge whose largest miss over the strings’ wanted heights is least.',
  kind: 'radius',
  per: 'job',
  value: (_, design) => design.nearestGauge.radius,
  how: (job, design, k) =>
    nearest(
      design.gauges.map(({ radius }) => radius),
      job,
      design,
      k,
    ),
};

export const crownRadius: Figure = {
  id: 'crownRadius',
  title: 'Radius of the crown',
  about: 'The radius that the crown is cut to; none where it follows each string’s own height.',
  kind: 'radius',
  per: 'job',
  value: (_, design) => design.cut?.radius,
  how: (job, design, k) => {
    const marked = design.gauges.map(({ radius }) => radius).filter((radius) => isMarkedIn(radius, job.show.radius));
    return job.saddle.crown === 'gauge' && marked.length > 0
      ? nearest(marked, job, design, k)
      : { formula: 'R = R_b', inputs: inputs(job, design, k, { R_b: bestRadius }), source: 'As chosen.' };
  },
};

/** The largest miss of a crown, and its miss at each string. */
const worst = (id: string, title: string, about: string, radius: Figure, of: (design: Design) => CrownFit): Figure => ({
  id,
  title,
  about,
  kind: 'length',
  per: 'job',
  value: (_, design) => of(design).worst,
  how: (job, design, k) => ({
    formula: `miss = max|z − z_k|; z = ${laid}`,
    inputs: inputs(job, design, k, { R: radius, ...points }),
    source,
  }),
});

export const bestRadiusMiss = worst(
  'bestRadiusMiss',
  'Largest miss of the best radius',
  'By how much the best circle misses a string’s wanted height at most.',
  bestRadius,
  ({ crown }) => crown,
);

export const nearestGaugeMiss = worst(
  'nearestGaugeMiss',
  'Largest miss of the nearest gauge',
  'By how much the nearest gauge misses a string’s wanted height at most.',
  nearestGauge,
  ({ nearestGauge: nearestFit }) => nearestFit,
);

export const gaugeMiss: Figure = {
  id: 'gaugeMiss',
  title: 'Miss of the nearest gauge',
  about:
    'By how much a crown of the nearest gauge would stand above this string’s wanted height; below it if negative.',
  kind: 'length',
  per: 'string',
  value: (_, design, k) => design.nearestGauge.misses[k],
  how: (job, design, k) => ({
    formula: `miss = z − z_s; z = ${laid}`,
    inputs: inputs(job, design, k, { R: nearestGauge, y: acrossAtSaddle, z_s: heightAboveFretPlane, ...points }),
    source,
  }),
};

export const crownHeight: Figure = {
  id: 'crownHeight',
  title: 'Height of the crown',
  about: 'How high the crown that is cut stands at this string, from the fret plane.',
  kind: 'length',
  per: 'string',
  value: (_, design, k) => {
    const string = design.strings[k];
    return string && (design.cut ? heightOf(design.cut, string.acrossAtSaddle) : string.heightAboveFretPlane);
  },
  how: (job, design, k) =>
    design.cut === undefined
      ? {
          formula: 'z = z_s',
          inputs: inputs(job, design, k, { z_s: heightAboveFretPlane }),
          source: 'As chosen: the crown follows each string’s own height.',
        }
      : {
          formula: `z = ${laid}`,
          inputs: inputs(job, design, k, { R: crownRadius, y: acrossAtSaddle, ...points }),
          source,
        },
};

export const crownMiss: Figure = {
  id: 'crownMiss',
  title: 'Miss of the crown',
  about: 'By how much the crown that is cut stands above this string’s wanted height; below it if negative.',
  kind: 'length',
  per: 'string',
  value: (_, design, k) => (design.cut === undefined ? 0 : design.cut.misses[k]),
  how: (job, design, k) => ({
    formula: 'miss = z − z_s',
    inputs: inputs(job, design, k, { z: crownHeight, z_s: heightAboveFretPlane }),
    source: 'Definition.',
  }),
};
