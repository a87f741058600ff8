// What is cut and what is only shown are told apart by the kind of line, never by colour: on every sheet each kind of line in the legend is drawn otherwise than the others.
import { describe, expect, it } from 'vitest';
import { setAt } from '../../geometry/fields.ts';
import type { Job } from '../../geometry/job.ts';
import { layOut, sayWith } from '../../geometry/layout.ts';
import { legend, legendEntries } from '../../templates/legend.ts';
import { dashes, lineWidth } from '../../templates/style.ts';
import { drawnPieces } from '../drawn.ts';
import { built } from '../solved.ts';
import { everyJob } from './every-job.ts';
import { fullJob } from './full-job.ts';

const jobs: readonly (readonly [string, Job])[] = [
  ...everyJob,
  ['something under the saddle', setAt(fullJob(), 'saddle.under', 1.2)],
];

/** ISO 128-2: wide lines are twice as wide as the narrow ones beside them. */
const isWide = (line: keyof typeof lineWidth): boolean => lineWidth[line] >= 1.9 * lineWidth.thin;

describe.each(jobs)('%s', (_, asked) => {
  const { job, design } = built(asked);
  const say = sayWith(job.show);
  const shared = drawnPieces(job, design).filter(({ ownPage }) => !ownPage);

  it.each(shared)('$id: every closed cut is a continuous wide line, nothing that is only shown is', ({ marks }) => {
    const wrong = layOut(marks, { em: 3.5, say }).flatMap((p) => {
      if (p.kind !== 'stroke' || p.matter === 'ink') return [];
      const looksCut = isWide(p.line) && dashes[p.line].length === 0;
      return looksCut === (p.purpose === 'show') ? [`${p.id}: ${p.purpose}, ${p.line}`] : [];
    });
    // Narrow, as they are worked to a depth or a line, not through.
    expect(wrong.filter((one) => !/^(ramp\..*|takeOff|edge): (cut|fold), thin$/.test(one))).toEqual([]);
  });
});

it('the legend has one line for what is cut and another, narrower one for edges that are only shown', () => {
  const { job, design } = built(fullJob());
  const strokes = drawnPieces(job, design)
    .filter(({ ownPage }) => !ownPage)
    .flatMap(({ marks }) => layOut(marks, { em: 3.5, say: sayWith(job.show) }))
    .filter((p) => p.kind === 'stroke');
  const { primitives } = legend({ x: 0, y: 0 }, 90, legendEntries(strokes));
  const swatch = (id: string) => primitives.find((p) => p.id === id);
  expect(swatch('legend.cut.outline')).toMatchObject({ line: 'outline' });
  expect(swatch('legend.show.outline')).toBeUndefined();
  expect(swatch('legend.show.thin')).toMatchObject({ line: 'thin' });
  expect(swatch('legend.show.thin.words')).toMatchObject({ text: 'edge or measure, shown' });
});
