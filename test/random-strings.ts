import fc from 'fast-check';
import type { Job, JobString } from '../geometry/job.ts';

const share = fc.double({ min: 0, max: 1, noNaN: true });

/** What chance gives each string. */
const chance = fc.record({ gauge: share, core: share, setback: share, cents: share, aside: share });

export interface RandomStrings {
  readonly courses: Job['strings']['courses'];
  readonly list: readonly JobString[];
  /** Spread over the saddle, mm. */
  readonly spread: number;
  /** What the spread at the nut is of that. */
  readonly atNut: number;
}

const between = (from: number, to: number, part: number): number => from + (to - from) * part;

/**
 * 4 to 12 strings of steel or nylon, bass first, single or in pairs, with their spread: thinner and higher in pitch towards the treble, the bass ones wound. A pair's second string is an octave string as thin as half its
 * neighbour, or its unison.
 */
export const randomStrings: fc.Arbitrary<RandomStrings> = fc
  .record({
    count: fc.constantFrom(6, 6, 6, 4, 5, 7, 8, 9, 10, 11, 12, 12),
    chances: fc.array(chance, { minLength: 12, maxLength: 12 }),
    isPaired: fc.boolean(),
    isNylon: fc.constantFrom(false, false, true),
    step: fc.double({ min: 7, max: 11.5, noNaN: true }),
    pairStep: fc.double({ min: 2, max: 3, noNaN: true }),
    atNut: fc.double({ min: 0.62, max: 0.82, noNaN: true }),
  })
  .map(({ count, chances, isPaired, isNylon, step, pairStep, atNut }) => {
    const pairs = isPaired && count % 2 === 0 && count >= 8;
    const courses = pairs ? count / 2 : count;
    const spread = (courses - 1) * step + (pairs ? pairStep : 0);
    const list = chances.slice(0, count).map((c, k): JobString => {
      const course = pairs ? Math.floor(k / 2) : k;
      const down = course / (courses - 1);
      const isOctave = pairs && k % 2 === 1 && down < 0.5;
      const thick = isNylon ? between(1.1, 0.6, down) : between(1.35, 0.28, down);
      const gauge = thick * between(0.9, 1.1, c.gauge) * (isOctave ? 0.5 : 1);
      const isWound = down < 0.5 && !(isOctave && gauge < 0.5);
      const own = course * step + (pairs && k % 2 === 1 ? pairStep : 0) - spread / 2;
      const place = (part: number) => part * (own + (c.aside - 0.5) * 0.3 * (pairs ? pairStep : step));
      return {
        id: `s${k + 1}`,
        name: `${k + 1}`,
        pitch: 82.407 * 2 ** (2 * down + (isOctave ? 1 : 0)),
        gauge,
        core: isWound ? gauge * between(0.3, 0.6, c.core) : 'plain',
        material: isNylon ? (c.core < 0.5 ? 'nylon' : 'fluorocarbon') : 'steel',
        wrap: isNylon ? 'silvered copper' : 'phosphor bronze',
        nutPlace: place(atNut),
        saddlePlace: place(1),
        setback: between(0, 1.5, c.setback) + 3 * (1 - down),
        cents: c.cents < 0.3 ? 'not taken' : between(-15, 15, c.cents),
      };
    });
    return { courses: pairs ? 'pairs' : 'single', list, spread, atNut };
  });
