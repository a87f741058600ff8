import { describe, expect, it } from 'vitest';
import { fieldAt, getAt } from '../../../geometry/fields.ts';
import type { Figure } from '../../../geometry/figures/figure.ts';
import { figureAt, figures } from '../../../geometry/figures/index.ts';
import { formulas } from './formulas.ts';
import { type Case, cases } from './jobs.ts';
import { areaByParts } from './load-formulas.ts';
import { valuesOf } from './values.ts';

/** A figure in a job: once, or once for every string. */
const places = ({ design }: Case, figure: Figure): readonly number[] =>
  figure.per === 'string' ? design.strings.map((_, k) => k) : [0];

/** Found by seeking rather than by a formula: as close as a valley's floor tells. */
const sought: Readonly<Record<string, number>> = { bestRadius: 1e-5 };

const isClose = (a: number | 'flat', b: number | 'flat' | undefined, within: number): boolean =>
  a === 'flat' || b === 'flat' || b === undefined ? a === b : Math.abs(a - b) <= within * Math.max(1, Math.abs(b));

describe('every figure', () => {
  it('has an id of its own, by which it is found, and a formula in this test', () => {
    expect(new Set(figures.map(({ id }) => id)).size).toBe(figures.length);
    for (const figure of figures) expect(figureAt(figure.id)).toBe(figure);
    expect(Object.keys(formulas).sort()).toEqual(figures.map(({ id }) => id).sort());
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
  const { job, design } = one;

  it.each(figures)('$id follows from its inputs alone', (figure) => {
    const formula = formulas[figure.id];
    if (formula === undefined) throw new Error('no formula');
    for (const k of places(one, figure)) {
      const value = figure.value(job, design, k);
      if (value === undefined) continue;
      const worked = formula(valuesOf(figure.how(job, design, k).inputs));
      expect(isClose(worked, value, sought[figure.id] ?? 1e-9), `${worked} is not ${value}, at ${k}`).toBe(true);
    }
  });

  it('every input is what its path or its figure says, and stands in the formula', () => {
    for (const figure of figures)
      for (const k of places(one, figure)) {
        const { formula, inputs, source } = figure.how(job, design, k);
        const symbols = new Set(formula.match(/\p{L}[\p{L}\d]*(_[\p{L}\d]+)?/gu));
        expect(source).not.toBe('');
        expect(new Set(inputs.map(({ symbol }) => symbol)).size, figure.id).toBe(inputs.length);
        for (const input of inputs) {
          const { symbol, path, figure: from, value } = input;
          const said = [symbol, symbol.replace(/_\d+$/, '_k'), symbol.replace(/_\d+$/, '_j')];
          expect(
            said.some((s) => symbols.has(s)),
            `${figure.id}: ${symbol}`,
          ).toBe(true);
          if (from !== undefined) {
            const asked = figureAt(from);
            expect(asked?.value(job, design, k), `${figure.id}: ${from}`).toBe(value);
            expect(asked?.kind).toBe(input.kind);
          }
          if (path !== undefined) {
            expect(fieldAt(path)?.kind, path).toBe(input.kind);
            const field = getAt(job, path);
            if (typeof field === 'number') expect(value).toBe(field);
          }
        }
      }
  });

  it('asked on and on, every answer ends at fields and constants', () => {
    const seen = new Map<string, number>();
    const depth = (figure: Figure, k: number, above: readonly string[]): number => {
      const key = `${figure.id} ${k}`;
      expect(above, key).not.toContain(key);
      const known = seen.get(key);
      if (known !== undefined) return known;
      const below = figure.how(job, design, k).inputs.map(({ figure: id }) => {
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
    for (const [dc, dt, dk] of [
      [1e-4, 0, 0],
      [-1e-4, 0, 0],
      [0, 1e-5, 0],
      [0, -1e-5, 0],
      [0, 0, 1e-6],
      [0, 0, -1e-6],
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

  it.each(cases)('the glued area in $name is that of its parts', ({ job, design }) => {
    const area = figureAt('gluedArea');
    const v = valuesOf(area?.how(job, design, 0).inputs ?? []);
    expect(isClose(areaByParts(v), area?.value(job, design, 0), 1e-9)).toBe(true);
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
