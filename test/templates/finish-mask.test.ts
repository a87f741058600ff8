import { EndType, inflatePathsD, JoinType, type PathD } from 'clipper2-ts';
import { describe, expect, it } from 'vitest';
import { footprintOutline } from '../../geometry/bridge/outline.ts';
import { setAt } from '../../geometry/fields.ts';
import type { Job } from '../../geometry/job.ts';
import { layOut, sayWith } from '../../geometry/layout.ts';
import { bounds, circle, pointOn } from '../../geometry/shape/index.ts';
import { distanceTo } from '../../geometry/shape/nearest.ts';
import type { Path } from '../../geometry/shape/types.ts';
import { finishMask } from '../../templates/pieces/finish-mask.ts';
import { piecesOf } from '../../templates/pieces/index.ts';
import { newShop } from '../../templates/shop/index.ts';
import { built, workedExample } from '../solved.ts';
import { footprintJobs, fullJob, oldTop } from './full-job.ts';

const maskOf = (asked: Job, inset: number) => {
  const { job, design } = built(asked);
  const { marks } = finishMask.draw(job, design, { ...newShop(), mask: { inset } });
  const paths = (begins: string) =>
    marks.flatMap((mark) => (mark.kind === 'path' && mark.id.startsWith(begins) ? [mark] : []));
  const texts = layOut(marks, { em: 3.5, say: sayWith(job.show) }).flatMap((p) => (p.kind === 'text' ? [p.text] : []));
  return { job, design, paths, texts, knife: paths('knife.').map(({ path }) => path) };
};

const dense = (path: Path): PathD =>
  path.segments.flatMap((s) => Array.from({ length: 64 }, (_, k) => ({ ...pointOn(s, k / 64), z: 0 })));

describe('the finish mask', () => {
  it.each(Object.entries(footprintJobs))(
    'on %s has its knife line as clipper2-ts 2.0 has it, within 0.01 mm',
    (_, make) => {
      for (const inset of [0.6, 4]) {
        const { job, design, knife } = maskOf(make(), inset);
        const outline = footprintOutline(job, design);
        const theirs = inflatePathsD([dense(outline)], -inset, JoinType.Round, EndType.Polygon, 2, 6, 5e-4);
        expect(theirs).toHaveLength(knife.length);
        const far = theirs.flat().map((p) => Math.min(...knife.map((path) => distanceTo(path, p))));
        expect(Math.max(...far)).toBeLessThan(0.01);
        // And no place of it nearer to the outline than it says.
        const near = knife.flatMap(dense).map((p) => distanceTo(outline, p));
        expect(Math.min(...near)).toBeGreaterThan(inset - 0.003);
      }
    },
  );

  it('keeps arcs arcs, each smaller by the inset', () => {
    const { knife, job } = maskOf(footprintJobs.rectangle(), 1.5);
    const radii = knife.flatMap(({ segments }) => segments.flatMap((s) => (s.kind === 'arc' ? [s.radius] : [])));
    expect(radii.length).toBeGreaterThan(0);
    for (const radius of radii) expect(radius).toBeCloseTo(job.bridge.depth / 2 - 1.5, 9);
  });

  it('on the outline itself is the outline, once', () => {
    const { job, design, knife, paths, texts } = maskOf(workedExample(), 0);
    expect(knife).toEqual([footprintOutline(job, design)]);
    expect(paths('outline')).toEqual([]);
    expect(texts).toContain('knife line on the bridge’s outline');
  });

  it('has the pin holes, and the register pins that hold it in place', () => {
    const { job, paths } = maskOf(oldTop(), 1);
    const drilled = paths('').filter(({ purpose }) => purpose === 'drill');
    const registers = job.top.holes.filter(({ plan }) => plan === 'register');
    expect(registers).toHaveLength(2);
    for (const { across, fromNut, diameter } of registers) {
      const ring = bounds(circle({ x: across, y: fromNut }, diameter / 2));
      expect(drilled.map(({ path }) => bounds(path))).toContainEqual(ring);
    }
    expect(drilled.filter(({ id }) => id.startsWith('pin.'))).toHaveLength(6);
  });

  it('says where nothing is left, and the way out', () => {
    const slim = (
      [
        ['bridge.footprint', 'rectangle'],
        ['bridge.depth', 19],
        ['bridge.frontToSaddle', 5],
        ['pins.fromSaddle', 8.5],
        ['pins.hole', 3],
        ['pins.pinDiameter', 3.2],
      ] as const
    ).reduce<Job>((job, [path, value]) => setAt(job, path, value), workedExample());
    const { knife, texts } = maskOf(slim, 10);
    expect(knife).toEqual([]);
    expect(texts).toEqual(
      expect.arrayContaining([
        'nothing of the bridge’s outline is left 10.0 mm inside it',
        'choose a knife line nearer to the outline',
      ]),
    );
    expect(maskOf(slim, 9).knife).toHaveLength(1);
  });

  it('is none where the bridge stays', () => {
    expect(piecesOf(built(fullJob()).job)).not.toContain(finishMask);
  });
});
