import type { NeckOrBridge } from '../instrument/neck.ts';
import { neckOrBridge } from '../instrument/neck.ts';
import { assumedRise, type Settled } from '../settle.ts';
import type { Figure } from './figure.ts';
import { bound, every, inputs } from './inputs.ts';
import { bodyJoint, fret1, fret12, scale } from './scale.ts';
import { sources } from './sources.ts';

const job = { kind: 'length', per: 'job' } as const;

export const strungSaddleHeight: Figure = {
  ...job,
  id: 'strungSaddleHeight',
  title: 'String row over the old saddle',
  about:
    'How high the middle of the string row stands over the fret plane at the old saddle, from the readings of the strung guitar.',
  value: (_, design) => design.readings.atPitch.saddleHeight,
  how: (settled, design, k) => ({
    formula:
      'z = c + (a − sag − c)·(L + s − x_1)/(x_12 − x_1); c = (c_b + c_t)/2; a = (a_b + a_t)/2; s the mean of s_k; sag = 4·r·(x_12 − x_1)·(x_j − x_12)/(x_j − x_1)² before the body joint x_j, else 0',
    inputs: inputs(settled, design, k, {
      a_b: 'strung.actionBass',
      a_t: 'strung.actionTreble',
      c_b: 'strung.firstFretBass',
      c_t: 'strung.firstFretTreble',
      r: 'strung.relief',
      L: scale,
      x_1: fret1,
      x_12: fret12,
      x_j: bodyJoint,
      s_k: every('strings.list.*.setback'),
    }),
    source: sources.definition,
  }),
};

export const neckPlaneStrung: Figure = {
  ...job,
  id: 'neckPlaneStrung',
  title: 'Neck plane height at pitch, from the strung guitar',
  about: 'From the fret plane down to the bare top at pitch, by the old bridge, its saddle’s exposure and the action.',
  value: (_, design) => design.readings.atPitch.strung,
  how: (settled, design, k) => ({
    formula: 'h − rise = T + e − z',
    inputs: inputs(settled, design, k, { T: 'strung.thickness', e: 'strung.exposure', z: strungSaddleHeight }),
    source: sources.definition,
  }),
};

export const neckPlaneStraightedge: Figure = {
  ...job,
  id: 'neckPlaneStraightedge',
  title: 'Neck plane height at pitch, by straightedge',
  about: 'From the fret plane down to the bare top at pitch, by the light under a straightedge over the old bridge.',
  value: (_, design) => design.readings.atPitch.straightedge,
  how: (settled, design, k) => ({
    formula: 'h − rise = T + light',
    inputs: inputs(settled, design, k, { T: 'strung.thickness', light: 'strung.light' }),
    source: sources.definition,
  }),
};

/** Which of the two is gone by: the strung guitar's readings, where they are all there. */
const atPitch = (design: Parameters<Figure['value']>[1]): Figure =>
  design.readings.atPitch.strung !== undefined ? neckPlaneStrung : neckPlaneStraightedge;

export const rise: Figure = {
  ...job,
  id: 'rise',
  title: 'Rise under tension',
  about: 'How much the neck plane height shrinks when the strings are brought to pitch.',
  value: (settled) => settled.guitar.rise,
  how: (settled, design, k) => {
    switch (design.readings.riseFrom) {
      case 'typed':
        return {
          formula: 'rise = the length typed, r_t',
          inputs: inputs(settled, design, k, { r_t: 'guitar.rise' }),
          source: sources.typed,
        };
      case 'readings':
        return {
          formula: 'rise = h − h_p',
          inputs: inputs(settled, design, k, { h: 'guitar.neckPlaneHeight', h_p: atPitch(design) }),
          source: 'Definition: strings off less at pitch.',
        };
      case 'assumed':
        return {
          formula: 'rise = r_u, assumed',
          inputs: inputs(settled, design, k, {
            r_u: { name: 'a usual rise', value: assumedRise, kind: 'length', path: 'guitar.rise' },
          }),
          source: sources.practice,
        };
    }
  },
};

