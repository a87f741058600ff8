import { describe, expect, it } from 'vitest';
import { findings } from '../../geometry/checks/findings.ts';
import { fieldsOf, getAt } from '../../geometry/fields.ts';
import { type Job, jobSchema } from '../../geometry/job.ts';
import { readJob, writeJob } from '../../geometry/job-file.ts';
import { sayWith } from '../../geometry/layout.ts';
import { solvedAlternatives } from '../../src/app/alternatives.ts';
import { readRow, rowText } from '../../src/app/compare/radius-row.ts';
import { decimalsFor, decimalsHere, jobAsRead, keepDecimals, showAsRead } from '../../src/app/decimal.ts';
import { nothingAsked, readAsked } from '../../src/app/newjob/asked.ts';
import { createBench, refusedFields } from '../../src/app/store.ts';
import { readField, shown } from '../../src/app/typing.ts';
import { starters } from '../../src/jobs/index.ts';
import { starterJob } from './bench.ts';

const comma = decimalsFor('comma', []);
const point = decimalsFor('point', []);
const open = (job = starterJob('heron')) => createBench({ job, decimals: comma });

describe('a bench that is read with a decimal comma', () => {
  it('says its numbers so, and keeps the job as it is in every place', () => {
    const bench = open();
    const { job, built } = bench.getState();
    expect(
      built &&
        findings(built.job, built.design)
          .map(({ says }) => says)
          .join(),
    ).toMatch(/\d,\d/);
    expect(built && sayWith(built.job.show)([{ kind: 'length', value: 2.5 }])).toBe('2,5');
    expect(JSON.stringify(job)).not.toContain('decimal');
    bench.type('bridge.thickness', '9,3');
    bench.addRadii([184.15]);
    bench.undo();
    bench.redo();
    const { job: now, past } = bench.getState();
    expect(now.bridge.thickness).toBe(9.3);
    expect([now, ...past.map((step) => step.job)].map((one) => JSON.stringify(one)).join()).not.toContain('decimal');
    // What it is called is said as it was read.
    expect(now.alternatives.list.at(-1)?.name).toBe('top 7,25 in');
    expect(readJob(writeJob(now))).toMatchObject({ ok: true, unknown: [] });
  });

  it('is read with a point from one moment to the next: no step, the same job, what is typed stays', () => {
    const bench = open();
    bench.type('bridge.thickness', '500');
    const before = bench.getState();
    expect(before.drafts['bridge.thickness']?.says).toContain('2,0 mm to 30,0 mm');
    expect(refusedFields(before).join()).toMatch(/\d,\d mm/);
    bench.read(point);
    const { job, past, drafts, built } = bench.getState();
    expect(job).toBe(before.job);
    expect(past).toBe(before.past);
    expect(drafts['bridge.thickness']).toMatchObject({ text: '500' });
    expect(drafts['bridge.thickness']?.says).toContain('2.0 mm to 30.0 mm');
    expect(built && sayWith(built.job.show)([{ kind: 'length', value: 2.5 }])).toBe('2.5');
    const state = bench.getState();
    bench.read(point);
    expect(bench.getState()).toBe(state);
  });

  it('says so what keeps it from being built, and shows the last numbers that could be so too', () => {
    const bench = open();
    bench.type('slot.width', '1.2');
    bench.type('bridge.depth', '12');
    const { solved, built } = bench.getState();
    if (solved.ok) throw new Error('the job can be built');
    expect(solved.problems.map(({ says }) => says).join()).toMatch(/\d,\d mm/);
    expect(solved.problems.map(({ says }) => says).join()).not.toMatch(/\d\.\d/);
    bench.read(point);
    const now = bench.getState();
    expect(now.built?.job.show.decimal ?? 'point').toBe('point');
    // Its findings are said anew.
    expect(now.built?.design).not.toBe(built?.design);
    expect(now.built?.design).toEqual(built?.design);
  });

  it('works each alternative out once, however often it is looked at', () => {
    const bench = open();
    bench.addRadii([304.8, 406.4]);
    const [first] = solvedAlternatives(jobAsRead(bench.getState()));
    bench.type('bridge.thickness', '9,3');
    bench.undo();
    expect(jobAsRead(bench.getState())).toBe(jobAsRead(bench.getState()));
    expect(solvedAlternatives(jobAsRead(bench.getState()))[0]?.solved).toBe(first?.solved);
    // What does not change is the same object, so that nothing is drawn again for it.
    const show = showAsRead(bench.getState());
    bench.type('bridge.thickness', '9,4');
    expect(showAsRead(bench.getState())).toBe(show);
  });
});

