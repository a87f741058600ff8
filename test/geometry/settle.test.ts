import { describe, expect, it } from 'vitest';
import { build } from '../../geometry/build.ts';
import { setAt } from '../../geometry/fields.ts';
import type { Job } from '../../geometry/job.ts';
import { assumedRise, settle } from '../../geometry/settle.ts';
import { built, workedExample } from '../solved.ts';

const change = (changes: Readonly<Record<string, unknown>>): Job =>
  Object.entries(changes).reduce<Job>((job, [path, value]) => setAt(job, path, value), workedExample());

const settled = (changes: Readonly<Record<string, unknown>>) => {
  const result = settle(change(changes));
  if (!result.ok) throw new Error(result.problems[0]?.says);
  return result;
};

const refused = (changes: Readonly<Record<string, unknown>>) => {
  const result = settle(change(changes));
  if (result.ok) throw new Error('was settled');
  // What cannot be settled cannot be solved, for the same reason.
  expect(build(change(changes))).toEqual({ ok: false, problems: result.problems });
  return result.problems;
};

/** The middle of a string row that rises from 0.4 over fret 1 to 2.2 over fret 12, no relief: 640 mm, a mean setback of 16.4/6 mm. */
const readings = {
  'strung.thickness': 9.3,
  'strung.exposure': 4.4,
  'strung.actionBass': 2.5,
  'strung.actionTreble': 1.9,
  'strung.firstFretBass': 0.5,
  'strung.firstFretTreble': 0.3,
  'strung.relief': 0,
};
const x1 = 640 * (1 - 2 ** (-1 / 12));
const saddle = 0.4 + ((2.2 - 0.4) / (320 - x1)) * (640 + 16.4 / 6 - x1);
const atPitch = 9.3 + 4.4 - saddle;

const measured = (...frets: readonly (readonly [number, number])[]) =>
  frets.map(([fret, distance]) => ({ id: `F${fret}`, fret, distance }));
const exact = (scale: number, ...frets: readonly number[]) =>
  measured(...frets.map((n) => [n, scale * (1 - 2 ** (-n / 12))] as const));

