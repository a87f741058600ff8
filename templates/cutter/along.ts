import { partOf } from '../../geometry/shape/along.ts';
import { lengthOf, pathLength } from '../../geometry/shape/measure.ts';
import type { Path, Segment } from '../../geometry/shape/types.ts';

/** Shorter ends than this (mm) are left off. */
const nothing = 1e-7;

/** The parameter at which a segment has run so many mm. */
const parameterAt = (s: Segment, run: number): number => {
  const whole = lengthOf(s);
  if (s.kind !== 'cubic') return run / whole;
  let [low, high] = [0, 1];
  for (let n = 0; n < 48; n++) {
    const middle = (low + high) / 2;
    if (lengthOf(partOf(s, 0, middle)) < run) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

/** The open stretch of a closed path from one place to another, both in mm along it from its start; one before the other, and the second at most once round again. */
export const stretch = (closed: Path, from: number, to: number): Path => {
  const whole = pathLength(closed);
  const turns = Math.floor(from / whole) * whole;
  const [begin, end] = [from - turns, to - turns];
  const segments: Segment[] = [];
  let run = 0;
  for (const s of [...closed.segments, ...closed.segments]) {
    const long = lengthOf(s);
    const [a, b] = [Math.max(begin - run, 0), Math.min(end - run, long)];
    if (b - a > nothing) {
      const cut = [a > nothing ? parameterAt(s, a) : 0, b < long - nothing ? parameterAt(s, b) : 1] as const;
      segments.push(cut[0] === 0 && cut[1] === 1 ? s : partOf(s, ...cut));
    }
    run += long;
  }
  return { segments, closed: false };
};

/** A closed path that starts in the middle of its longest straight line, where the tool's first mark is dressed off most easily; as it is where it has none. */
export const startedOnStraight = (closed: Path): Path => {
  const straights = closed.segments.filter((s) => s.kind === 'line');
  const [longest] = straights.toSorted((a, b) => lengthOf(b) - lengthOf(a));
  if (!longest) return closed;
  const k = closed.segments.indexOf(longest);
  const { segments } = closed;
  return {
    segments: [partOf(longest, 0.5, 1), ...segments.slice(k + 1), ...segments.slice(0, k), partOf(longest, 0, 0.5)],
    closed: true,
  };
};