export const neckPlaneHeight: Figure = {
  ...job,
  id: 'neckPlaneHeight',
  title: 'Neck plane height',
  about: 'From the fret plane, carried on over the bridge, down to the bare top at the saddle line, strings off.',
  value: (settled) => settled.guitar.neckPlaneHeight,
  how: (settled, design, k) =>
    design.readings.neckPlaneFrom === 'typed'
      ? {
          formula: 'h = the length typed, h_t',
          inputs: inputs(settled, design, k, { h_t: 'guitar.neckPlaneHeight' }),
          source: sources.typed,
        }
      : {
          formula: 'h = h_p + rise',
          inputs: inputs(settled, design, k, { h_p: atPitch(design), rise }),
          source: sources.definition,
        },
};

export const straightedgeClearance: Figure = {
  ...job,
  id: 'straightedgeClearance',
  title: 'Straightedge clearance',
  about:
    'Light under a straightedge on the frets at the middle of the bridge, strings off; negative where it would meet the bridge.',
  value: (_, design) => design.straightedgeClearance,
  how: (settled, design, k) => ({
    formula: 'clearance = h − T_c',
    inputs: inputs(settled, design, k, { h: neckPlaneHeight, T_c: 'bridge.thickness' }),
    source: sources.definition,
  }),
};

/** The bounds that neck or bridge goes by. */
const usual = (settled: Settled) => ({
  c_min: bound(settled, 'straightedge', 'from'),
  c_max: bound(settled, 'straightedge', 'to'),
  T_min: bound(settled, 'neck', 'from'),
  T_max: bound(settled, 'neck', 'to'),
});

const neck = (
  id: string,
  title: string,
  about: string,
  value: (found: NeckOrBridge) => number | undefined,
  formula: string,
  takes: (settled: Settled) => Parameters<typeof inputs>[3],
  kind: Figure['kind'] = 'length',
): Figure => ({
  id,
  title,
  about,
  kind,
  per: 'job',
  value: (settled) => value(neckOrBridge(settled)),
  how: (settled, design, k) => ({ formula, inputs: inputs(settled, design, k, takes(settled)), source: sources.neck }),
});

export const suitsFrom = neck(
  'suitsFrom',
  'Thinnest bridge that suits the neck',
  'The thickness at the centre that leaves as much light under the straightedge as is usual at most.',
  ({ suits }) => suits.from,
  'T = h − c_max',
  (settled) => ({ h: neckPlaneHeight, c_max: usual(settled).c_max }),
);

export const suitsTo = neck(
  'suitsTo',
  'Thickest bridge that suits the neck',
  'The thickness at the centre that leaves as little light under the straightedge as is usual.',
  ({ suits }) => suits.to,
  'T = h − c_min',
  (settled) => ({ h: neckPlaneHeight, c_min: usual(settled).c_min }),
);

export const suitingThickness = neck(
  'suitingThickness',
  'Thickness that suits the neck',
  'The thickness nearest to this bridge’s that is usual and suits the neck; none where no usual bridge does.',
  ({ thickness }) => thickness,
  'T = T_c, but at least the larger of s_1 and T_min, and at most the smaller of s_2 and T_max',
  (settled) => {
    const { T_min, T_max } = usual(settled);
    return { T_c: 'bridge.thickness', s_1: suitsFrom, s_2: suitsTo, T_min, T_max };
  },
);

export const resetRaise = neck(
  'resetRaise',
  'Reset: raise of the fret plane',
  'How much a neck reset would bring the fret plane up over the bridge, for a bridge and a clearance in the middle of what is usual.',
  ({ reset }) => reset.raise,
  'Δh = (T_min + T_max)/2 + (c_min + c_max)/2 − h',
  (settled) => ({ h: neckPlaneHeight, ...usual(settled) }),
);

export const resetAngle = neck(
  'resetAngle',
  'Reset: turn of the neck',
  'By how much a neck reset would turn the neck.',
  ({ reset }) => reset.angle,
  'angle = atan(Δh/(L − x_j))',
  () => ({ Δh: resetRaise, L: scale, x_j: bodyJoint }),
  'angle',
);

export const resetOffHeel = neck(
  'resetOffHeel',
  'Reset: off the heel',
  'What a neck reset would take off the heel at its end, tapering to nothing at the top’s edge; off the joint’s upper edge if negative.',
  ({ reset }) => reset.offHeel,
  'off = D·Δh/(L − x_j)',
  () => ({ D: 'guitar.heelDepth', Δh: resetRaise, L: scale, x_j: bodyJoint }),
);
