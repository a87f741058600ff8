import { describe, expect, it } from 'vitest';
import { jobVersion } from '../../geometry/job.ts';
import { newJob, readJob, writeJob } from '../../geometry/job-file.ts';
import { readNewer } from '../../geometry/newer.ts';
import { workedExample } from '../solved.ts';

type Loose = Record<string, Record<string, unknown>>;
const newer = (change: (job: Loose) => void = () => {}): string => {
  const job = JSON.parse(writeJob(workedExample()));
  change(job);
  return JSON.stringify({ ...job, version: jobVersion + 1 });
};

describe('a job of a newer version', () => {
  it('is refused, and read as it is where all of it is understood', () => {
    expect(readJob(newer()).ok).toBe(false);
    expect(readNewer(newer())).toEqual({ job: workedExample(), version: jobVersion + 1, replaced: [], unknown: [] });
  });

  it('keeps and tells the keys that nobody here knows', () => {
    const read = readNewer(newer((job) => Object.assign(job.bridge ?? {}, { grain: 'quartered' })));
    expect(read?.unknown).toEqual(['bridge.grain']);
    expect(JSON.parse(writeJob(read?.job ?? workedExample())).bridge.grain).toBe('quartered');
  });

  it('has a new job’s value where one is not understood, and says where', () => {
    const read = readNewer(
      newer((job) => {
        Object.assign(job.bridge ?? {}, { thickness: { centre: 9, end: 8 }, wing: 'gull' });
        delete job.slot;
      }),
    );
    const fresh = newJob('2026-01-01');
    expect([...(read?.replaced ?? [])].sort()).toEqual(['bridge.thickness', 'bridge.wing']);
    expect(read?.job.bridge.thickness).toBe(fresh.bridge.thickness);
    expect(read?.job.bridge.length).toBe(workedExample().bridge.length);
    expect(read?.job.slot).toEqual(fresh.slot);
  });

  it('leaves out items of lists that are not understood', () => {
    const read = readNewer(
      newer((job) => {
        const list = (job.strings as unknown as { list: Record<string, unknown>[] }).list;
        Object.assign(list[1] ?? {}, { id: 7 });
        list.push('a string' as never);
      }),
    );
    expect(read?.job.strings.list.map(({ id }) => id)).toEqual(
      workedExample()
        .strings.list.filter((_, k) => k !== 1)
        .map(({ id }) => id),
    );
  });

  it('is not read where it is none, or where too little is left', () => {
    for (const text of ['', '[]', '{"format":"sagitta-job"}', writeJob(workedExample())])
      expect(readNewer(text)).toBeUndefined();
    expect(readNewer(newer((job) => Object.assign(job, { strings: { list: [] } })))).toBeUndefined();
  });
});

describe('a key that stands twice', () => {
  const twice = (text: string) => {
    const read = readJob(text);
    return read.ok ? undefined : read.problems[0]?.path;
  };

  it('is refused by its place, however it is written', () => {
    expect(twice('{"format":"sagitta-job","format":"sagitta-job"}')).toBe('format');
    expect(twice('{"a":[{"x":1},{"y":{"z":1,"\\u007a":2}}]}')).toBe('a.1.y.z');
    expect(twice('{"a":{"b":[1,"b","b"]},"c":{"b":1}}')).toBe('');
  });
});
