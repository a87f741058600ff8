import { describe, expect, it } from 'vitest';
import { newJob, writeJob } from '../../geometry/job-file.ts';
import { solvedAlternatives } from '../../src/app/alternatives.ts';
import { createBench, numberBefore, refusedFields } from '../../src/app/store.ts';
import { demoBench, starterJob } from './bench.ts';

describe('typing at a field', () => {
  it('changes the job and its numbers at once when the text can be read', () => {
    const bench = demoBench();
    const before = bench.getState();
    bench.type('bridge.thickness', '9');
    const { job, solved, built } = bench.getState();
    expect(job.bridge.thickness).toBe(9);
    expect(solved.ok).toBe(true);
    // Straightedge clearance is the neck plane height less the thickness, by definition.
    expect(built?.design.straightedgeClearance).toBeCloseTo(Number(job.guitar.neckPlaneHeight) - 9, 12);
    // A thinner bridge leaves as much more saddle standing above it.
    const gap = (state: typeof before) => state.built?.design.strings[0]?.exposure ?? Number.NaN;
    expect(gap(bench.getState()) - gap(before)).toBeCloseTo(before.job.bridge.thickness - 9, 9);
  });

  it.each([
    ['bridge.thickness', 'abc', /“abc”/],
    ['bridge.thickness', '', /Nothing is typed/],
    ['bridge.thickness', '500', /500.0 mm.*2\.0 mm to 30\.0 mm/],
    ['date', '2026-13-40', /2026-13-40/],
    ['strings.list.E2.pitch', 'H2', /“H2”/],
  ])('says why %s cannot be “%s”, and leaves the job as it was', (path, text, says) => {
    const bench = demoBench();
    const { job, built } = bench.getState();
    bench.type(path, text);
    expect(bench.getState().drafts[path]).toMatchObject({ text });
    expect(bench.getState().drafts[path]?.says).toMatch(says);
    bench.leave(path);
    expect(bench.getState().drafts[path]?.text).toBe(text);
    expect(bench.getState().job).toBe(job);
    expect(bench.getState().built).toBe(built);
  });

  it('leaves no keystroke of a refused text in the job: 12 on the way to 12 1/2 inches', () => {
    const bench = demoBench();
    const { job, built } = bench.getState();
    bench.enter('bridge.thickness');
    for (const text of ['1', '12', '12 ', '12 1', '12 1/', '12 1/2']) bench.type('bridge.thickness', text);
    bench.leave('bridge.thickness');
    const state = bench.getState();
    expect(state.job).toBe(job);
    expect(state.built).toEqual(built);
    expect(state.past).toEqual([]);
    expect(refusedFields(state)).toEqual(['Thickness, centre: what is typed cannot be used; drawn with 9.1 mm.']);
    expect(refusedFields(demoBench().getState())).toEqual([]);
  });

  it('draws what stood before the typing, and no keystroke on the way, beside a value that cannot be built', () => {
    const bench = demoBench();
    const { built } = bench.getState();
    for (const text of ['1', '10', '10.', '10.1', '38']) bench.type('bridge.frontToSaddle', text);
    expect(bench.getState().solved.ok).toBe(false);
    expect(bench.getState().built).toBe(built);
  });

  it('leaves what was undone to be brought again when a text is refused', () => {
    const bench = demoBench();
    bench.type('slot.depth', '5');
    bench.leave('slot.depth');
    bench.undo();
    bench.type('bridge.thickness', '9');
    bench.type('bridge.thickness', '9x');
    bench.leave('bridge.thickness');
    bench.redo();
    expect(bench.getState().job.slot.depth).toBe(5);
    expect(bench.getState().drafts).toEqual({});
  });

  it('asks whether the other unit was meant where the number would fit in it', () => {
    const bench = demoBench();
    bench.put('show.length', 'in');
    bench.type('action.bass', '2,4');
    expect(bench.getState().drafts['action.bass']?.says).toMatch(
      /^Action, bass is 2\.400 in; .* Did you mean 2\.4 mm\?$/,
    );
    bench.type('action.bass', '2.4 in');
    expect(bench.getState().drafts['action.bass']?.says).not.toContain('Did you mean');
  });

  it('says what a saved file does not hold', () => {
    const bench = demoBench();
    bench.type('strings.list.A2.core', 'apples');
    bench.leave('strings.list.A2.core');
    bench.markSaved();
    expect(bench.getState().notices[0]?.details).toEqual([
      'Core, A2: what is typed cannot be used; drawn with 0.016 in.',
    ]);
    bench.forget('strings.list.A2.core');
    bench.markSaved();
    expect(bench.getState().notices).toEqual([]);
  });

  it('goes back to the value on entry when the typing is called off', () => {
    const bench = demoBench();
    const { job } = bench.getState();
    bench.enter('guitar.scale');
    bench.type('guitar.scale', '65');
    bench.type('guitar.scale', '650');
    expect(bench.getState().job.guitar.scale).toBe(650);
    bench.forget('guitar.scale');
    expect(bench.getState().job).toBe(job);
    expect(bench.getState().drafts).toEqual({});
    expect(bench.getState().past).toEqual([]);
  });

  it('never shows another job’s drawing for one that cannot be built', () => {
    const bench = demoBench();
    const heron = starterJob('heron');
    bench.open(writeJob({ ...heron, name: 'Another', slot: { ...heron.slot, length: 160 } }), 'another.json');
    expect(bench.getState().job.name).toBe('Another');
    expect(bench.getState().solved.ok).toBe(false);
    expect(bench.getState().built).toBeUndefined();
    bench.undo();
    expect(bench.getState().built?.job.name).toBe(heron.name);
    bench.redo();
    expect(bench.getState().built).toBeUndefined();
  });

  it('adds a string a fourth beyond the outer one, with a name and a key of its own', () => {
    const bench = demoBench();
    const id = bench.addString('bass');
    const [added, next] = bench.getState().job.strings.list;
    expect(added?.id).toBe(id);
    // A fourth below E2 is B1: 61.735 Hz in equal temperament at A4 = 440 Hz (ISO 16).
    expect(added?.name).toBe('B1');
    expect(added?.pitch).toBeCloseTo(61.735, 2);
    expect(next?.name).toBe('E2');
  });

  it('keeps a value that can be read but not built, beside the last numbers that could', () => {
    const bench = demoBench();
    const { built } = bench.getState();
    bench.type('bridge.frontToSaddle', '38');
    const state = bench.getState();
    expect(state.job.bridge.frontToSaddle).toBe(38);
    expect(state.built).toBe(built);
    expect(state.solved.ok ? [] : state.solved.problems.map(({ path }) => path)).toContain('bridge.frontToSaddle');
    bench.type('bridge.frontToSaddle', '10');
    expect(bench.getState().solved.ok).toBe(true);
    expect(bench.getState().built?.job.bridge.frontToSaddle).toBe(10);
  });

  it('reads a bare number in the unit that is chosen, and drops what was typed in another', () => {
    const bench = demoBench();
    bench.type('bridge.depth', 'nonsense');
    bench.put('show.length', 'in');
    expect(bench.getState().drafts).toEqual({});
    bench.type('bridge.depth', '1.5');
    // 1 in = 25.4 mm exactly: International yard and pound agreement, 1959.
    expect(bench.getState().job.bridge.depth).toBeCloseTo(38.1, 12);
  });

  it('keeps a name as it was typed, marks of other languages and all', () => {
    const bench = demoBench();
    bench.type('name', '<script>alert(1)</script> “Ünïcode” 🎸');
    expect(bench.getState().job.name).toBe('<script>alert(1)</script> “Ünïcode” 🎸');
  });
});