describe('what is put into a field with a decimal comma', () => {
  const numbers = fieldsOf(jobSchema).filter(
    ({ kind, path }) => kind !== 'word' && kind !== 'text' && !path.includes('*'),
  );

  it.each(['mm', 'in', 'fraction'] as const)(
    'is read back as what a point would be, in every field: lengths in %s',
    (unit) => {
      let decimals = 0;
      for (const { id } of starters) {
        const job: Job = starterJob(id);
        const show = { ...job.show, length: unit, radius: unit, gauge: unit };
        for (const field of numbers) {
          const value = getAt(job, field.path);
          const [withComma, withPoint] = (['comma', 'point'] as const).map((decimal) =>
            shown(field, value, { ...show, decimal }),
          );
          if (withComma === undefined || withPoint === undefined || withComma === '') continue;
          expect(withComma).toBe(withPoint.replace('.', ','));
          expect(readField(field, withComma, { ...show, decimal: 'comma' })).toEqual(readField(field, withPoint, show));
          if (withComma.includes(',')) decimals += 1;
        }
      }
      expect(decimals).toBeGreaterThan(100);
    },
  );

  it('parts a row of radii so that each is one, with either mark', () => {
    const show = { length: 'mm', radius: 'in', gauge: 'in' } as const;
    const radii = [7.25 * 25.4, 9.5 * 25.4, 'flat'] as const;
    for (const [decimal, text] of [
      ['comma', '7,25; 9,5; flat'],
      ['point', '7.25; 9.5; flat'],
    ] as const) {
      expect(rowText(radii, { ...show, decimal })).toBe(text);
      for (const reader of ['comma', 'point'] as const) {
        const read = readRow(text, { ...show, decimal: reader }, 9, 254);
        expect(read.ok && read.radii.map((one) => (one === 'flat' ? one : Number((one / 25.4).toFixed(9))))).toEqual([
          7.25,
          9.5,
          'flat',
        ]);
      }
    }
  });
});

describe('a new job', () => {
  it('says what is assumed and what is refused with the mark of whoever begins it, and has none of its own', () => {
    const asked = { ...nothingAsked, typed: { ...nothingAsked.typed, 'guitar.scale': '2,5' } };
    const { job, assumed, refused } = readAsked(asked, '2026-01-01', 'comma');
    expect(assumed.join()).toMatch(/\d,\d mm/);
    expect(refused['guitar.scale']).toContain('2,5 mm');
    expect(JSON.stringify(job)).toBe(JSON.stringify(readAsked(asked, '2026-01-01').job));
  });
});

describe('the choice of the mark', () => {
  const storage = () => {
    const kept = new Map<string, string>();
    return {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, value: string) => void kept.set(key, value),
      removeItem: (key: string) => void kept.delete(key),
    } as Storage;
  };

  it('is the browser’s till another is chosen, and stays on the device', () => {
    const local = storage();
    expect(decimalsHere(() => local, ['de-DE'])).toEqual({ chosen: 'browser', mark: 'comma' });
    keepDecimals('point', () => local);
    expect(decimalsHere(() => local, ['de-DE'])).toEqual({ chosen: 'point', mark: 'point' });
    keepDecimals('browser', () => local);
    expect(decimalsHere(() => local, ['de-DE'])).toEqual({ chosen: 'browser', mark: 'comma' });
  });

  it('is the browser’s where the device keeps nothing, or something else', () => {
    const none = () => {
      throw new DOMException('denied', 'SecurityError');
    };
    keepDecimals('comma', none);
    expect(decimalsHere(none, ['en-US'])).toEqual({ chosen: 'browser', mark: 'point' });
    const odd = storage();
    odd.setItem('sagitta.decimal', 'dot');
    expect(decimalsHere(() => odd, ['fr-FR'])).toEqual({ chosen: 'browser', mark: 'comma' });
  });
});
