import { describe, expect, it } from 'vitest';
import { boundsOf } from '../../geometry/shape/bounds.ts';
import { inView, onDrawing, viewUnder } from '../../geometry/views/place.ts';
import { fitRoom } from '../../src/app/sheet/fit.ts';
import { layingOf } from '../../src/app/sheet/laying.ts';
import { closer, type Look, lookAt, moved, placeUnder, pxOf } from '../../src/app/sheet/look.ts';
import { built } from '../solved.ts';
import { starterJob } from './bench.ts';

const room = { width: 796, height: 590 };
const demo = built(starterJob('heron'));
const laying = layingOf('three', demo, 3, 13);
const fitted = fitRoom({ ...laying, room });
const seen = (look: Look | undefined) => lookAt(fitted, look, laying);
const px = { x: 200, y: 410 };

describe('looking closer', () => {
  it('keeps what lies under the pointer, and the texts as high as they were', () => {
    const whole = seen(undefined);
    const near = seen(closer(fitted, whole, 4, px));
    expect(near.scale / whole.scale).toBeCloseTo(4, 9);
    const [before, after] = [placeUnder(whole, px), placeUnder(near, px)];
    expect(after.x).toBeCloseTo(before.x, 9);
    expect(after.y).toBeCloseTo(before.y, 9);
    const sizes = near.primitives.flatMap((p) =>
      p.kind === 'text' && p.id.endsWith('title') ? [p.size * near.scale] : [],
    );
    expect(sizes.length).toBe(3);
    for (const size of sizes) expect(size).toBeCloseTo(13, 9);
    // The frame stays as large as it was, and shows a quarter of what it showed.
    expect([near.width, near.height]).toEqual([whole.width, whole.height]);
    expect(near.view.width).toBeCloseTo(whole.view.width / 4, 9);
  });

  it('and farther again by as much shows what was shown', () => {
    const whole = seen(undefined);
    const near = seen(closer(fitted, whole, 3, px));
    const again = seen(closer(fitted, near, 1 / 3, px));
    expect(again.scale).toBeCloseTo(whole.scale, 9);
    expect(again.view.left).toBeCloseTo(whole.view.left, 9);
    expect(again.view.top).toBeCloseTo(whole.view.top, 9);
  });

  it('moves what lies between two fingers with them', () => {
    const whole = seen(undefined);
    const to = { x: 260, y: 380 };
    const under = placeUnder(whole, px);
    const now = pxOf(seen(closer(fitted, whole, 2, px, to)), under);
    expect(now.x).toBeCloseTo(to.x, 6);
    expect(now.y).toBeCloseTo(to.y, 6);
  });

  it.each(['three', 'above'] as const)('has the bridge in the middle where no place was chosen: %s', (name) => {
    const laid = layingOf(name, demo, 3, 13);
    const { marks, view } = lookAt(fitRoom({ ...laid, room }), { scale: 3.78 }, laid);
    const outline = marks.flatMap((m) => (m.kind === 'path' && m.id.endsWith('bridge.outline') ? [m.path] : []));
    const { minX, minY, maxX, maxY } = boundsOf(outline.slice(0, 1));
    expect(view.left + view.width / 2).toBeCloseTo((minX + maxX) / 2, 9);
    expect(view.top + view.height / 2).toBeCloseTo((minY + maxY) / 2, 9);
  });

  it('moves with the hand, but never off the drawing', () => {
    const near = seen(closer(fitted, seen(undefined), 4, px));
    const by = seen(moved(fitted, near, { x: 30, y: -20 }));
    expect(by.view.left).toBeCloseTo(near.view.left - 30 / near.scale, 9);
    expect(by.view.top).toBeCloseTo(near.view.top + 20 / near.scale, 9);
    const { view } = seen(moved(fitted, near, { x: -1e6, y: 0 }));
    const { minX, maxX } = boundsOf(fitted.marks.flatMap((m) => (m.kind === 'path' ? [m.path] : [])));
    expect(view.left).toBeLessThan(maxX);
    expect(view.left + view.width).toBeGreaterThan(minX);
  });

  it('never shows empty paper, as where another job’s bridge lies nearer to the nut', () => {
    const { view } = seen({ scale: 4 * fitted.scale, at: { view: 'above', point: { x: 0, y: -300 } } });
    const { minY, maxY } = boundsOf(fitted.marks.flatMap((m) => (m.kind === 'path' ? [m.path] : [])));
    expect(view.top).toBeLessThan(maxY);
    expect(view.top + view.height).toBeGreaterThan(minY);
  });

  it('stays at the same place of the bridge when heights are stretched otherwise', () => {
    const near = closer(fitted, seen(undefined), 5, px);
    expect(near.at?.view).toBe('tail');
    const other = layingOf('three', demo, 10, 13);
    const taller = fitRoom({ ...other, room });
    const now = lookAt(taller, near, other);
    const middle = placeUnder(now, { x: now.width / 2, y: now.height / 2 });
    const place = taller.places.tail;
    if (place === undefined || near.at === undefined) throw new Error('the view from the tail is missing');
    const there = inView(place, middle);
    expect(there.x).toBeCloseTo(near.at.point.x, 9);
    expect(there.y).toBeCloseTo(near.at.point.y, 9);
  });
});

describe('a place in a drawing of three views', () => {
  it('belongs to the view that it lies in, and is found again there', () => {
    const { above, tail, middle } = fitted.places;
    if (!above || !tail || !middle) throw new Error('a view is missing');
    expect([above.heights, tail.heights, middle.heights]).toEqual([1, 3, 3]);
    for (const [name, place] of Object.entries({ above, tail, middle })) {
      const { minX, maxX, minY, maxY } = place.room ?? { minX: 0, maxX: 0, minY: 0, maxY: 0 };
      const p = { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
      expect(viewUnder(fitted.places, p)).toBe(name);
      const back = onDrawing(place, inView(place, p));
      expect(back.x).toBeCloseTo(p.x, 9);
      expect(back.y).toBeCloseTo(p.y, 9);
    }
    expect(viewUnder(fitted.places, { x: -1e4, y: -1e4 })).toBe('above');
    expect(() => viewUnder({}, { x: 0, y: 0 })).toThrow(RangeError);
  });
});
