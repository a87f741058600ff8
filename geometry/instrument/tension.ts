import type { JobString } from '../job.ts';

/** Densities, kg/m³ [memory]. */
export const density = {
  steel: 7850,
  'phosphor bronze': 8860,
  'silvered copper': 8900,
  nylon: 1140,
  fluorocarbon: 1780,
} as const;

/**
 * Mass of a string per length, kg/m. Plain: `ρπd²/4`. Wound, one close wrap of wire w = (d − c)/2 over a round core c:
 * `ρ_c·πc²/4 + ρ_w·π²w(c + w)/4`. The wrap's helix slope is left out: about 1 % of its mass.
 */
export const massPerLength = (string: Pick<JobString, 'gauge' | 'core' | 'material' | 'wrap'>): number => {
  const d = string.gauge / 1000;
  const c = string.core === 'plain' ? d : string.core / 1000;
  const w = (d - c) / 2;
  return (density[string.material] * Math.PI * c ** 2) / 4 + (density[string.wrap] * Math.PI ** 2 * w * (c + w)) / 4;
};

/**
 * Tension of an open string at the nominal scale, N: `T = μ(2Lf)²`, L in mm, f in Hz.
 * Source: Mersenne's law; Fletcher & Rossing, The Physics of Musical Instruments, 2nd ed., ch. 2.
 */
export const tension = (string: JobString, scale: number): number =>
  massPerLength(string) * ((2 * scale * string.pitch) / 1000) ** 2;
