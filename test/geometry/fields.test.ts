import { describe, expect, it } from 'vitest';
import {
  applies,
  fieldAt,
  fieldGroups,
  getAt,
  mostItems,
  patternOf,
  setAt,
  stringFields,
  usualText,
} from '../../geometry/fields.ts';
import type { Job } from '../../geometry/job.ts';
import { newJob } from '../../geometry/job-file.ts';

const fresh = newJob('2026-03-01');
/** A job with something in each of its lists. */
const job: Job = {
  ...fresh,
  guitar: {
    ...fresh.guitar,
    measured: [
      { id: 'F5', fret: 5, distance: 160.5 },
      { id: 'F12', fret: 12, distance: 320.1 },
    ],
  },
  bridge: { ...fresh.bridge, points: [{ id: 'P1', across: 70, along: 0, turn: 'corner' }] },
  top: {
    ...fresh.top,
    holes: [{ id: 'H1', what: 'screw', across: 0, fromNut: 660, diameter: 4, plan: 'plug' }],
    rises: [{ id: 'R1', across: 0, fromNut: 680, height: 0.8 }],
    braces: [{ id: 'B1', name: 'cross', across: -80, fromNut: 600, acrossTo: 70, fromNutTo: 720, width: 7 }],
  },
  setup: {
    log: ['P1', 'P2'].map((id) => ({
      id,
      note: '',
      readings: ['E2', 'E4'].map((string) => ({ id: string, action: 2.6, cents: 'not taken' as const })),
    })),
  },
};
const shown = fieldGroups.flatMap((group) => group.fields.map((field) => field.path));
const field = (path: string) => {
  const found = fieldAt(path);
  if (found === undefined) throw new Error(`no field at ${path}`);
  return found;
};

/** The paths of all that a job holds, found in the job itself rather than in the schema. */
const leaves = (value: unknown, path: string): string[] => {
  if (Array.isArray(value)) return leaves(value[0], `${path}.*`);
  if (typeof value !== 'object' || value === null) return [path];
  return Object.entries(value).flatMap(([key, part]) => leaves(part, path === '' ? key : `${path}.${key}`));
};

describe('fieldGroups', () => {
  it('shows every value of a job once, but for its format, the keys of its lists and its alternatives, which are shown beside each other', () => {
    const held = leaves(job, '').filter((path) => !/^(format|version)$|\.\*\.id$|^alternatives\./.test(path));
    // A range is kept in a job only where it was changed.
    expect(shown.filter((path) => !path.startsWith('limits.')).sort()).toEqual(held.sort());
    expect(shown).toContain('limits.exposure.from');
  });

  it('goes in the order of the bench', () => {
    expect(fieldGroups.map((group) => group.title)).toEqual([
      'The job',
      'Before it comes apart',
      'Measured on the guitar',
      'What is there already',
      'Wanted action',
      'The bridge',
      'Sections drawn',
      'The slot',
      'The saddle',
      'The pins',
      'The bridge plate',
      'The stock',
      'The strings',
      'Set-up',
      'Ranges of this job',
    ]);
    expect(fieldGroups[2]?.fields.map(({ path }) => path)).toEqual([
      'guitar.scale',
      'guitar.measured.*.fret',
      'guitar.measured.*.distance',
      'guitar.boardRadiusNut',
      'guitar.boardRadiusEnd',
      'guitar.frets',
      'guitar.bodyJoint',
      'guitar.nutSpread',
      'guitar.boardWidth',
      'strings.spread',
      'strings.spacing',
      'guitar.neckPlaneHeight',
      'guitar.rise',
      'guitar.topRadius',
      'top.radiusAlong',
      'guitar.heelDepth',
      'guitar.relief',
    ]);
    const of = (id: string) => fieldGroups.find((group) => group.id === id)?.fields.map(({ path }) => path);
    expect(of('bridge')?.slice(0, 3)).toEqual(['slot.fromNut', 'slot.slant', 'bridge.footprint']);
    expect(of('slot')?.[0]).toBe('slot.line');
    expect(of('strings')?.slice(0, 2)).toEqual(['strings.setbacks', 'strings.finger']);
  });

  it('says of each number its range and what it means; presets and usual ranges lie in the range', () => {
    for (const { path, label, help, kind, min, max, usual, preset } of fieldGroups.flatMap((group) => group.fields)) {
      expect(label, path).not.toBe('');
      expect(help, path).toMatch(/\.$/);
      if (kind === 'word' || kind === 'text') continue;
      if (min === undefined || max === undefined) throw new Error(`${path} has no range`);
      expect(min, path).toBeLessThan(max);
      for (const number of [...(usual ?? []), ...(typeof preset === 'number' ? [preset] : [])]) {
        expect(number, path).toBeGreaterThanOrEqual(min);
        expect(number, path).toBeLessThanOrEqual(max);
      }
    }
  });
});

