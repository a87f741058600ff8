import { type Held, helds } from '../bridge/held.ts';
import { type GlueLoad, load, type StringLoad } from '../bridge/load.ts';
import type { Design } from '../design.ts';
import type { Settled } from '../settle.ts';
import { leavesFromNut, slopeAngle } from './break-angle.ts';
import { breakPointFromNut } from './break-points.ts';
import { bridgeRear, topHeight } from './bridge.ts';
import type { Figure } from './figure.ts';
import { gluedArea, gluedCentre, secondMoment } from './glue.ts';
import { heightAboveFretPlane } from './heights.ts';
import { every, inputs } from './inputs.ts';
import { sources } from './sources.ts';
import { tension } from './tension.ts';

const named: Readonly<Record<Held, string>> = { pins: 'pins', wornPlate: 'worn plate', tied: 'held by the bridge' };

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
  'Tipping moment of the string, worn plate or held by the bridge',
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