describe('taking back', () => {
  it('takes back all that was typed at one field as one step, named by the field, and brings it again', () => {
    const bench = demoBench();
    const { job } = bench.getState();
    for (const text of ['8', '8.', '8.5']) bench.type('bridge.thickness', text);
    bench.leave('bridge.thickness');
    bench.type('bridge.thickness', '9');
    expect(bench.getState().past.map(({ name }) => name)).toEqual(['Thickness, centre', 'Thickness, centre']);
    bench.undo();
    expect(bench.getState().job.bridge.thickness).toBe(8.5);
    bench.undo();
    expect(writeJob(bench.getState().job)).toBe(writeJob(job));
    bench.undo();
    bench.redo();
    bench.redo();
    expect(bench.getState().job.bridge.thickness).toBe(9);
    expect(bench.getState().future).toEqual([]);
  });

  it('names the string in a step, and forgets what was undone once something new is typed', () => {
    const bench = demoBench();
    bench.type('strings.list.A2.setback', '3');
    expect(bench.getState().past.at(-1)?.name).toBe('Setback, A2');
    bench.undo();
    bench.type('slot.depth', '5');
    expect(bench.getState().future).toEqual([]);
  });

  it('finds the number that a word stands in for', () => {
    const bench = demoBench();
    const was = bench.getState().job.bridge.topRadius;
    bench.put('bridge.topRadius', 'flat');
    expect(numberBefore(bench.getState(), 'bridge.topRadius')).toBe(was);
    const flat = createBench({
      job: { ...starterJob('heron'), bridge: { ...starterJob('heron').bridge, topRadius: 'flat' } },
    });
    expect(numberBefore(flat.getState(), 'bridge.topRadius')).toBe(508);
  });
});