describe('fieldAt', () => {
  it('finds a field by its path, a string’s by its key', () => {
    expect(field('bridge.thickness')).toMatchObject({
      path: 'bridge.thickness',
      label: 'Thickness, centre',
      kind: 'length',
    });
    expect(field('strings.list.E2.gauge')).toMatchObject({ path: 'strings.list.E2.gauge', kind: 'gauge' });
    expect(stringFields('E2').map(({ path }) => path)).toContain('strings.list.E2.setback');
  });

  it('finds a field in a list within a list, by the key of each', () => {
    expect(field('setup.log.P1.readings.E2.action')).toMatchObject({ label: 'Action measured', word: 'not taken' });
    expect(field('guitar.measured.F5.distance')).toMatchObject({ label: 'From the nut', kind: 'length' });
    expect(fieldAt('setup.log.P1.readings.E2')).toBeUndefined();
  });

  it('finds nothing where no field is', () => {
    for (const path of [
      '',
      'bridge',
      'bridge.nothing',
      'bridge.constructor',
      '__proto__',
      'guitar.scale.deeper',
      'strings.list.E2',
    ]) {
      expect(fieldAt(path), path).toBeUndefined();
    }
  });
});

describe('patternOf', () => {
  it('puts an asterisk for the key of each list’s item, and for nothing else', () => {
    expect(patternOf('strings.list.E2.gauge')).toBe('strings.list.*.gauge');
    expect(patternOf('setup.log.P1.readings.E2.action')).toBe('setup.log.*.readings.*.action');
    expect(patternOf('limits.exposure.from')).toBe('limits.exposure.from');
    expect(patternOf('strings.list.E2.nothing')).toBeUndefined();
    expect(patternOf('bridge.constructor')).toBeUndefined();
  });

  it('gives back the path of every field', () => {
    for (const path of shown) expect(patternOf(path), path).toBe(path);
  });
});

it('knows how many items a list may hold', () => {
  expect(mostItems('guitar.measured')).toBe(40);
  expect(mostItems('top.braces')).toBe(30);
  expect(mostItems('bridge.thickness')).toBeUndefined();
});

describe('getAt and setAt', () => {
  it('read and write a value by its path', () => {
    expect(getAt(job, 'guitar.scale')).toBe(640);
    const other = setAt(job, 'guitar.scale', 650);
    expect(other.guitar.scale).toBe(650);
    expect(job.guitar.scale).toBe(640);
    expect(other.bridge).toBe(job.bridge);
  });

  it('find a string by its key, wherever it stands in the list', () => {
    expect(getAt(job, 'strings.list.E4.gauge')).toBe(0.3048);
    const turned = setAt(job, 'strings.list', [...job.strings.list].reverse());
    const other = setAt(turned, 'strings.list.E4.gauge', 0.33);
    expect(other.strings.list[0]).toMatchObject({ id: 'E4', gauge: 0.33 });
    expect(other.strings.list[1]).toBe(turned.strings.list[1]);
  });

  it('find a value in a list within a list, and leave all else as it was', () => {
    expect(getAt(job, 'setup.log.P2.readings.E4.action')).toBe(2.6);
    const other = setAt(job, 'setup.log.P2.readings.E4.action', 1.9);
    expect(getAt(other, 'setup.log.P2.readings.E4.action')).toBe(1.9);
    expect(getAt(other, 'setup.log.P2.readings.E2.action')).toBe(2.6);
    expect(other.setup.log[0]).toBe(job.setup.log[0]);
    expect(getAt(setAt(job, 'guitar.measured.F12.distance', 321), 'guitar.measured.F12.distance')).toBe(321);
    expect(() => setAt(job, 'setup.log.P3.readings.E2.action', 1)).toThrow(RangeError);
  });

  it('reach nothing outside the job', () => {
    expect(getAt(job, 'guitar.constructor')).toBeUndefined();
    expect(getAt(job, '__proto__.toString')).toBeUndefined();
    expect(getAt(job, 'strings.list.0.gauge')).toBeUndefined();
    expect(getAt(job, 'strings.list.length')).toBeUndefined();
    expect(() => setAt(job, 'strings.list.X9.gauge', 1)).toThrow(RangeError);
    expect(() => setAt(job, 'nothing.at.all', 1)).toThrow(RangeError);
    expect(() => setAt(job, '__proto__.polluted', 1)).toThrow(RangeError);
    expect(() => setAt(job, 'guitar.scale.deeper', 1)).toThrow(RangeError);
    expect('polluted' in {}).toBe(false);
  });
});

