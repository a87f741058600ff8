import { describe, expect, it } from 'vitest';
import { boundsOfPrimitives, sayWith } from '../../geometry/layout.ts';
import { threeViews } from '../../geometry/views/index.ts';
import { fitRoom, leastHeight } from '../../src/app/sheet/fit.ts';
import { starters } from '../../src/jobs/index.ts';
import { built } from '../solved.ts';
import { starterJob } from './bench.ts';

const rooms = [{ width: 796, height: 590 }, { width: 740, height: 500 }, { width: 1220, height: 700 }, { width: 796 }];

describe.each(starters)('$id on the screen', ({ id }) => {
  const { job, design } = built(starterJob(id));
  const say = sayWith(job.show);
  const draw = (em: number) => threeViews(job, design, em, say, 3);

  it.each(rooms)('fills a room of $width × $height px with texts 13 px high, nothing cut off', (room) => {
    const fitted = fitRoom({ draw, say, room, text: 13 });
    const { left, top, width, height } = fitted.view;
    const b = boundsOfPrimitives(fitted.primitives);
    expect(b.minX).toBeGreaterThanOrEqual(left);
    expect(b.maxX).toBeLessThanOrEqual(left + width);
    expect(b.minY).toBeGreaterThanOrEqual(top);
    expect(b.maxY).toBeLessThanOrEqual(top + height);
    expect(fitted.width).toBeLessThanOrEqual(room.width + 1e-6);
    // Where even the least that it asks for is more than there is, it is scrolled.
    const needed = Math.max(room.height ?? Number.POSITIVE_INFINITY, leastHeight({ draw, say, text: 13 }));
    expect(fitted.height).toBeLessThanOrEqual(needed + 1e-6);
    const filled = Math.max(
      ((b.maxX - b.minX) * fitted.scale) / room.width,
      ((b.maxY - b.minY) * fitted.scale) / (room.height ?? Number.POSITIVE_INFINITY),
    );
    expect(filled).toBeGreaterThan(0.85);
    expect(fitted.width / width).toBeCloseTo(fitted.scale, 9);
    for (const p of fitted.primitives) {
      if (p.kind === 'text') expect(p.size * fitted.scale).toBeGreaterThanOrEqual(13 - 1e-9);
    }
  });

  it('is rather scrolled than crowded where the room is low', () => {
    const low = fitRoom({ draw, say, room: { width: 740, height: 260 }, text: 13 });
    expect(low.height).toBeGreaterThan(260);
    expect(low.scale).toBeGreaterThan(1.5);
  });

  it('is whole in a room of the least height that it asks for', () => {
    const least = leastHeight({ draw, say, text: 13 });
    const { height, scale } = fitRoom({ draw, say, room: { width: 796, height: least }, text: 13 });
    expect(height).toBeLessThanOrEqual(least);
    expect(scale).toBeGreaterThan(1.5);
    expect(fitRoom({ draw, say, room: { width: 796, height: least - 60 }, text: 13 }).height).toBeGreaterThan(
      least - 60,
    );
  });

  it('keeps a scale that still fits', () => {
    const room = { width: 796, height: 590 };
    const { scale } = fitRoom({ draw, say, room, text: 13 });
    expect(fitRoom({ draw, say, room, text: 13, seed: scale }).scale).toBe(scale);
  });
});
