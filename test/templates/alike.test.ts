// A job in 64ths shows a length near one as a fraction, any other in decimal inches. In one drawing no length may read in both ways, nor lengths of one kind that are read beside each other.
import { describe, expect, it } from 'vitest';
import type { Mark } from '../../geometry/drawing.ts';
import { setAt } from '../../geometry/fields.ts';
import { sayWith } from '../../geometry/layout.ts';
import { threeViews } from '../../geometry/views/index.ts';
import { starters } from '../../src/jobs/index.ts';
import { drawnPieces } from '../drawn.ts';
import { built, jobOf } from '../solved.ts';
import { everyJob } from './every-job.ts';

/** Marks of a drawing in which lengths of one kind stand beside each other. */
const besides: Readonly<Record<string, readonly (readonly string[])[]>> = {
  footprint: [['fromFret12.bass', 'fromFret12.treble'], ['overScar', 'bareScar'], ['signs']],
  section: [['slot'], ['wood', 'floor'], ['stands']],
  'finish-mask': [['place']],
  'slot-guide': [['depth']],
};

describe.each(everyJob)('%s', (_, asked) => {
  const { job, design } = built(setAt(asked, 'show.length', 'fraction'));
  const say = sayWith(job.show, { unit: false });
  const lengthsOf = (mark: Mark) =>
    'label' in mark
      ? mark.label.flatMap((part) =>
          typeof part === 'object' && part.kind === 'length' ? [{ value: Number(part.value), text: say([part]) }] : [],
        )
      : [];
  /** Of a text what it is; a whole number may stand beside either. */
  const wayOf = (text: string) => (text.includes('.') ? 'decimals' : text.includes('/') ? 'fraction' : undefined);
  const ways = (marks: readonly Mark[]) => new Set(marks.flatMap(lengthsOf).flatMap(({ text }) => wayOf(text) ?? []));
  const drawings = [threeViews(job, design, 3.5, sayWith(job.show)), ...drawnPieces(job, design)];

  it.each(drawings)('$id', ({ id, marks }) => {
    const read = new Map<string, string>();
    for (const { value, text } of marks.flatMap(lengthsOf)) {
      const key = Math.abs(value).toFixed(6);
      const bare = text.replace('\u2212', '');
      expect(bare, `${value} mm`).toBe(read.get(key) ?? bare);
      read.set(key, bare);
    }
    for (const ids of besides[id] ?? []) {
      const beside = marks.filter((mark) => ids.includes(mark.id));
      expect(ways(beside).size, ids.join()).toBeLessThanOrEqual(1);
    }
  });
});

it('a footprint has the saddle line’s places from the nut in one way, from fret 12 in one way', () => {
  const plover = jobOf(starters.find(({ id }) => id === 'plover')?.text ?? '');
  const { job, design } = built(plover);
  const footprint = drawnPieces(job, design).find(({ id }) => id === 'footprint');
  const said = (id: string) =>
    footprint?.marks.flatMap((m) => (m.id === id && 'label' in m ? sayWith(job.show)(m.label) : []));
  // 12 41/64 in would be 12.641; at E4 no 64th is near.
  expect(said('fromFret12.bass')).toEqual(['at E2: 12.640 in']);
  expect(said('fromFret12.treble')).toEqual(['at E4: 12.575 in']);
  expect(said('fromNut')?.[0]).toMatch(/^nut to saddle at E2: 25\.140 in, at E4: 25\.075 in/);
});
