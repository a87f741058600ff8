import { density } from '../instrument/tension.ts';
import type { JobString } from '../job.ts';
import type { Figure } from './figure.ts';
import { every, type Given, inputs } from './inputs.ts';
import { scale } from './scale.ts';
import { sources } from './sources.ts';

const densityOf = (of: keyof typeof density): Given => ({
  name: `density of ${of}, kg/m³`,
  value: density[of],
  kind: 'count',
});

/** What a string weighs per metre, in symbols: the formula and the parts that go into it. */
export const mass = (string: JobString | undefined) =>
  string === undefined || string.core === 'plain'
    ? {
        formula: 'μ = ρ·π·d²/4',
        takes: { ρ: string && densityOf(string.material), d: 'strings.list.*.gauge' },
      }
    : {
        formula: 'μ = ρ_c·π·c²/4 + ρ_w·π²·w·(c + w)/4, w = (d − c)/2',
        takes: {
          ρ_c: densityOf(string.material),
          c: 'strings.list.*.core',
          ρ_w: densityOf(string.wrap),
          d: 'strings.list.*.gauge',
        },
      };

export const tension: Figure = {
  id: 'tension',
  title: 'Tension',
  about: 'How hard the open string pulls, in tune, at the nominal scale.',
  kind: 'force',
  per: 'string',
  value: (_, design, k) => design.strings[k]?.tension,
  how: (job, design, k) => {
    const { formula, takes } = mass(job.strings.list[k]);
    return {
      formula: `T = μ·(2·L·f)²; ${formula}; lengths in metres`,
      inputs: inputs(job, design, k, { L: scale, f: 'strings.list.*.pitch', ...takes }),
      source: sources.mersenne,
    };
  },
};

export const totalTension: Figure = {
  id: 'totalTension',
  title: 'Tension, all strings',
  about: 'How hard all strings together pull.',
  kind: 'force',
  per: 'job',
  value: (_, design) => design.totalTension,
  how: (job, design, k) => ({
    formula: 'T = Σ T_k',
    inputs: inputs(job, design, k, { T_k: every(tension) }),
    source: sources.statics,
  }),
};
