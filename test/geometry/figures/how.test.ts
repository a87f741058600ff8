import { describe, expect, it } from 'vitest';
import { footprints } from '../../../geometry/bridge/footprints/index.ts';
import { fieldAt, getAt } from '../../../geometry/fields.ts';
import type { Figure } from '../../../geometry/figures/figure.ts';
import { figureAt, figures } from '../../../geometry/figures/index.ts';
import { straightTurn } from '../../../geometry/saddle/radius.ts';
import { formulas } from './formulas.ts';
import { type Case, cases } from './jobs.ts';
import { valuesOf } from './values.ts';

/** A figure in a job: once, or once for every string. */
const places = ({ design }: Case, figure: Figure): readonly number[] =>
  figure.per === 'string' ? design.strings.map((_, k) => k) : [0];

/** Found by seeking rather than by a formula: as close as a valley's floor tells. */
const sought: Readonly<Record<string, number>> = { bestRadius: 1e-5 };

/** A case's answers, each asked for once: many ask for the same. */
const asked = ({ job, design }: Case) => {
  const once = <T>(answer: (figure: Figure, k: number) => T) => {
    const known = new Map<string, T>();
    return (figure: Figure, k: number): T => {
      const key = `${figure.id} ${k}`;
      const before = known.get(key);
      if (before !== undefined || known.has(key)) return before as T;
      const found = answer(figure, k);
      known.set(key, found);
      return found;
    };
  };
  return {
    value: once((figure, k) => figure.value(job, design, k)),
    how: once((figure, k) => figure.how(job, design, k)),
  };
};

const isClose = (a: number | 'flat', b: number | 'flat' | undefined, within: number): boolean =>
  a === 'flat' || b === 'flat' || b === undefined ? a === b : Math.abs(a - b) <= within * Math.max(1, Math.abs(b));

describe('every figure', () => {
  it('has an id of its own, by which it is found, and a formula in this test', () => {
    expect(new Set(figures.map(({ id }) => id)).size).toBe(figures.length);
    for (const figure of figures) expect(figureAt(figure.id)).toBe(figure);
    expect(Object.keys(formulas).sort()).toEqual(figures.map(({ id }) => id).sort());
  });

  it('is asked for on every footprint', () => {
    expect(new Set(cases.map(({ job }) => job.bridge.footprint))).toEqual(new Set(Object.keys(footprints)));
  });

  it('has a value in one job at least', () => {
    for (const figure of figures)
      expect(
        cases.some(({ job, design }) => figure.value(job, design, 0) !== undefined),
        figure.id,
      ).toBe(true);
  });
});