describe('strings', () => {
  it('come and go one by one, from four to twelve, each with a key of its own', () => {
    const bench = demoBench();
    for (let n = 0; n < 10; n += 1) bench.addString(n % 2 === 0 ? 'bass' : 'treble');
    const keys = () => bench.getState().job.strings.list.map(({ id }) => id);
    expect(keys()).toHaveLength(12);
    expect(new Set(keys()).size).toBe(12);
    expect(keys().indexOf('E2')).toBe(3);
    for (const key of keys()) bench.removeString(key);
    expect(keys()).toHaveLength(4);
    bench.undo();
    expect(keys()).toHaveLength(5);
  });
});

describe('another job', () => {
  it('takes the place of the one that stood here, which undo brings back as the very same', () => {
    const bench = demoBench();
    bench.type('name', 'Mine');
    const { id } = bench.getState();
    bench.open(writeJob(starterJob('wren')), 'wren.json');
    expect(bench.getState().job.name).toBe(starterJob('wren').name);
    expect(bench.getState().id).not.toBe(id);
    bench.undo();
    expect(bench.getState()).toMatchObject({ id, isFresh: false, job: { name: 'Mine' } });
    bench.startNew(newJob('2026-03-31'));
    expect(bench.getState()).toMatchObject({ isFresh: true, job: { date: '2026-03-31' } });
  });

  it('is refused with every problem in words when it cannot be read, and the job stays', () => {
    const bench = demoBench();
    const { job } = bench.getState();
    const bad = { ...job, bridge: { ...job.bridge, thickness: 99, depth: 'deep' } };
    bench.open(JSON.stringify(bad), 'bad.json');
    expect(bench.getState().job).toBe(job);
    const [notice] = bench.getState().notices;
    expect(notice?.says).toContain('bad.json');
    expect(notice?.details.join(' ')).toMatch(/bridge\.thickness.*99 mm/);
    expect(notice?.details.join(' ')).toMatch(/bridge\.depth/);
  });

  it('is opened with the keys that nobody knows kept and named', () => {
    const bench = demoBench();
    const file = { ...starterJob('wren'), humidity: 45 };
    bench.open(JSON.stringify(file), 'wren.json');
    expect(bench.getState().notices[0]?.details).toEqual(['humidity']);
    expect(JSON.parse(writeJob(bench.getState().job)).humidity).toBe(45);
  });
});

