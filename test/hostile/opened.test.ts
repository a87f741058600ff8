// Jobs that a file may well hold, but nobody would think of: every field at its limits, names and keys of any sort. Whatever opens is built or refused in words, and what is built is reported and drawn.
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { differences } from '../../geometry/alternatives.ts';
import { build } from '../../geometry/build.ts';
import { findings } from '../../geometry/checks/findings.ts';
import { type FieldInfo, fieldsOf, getAt, setAt } from '../../geometry/fields.ts';
import { type Job, jobSchema } from '../../geometry/job.ts';
import { readJob, writeJob } from '../../geometry/job-file.ts';
import { layOut, sayWith } from '../../geometry/layout.ts';
import { report } from '../../geometry/report.ts';
import { threeViews } from '../../geometry/views/index.ts';
import { pictureOf } from '../../src/app/keep/picture.ts';
import { starters } from '../../src/jobs/index.ts';
import { toSvg } from '../../templates/svg.ts';
import { svgWindow } from '../../templates/svg-window.ts';
import { drawnPieces } from '../drawn.ts';
import { jobOf } from '../solved.ts';
import { footprintJobs, fullJob, oldTop, twelveStrings } from '../templates/full-job.ts';
import { must, mustBeFit, mustSay, watchPrototypes } from './hold.ts';

const count = Math.ceil(Number(process.env.SAGITTA_HOSTILE_FILES ?? 5000) * 0.06);
const seed = Number(process.env.SAGITTA_SEED ?? 20264);

const jobs: readonly Job[] = [
  ...starters.map(({ text }) => jobOf(text)),
  ...Object.values(footprintJobs).map((job) => job()),
  fullJob(),
  oldTop(),
  twelveStrings(),
];

const fields = fieldsOf(jobSchema).filter(({ path }) => !['format', 'version'].includes(path));

const texts: readonly string[] = [
  ...[
    '',
    ' ',
    '\u0000',
    '\ud800',
    '\u001b[2J',
    '\u202eabc',
    'a\r\nb',
    '\u2028',
    '<script>&"\'',
    '__proto__',
    'constructor',
    '%s%n',
    '../../x',
    'CON',
  ],
  ...[
    '\u05d0\u05d1 1/2',
    '\u0627\u0644',
    '\u{1f3b8}',
    'e\u0301\u0301',
    '\ufffe',
    'W'.repeat(200),
    '\u0301'.repeat(200),
  ],
];
const keys: readonly string[] = [
  '__proto__',
  'constructor',
  'toString',
  '0',
  '-1',
  '<b>',
  '"',
  '\u{1f3b8}',
  '%2e',
  'x'.repeat(40),
];
const days: readonly string[] = ['0001-01-01', '9999-12-31', '2024-02-29'];

/** What a share of the way through all that may stand in a field puts there. */
const valueFor = (
  { path, kind, min = 0, max = 0, word, choices, longest = 0 }: FieldInfo,
  by: number,
): number | string => {
  const pick = (from: readonly string[]) => from[Math.floor(by * from.length)] ?? '';
  if (path === 'date') return pick(days);
  if (path.endsWith('.id')) return pick(keys);
  if (choices !== undefined) return pick(Object.keys(choices));
  if (kind === 'text') return pick(texts).slice(0, longest);
  if (word !== undefined && by > 0.85) return word;
  if (by < 0.2) return min;
  if (by < 0.4) return max;
  const value = min + ((by * 7) % 1) * (max - min);
  return kind === 'count' ? Math.round(value) : value;
};

/** The job with one more value; as it was where it has no such place, or another item goes by that key. */
const changed = (job: Job, [which, item, by]: readonly [number, number, number]): Job => {
  const field = fields[which % fields.length];
  if (field === undefined) return job;
  let path = '';
  for (const key of field.path.split('.')) {
    const list = path === '' ? undefined : getAt(job, path);
    if (key !== '*') path = path === '' ? key : `${path}.${key}`;
    else if (!Array.isArray(list) || list.length === 0) return job;
    else path = `${path}.${list[item % list.length].id}`;
  }
  const value = valueFor(field, by);
  const made = setAt(job, path, value);
  return readJob(writeJob(made)).ok ? made : job;
};

const share = fc.double({ min: 0, max: 0.999999, noNaN: true });
const job = fc
  .record({
    base: fc.nat(jobs.length - 1),
    changes: fc.array(fc.tuple(fc.nat(10_000), fc.nat(100), share), { minLength: 1, maxLength: 6 }),
  })
  .map(({ base, changes }) => changes.reduce(changed, jobs[base] as Job));

const window = svgWindow();

const finite = (value: unknown): boolean =>
  typeof value === 'number'
    ? Number.isFinite(value)
    : typeof value !== 'object' || value === null || Object.values(value).every(finite);

it(`whatever opens is built, or refused in words: ${count}`, { timeout: 30_000 + count * 400 }, () => {
  const clean = watchPrototypes();
  let drawn = 0;
  let tries = 0;
  fc.assert(
    fc.property(job, (asked) => {
      tries += 1;
      differences(asked);
      const made = build(asked);
      if (!made.ok) return mustSay(made.problems);
      const { job: settled, design } = made;
      drawn += 1;
      for (const finding of findings(settled, design)) mustBeFit(finding.says);
      // The report tries every way out, and SVG goes through a DOM: both take their time.
      if (tries % 10 === 0)
        must(finite(report(settled, design, asked)), () => `a number of the report is none: ${writeJob(asked)}`);
      pictureOf(asked);
      const say = sayWith(settled.show);
      const drawings = [
        threeViews(settled, design, 3.5, say),
        ...(tries % 5 === 0 ? drawnPieces(settled, design) : []),
      ];
      for (const { id, title, marks } of drawings) {
        const primitives = layOut(marks, { em: 3.5, say });
        must(finite(primitives), () => `${id} holds a number that is none: ${writeJob(asked)}`);
        if (tries % 20 !== 0) continue;
        const svg = toSvg(primitives, { left: -200, top: -200, width: 400, height: 400, title, window });
        must(!/NaN|Infinity|undefined/.test(svg), () => `${id} holds a number that is none: ${writeJob(asked)}`);
      }
    }),
    { numRuns: count, seed, endOnFailure: true },
  );
  clean();
  expect(drawn).toBeGreaterThan(count / 4);
});
