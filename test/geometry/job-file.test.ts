import { describe, expect, it } from 'vitest';
import { getAt, setAt } from '../../geometry/fields.ts';
import { type Job, jobFormat } from '../../geometry/job.ts';
import { checkField, newJob, readJob, validateJob, writeJob } from '../../geometry/job-file.ts';
import type { Problem } from '../../geometry/problem.ts';
import { parseQuantity } from '../../geometry/units.ts';

const job = newJob('2026-03-01');

const problems = (read: ReturnType<typeof readJob>): readonly Problem[] => {
  if (read.ok) throw new Error('the job was accepted');
  return read.problems;
};
const says = (read: ReturnType<typeof readJob>): readonly string[] => problems(read).map((problem) => problem.says);
const accepted = (read: ReturnType<typeof readJob>) => {
  if (!read.ok) throw new Error(read.problems.map((problem) => problem.says).join('\n'));
  return read;
};
const withValue = (path: string, value: unknown) => validateJob(setAt(job, path, value));

describe('a new job', () => {
  it('can be read as it is', () => {
    expect(accepted(readJob(writeJob(job)))).toEqual({ ok: true, job, unknown: [] });
    expect(job.date).toBe('2026-03-01');
  });

  it('has its strings at the pitches of their names', () => {
    for (const { name, pitch } of job.strings.list) {
      const note = parseQuantity(name, 'frequency', 'mm');
      expect(note.ok && note.value, name).toBeCloseTo(pitch, 3);
    }
  });
});

describe('what a file is not', () => {
  it.each<[string, string, string]>([
    ['an empty file', '', 'The file is empty'],
    ['blanks', ' \n\t', 'The file is empty'],
    ['only a byte order mark', '\uFEFF', 'The file is empty'],
    ['words', 'hello there', 'not JSON'],
    ['a cut file', writeJob(job).slice(0, 400), 'not JSON'],
    ['NaN', '{"scale": NaN}', 'not JSON'],
    ['Infinity', '{"scale": Infinity}', 'not JSON'],
    ['null', 'null', 'a job is a group of values in braces'],
    ['a list', '[1, 2]', 'a job is a group of values in braces'],
    ['a number', '12', 'a job is a group of values in braces'],
    ['another program’s JSON', '{"name": "other", "version": "1.0.0"}', 'may belong to another program'],
    ['another format', '{"format": "gpx", "version": 1}', 'may belong to another program'],
    ['a newer version', '{"format": "sagitta-job", "version": 4}', 'reads version 3. Open it with a newer Sagitta'],
    [
      'a version before the first',
      '{"format": "sagitta-job", "version": 0}',
      'version is 0; Sagitta reads versions 1 to 3',
    ],
    ['a version in words', '{"format": "sagitta-job", "version": "1"}', 'Sagitta reads versions 1 to 3'],
  ])('%s', (_, text, words) => {
    const found = says(readJob(text));
    expect(found).toHaveLength(1);
    expect(found[0]).toContain(words);
  });

  it('tells the line and column where the JSON breaks', () => {
    const broken = writeJob(job).replace('"frets": 20,', '"frets": 20;');
    const lines = broken.slice(0, broken.indexOf(';')).split('\n');
    expect(says(readJob(broken))[0]).toContain(`at line ${lines.length}, column ${(lines.at(-1) ?? '').length + 1}`);
  });

  it('reads a job behind a byte order mark', () => {
    expect(accepted(readJob(`\uFEFF${writeJob(job)}`)).job).toEqual(job);
  });
});