describe.each(cases)('in $name', (one) => {
  const { value: worth, how } = asked(one);

  it.each(figures)('$id follows from its inputs alone', (figure) => {
    const formula = formulas[figure.id];
    if (formula === undefined) throw new Error('no formula');
    for (const k of places(one, figure)) {
      const value = worth(figure, k);
      if (value === undefined) continue;
      const worked = formula(valuesOf(how(figure, k).inputs));
      expect(isClose(worked, value, sought[figure.id] ?? 1e-9), `${worked} is not ${value}, at ${k}`).toBe(true);
    }
  });

  // There are thousands of inputs: what is wrong with any is gathered, and expected to be nothing.
  it('every input is what its path or its figure says, and stands in the formula', () => {
    const wrong: string[] = [];
    for (const figure of figures)
      for (const k of places(one, figure)) {
        const { formula, inputs, source } = how(figure, k);
        const symbols = new Set(formula.match(/\p{L}[\p{L}\d]*(_[\p{L}\d]+)?/gu));
        if (source === '') wrong.push(`${figure.id} has no source`);
        if (new Set(inputs.map(({ symbol }) => symbol)).size < inputs.length)
          wrong.push(`${figure.id} has two inputs of one symbol`);
        for (const { symbol, path, figure: from, value, kind } of inputs) {
          const isSo = (so: boolean, says: string) => so || wrong.push(`${figure.id}, ${k}: ${symbol} ${says}`);
          const said = [symbol, symbol.replace(/_\d+$/, '_k'), symbol.replace(/_\d+$/, '_j')];
          isSo(
            said.some((s) => symbols.has(s)),
            'does not stand in the formula',
          );
          if (from !== undefined) {
            const other = figureAt(from);
            isSo(other !== undefined && worth(other, k) === value, `is not ${from}`);
            isSo(other?.kind === kind, `is of another kind than ${from}`);
          }
          if (path !== undefined) {
            const field = getAt(one.job, path);
            isSo(fieldAt(path)?.kind === kind, `is of another kind than ${path}`);
            isSo(typeof field !== 'number' || field === value, `is not ${path}`);
          }
        }
      }
    expect(wrong).toEqual([]);
  });

  it('asked on and on, every answer ends at fields and constants', () => {
    const seen = new Map<string, number>();
    const depth = (figure: Figure, k: number, above: readonly string[]): number => {
      const key = `${figure.id} ${k}`;
      const known = seen.get(key);
      if (known !== undefined) return known;
      if (above.includes(key)) throw new Error(`${key} follows from itself: ${above.join(', ')}`);
      const below = how(figure, k).inputs.map(({ figure: id }) => {
        const next = id === undefined ? undefined : figureAt(id);
        return next === undefined ? 0 : depth(next, k, [...above, key]);
      });
      const deepest = 1 + Math.max(0, ...below);
      seen.set(key, deepest);
      return deepest;
    };
    for (const figure of figures) for (const k of places(one, figure)) depth(figure, k, []);
    expect(Math.max(...seen.values())).toBeGreaterThan(5);
  });
});

describe('what is sought', () => {
  it.each(cases)('the best radius in $name has no better neighbour', ({ job, design }) => {
    const best = figureAt('bestRadius');
    const v = valuesOf(best?.how(job, design, 0).inputs ?? []);
    const radius = design.crown.radius;
    const bend = radius === 'flat' ? 0 : 1 / radius;
    const own = design.crown.misses.reduce((total, miss) => total + miss ** 2, 0);
    const [y, z] = [v.all('y'), v.all('z')];
    // A best bend too small to count is called flat: then twice the least that counts is worse than none.
    const least = straightTurn / Math.max(...y.map(Math.abs));
    const dBend = radius === 'flat' ? 2 * least : 1e-6;
    for (const [dc, dt, dk] of [
      [1e-4, 0, 0],
      [-1e-4, 0, 0],
      [0, 1e-5, 0],
      [0, -1e-5, 0],
      [0, 0, dBend],
      [0, 0, -dBend],
    ] as const) {
      if (bend + dk < 0) continue;
      const other = y.map((at, i) => {
        const r = bend + dk === 0 ? Number.POSITIVE_INFINITY : 1 / (bend + dk);
        const fall = Number.isFinite(r) ? r - Math.sqrt(r ** 2 - at ** 2) : 0;
        return design.crown.c + dc + (design.crown.t + dt) * at - fall - (z[i] ?? 0);
      });
      expect(other.reduce((total, miss) => total + miss ** 2, 0)).toBeGreaterThan(own);
    }
  });
});

describe('a figure of one string', () => {
  it('is found under the figure’s id and the string’s key, whichever string is asked for', () => {
    const one = cases[0];
    if (one === undefined) throw new Error('no case');
    const { job, design } = one;
    const treble = figureAt('tension.E4');
    expect(treble?.per).toBe('job');
    expect(treble?.value(job, design, 0)).toBe(design.strings[5]?.tension);
    expect(treble?.how(job, design, 0)).toEqual(figureAt('tension')?.how(job, design, 5));
    expect(figureAt('scale.E4')).toBeUndefined();
    expect(figureAt('nothing')).toBeUndefined();
    expect(figureAt('tension.X9')?.value(job, design, 0)).toBeUndefined();
  });
});
