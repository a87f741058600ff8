import { describe, expect, it } from 'vitest';
import { type FieldInfo, fieldGroups, setAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import { newJob } from '../../../geometry/job-file.ts';
import { bounds } from '../../../geometry/shape/index.ts';
import { paper, sketchOf, sketchPrimitives } from '../../../geometry/sketches/index.ts';

const fields: readonly FieldInfo[] = fieldGroups.flatMap((group) => group.fields);
const numbers = fields.filter(({ kind }) => kind !== 'word' && kind !== 'text');
const fresh = newJob('2026-03-01');

/** Jobs with each choice of those that change a sketch. */
const choices = [
  ...['belly', 'bellyBefore', 'rectangle', 'pyramid', 'waisted', 'free'].map((style) => ['bridge.footprint', style]),
  ...['none', 'belly', 'bellyBefore', 'rectangle'].map((outline) => ['scar.outline', outline]),
  ...['pins', 'tied', 'behind'].map((hold) => ['pins.hold', hold]),
  ...['single', 'pairs'].map((courses) => ['strings.courses', courses]),
  ...['square', 'eased', 'round'].map((ends) => ['bridge.ends', ends]),
] as [string, string][];
const groupOf = (path: string) => path.split('.')[0];
/** Those of them that may matter to a field, beside a fresh one. */
const jobsFor = (field: string): readonly Job[] => [
  fresh,
  ...choices.filter(([path]) => groupOf(path) === groupOf(field)).map(([path, value]) => setAt(fresh, path, value)),
];

/** What is lit and what is not of a field's sketch. */
const parts = (path: string, job: Job) => {
  const shown = sketchOf(path, job);
  const primitives = shown === undefined ? [] : sketchPrimitives(shown);
  return {
    lit: primitives.filter(({ jobPath }) => jobPath !== undefined),
    base: primitives.filter(({ jobPath }) => jobPath === undefined),
    ids: primitives.map(({ id }) => id),
  };
};

describe('sketchOf', () => {
  it.each(numbers.map(({ path }) => path))(
    'shows where %s is measured, lit on the paper, whatever is chosen',
    (path) => {
      for (const job of jobsFor(path)) {
        const { lit, base, ids } = parts(path, job);
        expect(lit.length).toBeGreaterThan(0);
        expect(base.length).toBeGreaterThan(0);
        expect(new Set(ids).size).toBe(ids.length);
        for (const primitive of lit) {
          if (primitive.kind !== 'stroke') continue;
          const { minX, minY, maxX, maxY } = bounds(primitive.path);
          expect(Math.min(minX, minY), primitive.id).toBeGreaterThanOrEqual(0);
          expect(maxX, primitive.id).toBeLessThanOrEqual(paper.width);
          expect(maxY, primitive.id).toBeLessThanOrEqual(paper.height);
        }
      }
    },
  );

  it('shows every choice of a shape, the one that is chosen lit', () => {
    const shapes = fields.filter(
      ({ path, choices: named }) =>
        named !== undefined &&
        /^(bridge|slot|saddle|pins)\.|^strings\.(spacing|courses)$|^plate\.grain$/.test(path) &&
        !path.includes('*'),
    );
    expect(shapes.length).toBeGreaterThan(10);
    for (const { path, choices: named } of shapes) {
      const drawings = Object.keys(named ?? {}).map((choice) => {
        const { lit } = parts(path, setAt(fresh, path, choice));
        expect(lit.length, `${path} ${choice}`).toBeGreaterThan(0);
        return JSON.stringify(lit);
      });
      // Which line the slot’s place is taken by cannot be seen from its place.
      if (path !== 'slot.line') expect(new Set(drawings).size, path).toBe(drawings.length);
    }
  });

  it('shows an item’s number as that of any item, and nothing where nothing is measured', () => {
    const { list } = fresh.strings;
    expect(sketchOf(`strings.list.${list[0]?.id}.gauge`, fresh)).toEqual(sketchOf('strings.list.*.gauge', fresh));
    expect(sketchOf('name', fresh)).toBeUndefined();
    expect(sketchOf('bridge.nothing', fresh)).toBeUndefined();
  });

  it('lights nothing that no field asks for', () => {
    const asked = new Set<string>();
    const offered = new Set<string>();
    for (const { path, choices: named } of fields) {
      const chosen = path.includes('*') ? [] : Object.keys(named ?? {}).map((choice) => setAt(fresh, path, choice));
      for (const job of [...jobsFor(path), ...chosen]) {
        const shown = sketchOf(path, job);
        if (shown === undefined) continue;
        asked.add(shown.lit);
        for (const key of Object.keys(shown.sketch.lit)) offered.add(key);
      }
    }
    // A smooth point is what a point is unless an item says otherwise.
    expect([...offered].filter((key) => !asked.has(key))).toEqual(['corner'].filter((key) => !asked.has(key)));
  });
});
