/** A half-space in which the answer has to lie: `Σ along[j]·d[j] ≤ limit`. */
export interface Bound {
  readonly along: readonly number[];
  readonly limit: number;
}

const mostSweeps = 400;
const close = 1e-10;
/** Bounds that no step moves: they hold, or nothing helps. */
const flat = 1e-18;
const hair = 1e-9;

/**
 * The shortest step d that keeps every bound; undefined where none does. Source: Hildreth, A quadratic programming procedure, Naval Research Logistics Quarterly 4 (1957) 79: one bound after the
 * other is met by a multiplier of its own, until nothing moves.
 */
export const nearest = (size: number, bounds: readonly Bound[]): readonly number[] | undefined => {
  const count = bounds.length;
  const along = new Float64Array(count * size);
  const square = new Float64Array(count);
  const limit = Float64Array.from(bounds, (bound) => bound.limit);
  for (const [i, bound] of bounds.entries())
    for (let j = 0; j < size; j += 1) {
      const a = bound.along[j] ?? 0;
      along[i * size + j] = a;
      square[i] = (square[i] as number) + a * a;
    }
  const push = new Float64Array(count);
  const step = new Float64Array(size);
  /** How far the step lies beyond a bound, times the length of its `along`; negative within it. */
  const over = (i: number): number => {
    let sum = -(limit[i] as number);
    for (let j = 0; j < size; j += 1) sum += (along[i * size + j] as number) * (step[j] as number);
    return sum;
  };
  for (let sweep = 0; sweep < mostSweeps; sweep += 1) {
    let moved = 0;
    for (let i = 0; i < count; i += 1) {
      if ((square[i] as number) < flat) continue;
      const next = Math.max(0, (push[i] as number) + over(i) / (square[i] as number));
      const change = next - (push[i] as number);
      if (change === 0) continue;
      push[i] = next;
      for (let j = 0; j < size; j += 1) step[j] = (step[j] as number) - change * (along[i * size + j] as number);
      moved = Math.max(moved, Math.abs(change) * Math.sqrt(square[i] as number));
    }
    if (moved <= close) break;
  }
  for (let i = 0; i < count; i += 1) if (over(i) > hair + 1e-6 * Math.sqrt(square[i] as number)) return undefined;
  return [...step];
};
