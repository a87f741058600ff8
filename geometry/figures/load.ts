import { type GlueLoad, type Held, helds, load, type StringLoad } from '../bridge/load.ts';
import type { Design } from '../design.ts';
import type { Settled } from '../settle.ts';
import { leavesFromNut, slopeAngle } from './break-angle.ts';
import { breakPointFromNut } from './break-points.ts';
import { bridgeFront, bridgeRear, topHeight } from './bridge.ts';
import type { Figure } from './figure.ts';
import { heightAboveFretPlane } from './heights.ts';
import { every, inputs } from './inputs.ts';
import { sources } from './sources.ts';
import { tension } from './tension.ts';

const named: Readonly<Record<Held, string>> = { pins: 'pins', wornPlate: 'worn plate', tied: 'tied strings' };

const outline = (job: Settled) => ({
  l: 'bridge.length',
  d: 'bridge.depth',
  ...(job.bridge.footprint === 'belly' && { d_t: 'bridge.wingDepth', w: 'bridge.bellyWidth' }),
});

export const gluedArea: Figure = {
  id: 'gluedArea',
  title: 'Glued area, mm²',
  about: 'The footprint’s area, all of it taken as glued.',
  kind: 'count',
  per: 'job',
  value: (job, design) => load(job, design).area,
  how: (job, design, k) => ({
    formula: job.bridge.footprint === 'belly' ? 'A = l·d_t + (d − d_t)·w/2' : 'A = l·d',
    inputs: inputs(job, design, k, outline(job)),
    source: 'Plane geometry: a belly’s two equal arcs on each side halve the rectangle they run across.',
  }),
};

/** How deep a belly bridge is, as it stands behind the integrals over it. */
const depthIs =
  'D(y), how deep the footprint is at y, is d in the middle and d_t beyond the belly, w wide, with two equal arcs between them on each side';

export const gluedCentre: Figure = {
  id: 'gluedCentre',
  title: 'Nut to the glued area’s middle',
  about: 'From the nut’s front edge to the centroid of the glued area, about which the bridge would tip.',
  kind: 'length',
  per: 'job',
  value: (job, design) => load(job, design).centreFromNut,
  how: (job, design, k) =>
    job.bridge.footprint === 'belly'
      ? {
          formula: `x_c = x_f + ∫D(y)² dy/(2·A) over the length l; ${depthIs}`,
          inputs: inputs(job, design, k, { x_f: bridgeFront, A: gluedArea, ...outline(job) }),
          source: sources.centroid,
        }
      : {
          formula: 'x_c = x_f + d/2',
          inputs: inputs(job, design, k, { x_f: bridgeFront, d: 'bridge.depth' }),
          source: sources.centroid,
        },
};

export const secondMoment: Figure = {
  id: 'secondMoment',
  title: 'Second moment of the glued area, mm⁴',
  about: 'How much the glued area resists tipping: about the line across through its middle.',
  kind: 'count',
  per: 'job',
  value: (job, design) => load(job, design).secondMoment,
  how: (job, design, k) =>
    job.bridge.footprint === 'belly'
      ? {
          formula: `I = ∫((D(y) − e)³ + e³)/3 dy over the length l, e = x_c − x_f; ${depthIs}`,
          inputs: inputs(job, design, k, { x_f: bridgeFront, x_c: gluedCentre, ...outline(job) }),
          source: sources.centroid,
        }
      : {
          formula: 'I = l·d³/12',
          inputs: inputs(job, design, k, outline(job)),
          source: 'Second moment of a rectangle about the line through its middle.',
        },
};

const atCrown = 'T·cos θ·(z_s − z_t) − T·sin θ·(x_s − x_c)';
const atCrowns = 'T_k·cos θ_k·(z_k − z_t) − T_k·sin θ_k·(s_k − x_c)';

const share = (id: string, title: string, held: Held): Figure => ({
  id,
  title,
  about: `The string’s own share of the moment that tips the bridge forward, ${held === 'pins' ? 'its ball end bearing on a sound plate' : 'without its pin’s help'}.`,
  kind: 'moment',
  per: 'string',
  value: (job, design, k) => (load(job, design).strings[k] as StringLoad | undefined)?.moment[held],
  how: (job, design, k) => ({
    formula: held === 'pins' ? `M = ${atCrown} − T·(x_e − x_c)` : `M = ${atCrown}`,
    inputs: inputs(job, design, k, {
      T: tension,
      θ: slopeAngle,
      z_s: heightAboveFretPlane,
      x_s: breakPointFromNut,
      ...(held === 'pins' && { x_e: leavesFromNut }),
      z_t: topHeight,
      x_c: gluedCentre,
    }),
    source: sources.statics,
  }),
});

export const stringMoment = share('stringMoment', 'Tipping moment of the string, pins', 'pins');
export const stringMomentFree = share(
  'stringMomentFree',
  'Tipping moment of the string, worn plate or tied',
  'wornPlate',
);

/** The figures of one way in which the strings' ends are held. */
const caseFigures = (held: Held): readonly Figure[] => {
  const key = held.charAt(0).toUpperCase() + held.slice(1);
  const hasPins = held === 'pins';
  const one = (
    part: keyof GlueLoad,
    title: string,
    about: string,
    kind: Figure['kind'],
    formula: string,
    takes: Parameters<typeof inputs>[3],
  ): Figure => ({
    id: `load${key}${part.charAt(0).toUpperCase()}${part.slice(1)}`,
    title: `${title}, ${named[held]}`,
    about,
    kind,
    per: 'job',
    value: (job: Settled, design: Design) => load(job, design).cases[held][part],
    how: (job, design, k) => ({ formula, inputs: inputs(job, design, k, takes), source: sources.beam }),
  });
  const down = one(
    'down',
    'Down on the top',
    'All forces on the bridge together, straight down.',
    'force',
    hasPins ? 'N = Σ T_k·(sin θ_k + 1)' : 'N = Σ T_k·sin θ_k',
    { T_k: every(tension), θ_k: every(slopeAngle) },
  );
  const moment = one(
    'moment',
    'Tipping moment',
    'What tips the bridge forward, about the middle of the glued area at the bare top.',
    'moment',
    hasPins ? `M = Σ(${atCrowns} − T_k·(e_k − x_c))` : `M = Σ(${atCrowns})`,
    {
      T_k: every(tension),
      θ_k: every(slopeAngle),
      z_k: every(heightAboveFretPlane),
      s_k: every(breakPointFromNut),
      ...(hasPins && { e_k: every(leavesFromNut) }),
      z_t: topHeight,
      x_c: gluedCentre,
    },
  );
  return [
    down,
    moment,
    one('meanStress', 'Mean stress', 'Mean pull across the glue line; + peels, − presses.', 'stress', 'σ = −N/A', {
      N: down,
      A: gluedArea,
    }),
    one(
      'rearStress',
      'Stress at the rear edge',
      'Pull across the glue line at its rear edge; + peels, − presses.',
      'stress',
      'σ = −N/A + M·(x_r − x_c)/I',
      { N: down, A: gluedArea, M: moment, x_r: bridgeRear, x_c: gluedCentre, I: secondMoment },
    ),
    one('meanShear', 'Mean shear', 'Mean shear along the glue line.', 'stress', 'τ = Σ T_k·cos θ_k/A', {
      T_k: every(tension),
      θ_k: every(slopeAngle),
      A: gluedArea,
    }),
  ];
};

export const loadCases: readonly Figure[] = helds.flatMap(caseFigures);
