// No word of a drawing stands over another, and none is cut off: every starter in the rooms that the sheet has in windows of 1440, 820 and 390 px, and on paper.
import { describe, expect, it } from 'vitest';
import type { Primitive } from '../../geometry/drawing.ts';
import { boundsOfPrimitives, layOut, sayWith } from '../../geometry/layout.ts';
import { textBox } from '../../geometry/text-box.ts';
import { threeViews } from '../../geometry/views/index.ts';
import { fitRoom } from '../../src/app/sheet/fit.ts';
import { layingOf, type PictureName, viewNames } from '../../src/app/sheet/laying.ts';
import { starters } from '../../src/jobs/index.ts';
import { drawnPieces } from '../drawn.ts';
import { built } from '../solved.ts';
import { starterJob } from './bench.ts';

/** What two boxes may share, in ems: they hold a line's whole height, accents and descenders too. */
const shared = 0.1;

/** Each pair of texts of which one stands over the other. */
const overEachOther = (primitives: readonly Primitive[]): readonly string[] => {
  const words = primitives.flatMap((p) => (p.kind === 'text' ? [{ ...p, box: textBox(p) }] : []));
  return words.flatMap((a, k) =>
    words.slice(k + 1).flatMap((b) => {
      const may = shared * Math.min(a.size, b.size);
      const across = Math.min(a.box.maxX, b.box.maxX) - Math.max(a.box.minX, b.box.minX);
      const up = Math.min(a.box.maxY, b.box.maxY) - Math.max(a.box.minY, b.box.minY);
      return across > may && up > may ? [`${a.id} “${a.text}” and ${b.id} “${b.text}”`] : [];
    }),
  );
};

/** The windows, the rooms that their sheets have, as measured in Chromium with the demo, what is shown in them, and with what text height; px. */
const windows: readonly {
  readonly window: number;
  readonly room: { readonly width: number; readonly height: number };
  readonly text: number;
  readonly pictures: readonly PictureName[];
}[] = [
  { window: 1440, room: { width: 722, height: 479 }, text: 13.5, pictures: ['three', ...viewNames] },
  { window: 820, room: { width: 818, height: 661 }, text: 13, pictures: ['three', ...viewNames] },
  { window: 390, room: { width: 388, height: 473 }, text: 13, pictures: viewNames },
];

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
    for (const { id: piece, marks } of [threeViews(job, design, 3.5, say), ...drawnPieces(job, design)])
      expect(overEachOther(layOut(marks, { em: 3.5, say })), piece).toEqual([]);
  });
});
