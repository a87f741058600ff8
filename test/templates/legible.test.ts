// No two words of a drawing stand on each other, in any unit.
import { describe, expect, it } from 'vitest';
import type { Text } from '../../geometry/drawing.ts';
import { setAt } from '../../geometry/fields.ts';
import { boundsOfPrimitives, layOut, sayWith } from '../../geometry/layout.ts';
import { threeViews } from '../../geometry/views/index.ts';
import { starters } from '../../src/jobs/index.ts';
import { drawnPieces } from '../drawn.ts';
import { built, jobOf } from '../solved.ts';
import { footprintJobs, fullJob, oldTop, twelveStrings } from './full-job.ts';

const overlaps = (texts: readonly Text[]): readonly string[] => {
  const boxes = texts.map((text) => ({ text, box: boundsOfPrimitives([text]) }));
  return boxes.flatMap(({ text, box }, k) =>
    boxes.slice(k + 1).flatMap((other) => {
      const wide = Math.min(box.maxX, other.box.maxX) - Math.max(box.minX, other.box.minX);
      const high = Math.min(box.maxY, other.box.maxY) - Math.max(box.minY, other.box.minY);
      return wide > 0.05 && high > 0.05 ? [`${text.text} on ${other.text.text}`] : [];
    }),
  );
};

const jobs = [
  ...starters.map(({ id, text }) => [id, jobOf(text)] as const),
  ['a job with everything on it', fullJob()] as const,
  ['the same for the left hand', setAt(fullJob(), 'hand', 'left')] as const,
  ['the same with its crown through each height', setAt(fullJob(), 'saddle.crown', 'heights')] as const,
  ['an old top', oldTop()] as const,
  ['an old top for the left hand', setAt(oldTop(), 'hand', 'left')] as const,
  ...Object.entries(footprintJobs).map(([id, asked]) => [id, asked()] as const),
  ['twelve strings', twelveStrings()] as const,
  ['twelve strings, their crown by gauge', setAt(twelveStrings(), 'saddle.crown', 'gauge')] as const,
];

describe.each(jobs)('%s', (_, asked) => {
  it.each(['mm', 'in', 'fraction'])('in %s', (unit) => {
    const shown = ['show.length', 'show.radius', 'show.gauge'].reduce((j, path) => setAt(j, path, unit), asked);
    const { job, design } = built(shown);
    const say = sayWith(job.show);
    const drawings = [...drawnPieces(job, design), threeViews(job, design, 3.5, say)];
    for (const { id, marks } of drawings) {
      const texts = layOut(marks, { em: 3.5, say }).filter((p): p is Text => p.kind === 'text');
      expect(overlaps(texts), id).toEqual([]);
    }
  });
});
