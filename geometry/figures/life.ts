import type { Design } from '../design.ts';
import { type Life, lifeLeft as lives } from '../saddle/life.ts';
import { leavesFromNut, leavesHeight, pinAcross, pinFromNut } from './break-angle.ts';
import { breakPointFromNut } from './break-points.ts';
import { topHeight } from './bridge.ts';
import type { Figure } from './figure.ts';
import { dropIs, heightAboveFretPlane, slope } from './heights.ts';
import { bound, inputs } from './inputs.ts';
import { exposure } from './saddle-heights.ts';
import { fret12 } from './scale.ts';
import { sources } from './sources.ts';

type Sources = Parameters<typeof inputs>[3];

/** Until the break angle is the least: to where the string leaves the bridge; before a ramp to either of its corners, as a lowered string may come to lie on the other one. */
const byAngle = (design: Design, k: number): { formula: string; takes: Sources } => {
  const until = (x: string, z: string) => `atan(slope − d_θ/x_s) + atan((z_s − d_θ − ${z})/(${x} − x_s)) = θ_min`;
  const touch = design.strings[k]?.leaves.touch;
  if (touch !== 'rampStart' && touch !== 'rampFoot')
    return { formula: `d_θ so that ${until('x_e', 'z_e')}`, takes: { x_e: leavesFromNut, z_e: leavesHeight } };
  return {
    formula: `d_θ the smaller of two, so that ${until('x', 'z')} at the ramp’s beginning, x = x_p − r − l_r and z = z_p, and at its foot, x = x_p − r and z = z_p − b; r = d_h/2; z_p = z_t + T_c − drop(R_b, y_p) + tilt·y_p; ${dropIs}`,
    takes: {
      x_p: pinFromNut,
      d_h: 'pins.hole',
      l_r: 'pins.ramp',
      b: 'pins.rampDepth',
      z_t: topHeight,
      T_c: 'bridge.thickness',
      R_b: 'bridge.topRadius',
      tilt: 'bridge.tilt',
      y_p: pinAcross,
    },
  };
};

const life = (
  id: string,
  title: string,
  about: string,
  value: (found: Life) => number | undefined,
  how: Figure['how'],
): Figure => ({
  id,
  title,
  about,
  kind: 'length',
  per: 'string',
  value: (job, design, k) => {
    const found = lives(job, design)[k];
    return found && value(found);
  },
  how,
});

export const lifeAtSaddle: Figure = life(
  'lifeAtSaddle',
  'Life left, at the saddle',
  'How far the saddle can still come down at this string until exposure or break angle falls below its limit.',
  ({ atSaddle }) => atSaddle,
  (job, design, k) => {
    const { formula, takes } = byAngle(design, k);
    return {
      formula: `d = the smaller of e − e_min and d_θ; ${formula}`,
      inputs: inputs(job, design, k, {
        e: exposure,
        e_min: bound(job, 'exposure', 'from'),
        slope,
        x_s: breakPointFromNut,
        z_s: heightAboveFretPlane,
        ...takes,
        θ_min: bound(job, 'breakAngle', 'from'),
      }),
      source: sources.pivot,
    };
  },
);

export const lifeLeft: Figure = life(
  'lifeLeft',
  'Life left, at fret 12',
  'How far the action can still be lowered at fret 12 until exposure or break angle falls below its limit.',
  ({ atFret12 }) => atFret12,
  (job, design, k) => ({
    formula: `life = d·x_12/x_s; met first: ${lives(job, design)[k]?.limit === 'breakAngle' ? 'break angle' : 'exposure'}`,
    inputs: inputs(job, design, k, { d: lifeAtSaddle, x_12: fret12, x_s: breakPointFromNut }),
    source: sources.pivot,
  }),
);
