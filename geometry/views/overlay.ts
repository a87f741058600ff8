import type { Letter } from '../alternatives.ts';
import type { Design } from '../design.ts';
import type { Drawing, Mark, PathMark } from '../drawing.ts';
import { note, stroke } from '../marks.ts';
import type { Settled } from '../settle.ts';
import { pointOn } from '../shape/along.ts';
import { distanceTo } from '../shape/nearest.ts';
import { distance } from '../shape/point.ts';
import type { Path, Point, Segment } from '../shape/types.ts';
import { above } from './above.ts';
import { gripsOf } from './grips/index.ts';
import { type LaidOver, nothingOver } from './laid-over.ts';
import { middle } from './middle.ts';
import { tail } from './tail.ts';

/** A design to be laid over the present one. */
export interface Other {
  readonly letter: Letter;
  readonly job: Settled;
  readonly design: Design;
}

/** In each view, and the marks in it by which designs are told apart: footprint and slot; end profile with its deck, and saddle with its crown; section and saddle. */
const telling = {
  above: { draw: above, outlines: ['bridge.outline', 'slot'] },
  tail: { draw: tail, outlines: ['bridge.profile', 'saddle'] },
  middle: { draw: middle, outlines: ['bridge.section', 'saddle.section'] },
} as const;

/** Points looked at on each segment of an outline, and how near to the place where it lies farthest off one is still telling, as a share of that. */
const looks = 6;
const near = 0.6;
/** What an arrow that leads to a line keeps off the places where the present design is taken hold of, mm, as far as the line leaves it room. */
const besideGrip = 7;
/** How many places on its line a letter may stand at; where none does, it stands beside the first with a leader line. */
const choice = 5;

type View = keyof typeof telling;

/** What each design was seen to be: while the present one is worked at, the others stay as they are. */
const seen: Readonly<Record<View, WeakMap<Settled, Drawing>>> = {
  above: new WeakMap(),
  tail: new WeakMap(),
  middle: new WeakMap(),
};

const drawn = (view: View, { job, design }: Omit<Other, 'letter'>): Drawing => {
  const before = seen[view].get(job);
  if (before !== undefined) return before;
  const drawing = telling[view].draw(job, design);
  seen[view].set(job, drawing);
  return drawing;
};

/** The parts of one outline of a view: cut elsewhere it may be several, numbered from the second. */
const partsOf = ({ marks }: Drawing, outline: string): readonly PathMark[] =>
  marks.flatMap((mark) => {
    const isPart = mark.id === outline || /^\.\d+$/.test(mark.id.slice(outline.length));
    return mark.kind === 'path' && mark.id.startsWith(outline) && isPart ? [mark] : [];
  });

/** Two lines that run no farther apart than this, mm, are one: it is not wood but rounding. */
const hair = 1e-6;

/** Three points on a segment, by which it is told from others of its kind. */
interface Course {
  readonly kind: Segment['kind'];
  readonly points: readonly Point[];
}

const courseOf = (segment: Segment): Course => ({
  kind: segment.kind,
  points: [0, 0.5, 1].map((t) => pointOn(segment, t)),
});

const isSame = (a: Course, b: Course): boolean =>
  a.kind === b.kind && a.points.every((p, k) => distance(p, b.points[k] as Point) <= hair);

/** What of an outline is not the present one's, each run of it by itself; all of it, closed, where nothing is shared. */
const apart = (path: Path, present: readonly Course[]): readonly Path[] => {
  const own = path.segments.map((segment) => {
    const course = courseOf(segment);
    return !present.some((one) => isSame(one, course));
  });
  if (own.every(Boolean)) return [path];
  // Begun behind a shared segment, so that no run of a closed outline is cut in two where that happens to begin.
  const first = path.closed ? own.indexOf(false) : 0;
  const runs: Segment[][] = [];
  let run: Segment[] | undefined;
  for (let k = 0; k < own.length; k += 1) {
    const at = (first + k) % own.length;
    if (!own[at]) {
      run = undefined;
      continue;
    }
    if (run === undefined) {
      run = [];
      runs.push(run);
    }
    run.push(path.segments[at] as Segment);
  }
  return runs.map((segments) => ({ segments, closed: false }));
};

