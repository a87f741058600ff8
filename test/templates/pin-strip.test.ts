import { areaD, FillRule, intersectD, type PathD } from 'clipper2-ts';
import { describe, expect, it } from 'vitest';
import { footprintOutline } from '../../geometry/bridge/outline.ts';
import { setAt } from '../../geometry/fields.ts';
import type { Job } from '../../geometry/job.ts';
import { layOut, sayWith } from '../../geometry/layout.ts';
import { keepSide } from '../../geometry/shape/clip.ts';
import { area, bounds, circle, isSimple, pointOn } from '../../geometry/shape/index.ts';
import type { Path, Point } from '../../geometry/shape/types.ts';
import { starters } from '../../src/jobs/index.ts';
import { drawnPiece } from '../drawn.ts';
import { built, jobOf, workedExample } from '../solved.ts';
import { footprintJobs } from './full-job.ts';

const strip = (asked: Job) => {
  const { job, design } = built(asked);
  const { marks } = drawnPiece('pin-strip', job, design);
  const path = (id: string): Path => {
    const found = marks.find((mark) => mark.id === id);
    if (found?.kind !== 'path') throw new Error(`no ${id}`);
    return found.path;
  };
  /** Where the cross of a string's hole has its middle. */
  const middle = (id: string): Point => {
    const [line] = path(`pin.${id}.across`).segments;
    const [other] = path(`pin.${id}.along`).segments;
    if (line?.kind !== 'line' || other?.kind !== 'line') throw new Error('no cross');
    return { x: other.from.x, y: line.from.y };
  };
  const texts = layOut(marks, { em: 3.5, say: sayWith(job.show) }).flatMap((p) => (p.kind === 'text' ? [p.text] : []));
  return { job, design, path, middle, texts };
};

const dense = (path: Path): PathD =>
  path.segments.flatMap((s) => Array.from({ length: 64 }, (_, k) => ({ ...pointOn(s, k / 64), z: 0 })));

describe('the pin drilling strip', () => {
  it('has each pin where the job’s own numbers put it: by the spread, from the slot’s middle and along its slant', () => {
    const { job, design, path, middle, texts } = strip(setAt(workedExample(), 'pins.row', 'slanted'));
    const [line] = path('saddleLine').segments;
    if (line?.kind !== 'line') throw new Error('no saddle line');
    const slant = (line.to.y - line.from.y) / (line.to.x - line.from.x);
    const saddleAt = (x: number) => line.from.y + slant * (x - line.from.x);
    design.strings.forEach((s, k) => {
      const at = middle(s.id);
      expect(at.x).toBeCloseTo(-job.pins.spread / 2 + (k * job.pins.spread) / 5, 9);
      expect(at.y - saddleAt(at.x)).toBeCloseTo(job.pins.fromSaddle, 9);
    });
    expect(
      texts.some((text) => /^ream them, taper 5\.0 %, until a pin ⌀ 5\.3 mm seats: 6\.0 mm deep$/.test(text)),
    ).toBe(true);
    // (5.3 − 5) / 0.05 = 6 mm [def].
  });

  it('has both rows of a job in pairs, the second as far behind and aside as typed', () => {
    const asked = jobOf(starters.find(({ id }) => id === 'starling')?.text ?? '');
    const { job, middle } = strip(asked);
    const ids = job.strings.list.map(({ id }) => id);
    for (let k = 0; k < ids.length; k += 2) {
      const [one, two] = [middle(ids[k] as string), middle(ids[k + 1] as string)];
      expect(two.x - one.x).toBeCloseTo(job.pins.secondAside, 9);
    }
    const [first, last] = [middle(ids[0] as string), middle(ids.at(-1) as string)];
    expect(last.x - first.x).toBeCloseTo(job.pins.spread, 9);
  });

  it('ends at the rear edge: what clipper2-ts cuts of the footprint between the same sides', () => {
    for (const asked of [footprintJobs.belly(), footprintJobs.waisted(), footprintJobs.free()]) {
      const { job, design, path } = strip(asked);
      const outline = path('outline');
      const { minX, maxX } = bounds(outline);
      const front = Math.min(...[minX, maxX].map((x) => design.saddleLine.x + design.saddleLine.slant * x)) - 8;
      const box = [
        { x: minX, y: front, z: 0 },
        { x: maxX, y: front, z: 0 },
        { x: maxX, y: 2000, z: 0 },
        { x: minX, y: 2000, z: 0 },
      ];
      const theirs = intersectD([dense(footprintOutline(job, design))], [box], FillRule.NonZero, 6);
      expect(isSimple(outline)).toBe(true);
      expect(Math.abs(Math.abs(area(outline)) - Math.abs(areaD(theirs[0] as PathD)))).toBeLessThan(0.1);
    }
  });

  it('folds over a tie block’s edge, its holes as far below it as the strings leave the block', () => {
    const { job, path, middle } = strip(footprintJobs.rectangle());
    const fold = bounds(path('edge'));
    for (const { id } of job.strings.list) expect(middle(id).y - fold.minY).toBeCloseTo(job.pins.below, 9);
    expect(middle('E4').x - middle('E2').x).toBeCloseTo(58, 9);
  });
});

describe('one side of a path', () => {
  const round = circle({ x: 3, y: -2 }, 10);

  it('is the circle’s segment, by the formula for its area', () => {
    // Area of a circular segment [def]: r²(θ − sin θ)/2, θ = 2 acos(d/r).
    const kept = keepSide(round, { x: 7, y: 0 }, { x: 1, y: 0 });
    const angle = 2 * Math.acos(0.4);
    expect(kept && Math.abs(area(kept))).toBeCloseTo(50 * (angle - Math.sin(angle)), 9);
    expect(kept?.segments.filter((s) => s.kind === 'line')).toHaveLength(1);
  });

  it('is all of it or nothing where the line misses it', () => {
    expect(keepSide(round, { x: -20, y: 0 }, { x: 1, y: 0 })).toEqual(round);
    expect(keepSide(round, { x: 20, y: 0 }, { x: 1, y: 0 })).toBeUndefined();
  });
});
