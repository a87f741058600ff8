// The thickness of a section off the middle, worked out again from its inputs at many places across, for every wing, shoulder and pyramid.
import { describe, expect, it } from 'vitest';
import type { DimensionMark } from '../../../geometry/drawing.ts';
import { setAt } from '../../../geometry/fields.ts';
import { sectionThickness, sectionTop, sectionUnderside } from '../../../geometry/figures/section.ts';
import { middle } from '../../../geometry/views/middle.ts';
import { formulas } from './formulas.ts';
import { type Case, changed } from './jobs.ts';
import { valuesOf } from './values.ts';

const cases: readonly Case[] = [
  changed('straight wings, a tilted deck', { 'bridge.wing': 'straight', 'bridge.tilt': 0.01, 'bridge.tipTreble': 2.6 }),
  changed('hollow wings, level at their tips, a flat deck', { 'bridge.wing': 'hollow', 'bridge.topRadius': 'flat' }),
  changed('hollow wings of a radius of their own, a flat top', {
    'bridge.wing': 'hollow',
    'bridge.scoop': 200,
    'guitar.topRadius': 'flat',
  }),
  changed('round wings', { 'bridge.wing': 'round' }),
  changed('ogee wings, the shoulders rounded', { 'bridge.wing': 'ogee', 'bridge.shoulder': 4 }),
  changed('straight wings, the shoulders rounded', { 'bridge.wing': 'straight', 'bridge.shoulder': 20 }),
  changed('pyramids', { 'bridge.footprint': 'pyramid' }),
];

/** From tip to tip, on the centre line not: there it is the thickness at the centre. */
const places = Array.from({ length: 160 }, (_, k) => -79.3 + k).filter((y) => Math.abs(y) > 0.01);

describe.each(cases)('$name', ({ job: asked, design }) => {
  it('follows from the inputs alone, is what the drawing shows, and each part of the line has a formula of its own', () => {
    const half = asked.bridge.length / 2;
    const told = new Set<string>();
    for (const y of places.filter((place) => Math.abs(place) < half)) {
      const job = setAt(asked, 'show.sectionAcross', y);
      for (const figure of [sectionTop, sectionUnderside, sectionThickness]) {
        const { formula, inputs } = figure.how(job, design, 0);
        const value = figure.value(job, design, 0);
        expect(formulas[figure.id]?.(valuesOf(inputs)), `${figure.id} at ${y}: ${formula}`).toBeCloseTo(
          Number(value),
          7,
        );
        const symbols = new Set(formula.match(/\p{L}[\p{L}\d]*(_[\p{L}\d]+)?/gu));
        for (const { symbol } of inputs) expect(symbols, formula).toContain(symbol);
        if (figure === sectionTop) told.add(formula);
      }
      const shown = middle(job, design).marks.find((mark): mark is DimensionMark => mark.id === 'thickness');
      expect(Math.abs((shown?.from.y ?? 0) - (shown?.to.y ?? 0))).toBeCloseTo(
        Number(sectionThickness.value(job, design, 0)),
        9,
      );
    }
    expect(told.size).toBeGreaterThan(1);
  });

  it('has none on the centre line, nor beyond the tips', () => {
    for (const y of [0, 99])
      expect(sectionThickness.value(setAt(asked, 'show.sectionAcross', y), design, 0)).toBeUndefined();
  });
});
