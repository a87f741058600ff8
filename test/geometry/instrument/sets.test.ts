import { describe, expect, it } from 'vitest';
import { setAt } from '../../../geometry/fields.ts';
import { type StringSetId, stringSets, withSet } from '../../../geometry/instrument/sets.ts';
import { tension } from '../../../geometry/instrument/tension.ts';
import { validateJob } from '../../../geometry/job-file.ts';
import { formatQuantity, noteName } from '../../../geometry/units.ts';
import { workedExample } from '../../solved.ts';

const ids = Object.keys(stringSets) as StringSetId[];
const strung = (id: StringSetId) => withSet(workedExample(), id);

describe.each(ids)('%s', (id) => {
  const job = strung(id);
  const { list } = job.strings;

  it('is a job’s list of strings that can be read, each with a key of its own', () => {
    const read = validateJob(job);
    expect(read.ok ? [] : read.problems).toEqual([]);
    expect(new Set(list.map((string) => string.id)).size).toBe(list.length);
    expect(job.strings.courses).toBe(list.length === 12 ? 'pairs' : 'single');
  });

  it('is tuned by the notes that it names', () => {
    for (const { name, pitch } of list) {
      const octave = Number(/\d/.exec(name)?.[0]);
      // Semitones from the A of the same octave, whose number changes at C.
      const fromA = { D: -7, E: -5, G: -2, A: 0, B: 2 }[name.charAt(0)] ?? Number.NaN;
      expect(pitch).toBeCloseTo(440 * 2 ** (octave - 4 + fromA / 12), 2);
      expect(noteName(pitch)).toBe(name.replace('′', ''));
    }
  });

  // [practice] Strings are bought by thousandths of an inch.
  it('has gauges and cores of whole thousandths of an inch', () => {
    const thick = list.flatMap(({ gauge, core }) => (core === 'plain' ? [gauge] : [gauge, core]));
    const show = { ...job.show, gauge: 'in' } as const;
    for (const mm of thick) expect(formatQuantity(mm, 'gauge', show)).toMatch(/^0\.\d\d\d$/);
  });

  // [practice] What single strings are found to pull: of steel some 70 to 140 N, a little less where twelve of them pull on one top, of nylon 55 to 85.
  it.each([630, 648])('pulls on every string as much as is usual, at a scale of %s mm', (scale) => {
    const [least, most] = id === 'nylon' ? [55, 85] : [id === 'twelve' ? 65 : 70, 140];
    for (const string of list) {
      const pull = tension(string, scale);
      expect(pull, `${string.name}: ${pull}`).toBeGreaterThan(least);
      expect(pull, `${string.name}: ${pull}`).toBeLessThan(most);
    }
  });

  it('leaves spread, action and all the rest as they were', () => {
    const { list: _, courses: __, ...others } = job.strings;
    const { list: ___, courses: ____, ...before } = workedExample().strings;
    expect(others).toEqual(before);
    expect({ ...job, strings: undefined }).toEqual({ ...workedExample(), strings: undefined });
  });
});

it('twelve strings are six courses: four with an octave above, two in unison', () => {
  const { list } = strung('twelve').strings;
  const steps = [0, 2, 4, 6, 8, 10].map((k) => 12 * Math.log2((list[k]?.pitch ?? 0) / (list[k + 1]?.pitch ?? 1)));
  for (const [k, step] of steps.entries()) expect(step).toBeCloseTo(k < 4 ? 12 : 0, 3);
  expect(list.map(({ name }) => name)).toEqual([
    'E3',
    'E2',
    'A3',
    'A2',
    'D4',
    'D3',
    'G4',
    'G3',
    'B3',
    'B3′',
    'E4',
    'E4′',
  ]);
});

it('a nylon set is of nylon, its basses wrapped over a nylon core', () => {
  const { list } = strung('nylon').strings;
  expect(new Set(list.map(({ material }) => material))).toEqual(new Set(['nylon']));
  expect(list.map(({ core }) => core === 'plain')).toEqual([false, false, false, true, true, true]);
});

it('places that were typed give way to equal centres, as other strings have others', () => {
  expect(withSet(setAt(workedExample(), 'strings.spacing', 'typed'), 'twelve').strings.spacing).toBe('centres');
  expect(withSet(setAt(workedExample(), 'strings.spacing', 'gaps'), 'twelve').strings.spacing).toBe('gaps');
});
