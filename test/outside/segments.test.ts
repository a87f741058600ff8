import { describe, expect, it } from 'vitest';
import { arcFromTo } from '../../geometry/shape/arc.ts';
import { area, lengthOf } from '../../geometry/shape/measure.ts';
import { pen } from '../../geometry/shape/path.ts';
import { point } from '../../geometry/shape/point.ts';
import { radiusFromSagitta, sagitta } from '../../geometry/shape/sagitta.ts';

/** Machinery's Handbook, table of segments of circles for radius 1 [memory]: angle, height h, chord c, area; as printed. */
const table = `
 30 .03407  .51764 .01180
 60 .13397 1.00000 .09059
 90 .29289 1.41421 .28540
120 .50000 1.73205 .61418
`;

const rows = table
  .trim()
  .split('\n')
  .map((row) => row.trim().split(/\s+/).map(Number) as [number, number, number, number]);

/** A printed figure is right to half its last place. */
const printed = 0.5e-5 + 1e-12;

describe('circular segments of radius 1, as the table prints them', () => {
  it.each(rows)('%d°', (degrees, height, chord, wanted) => {
    const angle = (degrees * Math.PI) / 180;
    const c = 2 * Math.sin(angle / 2);
    expect(Math.abs(c - chord)).toBeLessThan(printed);
    expect(Math.abs(sagitta(1, c) - height)).toBeLessThan(printed);
    const from = point(-c / 2, 0);
    const to = point(c / 2, 0);
    expect(Math.abs(area(pen(to).arc(from, 1, 1).close()) - wanted)).toBeLessThan(printed);
    expect(lengthOf(arcFromTo(from, to, 1, -1))).toBeCloseTo(angle, 12);
    // Back from the printed height and chord: their rounding, magnified by c²/8h², is all that is lost.
    expect(Math.abs(radiusFromSagitta(chord, height) - 1)).toBeLessThan(
      1e-5 * (1 + (chord / height) ** 2 / 8 + chord / (4 * height)),
    );
  });
});
