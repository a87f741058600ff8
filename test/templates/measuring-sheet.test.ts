// The blank sheet for the numbers that are taken at the guitar.
import { describe, expect, it } from 'vitest';
import { fieldGroups, setAt } from '../../geometry/fields.ts';
import type { Job } from '../../geometry/job.ts';
import { boundsOfPrimitives, layOut, sayWith } from '../../geometry/layout.ts';
import { ownRoom } from '../../templates/form.ts';
import { onPaper, type PaperId } from '../../templates/paper.ts';
import { measuringSheet } from '../../templates/pieces/measuring-sheet.ts';
import { newShop } from '../../templates/shop/index.ts';
import { built, workedExample } from '../solved.ts';
import { fullJob } from './full-job.ts';

const drawn = (asked: Job, shop = newShop()) => {
  const { job, design } = built(asked);
  return measuringSheet.draw(job, design, shop);
};
const textsOf = (asked: Job): readonly string[] =>
  drawn(asked).flatMap(({ marks }) =>
    layOut(marks, { em: 3.5, say: sayWith(asked.show) }).flatMap((p) => (p.kind === 'text' ? [p.text] : [])),
  );

describe('the measuring sheet', () => {
  it('has every reading of the strung guitar and every measure of the scar by its name, in the order of the bench', () => {
    const texts = textsOf(workedExample());
    const wanted = fieldGroups
      .filter(({ id }) => id === 'strung' || id === 'scar')
      .flatMap(({ fields }) => fields.filter(({ path }) => !path.includes('*')).map(({ label }) => label));
    expect(wanted.length).toBeGreaterThan(12);
    const places = wanted.map((label) => texts.indexOf(label));
    expect(places.every((place) => place >= 0)).toBe(true);
    expect(places).toEqual(places.toSorted((a, b) => a - b));
  });

  it('leaves out what is wanted or chosen, not measured, and what the bridge chosen has not', () => {
    const texts = textsOf(workedExample());
    for (const label of [
      'Action, bass',
      'Left proud',
      'Rise under tension',
      'Pyramid, width',
      'Tie hole below the deck',
    ])
      expect(texts).not.toContain(label);
    expect(textsOf(setAt(workedExample(), 'pins.hold', 'tied'))).toContain('Tie hole below the deck');
  });

  it('is the same whatever the job’s numbers are, but names its strings', () => {
    const other = setAt(setAt(workedExample(), 'guitar.scale', 655), 'bridge.thickness', 8.8);
    expect(drawn(other)).toEqual(drawn(workedExample()));
    expect(textsOf(workedExample())).toEqual(expect.arrayContaining(['E2', 'A2', 'D3', 'G3', 'B3', 'E4']));
  });

  it('names the unit in each box as the job’s fields read a bare number', () => {
    const count = (asked: Job, unit: string) => textsOf(asked).filter((text) => text === unit).length;
    const inMm = workedExample();
    const inInches = setAt(inMm, 'show.length', 'fraction');
    expect(count(inMm, 'mm')).toBeGreaterThan(20);
    expect(count(inInches, 'mm')).toBe(0);
    expect(count(inInches, 'in')).toBeGreaterThan(count(inMm, 'in') + 20);
  });

  it.each(['a4', 'letter', 'a3'] satisfies PaperId[])(
    'keeps within its pages’ room on %s, with nothing to cut',
    (size) => {
      const shop = onPaper(newShop(), size);
      const { width, height } = ownRoom(shop);
      for (const { marks } of drawn(fullJob(), shop)) {
        const { minX, maxX, minY, maxY } = boundsOfPrimitives(layOut(marks, { em: 3.5, say: sayWith(fullJob().show) }));
        expect(Math.min(minX, minY)).toBeGreaterThan(-0.01);
        expect(maxX).toBeLessThan(width + 0.01);
        expect(maxY).toBeLessThan(height + 0.01);
        expect(marks.every((mark) => mark.kind !== 'path' || mark.purpose === 'show')).toBe(true);
      }
    },
  );
});
