import { bounds } from './bounds.ts';
import { levelCrossings } from './crossing.ts';
import { rotate } from './point.ts';
import { turnPath } from './transform.ts';
import type { Line, Path } from './types.ts';

type Span = readonly [from: number, to: number];

/** The stretches of a level line inside a closed path, even-odd. */
const spansInside = (crossings: readonly { readonly x: number }[]): readonly Span[] => {
  const xs = crossings.map((c) => c.x).sort((p, q) => p - q);
  return xs.flatMap((x, i): Span[] => (i % 2 === 1 ? [[xs[i - 1] as number, x]] : []));
};

const without = (spans: readonly Span[], hole: Span): readonly Span[] =>
  spans.flatMap(([from, to]): Span[] =>
    hole[1] <= from || hole[0] >= to
      ? [[from, to]]
      : [
          [from, hole[0]],
          [hole[1], to],
        ],
  );

/**
 * Parallel lines, `spacing` mm apart and turned by `angle` radians from +x towards +y, that fill a closed outline but not its holes; each
 * ends exactly on an outline. One of them would pass through the plane's origin, so that neighbouring faces line up.
 * Throws RangeError unless the spacing is more than 0 and every path is closed.
 */
export const hatch = (outline: Path, holes: readonly Path[], spacing: number, angle: number): Line[] => {
  if (!(spacing > 0)) throw new RangeError(`Hatch lines are ${spacing} mm apart; the spacing must be more than 0 mm.`);
  if (![outline, ...holes].every((p) => p.closed))
    throw new RangeError('An open path cannot be hatched; close the outline and its holes first.');
  // Turned back, the lines run level.
  const level = turnPath(outline, -angle);
  const crossOutline = levelCrossings(level);
  const crossHoles = holes.map((h) => levelCrossings(turnPath(h, -angle)));
  const { minY, maxY } = bounds(level);
  const lines: Line[] = [];
  for (let k = Math.ceil(minY / spacing); k * spacing <= maxY; k++) {
    const y = k * spacing;
    const spans = crossHoles
      .flatMap((crossings) => spansInside(crossings(y)))
      .reduce(without, spansInside(crossOutline(y)));
    for (const [from, to] of spans)
      if (to - from > 1e-9)
        lines.push({ kind: 'line', from: rotate({ x: from, y }, angle), to: rotate({ x: to, y }, angle) });
  }
  return lines;
};
