import { partOf } from './along.ts';
import { type Beside, besideSegment, cornerArc, stray } from './beside.ts';
import { boundsApart, boundsOfSegment } from './bounds.ts';
import { chain } from './chain.ts';
import { monotoneParts } from './cubic.ts';
import { meetings } from './intersect.ts';
import { area, lengthOf, pathLength } from './measure.ts';
import { distanceTo } from './nearest.ts';
import { isSimple } from './simple.ts';
import type { Bounds, Path, Segment } from './types.ts';

/** A place that falls short of the wanted distance by no more than this (mm) is at it; a fitted curve's may stray as far as the fit. */
const short = 1e-6;
const shortWhenFitted = 2 * stray;

/** The pieces beside each segment, and round each corner that opens towards that side. Those in one run do not meet each other. */
const besidePath = (path: Path, side: number): readonly (readonly Beside[])[] => {
  const segments = path.segments
    .flatMap((s): readonly Segment[] => (s.kind === 'cubic' ? monotoneParts(s) : [s]))
    .filter((s) => lengthOf(s) > 1e-9);
  return segments.flatMap((s, i) => {
    const corner = cornerArc(segments.at(i - 1) as Segment, s, side);
    return [corner ? [corner] : [], besideSegment(s, side)];
  });
};

interface Cutting {
  readonly piece: Beside;
  readonly run: number;
  readonly box: Bounds;
  readonly cuts: number[];
}

/** All pieces cut where any two of them meet. */
const cutAtMeetings = (runs: readonly (readonly Beside[])[]): readonly Beside[] => {
  const all = runs.flatMap((pieces, run) =>
    pieces.map((piece): Cutting => ({ piece, run, box: boundsOfSegment(piece.segment), cuts: [0, 1] })),
  );
  all.forEach((a, i) => {
    for (const b of all.slice(i + 1)) {
      if (a.run === b.run || boundsApart(a.box, b.box, 1e-6)) continue;
      for (const m of meetings(a.piece.segment, b.piece.segment)) {
        a.cuts.push(m.t);
        b.cuts.push(m.u);
      }
    }
  });
  return all.flatMap(({ piece: { segment, truly, exact }, cuts }) => {
    const ts = cuts.sort((p, q) => p - q).filter((t, k) => k === 0 || t > (cuts[k - 1] as number));
    return ts.slice(1).map((to, k) => {
      const from = ts[k] as number;
      return { segment: partOf(segment, from, to), truly: (t: number) => truly(from + (to - from) * t), exact };
    });
  });
};

/**
 * The outlines that run at a distance (mm) from a closed path, + outside it whichever way it runs, − inside. A line's is a line, an arc's an arc about the same
 * centre, a cubic's cubics within 0.001 mm; corners that open are rounded by arcs, those that close are trimmed where their sides meet. What would
 * stand nearer to the path than the distance is left out: nothing may remain (an empty list), or several outlines, of which those that turn against the path bound holes.
 * Throws RangeError when the path is open, or crosses itself.
 */
export const offset = (path: Path, distance: number): Path[] => {
  if (!path.closed) throw new RangeError('An open path has no inside to be offset from; close it first.');
  if (!Number.isFinite(distance)) throw new RangeError(`The offset is ${distance} mm; it must be a finite number.`);
  if (!isSimple(path))
    throw new RangeError('A path that crosses or touches itself has no clear inside; mend it before it is offset.');
  if (distance === 0) return [path];
  const turn = Math.sign(area(path));
  const pieces = cutAtMeetings(besidePath(path, distance * turn));
  const clear = pieces.filter(
    (p) => distanceTo(path, p.truly(0.5)) >= Math.abs(distance) - (p.exact ? short : shortWhenFitted),
  );
  const sliver = clear.every((p) => p.exact) ? short : shortWhenFitted;
  return chain(
    clear.map((p) => p.segment),
    turn,
  ).filter((p) => Math.abs(area(p)) > sliver * pathLength(p));
};
