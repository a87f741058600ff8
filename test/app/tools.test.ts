import { describe, expect, it } from 'vitest';
import { setAt } from '../../geometry/fields.ts';
import { gaugeFor, layGauge } from '../../src/app/sheet/tools/gauge.ts';
import { kindOf, next, type Picked, picked, type Ruled, spotOf } from '../../src/app/sheet/tools/ruled.ts';
import { card, leastPx, mostPx, readScreen, readTyped, referencePx } from '../../src/app/sheet/tools/screen.ts';
import { ofDesign } from '../../src/app/sheet/tools/tools.ts';
import { built } from '../solved.ts';
import { starterJob } from './bench.ts';

const demo = built(starterJob('heron'));

describe('the ruler', () => {
  const place = (x: number): Picked => ({
    view: 'tail',
    at: { x, y: 0 },
    snaps: [
      { kind: 'end', point: { x: x + 0.1, y: 0 } },
      { kind: 'edge', point: { x: x + 0.2, y: 0 } },
    ],
    index: 0,
  });
  const none: Ruled = { of: demo };

  it('takes a first place, a second, and begins anew with the third', () => {
    const one = picked(none, place(1));
    const two = picked(one, place(2));
    expect([one.from?.at.x, one.to, two.from?.at.x, two.to?.at.x]).toEqual([1, undefined, 1, 2]);
    const three = picked(two, place(3));
    expect([three.from?.at.x, three.to]).toEqual([3, undefined]);
  });

  it('goes round what is near, of the place aimed at or else of the one picked last', () => {
    const one = picked(none, place(1));
    expect(spotOf(one.from as Picked)).toEqual({ view: 'tail', point: { x: 1.1, y: 0 } });
    const turned = next(one);
    expect(kindOf(turned.from as Picked)).toBe('edge');
    expect(kindOf(next(turned).from as Picked)).toBe('end');
    const aimed = next({ ...one, aim: place(5) });
    expect([kindOf(aimed.aim as Picked), kindOf(aimed.from as Picked)]).toEqual(['edge', 'end']);
    expect(kindOf({ ...place(1), snaps: [] })).toBe('free');
    expect(next(none)).toEqual(none);
  });

  it('forgets what it measured of another design', () => {
    const one = picked(none, place(1));
    expect(ofDesign(one, demo)).toBe(one);
    expect(ofDesign(one, { ...demo }).from).toBeUndefined();
  });
});

describe('a gauge', () => {
  it('is the job’s nearest on the crown at first, and is read in the reader’s unit', () => {
    const first = layGauge(gaugeFor(demo), demo);
    expect(first.ok && first.radius).toBe(demo.design.nearestGauge.radius);
    const inches = built(setAt(starterJob('heron'), 'show.radius', 'in'));
    const laid = layGauge({ on: 'deck', text: '12' }, inches);
    expect(laid.ok && laid.radius).toBeCloseTo(304.8, 9);
  });

  it('that is none, or cannot span what it is laid on, is refused with the limit', () => {
    const refused = (text: string) => {
      const laid = layGauge({ on: 'deck', text }, demo);
      return laid.ok ? '' : laid.says;
    };
    expect(refused('twelve')).toContain('“twelve” is not a radius');
    expect(refused('0')).toContain('above 0');
    // The demo’s deck is 86 mm wide: half of it is 43.
    expect(refused('42 mm')).toContain('1.65 in is too tight to span it; take one of 1.75 in at least');
    const least = /one of (\S+ \w+) at least/.exec(refused('42 mm'))?.[1] ?? '';
    expect(layGauge({ on: 'deck', text: least }, demo).ok).toBe(true);
    expect(layGauge({ on: 'deck', text: 'flat' }, demo).ok).toBe(true);
  });
});

describe('a measured screen', () => {
  it('holds at the ratio of pixels at which it was measured, and at no other', () => {
    const kept = JSON.stringify({ pxPerMm: 4.1, ratio: 2 });
    expect(readScreen(kept, 2)).toEqual({ pxPerMm: 4.1, ratio: 2 });
    expect(readScreen(kept, 1)).toBeUndefined();
    for (const bad of [null, '', '{', '7', '{"pxPerMm": 0, "ratio": 2}', '{"pxPerMm": "4", "ratio": 2}'])
      expect(readScreen(bad, 2)).toBeUndefined();
  });

  it('is typed as the px that 100 mm take', () => {
    expect(readTyped(' 378,5 ')).toBeCloseTo(3.785, 12);
    expect(readTyped(String(leastPx * 100))).toBe(leastPx);
    for (const bad of ['', '4 hundred', '-3', String(mostPx * 100 + 1), '1e3']) expect(readTyped(bad)).toBeUndefined();
    // CSS: 96 px to the inch. ISO/IEC 7810, ID-1: 85.60 mm.
    expect(card.width * referencePx).toBeCloseTo((85.6 / 25.4) * 96, 9);
  });
});