describe('hostile files', () => {
  it('refuses a file that is too long before reading it', () => {
    expect(says(readJob(' '.repeat(500_001)))[0]).toContain('500001 characters; a job has at most 500000');
  });

  it('refuses nesting beyond 50, but reads brackets in texts as text', () => {
    expect(says(readJob(`{"a":${'['.repeat(400_000)}`))[0]).toContain('more than 50 deep');
    expect(says(readJob(`${'{"a":'.repeat(51)}1${'}'.repeat(51)}`))[0]).toContain('more than 50 deep');
    const named = { ...job, name: `${'['.repeat(90)}"\\"{` };
    expect(accepted(readJob(writeJob(named))).job.name).toBe(named.name);
  });

  it('tells fifty of many things that are wrong, and costs no stack for the others', () => {
    const many = Array.from({ length: 20_000 }, () => '{"__proto__":1}').join();
    expect(says(readJob(`{"format":"${jobFormat}","x":[${many}]}`))).toHaveLength(50);
    const keys = Object.fromEntries(Array.from({ length: 20_000 }, (_, k) => [`\u0007k${k}`, 1]));
    const { unknown } = accepted(validateJob({ ...job, ...keys }));
    expect(unknown).toHaveLength(50);
    expect(unknown[0]).toBe('k0');
  });

  it('refuses a number that no file could keep, wherever it stands', () => {
    const [said] = says(readJob(writeJob(job).replace('{', '{ "other": [1, -1e999],')));
    expect(said).toContain('other.1 is a number too large to be kept');
  });

  it('reads −0 as 0, as it would be written', () => {
    const read = accepted(readJob(writeJob(job).replace('{', '{ "other": [-0, {"__x": -0.0}],')));
    expect((read.job as unknown as { other: unknown }).other).toStrictEqual([0, { __x: 0 }]);
  });

  it('tells of versions that are none by their number', () => {
    for (const version of [0, -1, 1.5, 3.5, 1e300])
      expect(says(validateJob({ ...job, version }))[0]).toContain(`version is ${version};`);
    for (const version of ['3', null, Number.POSITIVE_INFINITY])
      expect(says(validateJob({ ...job, version }))[0]).toContain('not given as a number');
  });

  it('has room for the fullest job that the schema allows', () => {
    const many = <T>(count: number, make: (id: string) => T) =>
      Array.from({ length: count }, (_, k) => make(String(k).padStart(40, 'x')));
    const long = 0.1234567890123456;
    const points = many(40, (id) => ({ id, across: -long, along: 20 + long, turn: 'corner' }));
    const bridge = { ...job.bridge, points };
    const { fromNut: _, slant: __, ...slot } = job.slot;
    const { saddle, pins, stock } = job;
    const [string] = job.strings.list;
    const full = {
      ...job,
      name: '“'.repeat(200),
      guitar: { ...job.guitar, measured: many(40, (id) => ({ id, fret: 12, distance: 300 + long })) },
      strings: { ...job.strings, list: many(12, (id) => ({ ...string, id })) },
      bridge,
      top: {
        ...job.top,
        holes: many(60, (id) => ({
          id,
          what: 'other',
          across: long,
          fromNut: 600 + long,
          diameter: 5 + long,
          plan: 'register',
        })),
        rises: many(60, (id) => ({ id, across: long, fromNut: 600 + long, height: long })),
        braces: many(30, (id) => ({
          id,
          name: '“'.repeat(40),
          across: long,
          fromNut: 600 + long,
          acrossTo: long,
          fromNutTo: 600 + long,
          width: 6 + long,
        })),
      },
      setup: {
        log: many(60, (id) => ({
          id,
          note: '“'.repeat(200),
          readings: many(24, (at) => ({ id: at, action: 2 + long, cents: long })),
        })),
      },
      alternatives: {
        ...job.alternatives,
        list: [...'ABCDEF'].map((id) => ({ id, name: '“'.repeat(40), bridge, slot, saddle, pins, stock })),
      },
    };
    const read = validateJob(full);
    expect(read.ok ? [] : read.problems).toEqual([]);
    const text = writeJob(full as unknown as Job);
    expect(text.length).toBeGreaterThan(300_000);
    expect(readJob(text).ok).toBe(true);
  });

  it('refuses plain values that contain themselves', () => {
    const loop: Record<string, unknown> = { ...job };
    loop.loop = loop;
    expect(says(validateJob(loop))[0]).toContain('nested more than 50 deep');
  });

  it('refuses a key that would reach a prototype, by name, at any depth', () => {
    const text = writeJob(job);
    const top = text.replace('{', '{"__proto__": {"polluted": 1},');
    const deep = text.replace('"guitar": {', '"guitar": {"__proto__": {"polluted": 1},');
    expect(problems(readJob(top))).toMatchObject([{ path: '__proto__', says: expect.stringContaining('“__proto__”') }]);
    expect(problems(readJob(deep))).toMatchObject([{ path: 'guitar.__proto__' }]);
    expect('polluted' in {}).toBe(false);
  });

  it('keeps a key called constructor as any other unknown one', () => {
    const read = accepted(readJob(writeJob(job).replace('{', '{"constructor": {"prototype": {"polluted": 1}},')));
    expect(read.unknown).toEqual(['constructor']);
    expect(JSON.parse(writeJob(read.job)).constructor).toEqual({ prototype: { polluted: 1 } });
    expect('polluted' in {}).toBe(false);
  });
});

