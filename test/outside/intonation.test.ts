// Setbacks from stretch and stiffness, solved a second time by other means: the stiff string's own differential equation, laid out in small steps, instead of the formula for its fundamental.
import { describe, expect, it } from 'vitest';
import { centsSharp, heardShift, stretchSetback } from '../../geometry/instrument/intonation.ts';
import { neededSetback } from '../../geometry/instrument/setbacks.ts';
import type { JobString } from '../../geometry/job.ts';
import { seeded } from '../seeded.ts';
import { workedExample } from '../solved.ts';

/** A string as physics sees it, in N, mm, kg and s: kg/m is N·s²/m², or 1e-6 N·s²/mm². */
interface Physical {
  /** N·s²/mm². */
  readonly mass: number;
  /** Young's modulus times the core's area, N, and times its second moment, N·mm². */
  readonly ea: number;
  readonly ei: number;
  /** Open, Hz. */
  readonly pitch: number;
}

const INCH = 25.4;
/** kg/m³ as N·s²/mm⁴. */
const rho = (kilograms: number) => kilograms * 1e-12;

/** Wound: wire w over a core c, one ring of π(c + w) for each w of its length (Pappus). Music wire 200 GPa, 7850 kg/m³; phosphor bronze 8860 kg/m³ [memory]. */
const steel = (pitch: number, gauge: number, core = gauge): Physical => {
  const [d, c] = [gauge * INCH, core * INCH];
  const w = (d - c) / 2;
  const wrap = w === 0 ? 0 : (rho(8860) * Math.PI * (w / 2) ** 2 * Math.PI * (c + w)) / w;
  const area = (Math.PI * c ** 2) / 4;
  return {
    mass: rho(7850) * area + wrap,
    ea: 200_000 * area,
    // The second moment of a circle from its polar one: I = A·r²/4.
    ei: (200_000 * area * (c / 2) ** 2) / 4,
    pitch,
  };
};

/** Solves (diagonal, off-diagonal alike) v = u for a symmetric three-banded matrix (Thomas). */
const threeBanded = (diagonal: number, beside: number, u: readonly number[]): readonly number[] => {
  const c: number[] = [];
  const d: number[] = [];
  u.forEach((value, k) => {
    const m = diagonal - beside * (c[k - 1] ?? 0);
    c.push(beside / m);
    d.push((value - beside * (d[k - 1] ?? 0)) / m);
  });
  const v = [...d];
  for (let k = v.length - 2; k >= 0; k -= 1) v[k] = (d[k] ?? 0) - (c[k] ?? 0) * (v[k + 1] ?? 0);
  return v;
};

/**
 * The lowest frequency of `EI·y'''' − T·y'' = μω²·y` with pinned ends (y = y'' = 0), Hz: y on equal steps, where y'' is −A·y with A three-banded and, its ends being pinned, y'''' is A·A·y; so the
 * lowest eigenvalue of A(EI·A + T), by inverse iteration.
 */
const fundamental = ({ mass, ei }: Physical, pull: number, length: number): number => {
  const n = 160;
  const h = length / n;
  let y: readonly number[] = Array.from({ length: n - 1 }, (_, k) => (k + 1) * (n - k - 1));
  let eigen = 0;
  for (let turn = 0; turn < 40; turn += 1) {
    const half = threeBanded((2 * ei) / h ** 2 + pull, -ei / h ** 2, y);
    const next = threeBanded(2 / h ** 2, -1 / h ** 2, half);
    const size = Math.sqrt(next.reduce((sum, v) => sum + v * v, 0));
    eigen = Math.sqrt(y.reduce((sum, v) => sum + v * v, 0)) / size;
    y = next.map((v) => v / size);
  }
  return Math.sqrt(eigen / mass) / (2 * Math.PI);
};

/** Where f is 0, by the secant through the last two tries. */
const zeroOf = (f: (x: number) => number, first: number, second: number): number => {
  let [a, b] = [first, second];
  let [fa, fb] = [f(a), f(b)];
  for (let step = 0; step < 40 && Math.abs(b - a) > 1e-9 * Math.max(1, Math.abs(b)) && fb !== fa; step += 1) {
    const next = b - (fb * (b - a)) / (fb - fa);
    [a, fa, b] = [b, fb, next];
    fb = f(b);
  }
  return b;
};

/** Cents by which the note at fret 12 lies above the octave, the open string tuned by its tension, the string then pushed down by `height` over the fret. */
const sharpness = (string: Physical, scale: number, height: number, setback: number): number => {
  const length = scale + setback;
  const ideal = string.mass * (2 * length * string.pitch) ** 2;
  const pull = zeroOf((t) => fundamental(string, t, length) / string.pitch - 1, ideal * 0.98, ideal);
  const toFret = scale / 2;
  const left = length - toFret;
  const path = Math.sqrt(toFret ** 2 + height ** 2) + Math.sqrt(left ** 2 + height ** 2);
  const fretted = fundamental(string, pull + string.ea * (path / length - 1), left);
  return 1200 * (Math.log2(fretted / string.pitch) - 1);
};

const setbackOf = (string: Physical, scale: number, height: number): number =>
  zeroOf((s) => sharpness(string, scale, height, s), 1, 2);

// The worked example's strings: gauge and core in inches; heights over fret 12 falling evenly from 2.5 to 1.9 mm; what an independent program gave for them, without the finger's allowance.
const table = [
  ['E2', steel(82.407, 0.053, 0.018), 2.5, 2.909, 7.96],
  ['A2', steel(110, 0.042, 0.016), 2.38, 1.858, 5.06],
  ['D3', steel(146.832, 0.032, 0.0145), 2.26, 1.321, 3.59],
  ['G3', steel(195.998, 0.024, 0.012), 2.14, 0.803, 2.18],
  ['B3', steel(246.942, 0.016), 2.02, 1.671, 4.55],
  ['E4', steel(329.628, 0.012), 1.9, 0.823, 2.23],
] as const;

