import { breakPointFromNut } from './break-points.ts';
import { datum, deckHeight, topHeight } from './bridge.ts';
import type { Figure } from './figure.ts';
import { dropIs, heightAboveFretPlane, slope } from './heights.ts';
import { count, every, inputs, number } from './inputs.ts';
import { sources } from './sources.ts';
import { acrossAtNut, acrossAtSaddle } from './strings.ts';
import { tension } from './tension.ts';

const length = { kind: 'length', per: 'string' } as const;
const angle = { kind: 'angle', per: 'string' } as const;

export const pinAcross: Figure = {
  ...length,
  id: 'pinAcross',
  title: 'Pin, across',
  about: 'Where the middle of the string’s pin hole lies, from the centre line; + towards the treble.',
  value: (_, design, k) => design.strings[k]?.pin.x,
  how: (job, design, k) => ({
    formula: 'y_p = −S_p/2 + S_p·(k − 1)/(n − 1)',
    inputs: inputs(job, design, k, { S_p: 'pins.spread', k: number(k), n: count(design) }),
    source: sources.definition,
  }),
};

export const pinFromNut: Figure = {
  ...length,
  id: 'pinFromNut',
  title: 'Nut to pin',
  about: 'From the nut’s front edge to the middle of the string’s pin hole.',
  value: (_, design, k) => design.strings[k]?.pin.y,
  how: (job, design, k) => {
    const { x_0, m } = datum(job);
    return job.pins.row === 'square'
      ? {
          formula: 'x_p = x_0 + f_p',
          inputs: inputs(job, design, k, { x_0, f_p: 'pins.fromSaddle' }),
          source: sources.definition,
        }
      : {
          formula: 'x_p = x_0 + f_p + m·y_p',
          inputs: inputs(job, design, k, { x_0, f_p: 'pins.fromSaddle', m, y_p: pinAcross }),
          source: sources.definition,
        };
  },
};

export const leavesFromNut: Figure = {
  ...length,
  id: 'leavesFromNut',
  title: 'Nut to where the string meets the bridge',
  about: 'From the nut’s front edge to where the string, behind its break point, next touches the bridge.',
  value: (_, design, k) => design.strings[k]?.leaves.x,
  how: (job, design, k) =>
    job.pins.leaves === 'pins'
      ? {
          formula: 'x_e = x_p − d/2',
          inputs: inputs(job, design, k, { x_p: pinFromNut, d: 'pins.hole' }),
          source: sources.definition,
        }
      : {
          formula: 'x_e = x_s + l',
          inputs: inputs(job, design, k, { x_s: breakPointFromNut, l: 'pins.leaves' }),
          source: sources.definition,
        },
};

export const leavesHeight: Figure = {
  ...length,
  id: 'leavesHeight',
  title: 'Height where the string meets the bridge',
  about: 'The height at which the string next touches the bridge behind its break point, from the fret plane.',
  value: (_, design, k) => design.strings[k]?.leaves.z,
  how: (job, design, k) =>
    job.pins.leaves === 'pins'
      ? {
          formula: `z_e = z_t + T_c − drop(R_b, y_p) + tilt·y_p; ${dropIs}`,
          inputs: inputs(job, design, k, {
            z_t: topHeight,
            T_c: 'bridge.thickness',
            R_b: 'bridge.topRadius',
            tilt: 'bridge.tilt',
            y_p: pinAcross,
          }),
          source: 'Definition; the deck is taken as parallel to the fret plane along the string.',
        }
      : {
          formula: 'z_e = z_b',
          inputs: inputs(job, design, k, { z_b: deckHeight }),
          source: 'Definition; the deck is taken as parallel to the fret plane along the string.',
        },
};

export const slopeAngle: Figure = {
  ...angle,
  id: 'slopeAngle',
  title: 'Slope angle',
  about: 'How steeply the string rises from the fret plane on its way to the saddle.',
  value: (_, design, k) => design.strings[k]?.angleIn,
  how: (job, design, k) => ({
    formula: 'θ_in = atan(slope)',
    inputs: inputs(job, design, k, { slope }),
    source: sources.geometry,
  }),
};

export const angleBehind: Figure = {
  ...angle,
  id: 'angleBehind',
  title: 'Angle behind the crown',
  about: 'How steeply the string falls from the crown to where it next touches the bridge.',
  value: (_, design, k) => design.strings[k]?.angleOut,
  how: (job, design, k) => ({
    formula: 'θ_out = atan((z_s − z_e)/(x_e − x_s))',
    inputs: inputs(job, design, k, {
      z_s: heightAboveFretPlane,
      z_e: leavesHeight,
      x_e: leavesFromNut,
      x_s: breakPointFromNut,
    }),
    source: sources.geometry,
  }),
};

export const breakAngle: Figure = {
  ...angle,
  id: 'breakAngle',
  title: 'Break angle',
  about: 'The string’s whole change of direction over the crown, in the vertical plane.',
  value: (_, design, k) => design.strings[k]?.breakAngle,
  how: (job, design, k) => ({
    formula: 'θ = θ_in + θ_out',
    inputs: inputs(job, design, k, { θ_in: slopeAngle, θ_out: angleBehind }),
    source: sources.definition,
  }),
};

export const fanAngle: Figure = {
  ...angle,
  id: 'fanAngle',
  title: 'Sideways turn to the pin',
  about: 'How far the string turns aside on its way from the crown to its pin, seen from above; + towards the treble.',
  value: (_, design, k) => design.strings[k]?.fan,
  how: (job, design, k) => ({
    formula: 'fan = atan((y_p − y_s)/(x_p − x_s)) − atan((y_s − y_n)/x_s)',
    inputs: inputs(job, design, k, {
      y_p: pinAcross,
      x_p: pinFromNut,
      y_s: acrossAtSaddle,
      y_n: acrossAtNut,
      x_s: breakPointFromNut,
    }),
    source: sources.geometry,
  }),
};

export const downforce: Figure = {
  id: 'downforce',
  title: 'Downward force',
  about: 'The string’s push on the saddle, straight down.',
  kind: 'force',
  per: 'string',
  value: (_, design, k) => design.strings[k]?.downforce,
  how: (job, design, k) => ({
    formula: 'F = T·(sin θ_in + sin θ_out)',
    inputs: inputs(job, design, k, { T: tension, θ_in: slopeAngle, θ_out: angleBehind }),
    source: sources.statics,
  }),
};

export const totalDownforce: Figure = {
  id: 'totalDownforce',
  title: 'Downward force, all strings',
  about: 'All strings’ push on the saddle, straight down.',
  kind: 'force',
  per: 'job',
  value: (_, design) => design.totalDownforce,
  how: (job, design, k) => ({
    formula: 'F = Σ F_k',
    inputs: inputs(job, design, k, { F_k: every(downforce) }),
    source: sources.statics,
  }),
};
