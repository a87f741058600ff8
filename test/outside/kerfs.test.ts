// The tool's way beside outlines, slots and holes of some starters against clipper2-ts; `npm run prove` holds every template of every starter to it.
import { expect, it } from 'vitest';
import { starters } from '../../src/jobs/index.ts';
import { drawnPieces } from '../drawn.ts';
import { holdKerfs } from '../paper/kerfs.ts';
import { built, jobOf } from '../solved.ts';

// A belly, a free outline with its cubics, and pairs of strings among them.
const some = starters.filter((_, k) => k % 3 === 0);

it.each(some)('$id: a laser’s kerf and a router bit’s, within 0.01 mm', ({ text }) => {
  const { job, design } = built(jobOf(text));
  const compared = drawnPieces(job, design)
    .slice(0, 4)
    .map((drawing) => holdKerfs(drawing, [0.2, 2]));
  for (const count of compared) expect(count).toBeGreaterThan(1);
});