describe('one bad value', () => {
  it.each<[string, unknown, string]>([
    ['guitar.scale', -1, 'Scale length (guitar.scale) is −1 mm; it may be from 300 to 1000 mm, or “frets”.'],
    ['guitar.scale', 1e9, 'Scale length (guitar.scale) is 1000000000 mm; it may be from 300 to 1000 mm, or “frets”.'],
    [
      'guitar.scale',
      1000.001,
      'Scale length (guitar.scale) is 1000.001 mm; it may be from 300 to 1000 mm, or “frets”.',
    ],
    [
      'guitar.scale',
      '640',
      'Scale length (guitar.scale) is the text “640”; it may be from 300 to 1000 mm, or “frets”.',
    ],
    [
      'guitar.scale',
      Number.NaN,
      'Scale length (guitar.scale) is not a number (NaN); it may be from 300 to 1000 mm, or “frets”.',
    ],
    [
      'guitar.scale',
      Number.POSITIVE_INFINITY,
      'Scale length (guitar.scale) is infinite; it may be from 300 to 1000 mm, or “frets”.',
    ],
    ['guitar.scale', undefined, 'Scale length (guitar.scale) is missing; it may be from 300 to 1000 mm, or “frets”.'],
    ['guitar.scale', null, 'Scale length (guitar.scale) is empty (null); it may be from 300 to 1000 mm, or “frets”.'],
    ['guitar.scale', true, 'Scale length (guitar.scale) is true; it may be from 300 to 1000 mm, or “frets”.'],
    ['guitar.scale', [640], 'Scale length (guitar.scale) is a list; it may be from 300 to 1000 mm, or “frets”.'],
    ['guitar.frets', 20.5, 'Frets (guitar.frets) is 20.5; it may be a whole number from 12 to 30.'],
    [
      'guitar.topRadius',
      'round',
      'Top’s dome radius (guitar.topRadius) is the text “round”; it may be from 500 to 50000 mm, or “flat”.',
    ],
    [
      'guitar.topRadius',
      -1,
      'Top’s dome radius (guitar.topRadius) is −1 mm; it may be from 500 to 50000 mm, or “flat”.',
    ],
    ['bridge.tilt', 0.07, 'Tilt (bridge.tilt) is 7 %; it may be from −5 to 5 %.'],
    ['bridge.wing', 'curly', 'Wings (bridge.wing) is “curly”; it may be “hollow”, “straight”, “round” or “ogee”.'],
    ['hand', 1, 'Guitar for (hand) is the number 1; it may be “right” or “left”.'],
    ['date', '2026-02-30', 'Date (date) is “2026-02-30”; it may be a day as year-month-day, for example 2026-03-31.'],
    ['bridge', null, 'bridge is empty (null); it must be a group of values in braces.'],
    ['slot', undefined, 'slot is missing; it must be a group of values in braces.'],
    ['strings.list', {}, 'strings.list is a group of values; it must be a list.'],
    ['strings.list', job.strings.list.slice(0, 1), 'strings.list has 1 string; it may have from 4 to 12.'],
    ['strings.list.E2.gauge', 9, 'Gauge (strings.list.E2.gauge) is 9 mm; it may be from 0.15 to 3 mm.'],
    ['strings.list.E2.pitch', 5, 'Pitch (strings.list.E2.pitch) is 5 Hz; it may be from 20 to 1500 Hz.'],
  ])('%s as %j is refused in words', (path, value, sentence) => {
    expect(says(withValue(path, value))).toEqual([sentence]);
    expect(problems(withValue(path, value))[0]?.path).toBe(path);
  });

  it('refuses a text of 10,000 characters in words, and quotes only its beginning', () => {
    const [problem] = problems(withValue('name', 'x'.repeat(10_000)));
    expect(problem?.says).toContain('Job (name) is a text of 10000 characters');
    expect(problem?.says).toContain('at most 200 characters');
    expect(problem?.says.length).toBeLessThan(200);
    expect(String(problem?.value).length).toBeLessThan(50);
  });

  it('refuses keys of strings that are empty, alike or would break a path', () => {
    expect(problems(withValue('strings.list.E2.id', ''))).toMatchObject([{ path: 'strings.list.0.id' }]);
    expect(says(withValue('strings.list.E2.id', 'E.2'))[0]).toContain('without blanks, full stops and asterisks');
    expect(says(withValue('strings.list.A2.id', 'E2'))).toEqual([
      'strings.list.1.id is “E2”, as that of an earlier item of the list; each needs a key of its own.',
    ]);
  });

  it('names a string by its place where its key names no one string', () => {
    const alike = setAt(setAt(job, 'strings.list.A2.gauge', -1), 'strings.list.A2.id', 'E2');
    expect(problems(validateJob(alike)).map(({ path }) => path)).toEqual(['strings.list.1.gauge']);
  });

  it('is told in the field’s own words at the field', () => {
    expect(checkField('guitar.scale', -1)).toBe('Scale length is −1 mm; it may be from 300 to 1000 mm, or “frets”.');
    expect(checkField('strings.list.E2.core', 'none')).toBe(
      'Core is the text “none”; it may be from 0.1 to 3 mm, or “plain”.',
    );
    expect(checkField('guitar.scale', 640)).toBeUndefined();
    expect(checkField('guitar.topRadius', 'flat')).toBeUndefined();
    expect(() => checkField('guitar.nothing', 1)).toThrow(RangeError);
  });
});

