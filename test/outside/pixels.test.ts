// PDF and SVG of each template of the demo job, once each, in pixels as two engines draw them; `npm run prove` compares every starter's sheets on every paper.
import { expect, it } from 'vitest';
import { boundsOfPrimitives, layOut, sayWith } from '../../geometry/layout.ts';
import { starters } from '../../src/jobs/index.ts';
import { em } from '../../templates/block.ts';
import { drawPiece, piecesOf } from '../../templates/pieces/index.ts';
import type { Template } from '../../templates/pieces/piece.ts';
import { placePrimitive, straight } from '../../templates/primitive.ts';
import type { Sheet } from '../../templates/sheets.ts';
import { newShop } from '../../templates/shop/index.ts';
import { lineWidth } from '../../templates/style.ts';
import { compareSheets } from '../paper/pixels.ts';
import { built, jobOf } from '../solved.ts';

const { job, design } = built(jobOf(starters[0]?.text ?? ''));
const say = sayWith(job.show);

/** A drawing alone on a page that just holds it. */
const cropped = ({ marks, title }: Template): Sheet => {
  const primitives = layOut(marks, { em, say });
  const { minX, minY, maxX, maxY } = boundsOfPrimitives(primitives);
  const move = { dx: 1 - minX, dy: 1 - minY };
  const size = { width: maxX - minX + 2, height: maxY - minY + 2 };
  return { ...size, title, primitives: primitives.map((one) => placePrimitive(one, move)) };
};

const sheets = piecesOf(job)
  .flatMap((piece) => drawPiece(piece, job, design, newShop()).slice(0, 1))
  .map(cropped)
  // A page of nothing but words has no lines to compare.
  .filter(({ primitives }) => primitives.some(({ kind }) => kind === 'stroke'));

it('PDF and SVG of a template lie nowhere a narrow line’s width apart', { timeout: 120_000 }, async () => {
  const found = await compareSheets(sheets);
  for (const [k, { apart, inked }] of found.entries()) {
    expect(inked, sheets[k]?.title).toBeGreaterThan(1000);
    expect(apart, sheets[k]?.title).toBeLessThan(lineWidth.thin);
  }
});

it('would be seen to differ if a line in one of them lay aside by more', async () => {
  const outline = straight('outline', { x: 5, y: 5 }, { x: 25, y: 5 }, 'outline');
  const sheet = { width: 30, height: 10, title: 'One line', primitives: [outline] };
  const [found] = await compareSheets(
    [sheet],
    [{ ...sheet, primitives: [placePrimitive(outline, { dx: 0, dy: 0.5 })] }],
  );
  expect(found?.apart).toBeGreaterThanOrEqual(lineWidth.thin);
});
