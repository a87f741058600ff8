import type { Design } from '../design.ts';
import { blank, wholeHeights } from '../saddle/blank.ts';
import { halfSaddle, onFace } from '../saddle/face.ts';
import type { Settled } from '../settle.ts';
import { deckHeight, slotFloor } from './bridge.ts';
import { bestRadius, bestTilt, crownHeight, crownRadius } from './crown.ts';
import type { Figure, How } from './figure.ts';
import { dropIs, heightAboveFretPlane } from './heights.ts';
import { bassOf, every, inputs, trebleOf } from './inputs.ts';
import { saddleLength, saddleThickness } from './saddle.ts';
import { saddleSlant } from './slot.ts';
import { sources } from './sources.ts';
import { acrossAtSaddle } from './strings.ts';

const job = { kind: 'length', per: 'job' } as const;
const string = { kind: 'length', per: 'string' } as const;

export const saddleBottom: Figure = {
  ...job,
  id: 'saddleBottom',
  title: 'Height of the saddle’s bottom',
  about: 'The slot’s floor, or the top of what lies in it under the saddle, from the fret plane; below it if negative.',
  value: (_, design) => design.saddle.bottom,
  how: (settled, design, k) => ({
    formula: 'z_0 = z_f + u',
    inputs: inputs(settled, design, k, { z_f: slotFloor, u: 'saddle.under' }),
    source: sources.definition,
  }),
};

export const exposure: Figure = {
  ...string,
  id: 'exposure',
  title: 'Exposure',
  about: 'Saddle standing above the bridge at this string.',
  value: (_, design, k) => design.strings[k]?.exposure,
  how: (settled, design, k) => ({
    formula: 'e = z_s − z_b',
    inputs: inputs(settled, design, k, { z_s: heightAboveFretPlane, z_b: deckHeight }),
    source: sources.definition,
  }),
};

export const saddleHeight: Figure = {
  ...string,
  id: 'saddleHeight',
  title: 'Saddle height',
  about: 'From the saddle’s bottom up to the string: its whole height here.',
  value: (_, design, k) => design.strings[k]?.saddleHeight,
  how: (settled, design, k) =>
    settled.slot.floor === 'dome'
      ? {
          formula: `H = z_s − z_0 + drop(R_t, y); ${dropIs}`,
          inputs: inputs(settled, design, k, {
            z_s: heightAboveFretPlane,
            z_0: saddleBottom,
            R_t: 'guitar.topRadius',
            y: acrossAtSaddle,
          }),
          source: sources.definition,
        }
      : {
          formula: 'H = z_s − z_0',
          inputs: inputs(settled, design, k, { z_s: heightAboveFretPlane, z_0: saddleBottom }),
          source: sources.definition,
        },
};

export const fromBassEnd: Figure = {
  ...string,
  id: 'fromBassEnd',
  title: 'From the saddle’s bass end',
  about: 'Where the string crosses the saddle, along its face from its bass end.',
  value: (_, design, k) => {
    const s = design.strings[k];
    return s && halfSaddle(design, 'along') + onFace(design, s.acrossAtSaddle, 'along');
  },
  how: (settled, design, k) => ({
    formula: 'u = l/2 + y·√(1 + m²)',
    inputs: inputs(settled, design, k, { l: saddleLength, y: acrossAtSaddle, m: saddleSlant }),
    source: sources.geometry,
  }),
};

const face = 'The crown is drawn square to the saddle’s face, at the radius it is cut to.';

/** The crown as it is cut, through the outer strings. */
const arcTakes = {
  R: crownRadius,
  y_b: bassOf(acrossAtSaddle),
  y_t: trebleOf(acrossAtSaddle),
  z_b: bassOf(crownHeight),
  z_t: trebleOf(crownHeight),
  m: saddleSlant,
  l: saddleLength,
  z_0: saddleBottom,
};
const circle =
  'the circle of radius R (a straight line if flat) through (y_b·√(1 + m²), z_b) and (y_t·√(1 + m²), z_t), bulging upwards';

/** A bottom that follows the dome lies so much lower at the saddle's ends, than in its middle. */
const fallen = (settled: Settled) =>
  settled.slot.floor === 'dome'
    ? { more: ' + drop(R_t, l/2)', is: `; ${dropIs}`, takes: { R_t: 'guitar.topRadius' } }
    : { more: '', is: '', takes: {} };

