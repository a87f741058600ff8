import { describe, expect, it } from 'vitest';
import { setAt } from '../../../geometry/fields.ts';
import { heardShift } from '../../../geometry/instrument/intonation.ts';
import type { Job } from '../../../geometry/job.ts';
import { closeEnough, setUp, takeOffAt } from '../../../geometry/saddle/setup.ts';
import { built, workedExample } from '../../solved.ts';

type Reading = readonly [id: string, action: number | 'not taken', cents?: number];

const pass = (id: string, ...readings: readonly Reading[]) => ({
  id,
  note: '',
  readings: readings.map(([string, action, cents = 'not taken']) => ({ id: string, action, cents })),
});

const outcomes = (...log: readonly ReturnType<typeof pass>[]) => {
  const { job, design } = built(setAt(workedExample(), 'setup.log', log) as Job);
  return { job, design, outcomes: setUp(job, design) };
};

const advised = (...log: readonly ReturnType<typeof pass>[]) => {
  const found = outcomes(...log);
  const last = found.outcomes.at(-1);
  if (!last?.ok) throw new Error('no advice');
  return { ...found, advice: last.advice };
};

describe('one pass, by hand: 2.9 and 2.1 mm where 2.5 and 1.9 are wanted', () => {
  const { advice, design } = advised(pass('P1', ['E2', 2.9], ['E4', 2.1]));
  // Break points 644 and 641.8 from the nut, fret 12 at 320.
  const [bass, treble] = [(0.4 * 644) / 320, (0.2 * 641.8) / 320];

  it('what comes off at the outer strings', () => {
    expect(advice.strings[0]?.takeOff).toBeCloseTo(bass, 9);
    expect(advice.strings[0]?.takeOff).toBeCloseTo(0.805, 9);
    expect(advice.strings[5]?.takeOff).toBeCloseTo(treble, 9);
    expect(advice.strings[5]?.takeOff).toBeCloseTo(0.401125, 9);
  });

  it('and at the ends, on the line through them', () => {
    // The strings stand 27.75 mm from the middle across, farther along a slanted saddle; it is 76 less 0.05 mm long.
    const along = 27.75 * Math.sqrt(1 + (2.2 / 55.5) ** 2);
    const slope = (treble - bass) / (2 * along);
    expect(advice.ends.bass).toBeCloseTo((bass + treble) / 2 - slope * 37.975, 9);
    expect(advice.ends.treble).toBeCloseTo((bass + treble) / 2 + slope * 37.975, 9);
    expect(takeOffAt(advice.ends, 37.975, -along)).toBeCloseTo(bass, 9);
    expect(takeOffAt(advice.ends, 37.975, along)).toBeCloseTo(treble, 9);
    expect(takeOffAt(advice.ends, 37.975, 0)).toBeCloseTo((bass + treble) / 2, 9);
  });

  it('which brings the outer strings to what is wanted, and those between nearly so', () => {
    expect(advice.strings[0]?.afterLine).toBeCloseTo(2.5, 9);
    expect(advice.strings[5]?.afterLine).toBeCloseTo(1.9, 9);
    advice.strings.forEach(({ afterLine, wanted }, k) => {
      expect(wanted).toBeCloseTo(2.5 - 0.12 * k, 9);
      expect(Math.abs(afterLine - wanted)).toBeLessThan(0.002);
    });
  });

  it('strings between that were not read are reckoned straight between the others', () => {
    expect(advice.strings.map(({ isMeasured }) => isMeasured)).toEqual([true, false, false, false, false, true]);
    advice.strings.forEach(({ action }, k) => {
      expect(action).toBeCloseTo(2.9 - 0.16 * k, 9);
    });
  });

  it('only squared, as much comes off all along as leaves none too low', () => {
    expect(advice.square).toBeCloseTo(treble, 9);
    expect(advice.strings[0]?.afterSquare).toBeCloseTo(2.9 - (treble * 320) / 644, 9);
    expect(advice.strings[5]?.afterSquare).toBeCloseTo(1.9, 9);
    for (const { afterSquare, wanted } of advice.strings) expect(afterSquare).toBeGreaterThan(wanted - 1e-9);
  });

  it('leaves break points as they were where nothing was heard', () => {
    for (const [k, string] of advice.strings.entries()) {
      expect(string).toMatchObject({ shift: 0, missed: 0 });
      expect(string.fromFront).toBeCloseTo(design.strings[k]?.fromFront ?? Number.NaN, 12);
    }
  });

  it('is not there yet; within a gauge’s reach of it, it is', () => {
    expect(advice.isThere).toBe(false);
    expect(closeEnough).toBe(0.05);
    expect(advised(pass('P1', ['E2', 2.54], ['E4', 1.86])).advice.isThere).toBe(true);
    expect(advised(pass('P1', ['E2', 2.56], ['E4', 1.9])).advice.isThere).toBe(false);
    expect(advised(pass('P1', ['E2', 2.5], ['E4', 1.84])).advice.isThere).toBe(false);
  });

  it('leaves as much life as the design has, once the line is cut', () => {
    const wanted = advised(pass('P1', ['E2', 2.5], ['E4', 1.9])).advice;
    for (const k of [0, 5]) {
      expect(advice.strings[k]?.life.atFret12).toBeCloseTo(wanted.strings[k]?.life.atFret12 ?? Number.NaN, 9);
      expect(advice.strings[k]?.life.limit).toBe(wanted.strings[k]?.life.limit);
    }
  });
});

