import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { footprints } from '../../geometry/bridge/footprints/index.ts';
import { findings } from '../../geometry/checks/findings.ts';
import { readJob, writeJob } from '../../geometry/job-file.ts';
import { starters } from '../../src/jobs/index.ts';
import { built } from '../solved.ts';

const readText = (text: string) => {
  const read = readJob(text);
  if (!read.ok) throw new Error(read.problems.map((problem) => problem.says).join('\n'));
  return read;
};

it('the demo comes first, and each has a key of its own', () => {
  expect(starters[0]?.id).toBe('heron');
  expect(new Set(starters.map(({ id }) => id)).size).toBe(starters.length);
});

it('they show every footprint, every way to hold the strings but behind, a compound board, a left hand, and lengths in mm and in fractions', () => {
  const jobs = starters.map(({ text }) => readText(text).job);
  expect(new Set(jobs.map((job) => job.bridge.footprint))).toEqual(new Set(Object.keys(footprints)));
  expect(new Set(jobs.map((job) => job.pins.hold))).toEqual(new Set(['pins', 'tied']));
  expect(new Set(jobs.map((job) => job.strings.courses))).toEqual(new Set(['single', 'pairs']));
  expect(new Set(jobs.map((job) => job.work))).toEqual(new Set(['bridge', 'saddle']));
  expect(jobs.some((job) => job.guitar.boardRadiusNut !== job.guitar.boardRadiusEnd)).toBe(true);
  expect(jobs.some((job) => job.guitar.bodyJoint === 12)).toBe(true);
  expect(jobs.some((job) => job.hand === 'left')).toBe(true);
  expect(new Set(jobs.map((job) => job.show.length))).toEqual(new Set(['mm', 'fraction']));
});

it('the compound board is the cone of its strings (Hartstein, in American Lutherie)', () => {
  const { guitar, strings } = built(readText(starters.find(({ id }) => id === 'kestrel')?.text ?? '').job).job;
  const last = guitar.scale * (1 - 2 ** (-guitar.frets / 12));
  const saddle = guitar.scale + strings.list.reduce((sum, { setback }) => sum + setback, 0) / strings.list.length;
  const cone =
    Number(guitar.boardRadiusNut) * (1 + (last * (strings.spread - guitar.nutSpread)) / (saddle * guitar.nutSpread));
  expect(Number(guitar.boardRadiusEnd)).toBeCloseTo(cone, 0);
});

/** What is not right in a starter, worst first: the check, its level and the string. */
const doubts: Readonly<Record<string, readonly (readonly [check: string, level: string, where: string])[]>> = {
  heron: [
    ['exposure', 'doubtful', 'E2'],
    ['inSlot', 'doubtful', 'E2'],
  ],
};

describe.each(starters.map((starter) => [starter.id, starter] as const))('%s', (id, { text, title }) => {
  it('is the file of its name, written as a job is written, without a key nobody knows', () => {
    expect(text).toBe(readFileSync(new URL(`../../src/jobs/${id}.json`, import.meta.url), 'utf8'));
    const { job, unknown } = readText(text);
    expect(writeJob(job)).toBe(text);
    expect(unknown).toEqual([]);
    expect(job.name).toBe(title);
  });

  // By the usual ranges of steel strings [practice]. The demo has something to show: a saddle that stands out a little far.
  it('is right by every usual range, but for what the demo shows', () => {
    const { job, design } = built(readText(text).job);
    const open = findings(job, design).filter(({ level }) => level !== 'right');
    expect(open.map(({ check, level, facts }) => [check, level, facts[0]?.where])).toEqual(doubts[id] ?? []);
    expect(job.limits).toEqual({});
  });
});

describe.each(starters.filter(({ id }) => ['wren', 'kestrel', 'plover'].includes(id)).map((s) => [s.id, s] as const))(
  '%s',
  (_, { text }) => {
    // The usual ranges of steel strings [practice].
    it('is right by every usual range', () => {
      const { job, design } = built(readText(text).job);
      const between = (value: number, least: number, most: number, what: string) => {
        expect(value, what).toBeGreaterThanOrEqual(least);
        expect(value, what).toBeLessThanOrEqual(most);
      };
      between(design.straightedgeClearance, 0, 1, 'straightedge clearance');
      between(job.bridge.thickness, 7, 10.5, 'bridge thickness');
      between(job.bridge.tipThickness, 2.5, 4, 'tip thickness');
      between(job.slot.width, 2.3, 3.3, 'saddle thickness');
      between(job.action.bass, 2, 2.8, 'action, bass');
      between(job.action.treble, 1.5, 2.2, 'action, treble');
      between(job.action.firstFretBass, 0.3, 0.6, 'first fret, bass');
      between(job.action.firstFretTreble, 0.3, 0.6, 'first fret, treble');
      between(job.guitar.relief, 0.1, 0.3, 'relief');
      between(job.guitar.rise, 0.3, 1.5, 'rise');
      expect(design.woodUnderSlot).toBeGreaterThanOrEqual(2);
      for (const string of design.strings) {
        between(string.exposure, 2, 4.5, `exposure at ${string.name}`);
        between(string.breakAngle, 15, 35, `break angle at ${string.name}`);
        between((string.saddleHeight - string.exposure) / string.saddleHeight, 0.5, 1, `in the slot at ${string.name}`);
        between(string.setback, 1.5, 5.5, `setback of ${string.name}`);
        between(
          Math.abs(string.behindMiddle),
          0,
          job.slot.width / 2 - 0.5,
          `break point of ${string.name} on the saddle`,
        );
        const wood = string.pin.y - job.pins.hole / 2 - (design.saddleLine.x + design.saddleLine.slant * string.pin.x);
        between(wood - job.slot.width / 2, 3, 20, `wood before the pin of ${string.name}`);
      }
    });
  },
);
