// What is read beside a grip in hand covers no word of the drawing, is seen beside the hand, and stays there while it is dragged.
import { describe, expect, it } from 'vitest';
import { build } from '../../geometry/build.ts';
import { setAt } from '../../geometry/fields.ts';
import type { Bounds, Point } from '../../geometry/shape/types.ts';
import { wordBox } from '../../geometry/text-box.ts';
import { type Fitted, fitRoom } from '../../src/app/sheet/fit.ts';
import { gripsOn, linesOf } from '../../src/app/sheet/grips/on-drawing.ts';
import { type Beside, readBeside } from '../../src/app/sheet/grips/read-beside.ts';
import { layingOf } from '../../src/app/sheet/laying.ts';
import type { Built } from '../../src/app/state.ts';
import { starters } from '../../src/jobs/index.ts';
import { built } from '../solved.ts';
import { starterJob } from './bench.ts';
import { windows } from './windows.ts';

/** Where a frame lies on a drawing, mm. */
const onDrawing = ({ frame }: Beside, at: Point, { scale }: Fitted): Bounds => ({
  minX: at.x + frame.x / scale,
  minY: at.y + frame.y / scale,
  maxX: at.x + (frame.x + frame.width) / scale,
  maxY: at.y + (frame.y + frame.height) / scale,
});

const meet = (a: Bounds, b: Bounds): boolean =>
  a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;

/** The words that a frame covers. */
const coveredBy = (frame: Bounds, { primitives }: Fitted): readonly string[] =>
  primitives.flatMap((p) => (p.kind === 'text' && meet(wordBox(p), frame) ? [p.text] : []));

/** How large the tip of a finger is, px, half of its breadth: some 16 mm of it lie on the glass [practice]. */
const finger = 24;

/** Where a hand hides a drawing, mm: a pointer the place itself, a finger what is below it, too. */
const hiddenBy = ({ x, y }: Point, isFinger: boolean, { scale, view }: Fitted): Bounds => {
  const half = (isFinger ? finger : 8) / scale;
  return { minX: x - half, minY: y - half, maxX: x + half, maxY: isFinger ? view.top + view.height : y + half };
};

describe.each(windows)('in a window of $window px', ({ window, room, text, pictures }) => {
  it.each([false, true])('it covers no word, and is in sight; held by a finger: %s', (isFinger) => {
    const heights = 3;
    const covers: string[] = [];
    let all = 0;
    for (const { id } of starters) {
      const shows: Built = built(starterJob(id));
      for (const name of pictures) {
        const shown = fitRoom({ ...layingOf(name, shows, heights, text), room });
        for (const { grip } of gripsOn(shows, shown)) {
          all += 1;
          const what = `${id}, ${name}, ${grip.id}`;
          const frame = onDrawing(readBeside(grip, linesOf(grip, shows.job), shown, { isFinger }), grip.at, shown);
          const words = coveredBy(frame, shown);
          if (words.length > 0) covers.push(`${what}: ${words.join(', ')}`);
          const { left, top, width, height } = shown.view;
          expect(frame.minX, what).toBeGreaterThan(left);
          expect(frame.minY, what).toBeGreaterThan(top);
          expect(frame.maxX, what).toBeLessThan(left + width);
          expect(frame.maxY, what).toBeLessThan(top + height);
          expect(meet(frame, hiddenBy(grip.at, isFinger, shown)), `${what} under the hand`).toBe(false);
        }
      }
    }
    // Beside a finger on a narrow drawing there is not room for it everywhere.
    if (isFinger) expect(covers.length, covers.join('\n')).toBeLessThan(window < 400 ? all / 4 : all / 100);
    else expect(covers).toEqual([]);
  });
});

describe('while a number of the demo is dragged', () => {
  it.each([
    ['bridge.length', 'above.length', 150, 162],
    ['bridge.thickness', 'middle.thickness', 7.5, 11],
    ['pins.spread', 'above.pins.spread', 54, 60],
  ])('by %s, it goes elsewhere only from where it would cover a word', (path, id, from, to) => {
    const demo = starterJob('heron');
    for (const { window, room, text } of windows.slice(0, 2)) {
      let [seed, kept, before] = [undefined as number | undefined, undefined as Point | undefined, 0];
      let moves = 0;
      for (let tenth = from * 10; tenth <= to * 10; tenth += 1) {
        const result = build(setAt(demo, path, tenth / 10));
        if (!result.ok) throw new Error(`${path} ${tenth / 10}`);
        const shown = fitRoom({ ...layingOf('three', result, 3, text), room, seed });
        const grip = gripsOn(result, shown).find((one) => one.grip.id === id)?.grip;
        if (grip === undefined) throw new Error(id);
        const beside = readBeside(grip, linesOf(grip, result.job), shown, { isFinger: false, kept });
        const what = `${window} px, ${path} ${tenth / 10}`;
        expect(coveredBy(onDrawing(beside, grip.at, shown), shown), what).toEqual([]);
        if (kept && (beside.frame.x !== kept.x || beside.frame.y !== kept.y)) {
          moves += 1;
          const stayed = { ...beside, frame: { ...beside.frame, ...kept } };
          // Two px are left free round a word.
          const { minX, minY, maxX, maxY } = onDrawing(stayed, grip.at, shown);
          const by = 2.01 / shown.scale;
          const round = { minX: minX - by, minY: minY - by, maxX: maxX + by, maxY: maxY + by };
          expect(coveredBy(round, shown), `${what}: went elsewhere`).not.toEqual([]);
        }
        [seed, kept, before] = [shown.scale, { x: beside.frame.x, y: beside.frame.y }, before + 1];
      }
      expect(before).toBeGreaterThan(20);
      expect(moves, `${window} px, ${path}`).toBeLessThan(before / 8);
    }
  });
});