describe('readings of other kinds', () => {
  it('a string between that was read counts as read, and those beside it are reckoned from it', () => {
    const { advice } = advised(pass('P1', ['E2', 2.9], ['D3', 2.8], ['E4', 2.1]));
    expect(advice.strings.map(({ isMeasured }) => isMeasured)).toEqual([true, false, true, false, false, true]);
    expect(advice.strings[1]?.action).toBeCloseTo(2.85, 12);
    expect(advice.strings[3]?.action).toBeCloseTo(2.8 - 0.7 / 3, 12);
    // Its own share differs from the line's, and so does what it then plays at.
    const d3 = advice.strings[2];
    expect((d3?.afterLine ?? 0) - (d3?.wanted ?? 0)).toBeGreaterThan(0.1);
  });

  it('says by a negative number that a string is too low: nothing can be put back, and nothing then comes off', () => {
    const { advice } = advised(pass('P1', ['E2', 2.3], ['E4', 1.8]));
    expect(advice.strings[0]?.takeOff).toBeCloseTo((-0.2 * 644) / 320, 9);
    expect(advice.strings[5]?.takeOff).toBeLessThan(0);
    expect(advice.ends.bass).toBeLessThan(0);
    expect(advice.square).toBe(0);
    for (const { action, afterLine, afterSquare } of advice.strings) {
      expect(afterSquare).toBe(action);
      expect(afterLine).toBe(action);
    }
  });

  it('one outer string too low: no squaring, as it would come lower still', () => {
    const { advice } = advised(pass('P1', ['E2', 2.9], ['E4', 1.8]));
    expect(advice.strings[5]?.takeOff).toBeLessThan(0);
    expect(advice.square).toBe(0);
  });

  it('names the outer strings that were not read', () => {
    expect(outcomes(pass('P1', ['E2', 2.9])).outcomes).toEqual([{ ok: false, id: 'P1', missing: ['E4'] }]);
    expect(outcomes(pass('P1', ['D3', 2.9], ['E4', 'not taken'])).outcomes).toEqual([
      { ok: false, id: 'P1', missing: ['E2', 'E4'] },
    ]);
    expect(outcomes().outcomes).toEqual([]);
  });
});

describe('cents heard', () => {
  it('move the break point back by their shift, measured square from the front face', () => {
    const { advice, design } = advised(pass('P1', ['E2', 2.5, 2], ['E4', 1.9, -1.5]));
    for (const [k, cents] of [
      [0, 2],
      [5, -1.5],
    ] as const) {
      const before = design.strings[k];
      const after = advice.strings[k];
      if (!before || !after) throw new Error('no string');
      expect(after.shift).toBeCloseTo(heardShift(640, before.setback, cents), 12);
      expect(after.fromFront - before.fromFront).toBeCloseTo(after.shift / Math.sqrt(1 + (2.2 / 55.5) ** 2), 9);
    }
    expect(advice.strings[2]?.shift).toBe(0);
  });

  it('follow one another: each pass goes on from where the one before left the break point', () => {
    const once = advised(pass('P1', ['E2', 2.5, 1], ['E4', 1.9]));
    const twice = advised(pass('P1', ['E2', 2.5, 1], ['E4', 1.9]), pass('P2', ['E2', 2.5, 1], ['E4', 1.9]));
    const silent = advised(pass('P1', ['E2', 2.5, 1], ['E4', 1.9]), pass('P2', ['E2', 2.5], ['E4', 1.9]));
    const front = (found: typeof once) => found.advice.strings[0]?.fromFront ?? Number.NaN;
    expect(front(silent)).toBeCloseTo(front(once), 12);
    const start = once.design.strings[0]?.fromFront ?? Number.NaN;
    expect((front(twice) - start) / (front(once) - start)).toBeCloseTo(2, 2);
  });

  it('count even in a pass whose actions were not read', () => {
    const heard = advised(pass('P1', ['E2', 'not taken', 2]), pass('P2', ['E2', 2.5], ['E4', 1.9]));
    expect(heard.outcomes[0]).toEqual({ ok: false, id: 'P1', missing: ['E2', 'E4'] });
    expect(heard.advice.strings[0]?.fromFront).toBeGreaterThan(heard.design.strings[0]?.fromFront ?? Number.NaN);
  });

  it('stop at the crown’s edge, and say by how much', () => {
    const { advice, design } = advised(pass('P1', ['E2', 2.5, 12], ['E4', 1.9]));
    const bass = advice.strings[0];
    expect(bass?.fromFront).toBeCloseTo(design.saddle.thickness - 0.4, 9);
    expect(bass?.missed).toBeGreaterThan(1);
  });
});