/** The least distance from a point to any of some lines; infinite where there are none. */
const awayFrom = (lines: readonly Path[], at: Point): number => Math.min(...lines.map((line) => distanceTo(line, at)));

/** The places that lie farthest off, or nearly. */
const tellingMost = <P extends { readonly off: number }>(places: readonly P[]): readonly P[] => {
  const farthest = Math.max(...places.map(({ off }) => off));
  // Where nothing else is drawn, all are as far off.
  return farthest === Number.POSITIVE_INFINITY ? places : places.filter(({ off }) => off >= near * farthest);
};

/** So many of a row, evenly. */
const some = <T>(row: readonly T[], count: number): readonly T[] =>
  row.length <= count
    ? row
    : Array.from({ length: count }, (_, k) => row[Math.floor(((k + 0.5) / count) * row.length)] as T);

/**
 * Where letter n of several stands on an outline, the better first: well off the present one, there well off the other alternatives', and there at a place of its own from left to right.
 */
const namedPlaces = (
  lines: readonly Path[],
  present: readonly Path[],
  others: readonly Path[],
  grips: readonly Point[],
  [n, of]: readonly [number, number],
): readonly [Point, ...Point[]] => {
  const places = lines.flatMap(({ segments }) =>
    segments.flatMap((segment) =>
      Array.from({ length: looks }, (_, k) => {
        const at = pointOn(segment, (k + 0.5) / looks);
        return { at, off: awayFrom(present, at) };
      }),
    ),
  );
  const good = tellingMost(places);
  const open = good.filter(({ at }) => grips.every((grip) => distance(grip, at) >= besideGrip));
  const inOrder = (open.length > 0 ? open : good).toSorted((a, b) => a.at.x - b.at.x || a.at.y - b.at.y);
  const looked = some(inOrder, choice).map(({ at }, k, all) => ({
    at,
    off: awayFrom(others, at),
    aside: Math.abs((k + 0.5) / all.length - (n + 0.5) / of),
  }));
  const best = tellingMost(looked);
  return looked
    .toSorted((a, b) => Number(best.includes(b)) - Number(best.includes(a)) || a.aside - b.aside)
    .map(({ at }) => at) as [Point, ...Point[]];
};

/**
 * What other designs' outlines lie over the present one's views: each as a thin line that carries its letter, in the view's own mm. What of an outline is the present one's is not drawn again.
 */
export const overlay = (now: Omit<Other, 'letter'>, others: readonly Other[]): LaidOver => {
  if (others.length === 0) return nothingOver;
  const over = (view: View): readonly Mark[] => {
    const below = drawn(view, now);
    const grips = gripsOf(view, now.job, now.design).map(({ at }) => at);
    return telling[view].outlines.flatMap((outline) => {
      const present = partsOf(below, outline).map(({ path }) => path);
      const shared = present.flatMap(({ segments }) => segments.map(courseOf));
      const differing = others
        .map((other) => ({
          letter: other.letter,
          lines: partsOf(drawn(view, other), outline).flatMap(({ path }) => apart(path, shared)),
        }))
        .filter(({ lines }) => lines.length > 0);
      return differing.flatMap(({ letter, lines }, n): readonly Mark[] => {
        const besides = differing.flatMap((other) => (other.letter === letter ? [] : other.lines));
        const names = namedPlaces(lines, present, besides, grips, [n, differing.length]);
        return [
          ...lines.map((line, k) => ({
            ...stroke(`alternative.${letter}.${outline}.${k + 1}`, line, { line: 'thin', purpose: 'show' }),
            alternative: letter,
          })),
          {
            ...note(`alternative.${letter}.${outline}.letter`, names[0], [letter], {
              bold: true,
              names,
              keepsOff: grips,
            }),
            alternative: letter,
          },
        ];
      });
    });
  };
  return { above: over('above'), tail: over('tail'), middle: over('middle') };
};