describe('alternatives', () => {
  /** The text of the job after each step, from the first to the last; all are then undone and done again, and must be what they were. */
  const steps = (bench: ReturnType<typeof demoBench>, ...dos: readonly (() => unknown)[]) => {
    const texts = [undefined, ...dos].map((step) => {
      step?.();
      return writeJob(bench.getState().job);
    });
    expect(bench.getState().past).toHaveLength(dos.length);
    for (const text of texts.slice(0, -1).reverse()) {
      bench.undo();
      expect(writeJob(bench.getState().job)).toBe(text);
    }
    for (const text of texts.slice(1)) {
      bench.redo();
      expect(writeJob(bench.getState().job)).toBe(text);
    }
    return texts;
  };
  const names = (bench: ReturnType<typeof demoBench>) => bench.getState().past.map(({ name }) => name);

  it('are made, renamed, put in the present one’s place and removed, each in one step that can be undone to the same job', () => {
    const bench = demoBench();
    const texts = steps(
      bench,
      () => expect(bench.addAlternative()).toBe('A'),
      () => {
        for (const text of ['t', 'th', 'thin']) bench.type('alternatives.list.A.name', text);
        bench.leave('alternatives.list.A.name');
      },
      () => bench.put('bridge.thickness', 8),
      () => bench.makePresent('A'),
      () => bench.makePresent('A'),
      () => bench.removeAlternative('A'),
    );
    expect(texts[5]).toBe(texts[3]);
    expect(names(bench)).toEqual([
      'alternative A kept',
      'Name, alternative A',
      'Thickness, centre',
      'alternative A made the present design',
      'alternative A made the present design',
      'alternative A removed',
    ]);
  });

  it('lose nothing when one becomes the present: that one stands in its place, and its numbers are worked out', () => {
    const bench = demoBench();
    const { thickness } = bench.getState().job.bridge;
    bench.addAlternative();
    bench.put('bridge.thickness', 8);
    const present = bench.getState().built?.design.strings[0]?.exposure;
    bench.makePresent('A');
    const { job, built } = bench.getState();
    expect([job.bridge.thickness, job.alternatives.list[0]?.bridge.thickness]).toEqual([thickness, 8]);
    // A thinner bridge by so much leaves as much more saddle above it.
    expect((present ?? 0) - (built?.design.strings[0]?.exposure ?? 0)).toBeCloseTo(thickness - 8, 9);
  });

  it('stand radius against radius in one step, as many as letters are free', () => {
    const bench = demoBench();
    bench.addAlternative();
    const radii = ['flat', 254, 304.8, 355.6, 406.4, 508, 600] as const;
    bench.addRadii(radii);
    const { list } = bench.getState().job.alternatives;
    expect(list.map(({ id, name, bridge }) => [id, name, bridge.topRadius]).slice(1)).toEqual([
      ['B', 'top flat', 'flat'],
      ['C', 'top 10 in', 254],
      ['D', 'top 12 in', 304.8],
      ['E', 'top 14 in', 355.6],
      ['F', 'top 16 in', 406.4],
    ]);
    expect(bench.addAlternative()).toBeUndefined();
    expect(bench.getState().past).toHaveLength(2);
    bench.undo();
    expect(bench.getState().job.alternatives.list).toHaveLength(1);
  });

  it('are worked out once, and again only when something changes that they come from', () => {
    const bench = demoBench();
    bench.addRadii([254, 'flat']);
    const first = solvedAlternatives(bench.getState().job);
    bench.put('bridge.thickness', 8.4);
    bench.put('name', 'Another');
    const same = solvedAlternatives(bench.getState().job);
    expect(same.map(({ solved }, k) => solved === first[k]?.solved)).toEqual([true, true]);
    bench.put('action.bass', 2.9);
    const moved = solvedAlternatives(bench.getState().job);
    const exposure = ({ solved }: (typeof moved)[number]) =>
      solved.ok ? (solved.design.strings[0]?.exposure ?? Number.NaN) : Number.NaN;
    moved.forEach((one, k) => {
      expect(exposure(one)).toBeGreaterThan(exposure(first[k] as (typeof first)[number]) + 0.1);
    });
    bench.put('work', 'saddle');
    bench.put('bridge.thickness', 8);
    const asIs = solvedAlternatives(bench.getState().job);
    expect(asIs.every(({ solved }) => solved.ok && solved.job.bridge.thickness === 8)).toBe(true);
  });

  it('that cannot be built say why, and leave the others their numbers', () => {
    const bench = demoBench();
    bench.addRadii([254]);
    const { job } = bench.getState();
    const odd = { ...job.alternatives.list[0], id: 'B', slot: { ...job.alternatives.list[0]?.slot, length: 190 } };
    const list = [...job.alternatives.list, odd] as typeof job.alternatives.list;
    const [good, bad] = solvedAlternatives({ ...job, alternatives: { ...job.alternatives, list } });
    expect(good?.solved.ok).toBe(true);
    expect(bad?.solved.ok === false && bad.solved.problems[0]?.says).toMatch(/190/);
  });
});
