// What the trade holds for right, from common practice [practice]: the tool's own numbers have to say the same.
import { describe, expect, it } from 'vitest';
import { usualRanges } from '../../geometry/checks/ranges.ts';
import { setAt } from '../../geometry/fields.ts';
import { density, tension } from '../../geometry/instrument/tension.ts';
import type { Job } from '../../geometry/job.ts';
import { setUp } from '../../geometry/saddle/setup.ts';
import { built, workedExample } from '../solved.ts';

const INCH = 25.4;

const change = (changes: Readonly<Record<string, unknown>>): Job =>
  Object.entries(changes).reduce<Job>((job, [path, value]) => setAt(job, path, value), workedExample());

const isUsual = (mm: number, id: keyof typeof usualRanges) => {
  const { from = -Infinity, to = Infinity } = usualRanges[id].steel;
  expect(mm, `${mm} mm as ${id}`).toBeGreaterThanOrEqual(from);
  expect(mm, `${mm} mm as ${id}`).toBeLessThanOrEqual(to);
};

describe('[practice] sizes in inches that are called usual', () => {
  it('four to five thirty-seconds of an inch of saddle standing out', () => {
    isUsual((4 / 32) * INCH, 'exposure');
    isUsual((5 / 32) * INCH, 'exposure');
  });

  it('saddle blanks of an eighth and of three thirty-seconds of an inch', () => {
    isUsual(0.125 * INCH, 'saddleThickness');
    isUsual((3 / 32) * INCH, 'saddleThickness');
  });

  it('a plate cap of about 0.07 inch', () => {
    isUsual(0.07 * INCH, 'plateCap');
  });
});

describe('[practice] twice at the saddle', () => {
  const pass = (bass: number, treble: number) =>
    ['E2', 'E4'].map((id, k) => ({ id, action: k === 0 ? bass : treble, cents: 'not taken' }));
  const off = (setback: number, bass: number) => {
    const { job, design } = built(
      change({
        'strings.list.E2.setback': setback,
        'strings.list.E4.setback': setback,
        'setup.log': [{ id: 'P1', note: '', readings: pass(bass, 1.9) }],
      }),
    );
    const [outcome] = setUp(job, design);
    if (!outcome?.ok) throw new Error('no advice');
    return outcome.advice.strings[0]?.takeOff ?? Number.NaN;
  };

  it('exactly twice where the setback is nothing, and a little more where it is more', () => {
    expect(off(0, 2.9) / 0.4).toBeCloseTo(2, 9);
    expect(off(4, 2.9) / 0.4).toBeCloseTo(644 / 320, 9);
  });

  it('a thirty-second of an inch more under the bass at the saddle is about 0.4 mm of action', () => {
    // The action that asks for just so much less.
    const action = INCH / 32 / off(2, 3.5);
    expect(action).toBeCloseTo(0.4, 2);
  });
});

describe('a board’s arc over a bridge’s', () => {
  // With strings that run side by side, and no relief, the crown over the saddle is the board’s own arc.
  const parallel = (board: number, bridge: number | 'flat') =>
    built(
      change({
        'guitar.boardRadiusNut': board * INCH,
        'guitar.boardRadiusEnd': board * INCH,
        'guitar.nutSpread': 55.5,
        'guitar.relief': 0,
        'bridge.topRadius': bridge === 'flat' ? 'flat' : bridge * INCH,
        action: { bass: 2.2, treble: 2.2, firstFretBass: 0.4, firstFretTreble: 0.4 },
        // Five strings, so that one runs in the middle.
        'strings.list': workedExample()
          .strings.list.slice(0, 5)
          .map((string) => ({ ...string, setback: 2 })),
      }),
    ).design.strings.map((s) => s.exposure);
  const sagitta = (inches: number) => {
    const r = inches * INCH;
    return r - Math.sqrt(r * r - (55.5 / 2) ** 2);
  };

  it('[practice] of 10 in on a bridge top of 16 in leaves more at the middle than at the outer strings: by the two sagittas’ difference', () => {
    const exposures = parallel(10, 16);
    const [bass = 0, , middle = 0, , treble = 0] = exposures;
    expect(middle - bass).toBeCloseTo(sagitta(10) - sagitta(16), 9);
    expect(middle - treble).toBeCloseTo(sagitta(10) - sagitta(16), 9);
    expect(middle - bass).toBeCloseTo(0.57, 2);
  });

  it('of the bridge’s own radius leaves the same all along, and on a flat one the whole sagitta', () => {
    const even = parallel(14, 14);
    for (const exposure of even) expect(exposure).toBeCloseTo(even[0] ?? 0, 9);
    const [bass = 0, , middle = 0] = parallel(12, 'flat');
    expect(middle - bass).toBeCloseTo(sagitta(12), 9);
  });
});

// ISO 16: A4 = 440 Hz; the rest as published for equal temperament from it (to a hundredth of a hertz).
describe('plain strings at published pitches', () => {
  it.each([
    ['E4', 0.012, 329.63],
    ['B3', 0.016, 246.94],
    ['G3', 0.017, 196.0],
    ['A4', 0.009, 440.0],
  ])('%s of %s in pulls so that a wave runs to the saddle and back in one period', (id, gauge, published) => {
    const string = {
      id,
      name: id,
      pitch: published,
      gauge: gauge * INCH,
      core: 'plain',
      material: 'steel',
      wrap: 'steel',
      setback: 0,
      cents: 'not taken',
      nutPlace: 0,
      saddlePlace: 0,
    } as const;
    const pull = tension(string, 640);
    const perMetre = density.steel * Math.PI * ((gauge * INCH) / 2000) ** 2;
    expect((2 * 0.64) / Math.sqrt(pull / perMetre)).toBeCloseTo(1 / published, 12);
    // Equal temperament reckoned from A4 on is what is published.
    const steps = { E4: -5, B3: -10, G3: -14, A4: 0 }[id] ?? Number.NaN;
    expect(440 * 2 ** (steps / 12)).toBeCloseTo(published, 2);
  });
});
