import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
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

it('they show a belly and a rectangle, a compound board, a left hand, and lengths in mm and in fractions', () => {
  const jobs = starters.map(({ text }) => readText(text).job);
  expect(new Set(jobs.map((job) => job.bridge.footprint))).toEqual(new Set(['belly', 'rectangle']));
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
