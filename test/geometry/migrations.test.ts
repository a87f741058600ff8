import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { setAt } from '../../geometry/fields.ts';
import { readJob, validateJob, writeJob } from '../../geometry/job-file.ts';
import { migrate } from '../../geometry/migrations/index.ts';
import { built, jobOf, workedExampleFile } from '../solved.ts';

/** A job as it was saved in version 1 of the format. */
const text = readFileSync(new URL('../jobs/version-1.json', import.meta.url), 'utf8');
const ofItsTime = () => JSON.parse(text);

/** What the program of its time worked out from that file, string by string. */
const thenWas = {
  heightAboveFretPlane: [
    3.6891502367040756, 4.116610208448333, 4.217769297918615, 3.9931399634406075, 3.4459614761875614, 2.563758283141502,
  ],
  exposure: [
    4.647652032939205, 4.589540317547203, 4.448087623903742, 4.223458289425735, 3.9188915852864317, 3.5222600793766308,
  ],
  breakAngle: [
    27.66405199697296, 27.38487184162213, 26.663423450938367, 25.484620849897965, 23.84100916549115, 21.63450893704429,
  ],
  tension: [
    111.82800644835766, 125.59841853339199, 130.89316730805695, 131.92175357457336, 101.73650132887119,
    101.96651905407744,
  ],
} as const;

describe('a job of version 1', () => {
  it('says of itself that it is one, and opens', () => {
    expect(ofItsTime().version).toBe(1);
    const read = readJob(text);
    expect(read).toMatchObject({ ok: true, job: { version: 3 }, unknown: [] });
  });

  it('means the same: heights, exposures, break angles, tensions, the slot’s line', () => {
    const { design } = built(jobOf(text));
    for (const key of Object.keys(thenWas) as (keyof typeof thenWas)[]) {
      design.strings.forEach((string, k) => {
        expect(string[key], `${key} of ${string.name}`).toBeCloseTo(thenWas[key][k] ?? Number.NaN, 12);
      });
    }
    expect(design.saddleLine.x).toBeCloseTo(642.9, 12);
    expect(design.saddleLine.slant).toBeCloseTo(-2.2 / 55.5, 12);
    expect(design.bridgeFront).toBeCloseTo(633.3, 12);
    expect(design.crown.radius).toBeCloseTo(377.9327720106923, 9);
  });

  it('is the worked example, which is kept in the present version as well', () => {
    // Version 1 knew of no play: its saddle filled the slot.
    expect(writeJob(setAt(jobOf(text), 'saddle.play', 0.05))).toBe(readFileSync(workedExampleFile, 'utf8'));
    expect(jobOf(text).saddle.play).toBe(0);
  });

  it('keeps what it holds, and holds beside it only that nothing more was measured', () => {
    const job = jobOf(text);
    const old = ofItsTime();
    for (const key of ['name', 'date', 'hand', 'show', 'guitar', 'action', 'strings', 'bridge', 'slot', 'pins'])
      expect(job[key as keyof typeof job], key).toMatchObject(old[key]);
    expect(new Set(Object.values(job.strung))).toEqual(new Set(['not taken']));
    expect(job.strings.setbacks).toBe('typed');
    expect(job.slot.line).toBe('outer');
    expect([job.guitar.measured, job.setup.log, job.limits]).toEqual([[], [], {}]);
  });

  it('says where the slot lies that it drew, for whoever then types its place', () => {
    const { job, design } = built(jobOf(text));
    expect(job.slot.fromNut).toBeCloseTo(design.saddleLine.x, 9);
    expect(job.slot.slant).toBeCloseTo(design.saddleLine.slant, 9);
  });

  it('keeps keys that nobody knows, and names them', () => {
    const old = ofItsTime();
    old.colour = 'brown';
    old.bridge.glue = { kind: 'hide', hours: [12, 24] };
    old.strings.list[3].maker = null;
    const read = validateJob(old);
    if (!read.ok) throw new Error('refused');
    expect(read.unknown.toSorted()).toEqual(['bridge.glue', 'colour', 'strings.list.G3.maker']);
    const written = JSON.parse(writeJob(read.job));
    expect(written).toMatchObject({ version: 3, colour: 'brown', bridge: { glue: { kind: 'hide', hours: [12, 24] } } });
    expect(written.strings.list[3]).toHaveProperty('maker', null);
  });

  it.each<[string, (old: ReturnType<typeof ofItsTime>) => void, string, RegExp]>([
    ['a number out of range', (old) => Object.assign(old.guitar, { scale: -1 }), 'guitar.scale', /−1 mm.*300 to 1000/],
    ['a field gone', (old) => delete old.bridge.thickness, 'bridge.thickness', /missing/],
    ['a group gone', (old) => delete old.pins, 'pins', /missing/],
    ['a group that is a text', (old) => Object.assign(old, { guitar: 'mine' }), 'guitar', /“mine”.*group/],
    ['strings that are no list', (old) => Object.assign(old.strings, { list: {} }), 'strings.list', /must be a list/],
    ['no strings', (old) => Object.assign(old.strings, { list: [] }), 'strings.list', /0 strings/],
    ['a string without a gauge', (old) => delete old.strings.list[0].gauge, 'strings.list.E2.gauge', /missing/],
    ['a string that is none', (old) => old.strings.list.splice(1, 1, 7), 'strings.list.1', /group of values/],
    [
      'a setback in words',
      (old) => Object.assign(old.strings.list[5], { setback: '2' }),
      'strings.list.E4.setback',
      /text “2”/,
    ],
  ])('with %s is refused, and the place is named', (_, breakIt, path, says) => {
    const old = ofItsTime();
    breakIt(old);
    const read = validateJob(old);
    if (read.ok) throw new Error('accepted');
    expect(read.problems.map((problem) => problem.path)).toContain(path);
    expect(read.problems.find((problem) => problem.path === path)?.says).toMatch(says);
  });
});

