// No word of a drawing stands over another, none is crossed by a line, and none is cut off: every starter in the rooms that the sheet has in windows of 1440, 820 and 390 px, and on paper.
import { describe, expect, it } from 'vitest';
import { build } from '../../geometry/build.ts';
import type { Text } from '../../geometry/drawing.ts';
import { setAt } from '../../geometry/fields.ts';
import { boundsOfPrimitives, layOut, sayWith } from '../../geometry/layout.ts';
import { threeViews } from '../../geometry/views/index.ts';
import { fitRoom } from '../../src/app/sheet/fit.ts';
import { layingOf } from '../../src/app/sheet/laying.ts';
import { starters } from '../../src/jobs/index.ts';
import { drawnPieces } from '../drawn.ts';
import { built } from '../solved.ts';
import { starterJob } from './bench.ts';
import { crossedByLines, overEachOther } from './clear-words.ts';
import { windows } from './windows.ts';

describe.each(starters)('the words of $id', ({ id }) => {
  const { job, design } = built(starterJob(id));

  it.each(windows)('in a window of $window px', ({ room, text, pictures }) => {
    for (const heights of [1, 3, 10]) {
      for (const name of pictures) {
        // From above there are no heights.
        if (name === 'above' && heights !== 1) continue;
        const { primitives, view } = fitRoom({ ...layingOf(name, { job, design }, heights, text), room });
        const where = `${name}, heights ${heights}×`;
        expect(overEachOther(primitives), where).toEqual([]);
        expect(crossedByLines(primitives), where).toEqual([]);
        const { minX, maxX, minY, maxY } = boundsOfPrimitives(primitives);
        expect(minX, where).toBeGreaterThanOrEqual(view.left);
        expect(minY, where).toBeGreaterThanOrEqual(view.top);
        expect(maxX, where).toBeLessThanOrEqual(view.left + view.width);
        expect(maxY, where).toBeLessThanOrEqual(view.top + view.height);
      }
    }
  });

  it('on paper', () => {
    const say = sayWith(job.show);
    for (const { id: piece, marks } of [threeViews(job, design, 3.5, say), ...drawnPieces(job, design)]) {
      const primitives = layOut(marks, { em: 3.5, say });
      expect(overEachOther(primitives), piece).toEqual([]);
      expect(crossedByLines(primitives), piece).toEqual([]);
    }
  });
});

describe('while a number of the demo is dragged', () => {
  /** In tenths of a millimetre, farther than anyone would at one go. */
  const drags = [
    { path: 'slot.depth', from: 4, to: 6 },
    { path: 'bridge.length', from: 153, to: 158 },
    { path: 'bridge.thickness', from: 7.5, to: 11 },
    { path: 'pins.spread', from: 54, to: 58 },
  ];
  /** How often a word may go elsewhere on such a way, as long as the scale stays: from its first place to a second, and to a third. */
  const most = 2;

  it.each(drags)('by $path, its words stay where they are', ({ path, from, to }) => {
    const demo = starterJob('heron');
    const heights = 3;
    for (const { window, room, text, pictures } of windows.filter(({ window }) => window !== 820))
      for (const name of pictures.includes('three') ? (['three'] as const) : pictures) {
        let seed: number | undefined;
        let last = new Map<string, Text>();
        let jumps = new Map<string, number>();
        for (let tenth = from * 10; tenth <= to * 10; tenth += 1) {
          const result = build(setAt(demo, path, tenth / 10));
          if (!result.ok) throw new Error(`${path} ${tenth / 10}`);
          // As the sheet does it, with the scale that it had as its seed.
          const { primitives, scale } = fitRoom({ ...layingOf(name, result, heights, text), room, seed });
          const texts = primitives.filter((p) => p.kind === 'text');
          if (scale !== seed) jumps = new Map();
          for (const { id, at, size } of texts) {
            const before = last.get(id);
            // At the same scale a word moves as far as what it names.
            if (before && scale === seed && Math.hypot(at.x - before.at.x, at.y - before.at.y) > size)
              jumps.set(id, (jumps.get(id) ?? 0) + 1);
          }
          const often = [...jumps].filter(([, times]) => times > most);
          expect(often, `${window} px, ${name}, ${path} ${tenth / 10}`).toEqual([]);
          last = new Map(texts.map((one) => [one.id, one]));
          seed = scale;
        }
      }
  });
});
