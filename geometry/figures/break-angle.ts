import { reamDepth as reaming } from '../bridge/pins.ts';
import { isSecond } from '../instrument/courses.ts';
import type { Settled } from '../settle.ts';
import { breakPointFromNut } from './break-points.ts';
import { datum, deckHeight, topHeight } from './bridge.ts';
import type { Figure } from './figure.ts';
import { dropIs, heightAboveFretPlane, slope } from './heights.ts';
import { count, every, type Given, inputs, number } from './inputs.ts';
import { sources } from './sources.ts';
import { acrossAtNut, acrossAtSaddle, numbered } from './strings.ts';
import { tension } from './tension.ts';

const length = { kind: 'length', per: 'string' } as const;
const angle = { kind: 'angle', per: 'string' } as const;

/** A string's place in its pair: nothing where each stands alone. */
const inPair = (job: Settled, k: number): Given | undefined =>
  job.strings.courses === 'pairs'
    ? {
        name: 'its place in the pair: 0 for the first, 1 for the second',
        value: isSecond(job.strings, k) ? 1 : 0,
        kind: 'count',
      }
    : undefined;

/** Whether the pins stand in two rows. */
const hasTwoRows = ({ pins, strings }: Settled) => pins.hold === 'pins' && strings.courses === 'pairs';

const where = { pins: 'pin hole', tied: 'hole in the tie block', behind: 'hole in the deck' };

export const pinAcross: Figure = {
  ...length,
  id: 'pinAcross',
  title: 'Pin, across',
  about:
    'Where the middle of the string’s pin hole lies, or the hole that takes its end, from the centre line; + towards the treble.',
  value: (_, design, k) => design.strings[k]?.pin.x,
  how: (job, design, k) => {
    const q = inPair(job, k);
    if (q === undefined)
      return {
        formula: 'y_p = −S_p/2 + S_p·(k − 1)/(n − 1)',
        inputs: inputs(job, design, k, { S_p: 'pins.spread', k: number(k), n: count(design) }),
        source: sources.definition,
      };
    const course = numbered(job, design, k);
    return hasTwoRows(job)
      ? {
          formula: 'y_p = −S_p/2 + (S_p − a)·(k − 1)/(n − 1) + q·a, each row equally spaced; k counts the courses',
          inputs: inputs(job, design, k, { S_p: 'pins.spread', a: 'pins.secondAside', ...course, q }),
          source: sources.definition,
        }
      : {
          formula: 'y_p = −S_p/2 + (S_p − w)·(k − 1)/(n − 1) + q·w; w = p·S_p/S; k counts the courses',
          inputs: inputs(job, design, k, {
            S_p: 'pins.spread',
            p: 'strings.pairGap',
            S: 'strings.spread',
            ...course,
            q,
          }),
          source: sources.definition,
        };
  },
};

export const pinFromNut: Figure = {
  ...length,
  id: 'pinFromNut',
  title: 'Nut to pin',
  about: 'From the nut’s front edge to the middle of the string’s pin hole, or to the hole that takes its end.',
  value: (_, design, k) => design.strings[k]?.pin.y,
  how: (job, design, k) => {
    const { x_0, m } = datum(job);
    const rows = hasTwoRows(job) ? { r: 'pins.secondRow', q: inPair(job, k) } : {};
    const begin = `x_p = x_0 + f_p${hasTwoRows(job) ? ' + q·r' : ''}`;
    const takes = { x_0, f_p: 'pins.fromSaddle', ...rows };
    switch (job.pins.row) {
      case 'square':
        return { formula: begin, inputs: inputs(job, design, k, takes), source: sources.definition };
      case 'slanted':
        return {
          formula: `${begin} + m·y_p`,
          inputs: inputs(job, design, k, { ...takes, m, y_p: pinAcross }),
          source: sources.definition,
        };
      case 'arc':
        return {
          formula: `${begin} − drop(R, y_p), or + if h is negative; R = |h|/2 + S_p²/(8·|h|), the row straight if h is 0; ${dropIs}`,
          inputs: inputs(job, design, k, { ...takes, h: 'pins.arcRise', S_p: 'pins.spread', y_p: pinAcross }),
          source: 'Plane geometry: the circle through the outer pins, by its chord and sagitta.',
        };
    }
  },
};

export const reamDepth: Figure = {
  id: 'reamDepth',
  title: 'Ream to a depth of',
  about: 'How deep below the bridge’s top the reamer cuts until the pin seats under its head.',
  kind: 'length',
  per: 'job',
  value: (job) => reaming(job),
  how: (job, design, k) => ({
    formula: 't = (D − d)/taper',
    inputs: inputs(job, design, k, { D: 'pins.pinDiameter', d: 'pins.hole', taper: 'pins.taper' }),
    source: 'Definition of the taper; the reamer has the pin’s.',
  }),
};

export const leavesFromNut: Figure = {
  ...length,
  id: 'leavesFromNut',
  title: 'Nut to where the string meets the bridge',
  about: 'From the nut’s front edge to where the string, behind its break point, next touches the bridge.',
  value: (_, design, k) => design.strings[k]?.leaves.x,
  how: (job, design, k) => {
    const hole = { x_p: pinFromNut, d: 'pins.hole' };
    switch (design.strings[k]?.leaves.touch) {
      case 'typed':
        return {
          formula: 'x_e = x_s + l',
          inputs: inputs(job, design, k, { x_s: breakPointFromNut, l: 'pins.leaves' }),
          source: sources.definition,
        };
      case 'rampStart':
        return {
          formula:
            'x_e = x_p − d/2 − l_r: the ramp’s beginning, to which the string falls less steeply than to its foot',
          inputs: inputs(job, design, k, { ...hole, l_r: 'pins.ramp' }),
          source: sources.stretched,
        };
      case 'rampFoot':
        return {
          formula: 'x_e = x_p − d/2: the ramp’s foot, to which the string falls less steeply than to its beginning',
          inputs: inputs(job, design, k, hole),
          source: sources.stretched,
        };
      case 'hole':
        return {
          formula: 'x_e = x_p − d/2',
          inputs: inputs(job, design, k, hole),
          source: sources.definition,
        };
      default:
        return {
          formula: `x_e = x_p, its ${where[job.pins.hold]}`,
          inputs: inputs(job, design, k, { x_p: pinFromNut }),
          source: sources.definition,
        };
    }
  },
};

/** Heights of the deck along a string go by the deck where its hole is. */
const parallel = 'Definition; the deck is taken as parallel to the fret plane along the string.';

export const leavesHeight: Figure = {
  ...length,
  id: 'leavesHeight',
  title: 'Height where the string meets the bridge',
  about: 'The height at which the string next touches the bridge behind its break point, from the fret plane.',
  value: (_, design, k) => design.strings[k]?.leaves.z,
  how: (job, design, k) => {
    const touch = design.strings[k]?.leaves.touch;
    if (touch === 'typed')
      return { formula: 'z_e = z_b', inputs: inputs(job, design, k, { z_b: deckHeight }), source: parallel };
    const below = touch === 'rampFoot' ? 'pins.rampDepth' : touch === 'tieHole' ? 'pins.below' : undefined;
    return {
      formula: `z_e = z_t + T_c − drop(R_b, y_p) + tilt·y_p${below === undefined ? '' : ' − b'}; ${dropIs}`,
      inputs: inputs(job, design, k, {
        z_t: topHeight,
        T_c: 'bridge.thickness',
        R_b: 'bridge.topRadius',
        tilt: 'bridge.tilt',
        y_p: pinAcross,
        b: below,
      }),
      source: parallel,
    };
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
