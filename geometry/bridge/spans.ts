import { levelCrossings } from '../shape/crossing.ts';
import { place } from '../shape/transform.ts';
import type { Path } from '../shape/types.ts';

/** A stretch of a line, from its lower end to its higher, mm. */
export type Stretch = readonly [from: number, to: number];

/** Stretches no longer than this, mm, are none. */
const hair = 1e-9;

const pairs = (xs: readonly number[]): readonly Stretch[] => {
  const sorted = xs.toSorted((a, b) => a - b);
  return sorted.flatMap((x, i): Stretch[] => {
    const from = sorted[i - 1];
    return i % 2 === 1 && from !== undefined && x - from > hair ? [[from, x]] : [];
  });
};

/** Finds, for a distance from the nut, the stretches across the guitar in which it lies inside a closed outline seen from above. */
export const stretchesAcross = (outline: Path): ((x: number) => readonly Stretch[]) => {
  const at = levelCrossings(outline);
  return (x) => pairs(at(x).map((crossing) => crossing.x));
};

/** Finds, for a place across the guitar, the stretches along it, as distances from the nut, that lie inside a closed outline seen from above. */
export const stretchesAlong = (outline: Path): ((y: number) => readonly Stretch[]) => {
  // Turned a quarter, what runs along the guitar runs level.
  const at = levelCrossings(place(outline, { turn: -Math.PI / 2 }));
  return (y) => pairs(at(-y).map((crossing) => crossing.x));
};

/** What is left of stretches when others are taken out. */
export const without = (stretches: readonly Stretch[], taken: readonly Stretch[]): readonly Stretch[] =>
  taken.reduce<readonly Stretch[]>(
    (left, [from, to]) =>
      left.flatMap(([a, b]): readonly Stretch[] =>
        (
          [
            [a, Math.min(b, from)],
            [Math.max(a, to), b],
          ] as const
        ).filter(([p, q]) => q - p > hair),
      ),
    stretches,
  );

/** What two sets of stretches share. */
export const shared = (some: readonly Stretch[], others: readonly Stretch[]): readonly Stretch[] =>
  some.flatMap(([a, b]) =>
    others.map(([from, to]): Stretch => [Math.max(a, from), Math.min(b, to)]).filter(([p, q]) => q - p > hair),
  );