describe('many bad values', () => {
  it('are told all at once', () => {
    const bad = setAt(setAt(setAt(job, 'guitar.scale', -1), 'slot.depth', 'deep'), 'strings.list.B3.setback', 99);
    expect(problems(validateJob(bad)).map(({ path }) => path)).toEqual([
      'guitar.scale',
      'strings.list.B3.setback',
      'slot.depth',
    ]);
  });

  it('are told up to 50', () => {
    const empty = Array.from({ length: 12 }, (_, index) => ({ id: `s${index}` }));
    expect(problems(withValue('strings.list', empty))).toHaveLength(50);
  });
});

describe('names are text', () => {
  it.each(['<script>alert("1")</script>', 'Guitar 🎸', 'גיטרה של אבא', '吉他', 'O\'Neil & "Sons"'])('%s', (name) => {
    const read = accepted(readJob(writeJob({ ...job, name })));
    expect(read.job.name).toBe(name);
    expect(read.unknown).toEqual([]);
  });
});

describe('keys nobody knows', () => {
  const strange = setAt(
    setAt(setAt(job, 'colour', 'brown'), 'bridge.glue', { kind: 'hide', hours: [12, 24] }),
    'strings.list.G3.maker',
    null,
  );
  const shuffled = JSON.stringify(Object.fromEntries(Object.entries(strange).reverse()));

  it('are reported by their paths', () => {
    expect(accepted(readJob(shuffled)).unknown.toSorted()).toEqual(['bridge.glue', 'colour', 'strings.list.G3.maker']);
  });

  it('are kept, behind the known ones, when the job is written', () => {
    const { job: read } = accepted(readJob(shuffled));
    const written = writeJob(read);
    expect(accepted(readJob(written)).job).toEqual(strange);
    expect(getAt(JSON.parse(written) as Job, 'bridge.glue.hours')).toEqual([12, 24]);
    expect(Object.keys(JSON.parse(written))).toEqual([...Object.keys(job), 'colour']);
    expect(Object.keys(JSON.parse(written).strings.list[3]).at(-1)).toBe('maker');
  });
});

describe('writeJob', () => {
  it('writes the schema’s order whatever the order was, one value a line, with a line break at the end', () => {
    const shuffled = { ...job, guitar: Object.fromEntries(Object.entries(job.guitar).reverse()) } as Job;
    expect(writeJob(shuffled)).toBe(writeJob(job));
    expect(writeJob(job)).toMatch(/^\{\n {2}"format": "sagitta-job",\n {2}"version": 3,\n/);
    expect(writeJob(job)).toMatch(/\n\}\n$/);
  });
});