const stringOf = (id: string): JobString => {
  const found = workedExample().strings.list.find((string) => string.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found;
};

describe('the steps of the reference', () => {
  // f₁ = (1/2l)·√(T/μ) for a string that bends freely: Fletcher & Rossing, The Physics of Musical Instruments, 2nd ed., ch. 2.
  it('find Mersenne’s fundamental where nothing is stiff', () => {
    const limp = { ...steel(110, 0.042, 0.016), ei: 0 };
    expect(fundamental(limp, 125, 640) / (Math.sqrt(125 / limp.mass) / 1280)).toBeCloseTo(1, 4);
  });

  // A bar without tension on two supports: f₁ = (π/2l²)·√(EI/μ); Fletcher & Rossing, ch. 2.
  it('find the fundamental of a bar on two supports where nothing pulls', () => {
    const bar = steel(110, 0.042, 0.042);
    expect(fundamental(bar, 0, 640) / ((Math.PI / 2 / 640 ** 2) * Math.sqrt(bar.ei / bar.mass))).toBeCloseTo(1, 4);
  });
});

describe('the worked strings at 640 mm, fretted at 12', () => {
  it.each(table)('%s', (id, physical, height, setback, cents) => {
    const reference = setbackOf(physical, 640, height);
    const found = stretchSetback(stringOf(id), 640, height);
    expect(Math.abs(reference - setback)).toBeLessThan(0.03);
    expect(Math.abs(found - setback)).toBeLessThan(0.03);
    expect(Math.abs(found - reference)).toBeLessThan(0.002);
    const sharp = centsSharp(stringOf(id), 640, height, 0);
    expect(Math.abs(sharpness(physical, 640, height, 0) - cents)).toBeLessThan(0.08);
    expect(Math.abs(sharp - cents)).toBeLessThan(0.08);
    expect(Math.abs(sharp - sharpness(physical, 640, height, 0))).toBeLessThan(0.005);
  });

  it('the finger’s allowance is added to what is computed, and to nothing else', () => {
    const e2 = { ...stringOf('E2'), setback: 3.3, cents: 4 };
    const by = (setbacks: 'typed' | 'computed' | 'heard', finger: number) =>
      neededSetback({ setbacks, finger }, e2, 640, 2.5);
    expect(by('computed', 1)).toBeCloseTo(stretchSetback(e2, 640, 2.5) + 1, 12);
    expect(by('computed', 0)).toBeCloseTo(2.909, 1);
    for (const finger of [0, 1, 2]) {
      expect(by('typed', finger)).toBe(3.3);
      expect(by('heard', finger)).toBeCloseTo(3.3 + heardShift(640, 3.3, 4), 12);
    }
    expect(neededSetback({ setbacks: 'heard', finger: 1 }, { ...e2, cents: 'not taken' }, 640, 2.5)).toBe(3.3);
  });
});

it('agrees for other scales, heights and strings, plain and wound', () => {
  const { even } = seeded(11);
  for (let k = 0; k < 12; k += 1) {
    const gauge = even(0.2, 0.6);
    const core = k % 2 === 0 ? gauge : gauge * 0.6;
    const pitch = even(90, 350);
    const [scale, height] = [even(560, 700), even(1, 4.5)];
    const string = {
      gauge,
      core: core === gauge ? ('plain' as const) : core,
      material: 'steel',
      wrap: 'phosphor bronze',
      pitch,
    } as const;
    const reference = setbackOf(steel(pitch, gauge / INCH, core / INCH), scale, height);
    expect(stretchSetback(string, scale, height), JSON.stringify(string)).toBeCloseTo(reference, 2);
  }
});

describe('a note heard sharp', () => {
  /** How many times the open note a fretted one sounds, with the tension that the fretting adds kept as the same share: by the lengths alone, √T'/T = rise. */
  const ratio = (scale: number, setback: number, rise: number) =>
    ((scale + setback) / (scale + setback - scale / 2)) * rise;

  it('is the octave, by definition, once the break point has moved back by the shift', () => {
    const { even } = seeded(5);
    for (let k = 0; k < 200; k += 1) {
      const [scale, setback, cents] = [even(560, 700), even(-2, 6), even(-40, 40)];
      const rise = (2 * 2 ** (cents / 1200)) / ratio(scale, setback, 1);
      expect(1200 * Math.log2(ratio(scale, setback, rise) / 2)).toBeCloseTo(cents, 9);
      expect(ratio(scale, setback + heardShift(scale, setback, cents), rise)).toBeCloseTo(2, 12);
    }
  });

  it('asks at fret 12 for about L(q − 1): some 0.375 mm a cent on a long scale', () => {
    for (const cents of [-6, -1, 1, 3, 8]) {
      const near = 650 * (2 ** (cents / 1200) - 1);
      expect(heardShift(650, 0, cents) / near).toBeCloseTo(1, 1);
    }
    expect(heardShift(650, 0, 1)).toBeCloseTo(0.3757, 3);
    expect(heardShift(650, 2, 0)).toBe(0);
  });

  it('is brought within a tenth of a cent of the octave by one shift, on strings whose stretch is solved', () => {
    for (const [id, physical, height] of table) {
      const heard = sharpness(physical, 640, height, 1);
      const shift = heardShift(640, 1, heard);
      expect(Math.abs(sharpness(physical, 640, height, 1 + shift)), id).toBeLessThan(0.1);
    }
  });
});