describe('a job of version 2', () => {
  /** A job as it was saved in version 2 of the format, and what the program of its time worked out from it. */
  const before = readFileSync(new URL('../jobs/version-2.json', import.meta.url), 'utf8');
  const then = {
    exposure: [
      4.390981494696866, 4.406179627117923, 4.224941432673619, 4.225589987886718, 4.033170407372899, 4.035695376150655,
      3.833478262925482, 3.834162313219572, 3.629817803153215, 3.625852619107983, 3.4057479075767625, 3.399124492187438,
    ],
    breakAngle: [
      29.466970234209587, 19.730653011221005, 32.904285710824, 18.36415356664115, 28.365191267620062,
      17.456428467579784, 26.024237169713988, 16.490586967503706, 28.001308671393762, 16.550308364844128,
      24.7416258227133, 15.033673713520903,
    ],
  } as const;

  it('opens, means the same, and has its one design and no alternative', () => {
    expect(JSON.parse(before).version).toBe(2);
    expect(readJob(before)).toMatchObject({ ok: true, job: { version: 3 }, unknown: [] });
    const { job, design } = built(jobOf(before));
    expect(job.alternatives).toEqual({ present: 'first design', list: [] });
    for (const key of ['exposure', 'breakAngle'] as const)
      design.strings.forEach((string, k) => {
        expect(string[key], `${key} of ${string.name}`).toBeCloseTo(then[key][k] ?? Number.NaN, 9);
      });
    const { version: _, ...old } = JSON.parse(before);
    expect(jobOf(before)).toMatchObject(old);
  });
});

describe('migrate', () => {
  it('leaves a job of the version asked for as it is', () => {
    const job = { version: 2, name: 'x' };
    expect(migrate(job, 2)).toBe(job);
  });

  it.each([0, 1.5, 4, '1', null, undefined])('leads nowhere from version %j', (version) => {
    expect(migrate({ version }, 3)).toBeUndefined();
  });
});