const end = (side: 'bass' | 'treble') => {
  const sign = side === 'bass' ? '−' : '';
  const outer = side === 'bass' ? bassOf : trebleOf;
  return (settled: Settled, design: Design, k: number): How => {
    const { more, is, takes } = fallen(settled);
    return design.cut !== undefined
      ? {
          formula: `H = z − z_0${more}; z at ${sign}l/2 on ${circle}${is}`,
          inputs: inputs(settled, design, k, { ...arcTakes, ...takes }),
          source: face,
        }
      : {
          formula: `H = z_s + t·(v − y) − drop(R, v) + drop(R, y) − z_0${more}; v = ${sign}l/2/√(1 + m²); ${dropIs}`,
          inputs: inputs(settled, design, k, {
            z_s: outer(heightAboveFretPlane),
            y: outer(acrossAtSaddle),
            R: bestRadius,
            t: bestTilt,
            l: saddleLength,
            m: saddleSlant,
            z_0: saddleBottom,
            ...takes,
          }),
          source: 'Beyond the outer string the crown runs on as the best radius would.',
        };
  };
};

export const endHeightBass: Figure = {
  ...job,
  id: 'endHeightBass',
  title: 'Saddle height at its bass end',
  about: 'From the saddle’s bottom up to its crown, at its bass end.',
  value: (settled, design) => wholeHeights(settled, design).bass,
  how: end('bass'),
};

export const endHeightTreble: Figure = {
  ...job,
  id: 'endHeightTreble',
  title: 'Saddle height at its treble end',
  about: 'From the saddle’s bottom up to its crown, at its treble end.',
  value: (settled, design) => wholeHeights(settled, design).treble,
  how: end('treble'),
};

export const highest: Figure = {
  ...job,
  id: 'highest',
  title: 'Saddle height, greatest',
  about: 'From the lowest place of the saddle’s bottom up to the highest point of its crown.',
  value: (settled, design) => wholeHeights(settled, design).highest,
  how: (settled, design, k) => {
    const { more, is, takes } = fallen(settled);
    return design.cut !== undefined
      ? {
          formula: `H = max z − z_0${more}; z between −l/2 and l/2 on ${circle}${is}`,
          inputs: inputs(settled, design, k, { ...arcTakes, ...takes }),
          source: face,
        }
      : {
          formula: `H = max(H_b, every z_k − z_0${more}, H_t)${is}`,
          inputs: inputs(settled, design, k, {
            H_b: endHeightBass,
            H_t: endHeightTreble,
            z_k: every(heightAboveFretPlane),
            z_0: saddleBottom,
            ...(settled.slot.floor === 'dome' && { l: saddleLength }),
            ...takes,
          }),
          source: 'Between the strings the crown follows a curve that nowhere overshoots (Steffen 1990).',
        };
  },
};

export const blankLength: Figure = {
  ...job,
  id: 'blankLength',
  title: 'Blank, length',
  about: 'How long the raw piece for the saddle has to be at least.',
  value: (settled, design) => blank(settled, design).length,
  how: (settled, design, k) => ({
    formula: 'l_B = l',
    inputs: inputs(settled, design, k, { l: saddleLength }),
    source: sources.definition,
  }),
};

export const blankHeight: Figure = {
  ...job,
  id: 'blankHeight',
  title: 'Blank, height',
  about: 'How high the raw piece for the saddle has to be at least, with what is left proud.',
  value: (settled, design) => blank(settled, design).height,
  how: (settled, design, k) => ({
    formula: 'H_B = H + p',
    inputs: inputs(settled, design, k, { H: highest, p: 'saddle.proud' }),
    source: sources.definition,
  }),
};

export const blankThickness: Figure = {
  ...job,
  id: 'blankThickness',
  title: 'Blank, thickness',
  about: 'How thick the raw piece for the saddle has to be at least.',
  value: (settled, design) => blank(settled, design).thickness,
  how: (settled, design, k) => ({
    formula: 't_B = t',
    inputs: inputs(settled, design, k, { t: saddleThickness }),
    source: sources.definition,
  }),
};
