import { describe, expect, it } from 'vitest';
import { applies, fieldAt, fieldGroups, getAt, setAt, stringFields, usualText } from '../../geometry/fields.ts';
import { newJob } from '../../geometry/job-file.ts';

const job = newJob('2026-03-01');
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
  it('shows every value of a job once, but for its format and the strings’ keys', () => {
    const held = leaves(job, '').filter((path) => !['format', 'version', 'strings.list.*.id'].includes(path));
    expect([...shown].sort()).toEqual(held.sort());
  });

  it('goes in the order of the bench', () => {
    expect(fieldGroups.map((group) => group.title)).toEqual([
      'The job',
      'Measured on the guitar',
      'Wanted action',
      'The bridge',
      'The slot',
      'The pins',
      'The strings',
    ]);
    expect(fieldGroups[1]?.fields.map(({ path }) => path)).toEqual([
      'guitar.scale',
      'guitar.boardRadiusNut',
      'guitar.boardRadiusEnd',
      'guitar.frets',
      'guitar.bodyJoint',
      'guitar.nutSpread',
      'strings.spread',
      'strings.spacing',
      'guitar.neckPlaneHeight',
      'guitar.rise',
      'guitar.topRadius',
      'guitar.relief',
    ]);
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
    expect(usualText(field('slot.width'), { ...show, length: 'fraction' })).toBe('0.091 to 0.130 in');
    expect(usualText(field('bridge.tilt'), show)).toBeUndefined();
    expect(usualText(field('bridge.footprint'), show)).toBeUndefined();
  });
});
