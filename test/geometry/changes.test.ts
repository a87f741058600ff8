import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyChanges, areChanges, changesBetween, inverse, isSame } from '../../geometry/changes.ts';
import { randomJob } from '../random-job.ts';

const base = {
  bridge: { thickness: 9, length: 156 },
  list: [
    { id: 'E', gauge: 1 },
    { id: 'A', gauge: 2 },
    { id: 'D', gauge: 3 },
  ],
};
type Base = typeof base;

describe('what changed', () => {
  it('is told by the places that differ, and no others', () => {
    const other: Base = { ...base, bridge: { ...base.bridge, thickness: 8.5 } };
    expect(changesBetween(base, other)).toEqual([{ path: ['bridge', 'thickness'], before: 9, after: 8.5 }]);
    expect(changesBetween(base, structuredClone(base))).toEqual([]);
  });

  it('follows a list’s items by their ids: one that goes, one that comes, one that moves', () => {
    const [e, a, d] = base.list as [Base['list'][0], Base['list'][0], Base['list'][0]];
    const other = { ...base, list: [d, { id: 'B', gauge: 7 }, { ...e, gauge: 5 }] };
    const changes = changesBetween(base, other);
    expect(changes).toContainEqual({ path: ['list', 'A'], before: a });
    expect(changes).toContainEqual({ path: ['list', 'E', 'gauge'], before: 1, after: 5 });
    expect(applyChanges(base, changes)).toEqual(other);
    expect(applyChanges(other, inverse(changes))).toEqual(base);
  });

  it('of two who change different numbers of one value keeps both, in either order', () => {
    const one = changesBetween(base, { ...base, bridge: { ...base.bridge, thickness: 8 } });
    const other = changesBetween(base, {
      ...base,
      list: base.list.map((s) => (s.id === 'A' ? { ...s, gauge: 2.2 } : s)).filter(({ id }) => id !== 'D'),
    });
    const both = applyChanges(applyChanges(base, one), other);
    expect(both).toEqual(applyChanges(applyChanges(base, other), one));
    expect(both.bridge.thickness).toBe(8);
    expect(both.list).toEqual([
      { id: 'E', gauge: 1 },
      { id: 'A', gauge: 2.2 },
    ]);
  });

  it('is left out where it finds no place any more', () => {
    const gone = { ...base, list: base.list.slice(0, 1) };
    expect(applyChanges(gone, [{ path: ['list', 'D', 'gauge'], before: 3, after: 9 }])).toEqual(gone);
    expect(applyChanges(base, [{ path: ['nowhere', 'at', 'all'], after: 1 }])).toEqual(base);
  });

  it('reaches no prototype', () => {
    const made = applyChanges({ a: {} }, [{ path: ['__proto__', 'polluted'], after: true }]);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
    expect(made).toEqual({ a: {} });
  });

  const value = fc.letrec((tie) => ({
    leaf: fc.oneof(fc.integer(), fc.string(), fc.boolean(), fc.constant(null)),
    bag: fc.dictionary(fc.constantFrom('a', 'b', 'c', 'd'), tie('any'), { maxKeys: 3 }),
    list: fc.uniqueArray(
      fc.tuple(fc.constantFrom('x', 'y', 'z', 'w'), fc.integer()).map(([id, v]) => ({ id, v })),
      { selector: ({ id }) => id, maxLength: 4 },
    ),
    loose: fc.array(fc.integer(), { maxLength: 3 }),
    any: fc.oneof({ maxDepth: 3 }, tie('leaf'), tie('bag'), tie('list'), tie('loose')),
  }));

  it('leads from any value to any other and back', () => {
    fc.assert(
      fc.property(value.bag, value.bag, (a, b) => {
        const changes = changesBetween(a, b);
        expect(areChanges(changes)).toBe(true);
        expect(isSame(applyChanges(a, changes), b)).toBe(true);
        expect(isSame(applyChanges(b, inverse(changes)), a)).toBe(true);
        // As it comes back from a store or another window.
        expect(isSame(applyChanges(a, JSON.parse(JSON.stringify(changes))), b)).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  it('leads from any job to any other and back', () => {
    fc.assert(
      fc.property(randomJob(), randomJob(), (a, b) => {
        const changes = changesBetween(a, b);
        expect(isSame(applyChanges(a, changes), b)).toBe(true);
        expect(isSame(applyChanges(b, inverse(changes)), a)).toBe(true);
      }),
      { numRuns: 100 },
    );
  });
});