describe('settle', () => {
  it('leaves numbers as they were typed, and says so', () => {
    const { job, readings: from } = settled({});
    expect(job).toEqual(workedExample());
    expect(from).toMatchObject({ scaleFrom: 'typed', neckPlaneFrom: 'typed', riseFrom: 'typed' });
  });

  it('takes the height from the strung guitar, and a usual rise, said to be assumed', () => {
    const { job, readings: from } = settled({
      ...readings,
      'guitar.neckPlaneHeight': 'strung',
      'guitar.rise': 'readings',
    });
    expect(from).toMatchObject({ neckPlaneFrom: 'strung', riseFrom: 'assumed' });
    expect(from.atPitch.strung).toBeCloseTo(atPitch, 9);
    expect(job.guitar.rise).toBe(assumedRise);
    expect(job.guitar.neckPlaneHeight).toBeCloseTo(atPitch + assumedRise, 9);
  });

  it('adds a typed rise to the strung guitar’s height', () => {
    const { job, readings: from } = settled({ ...readings, 'guitar.neckPlaneHeight': 'strung', 'guitar.rise': 1.1 });
    expect(from).toMatchObject({ neckPlaneFrom: 'strung', riseFrom: 'typed' });
    expect(job.guitar.neckPlaneHeight).toBeCloseTo(atPitch + 1.1, 9);
  });

  it('whatever the rise, the deck at pitch then lies where the strung guitar had it', () => {
    for (const rise of ['readings', 0, 1.1, 2]) {
      const { design } = built(change({ ...readings, 'guitar.neckPlaneHeight': 'strung', 'guitar.rise': rise }));
      expect(design.topHeight).toBeCloseTo(-atPitch, 9);
    }
  });

  it('takes the rise from both readings: strings off less at pitch', () => {
    const { job, readings: from } = settled({ ...readings, 'guitar.neckPlaneHeight': 9.9, 'guitar.rise': 'readings' });
    expect(from).toMatchObject({ neckPlaneFrom: 'typed', riseFrom: 'readings' });
    expect(job.guitar.rise).toBeCloseTo(9.9 - atPitch, 9);
    expect(job.guitar.neckPlaneHeight).toBe(9.9);
  });

  it('takes the height at pitch from the straightedge where the strings were not read', () => {
    const light = { 'strung.thickness': 9.3, 'strung.light': -0.1, 'guitar.rise': 'readings' };
    const both = settled({ ...light, 'guitar.neckPlaneHeight': 10 });
    expect(both.readings.riseFrom).toBe('readings');
    expect(both.job.guitar.rise).toBeCloseTo(10 - 9.2, 12);
    const one = settled({ ...light, 'guitar.neckPlaneHeight': 'strung' });
    expect(one.job.guitar.neckPlaneHeight).toBeCloseTo(9.2 + assumedRise, 12);
  });

  it('goes by the strings where the straightedge was laid as well', () => {
    const { readings: from, job } = settled({
      ...readings,
      'strung.light': 0.4,
      'guitar.neckPlaneHeight': 'strung',
      'guitar.rise': 0,
    });
    expect(job.guitar.neckPlaneHeight).toBeCloseTo(atPitch, 9);
    expect(from.atPitch.straightedge).toBeCloseTo(9.7, 12);
  });

  it('assumes a rise where nothing was read on the strung guitar', () => {
    const { job, readings: from } = settled({ 'guitar.rise': 'readings' });
    expect(from.riseFrom).toBe('assumed');
    expect(job.guitar.rise).toBe(assumedRise);
    // A usual rise of a steel-string guitar [practice].
    expect(assumedRise).toBeGreaterThanOrEqual(0.3);
    expect(assumedRise).toBeLessThanOrEqual(1.5);
  });

  it('names the readings that are missing, and the other ways', () => {
    const [problem] = refused({
      ...readings,
      'strung.exposure': 'not taken',
      'strung.relief': 'not taken',
      'guitar.neckPlaneHeight': 'strung',
    });
    expect(problem).toMatchObject({ path: 'guitar.neckPlaneHeight', value: 'strung' });
    expect(problem?.says).toMatch(/not taken: “Old saddle, exposure”, “Relief as it is”\./);
    expect(problem?.says).toMatch(/“Light over the old bridge” with “Old bridge, thickness”; or type the height/);
    const [all] = refused({ 'guitar.neckPlaneHeight': 'strung' });
    for (const label of ['Old bridge, thickness', 'Action as it is, bass', 'First fret as it is, treble'])
      expect(all?.says).toContain(`“${label}”`);
  });

  it('takes the scale from measured frets, and works with it', () => {
    const frets = { 'guitar.measured': exact(647.5, 5, 12, 19), 'guitar.scale': 'frets' };
    const { job, readings: from } = settled(frets);
    expect(from.scaleFrom).toBe('frets');
    expect(job.guitar.scale).toBeCloseTo(647.5, 9);
    expect(built(change(frets)).design.fret12).toBeCloseTo(647.5 / 2, 9);
  });

  it('keeps a typed scale beside measured frets, with what they say', () => {
    const { job, readings: from } = settled({ 'guitar.measured': exact(641, 5, 12, 19) });
    expect(job.guitar.scale).toBe(640);
    expect(from.scaleFrom).toBe('typed');
    expect(from.frets?.scale).toBeCloseTo(641, 9);
  });

  it.each([
    [[], /none is given.*at least 3/],
    [exact(640, 12), /only one is given/],
    [exact(640, 5, 12), /only 2 are given.*at least 3, or type the scale length/],
  ])('says that frets are too few: %#', (frets, says) => {
    const [problem] = refused({ 'guitar.measured': frets, 'guitar.scale': 'frets' });
    expect(problem).toMatchObject({ path: 'guitar.scale', value: 'frets' });
    expect(problem?.says).toMatch(says);
  });

  it('says that frets cannot be right which make a scale no guitar has', () => {
    // Fret 12 taken for fret 2, and so on.
    const [problem] = refused({ 'guitar.measured': measured([2, 320], [3, 380], [4, 430]), 'guitar.scale': 'frets' });
    expect(problem).toMatchObject({ path: 'guitar.scale' });
    expect(problem?.says).toMatch(/would be \d{4}\.\d mm; it may be from 300.0 mm to 1000.0 mm\. Check the frets/);
  });
});
