import type { JobString } from '../job.ts';
import { fretAt } from './frets.ts';
import { massPerLength } from './tension.ts';

/** Young's moduli, GPa [memory]: music wire 200, nylon 2.7 to 5 (its middle is taken), fluorocarbon 2 to 3. */
export const modulus = { steel: 200, nylon: 3.8, fluorocarbon: 2.5 } as const;

const SEMITONE = 12;

/** Both sides are lengths of a guitar: nothing here comes near what `Math.hypot` takes its time to guard against. */
const hypotenuse = (a: number, b: number): number => Math.sqrt(a * a + b * b);

interface Stiff {
  /** E·A of the core, N. */
  readonly stretch: number;
  /** π²·E·I of the core, N·mm². */
  readonly bend: number;
}

/** What of a string resists stretch and bending: its core, or all of a plain one. */
const stiffness = (string: Pick<JobString, 'gauge' | 'core' | 'material'>): Stiff => {
  const d = string.core === 'plain' ? string.gauge : string.core;
  const e = modulus[string.material] * 1000;
  return { stretch: (e * Math.PI * d ** 2) / 4, bend: (Math.PI ** 3 * e * d ** 4) / 64 };
};

type Sounding = Pick<JobString, 'gauge' | 'core' | 'material' | 'wrap' | 'pitch'>;

/** `centsSharp` of one string at every setback. */
const sharpOf = (string: Sounding, scale: number, height: number): ((setback: number) => number) => {
  const { stretch, bend } = stiffness(string);
  const mass = massPerLength(string);
  const a = fretAt(scale, SEMITONE);
  const longerBefore = hypotenuse(a, height) - a;
  return (setback) => {
    const open = scale + setback;
    const b = open - a;
    // 4·μ·l²·f² = T + π²EI/l²: the tension that tunes the open string. μ in kg/m, l in mm: N.
    const tuned = mass * ((2 * open * string.pitch) / 1000) ** 2;
    const pull = tuned - bend / open ** 2;
    const longer = longerBefore + (hypotenuse(b, height) - b);
    const fretted = (pull + (stretch * longer) / open + bend / b ** 2) / tuned;
    return 1200 * Math.log2((open / b) * Math.sqrt(fretted)) - 1200;
  };
};

/**
 * How sharp the note fretted at 12 is of the octave, in cents, with the break point at L + setback. The open string is tuned; pushed down by `height` at the
 * fret its path grows by `√(a² + h²) + √(b² + h²) − (a + b)`, which raises its tension by `EA·ΔL/(L + s)`; a stiff string with pinned ends sounds
 * `f = f₀√(1 + π²EI/(T·l²))`. Lengths in mm. Source: Fletcher, JASA 36 (1964) 203; Byers, American Lutherie 47 (1996), for the method.
 */
export const centsSharp = (string: Sounding, scale: number, height: number, setback: number): number =>
  sharpOf(string, scale, height)(setback);

/**
 * The setback with which the note fretted at 12 is the octave of the open string, mm, from the string's stretch and stiffness alone: no finger's allowance. Good to about 1 mm:
 * with ends clamped instead of pinned a thick string's would come out at twice the stiffness's share.
 */
export const stretchSetback = (string: Sounding, scale: number, height: number): number => {
  const sharp = sharpOf(string, scale, height);
  let low = -scale / 20;
  let high = scale / 8;
  let at = 0;
  let value = sharp(at);
  // What moving the break point alone does near the octave, in cents per mm.
  let slope = -1200 / (Math.LN2 * scale);
  // The farther back, the flatter the fretted note: secants, and halves where one would lead out of what is left.
  for (let step = 0; step < 60; step += 1) {
    if (value > 0) low = at;
    else high = at;
    const secant = at - value / slope;
    const next = secant > low && secant < high ? secant : (low + high) / 2;
    if (Math.abs(next - at) <= 1e-15 * scale) return next;
    const valueThere = sharp(next);
    if (valueThere === value) return next;
    slope = (valueThere - value) / (next - at);
    at = next;
    value = valueThere;
  }
  return at;
};

/**
 * How far the present break point has to move back, mm, for a note heard c cents sharp at fret 12 with the open string in tune:
 * `δ = L'·b·(q − 1)/(L' − q·b)`, q = 2^(c/1200), L' = L + s, b = L' − x_12. Exact for a string whose tension the fretting does not alter further [def].
 */
export const heardShift = (scale: number, setback: number, cents: number): number => {
  const open = scale + setback;
  const b = open - fretAt(scale, SEMITONE);
  const q = 2 ** (cents / 1200);
  return (open * b * (q - 1)) / (open - q * b);
};
