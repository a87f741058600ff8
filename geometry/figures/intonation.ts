import { modulus } from '../instrument/intonation.ts';
import type { Figure } from './figure.ts';
import { inputs } from './inputs.ts';
import { scale } from './scale.ts';
import { sources } from './sources.ts';
import { actionWanted } from './strings.ts';
import { mass } from './tension.ts';

export const neededSetback: Figure = {
  id: 'neededSetback',
  title: 'Needed setback',
  about:
    'How far beyond the nominal scale length the string’s break point has to lie so that it plays in tune at fret 12.',
  kind: 'length',
  per: 'string',
  value: (_, design, k) => design.strings[k]?.neededSetback,
  how: (job, design, k) => {
    const string = job.strings.list[k];
    const take = (takes: Parameters<typeof inputs>[3]) => inputs(job, design, k, takes);
    if (job.strings.setbacks === 'computed') {
      const { formula, takes } = mass(string);
      const core = string?.core === 'plain' ? 'd' : 'c';
      return {
        formula: `s = s_0 + p, s_0 so that f_12 = 2·f; f_12 = √((T + E·A·ΔL/(L + s_0) + π²·E·I/b²)/μ)/(2·b), 4·μ·(L + s_0)²·f² = T + π²·E·I/(L + s_0)²; ΔL = √(x² + a²) + √(b² + a²) − x − b, x = L/2, b = L + s_0 − x; A = π·${core}²/4, I = π·${core}⁴/64; ${formula}`,
        inputs: take({
          L: scale,
          f: 'strings.list.*.pitch',
          a: actionWanted,
          p: 'strings.finger',
          E: string && {
            name: `Young’s modulus of ${string.material}`,
            value: modulus[string.material] * 1000,
            kind: 'stress',
          },
          ...takes,
        }),
        source: sources.stretch,
      };
    }
    if (job.strings.setbacks === 'heard' && typeof string?.cents === 'number')
      return {
        formula: 's = s_p + (L + s_p)·b·(q − 1)/(L + s_p − q·b); q = 2^(c/1200); b = L/2 + s_p',
        inputs: take({ s_p: 'strings.list.*.setback', c: 'strings.list.*.cents', L: scale }),
        source: sources.heard,
      };
    return {
      formula: 's = the length typed, s_t',
      inputs: take({ s_t: 'strings.list.*.setback' }),
      source: sources.typed,
    };
  },
};