describe('applies', () => {
  it('hides the belly’s measures on a rectangular bridge', () => {
    const rectangular = setAt(job, 'bridge.footprint', 'rectangle');
    for (const path of ['bridge.wingDepth', 'bridge.bellyWidth']) {
      expect(applies(field(path), job)).toBe(true);
      expect(applies(field(path), rectangular)).toBe(false);
    }
    expect(applies(field('bridge.depth'), rectangular)).toBe(true);
  });

  it('hides what hangs on a field that itself does not count', () => {
    const eased = setAt(setAt(job, 'bridge.footprint', 'rectangle'), 'bridge.ends', 'eased');
    expect(applies(field('bridge.cornerRadius'), eased)).toBe(true);
    expect(applies(field('bridge.cornerRadius'), setAt(eased, 'bridge.footprint', 'belly'))).toBe(false);
    const ramped = setAt(job, 'pins.ramp', 4);
    expect(applies(field('pins.rampDepth'), ramped)).toBe(true);
    expect(applies(field('pins.rampDepth'), setAt(ramped, 'pins.hold', 'tied'))).toBe(false);
  });

  it('makes out a key by its own place in the path, however deep it lies', () => {
    const cents = field('setup.log.P2.readings.E4.cents');
    const only = { ...cents, only: { path: 'setup.log.*.readings.*.action', is: 'not taken' } };
    expect(applies(only, job)).toBe(false);
    expect(applies(only, setAt(job, 'setup.log.P1.readings.E4.action', 'not taken'))).toBe(false);
    expect(applies(only, setAt(job, 'setup.log.P2.readings.E4.action', 'not taken'))).toBe(true);
  });

  it('hides the wrap of a plain string only', () => {
    expect(applies(field('strings.list.E2.wrap'), job)).toBe(true);
    expect(applies(field('strings.list.E4.wrap'), job)).toBe(false);
  });
});

describe('usualText', () => {
  it('says the usual range in the units shown', () => {
    const show = { length: 'mm', radius: 'in', gauge: 'in' } as const;
    expect(usualText(field('guitar.neckPlaneHeight'), show)).toBe('8.0 to 12.0 mm');
    expect(usualText(field('guitar.boardRadiusNut'), show)).toBe('7.25 to 20 in');
    expect(usualText(field('slot.width'), { ...show, length: 'fraction' })).toBe('3/32 to 1/8 in');
    const inches = (path: string) => usualText(field(path), { length: 'in', radius: 'in', gauge: 'in' });
    const fractions = (path: string) => usualText(field(path), { ...show, length: 'fraction' });
    // Round in the reader's unit, both numbers in the same way.
    expect([inches('slot.width'), inches('action.bass'), inches('guitar.relief')]).toEqual([
      '0.090 to 0.130 in',
      '0.080 to 0.110 in',
      '0.004 to 0.012 in',
    ]);
    expect([fractions('action.bass'), fractions('guitar.rise'), fractions('bridge.depth')]).toEqual([
      '5/64 to 7/64 in',
      '0.012 to 0.060 in',
      '1 to 1 5/8 in',
    ]);
    expect(inches('guitar.topRadius')).toBe('177 to 630 in');
    expect(usualText(field('bridge.tilt'), show)).toBeUndefined();
    expect(usualText(field('bridge.footprint'), show)).toBeUndefined();
  });
});
