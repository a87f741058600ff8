import type { Design } from '../design.ts';
import { type Life, lifeLeft as lives, touchWhenLowered } from '../saddle/life.ts';
import type { Settled } from '../settle.ts';
import { leavesFromNut, leavesHeight } from './break-angle.ts';
import { breakPointFromNut } from './break-points.ts';
import type { Figure } from './figure.ts';
import { heightAboveFretPlane, slope } from './heights.ts';
import { bound, inputs } from './inputs.ts';
import { exposure } from './saddle-heights.ts';
import { fret12 } from './scale.ts';
import { sources } from './sources.ts';

/** Where the string next touches the bridge: as it does now; or, before a ramp, as it will once it is lowered. */
const touched = (job: Settled, design: Design, k: number): Parameters<typeof inputs>[3] => {
  const string = design.strings[k];
  if (job.pins.ramp === 'none' || string === undefined) return { z_e: leavesHeight, x_e: leavesFromNut };
  const { x, z } = touchWhenLowered(job, string);
  return {
    z_e: { name: 'height where the lowered string meets the bridge', value: z, kind: 'length' },
    x_e: { name: 'from the nut to where the lowered string meets the bridge', value: x, kind: 'length' },
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
  (job, design, k) => ({
    formula:
      'd = the smaller of e − e_min and d_θ; d_θ so that atan(slope − d_θ/x_s) + atan((z_s − d_θ − z_e)/(x_e − x_s)) = θ_min',
    inputs: inputs(job, design, k, {
      ...touched(job, design, k),
      e: exposure,
      e_min: bound(job, 'exposure', 'from'),
      slope,
      x_s: breakPointFromNut,
      z_s: heightAboveFretPlane,
      θ_min: bound(job, 'breakAngle', 'from'),
    }),
    source: sources.pivot,
  }),
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
