// Every view and piece of every starter, and of jobs with all that a drawing can show, kept as a drawing so that a change in the picture shows in review: look at it before you accept it.
import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { boundsOfPrimitives, layOut, sayWith } from '../../geometry/layout.ts';
import { threeViews } from '../../geometry/views/index.ts';
import { toSvg } from '../../templates/svg.ts';
import { svgWindow } from '../../templates/svg-window.ts';
import { drawnPieces } from '../drawn.ts';
import { built } from '../solved.ts';
import { everyJob } from './every-job.ts';
import { firstDifference } from './same-drawing.ts';

const window = svgWindow();

/** Holds a drawing to the file that is kept of it; one that differs by no more than another machine reckons counts as that file, so that `-u` renews only what has changed. */
const keeps = async (file: string, now: string): Promise<void> => {
  const place = new URL(file, import.meta.url);
  const kept = existsSync(place) ? readFileSync(place, 'utf8') : now;
  const difference = firstDifference(kept, now);
  await expect(difference === undefined ? kept : now, difference).toMatchFileSnapshot(file);
};

const jobs = everyJob.map(([id, asked]) => ({ id, asked }));

describe.each(jobs)('$id', ({ id, asked }) => {
  const { job, design } = built(asked);
  const say = sayWith(job.show);
  // Pages of words are kept of one job only: there is little to look at in them.
  const pieces = drawnPieces(job, design).filter(({ ownPage }) => !ownPage || id === 'everything');
  const drawings = [threeViews(job, design, 3.5, say), ...pieces];

  it.each(drawings)('$id', async (drawing) => {
    const primitives = layOut(drawing.marks, { em: 3.5, say });
    const { minX, minY, maxX, maxY } = boundsOfPrimitives(primitives);
    const size = { left: minX, top: minY, width: maxX - minX, height: maxY - minY };
    const svg = toSvg(primitives, { ...size, title: drawing.title, window });
    await keeps(`../golden/${id}/${drawing.id}.svg`, `${svg.replaceAll('><', '>\n<')}\n`);
  });
});
