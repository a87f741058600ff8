import { describe, expect, it } from 'vitest';
import { applies, fieldAt, fieldGroups, getAt, setAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import { layOut } from '../../../geometry/layout.ts';
import { views } from '../../../geometry/views/index.ts';
import { litBy } from '../../../geometry/views/lit.ts';
import { starters } from '../../../src/jobs/index.ts';
import { built, jobOf } from '../../solved.ts';

const starter = (id: string): Job => jobOf(starters.find((one) => one.id === id)?.text ?? '');

/** The numbers that no view shows: of the neck and of what the strung guitar read, on papers of their own, or how a check goes. */
const without: readonly string[] = [
  ...[
    'strung',
    'guitar.measured',
    'guitar.frets',
    'guitar.bodyJoint',
    'guitar.boardWidth',
    'guitar.heelDepth',
    'guitar.relief',
  ],
  ...['plate', 'stock', 'setup', 'limits', 'saddle.proud'],
];

/** Each path of a field's numbers in a job: of every item, where it is a list's. */
const pathsOf = (path: string, job: Job): readonly string[] => {
  const [list, key] = path.split('.*.');
  if (key === undefined || list === undefined) return [path];
  return (getAt(job, list) as readonly { readonly id: string }[]).map(({ id }) => `${list}.${id}.${key}`);
};

/** The numbers that count in a job and have a place on a view. */
const numbersOf = (job: Job): readonly string[] =>
  fieldGroups
    .flatMap(({ fields }) => fields)
    .filter(
      ({ kind, path }) =>
        kind !== 'word' && kind !== 'text' && !without.some((one) => `${path}.`.startsWith(`${one}.`)),
    )
    .flatMap(({ path }) => pathsOf(path, job))
    .filter((path) => {
      const field = fieldAt(path);
      return field !== undefined && applies(field, job);
    });

/** Every stroke and text of a job's views. */
const drawn = (job: Job) => {
  const made = built(job);
  const primitives = Object.entries(views).flatMap(([name, view]) =>
    layOut(view(made.job, made.design).marks, { em: 3, say: () => '1' }).map((p) => ({ ...p, id: `${name}.${p.id}` })),
  );
  return { made, primitives };
};

type Drawn = ReturnType<typeof drawn>;

/** What a number lights, each by its view and its id. */
const lights = ({ made, primitives }: Drawn, path: string): readonly string[] =>
  primitives.filter(litBy(path, made.job)).map(({ id }) => id);

/** Whether an item of a list of what is there already lies too far from the bridge to be drawn. */
const isFarOff = (path: string, { primitives }: Drawn): boolean => {
  const [, key] = path.match(/^top\.(?:holes|rises|braces)\.([^.]+)/) ?? [];
  return key !== undefined && !primitives.some(({ id }) => id.split('.').includes(key));
};

describe('a number in focus', () => {
  it.each(starters)('lights what shows it in $id', ({ id }) => {
    const job = starter(id);
    const all = drawn(job);
    const dark = numbersOf(job).filter((path) => {
      // What is not there cannot be shown.
      const isThere = getAt(job, path) !== 'none' && getAt(job, path) !== 0;
      return isThere && !isFarOff(path, all) && lights(all, path).length === 0;
    });
    expect(dark).toEqual([]);
  });

  it('lights its own only: one string’s gap by its action, one hole by its place, the tips by the one that is both', () => {
    const job = starter('heron');
    const heron = drawn(job);
    expect(lights(heron, 'action.bass').filter((id) => id.includes('gap.'))).toEqual([
      'tail.gap.E2',
      'tail.gap.E2.value',
    ]);
    expect(lights(heron, 'bridge.tipTreble')).toEqual(lights(heron, 'bridge.tipThickness'));
    const own = setAt(job, 'bridge.tipTreble', 4);
    expect(lights(drawn(own), 'bridge.tipTreble').every((id) => id.startsWith('tail.bridge.tipTreble.'))).toBe(true);
    const holes = starters.map(({ id }) => starter(id)).find(({ top }) => top.holes.length > 1);
    const [hole] = holes?.top.holes ?? [];
    if (holes === undefined || hole === undefined) throw new Error('No starter has old holes.');
    const ids = lights(drawn(holes), `top.holes.${hole.id}.across`);
    expect(ids.length).toBeGreaterThan(0);
    expect(ids.every((id) => id.startsWith(`above.hole.${hole.id}`))).toBe(true);
    expect(lights(heron, 'guitar.heelDepth')).toEqual([]);
  });
});
