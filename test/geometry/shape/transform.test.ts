import { describe, expect, it } from 'vitest';
import { pointOn } from '../../../geometry/shape/along.ts';
import { area, pathLength } from '../../../geometry/shape/measure.ts';
import { pen } from '../../../geometry/shape/path.ts';
import { distance, point, rotate } from '../../../geometry/shape/point.ts';
import { mirrorX, place, placePoint, scaled, translate, turnPath } from '../../../geometry/shape/transform.ts';
import type { Path, Point } from '../../../geometry/shape/types.ts';

const shape = pen(point(1, 2))
  .line(point(9, 2))
  .arc(point(12, 5), 3, 1)
  .cubic(point(12, 9), point(7, 12), point(3, 8))
  .close();

/** Every point of the image must be the image of the point: so arcs, whose angles change, are checked by where they run. */
const runsAlong = (image: Path, move: (p: Point) => Point) => {
  image.segments.forEach((s, i) => {
    for (const t of [0, 0.3, 0.7, 1]) {
      const before = shape.segments[i];
      if (!before) throw new Error('segments were lost');
      expect(distance(pointOn(s, t), move(pointOn(before, t)))).toBeLessThan(1e-12);
    }
  });
};

describe('moving, mirroring and turning', () => {
  it('translates', () => runsAlong(translate(shape, 3, -4), (p) => point(p.x + 3, p.y - 4)));

  it('mirrors, so that the area changes its sign', () => {
    runsAlong(mirrorX(shape), (p) => point(-p.x, p.y));
    expect(area(mirrorX(shape))).toBeCloseTo(-area(shape), 10);
    expect(mirrorX(shape).segments[1]?.kind).toBe('arc');
  });

  it('turns about the origin or another point', () => {
    runsAlong(turnPath(shape, 0.7), (p) => rotate(p, 0.7));
    runsAlong(turnPath(shape, -2, point(5, 6)), (p) => rotate(p, -2, point(5, 6)));
    expect(rotate(point(1, 0), Math.PI / 2).y).toBe(1);
  });

  it('places: mirror first, then turn, then move', () => {
    const placing = { mirror: true, turn: Math.PI / 2, dx: 100, dy: 10 };
    // (2, 3) → (−2, 3) → (−3, −2) → (97, 8)
    expect(distance(placePoint(point(2, 3), placing), point(97, 8))).toBeLessThan(1e-12);
    runsAlong(place(shape, placing), (p) => placePoint(p, placing));
    expect(pathLength(place(shape, placing))).toBeCloseTo(pathLength(shape), 10);
  });

  it('scales a sketch about the origin, its arcs with it', () => {
    runsAlong(scaled(shape, 0.4), (p) => point(p.x * 0.4, p.y * 0.4));
    expect(scaled(shape, 0.4).segments[1]).toMatchObject({ kind: 'arc', radius: 3 * 0.4 });
    expect(area(scaled(shape, 2))).toBeCloseTo(4 * area(shape), 9);
  });
});
