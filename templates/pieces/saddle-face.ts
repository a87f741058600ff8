import { floorRadius } from '../../geometry/bridge/surface.ts';
import type { Design } from '../../geometry/design.ts';
import type { Mark } from '../../geometry/drawing.ts';
import { fixedLength, stroke, upright } from '../../geometry/marks.ts';
import { halfSaddle, saddleOutline } from '../../geometry/saddle/face.ts';
import { type PassAdvice, takeOffAt } from '../../geometry/saddle/setup.ts';
import type { Settled } from '../../geometry/settle.ts';
import { bounds } from '../../geometry/shape/measure.ts';
import { path, polyline, segmentEnd, segmentStart } from '../../geometry/shape/path.ts';
import { drop } from '../../geometry/shape/sagitta.ts';
import type { Path } from '../../geometry/shape/types.ts';

/** The finished bottom of an outline: the last of its segments. */
const finishedBottom = ({ segments }: Path): Path => path(segments.slice(-1), false);

/** The outline with its ends carried straight down to the edge of what is left proud, so that it is cut in one. */
const withProud = (outline: Path, half: number, edge: number): Path => {
  const { segments } = outline;
  const crown = segments.slice(1, -2);
  const [first, last] = [crown[0], crown.at(-1)];
  if (first === undefined || last === undefined) throw new RangeError('A saddle needs a crown.');
  const corners = [
    { x: -half, y: edge },
    { x: half, y: edge },
  ] as const;
  return path(
    [
      { kind: 'line', from: corners[0], to: segmentStart(first) },
      ...crown,
      { kind: 'line', from: segmentEnd(last), to: corners[1] },
      { kind: 'line', from: corners[1], to: corners[0] },
    ],
    true,
  );
};

/** The saddle's face as it is sawn, seen from the tail: x along it, + treble, y DOWN from the fret plane, mm. */
export interface SaddleFace {
  readonly half: number;
  /** The page heights of its highest place, of the finished bottom at a place along it and at its ends, and of the bottom with what is left proud. */
  readonly top: number;
  readonly bottomAt: (x: number) => number;
  readonly bottom: number;
  readonly edge: number;
  /** What is sawn, one outline with what is left proud; in it the finished bottom where it is left proud, only shown. */
  readonly marks: readonly Mark[];
}

export const saddleFace = (job: Settled, design: Design): SaddleFace => {
  const { proud } = job.saddle;
  const half = halfSaddle(design, 'along');
  const outline = saddleOutline(design, 'along', floorRadius(job));
  // A bottom that follows the dome lies lowest at its ends: what is left proud is cut straight below them.
  const bottomAt = (x: number) => -design.saddle.bottom + drop(floorRadius(job), x);
  const bottom = bottomAt(half);
  const edge = bottom + proud;
  return {
    half,
    top: bounds(outline).minY,
    bottomAt,
    bottom,
    edge,
    marks: [
      stroke('outline', proud > 0 ? withProud(outline, half, edge) : outline, { line: 'outline', purpose: 'cut' }),
      ...(proud > 0
        ? [
            stroke('finishedBottom', finishedBottom(outline), {
              line: 'phantom',
              purpose: 'show',
              jobPath: 'saddle.proud',
            }),
          ]
        : []),
    ],
  };
};

/** The bottom that the last reading asks for, over the edge that is the saddle's bottom as it is; and what comes off at either end, − where that is too low already. */
export const takeOff = (pass: PassAdvice | undefined, half: number, edge: number): readonly Mark[] => {
  if (pass === undefined || pass.isThere) return [];
  const at = (x: number) => ({ x, y: edge - takeOffAt(pass.ends, half, x) });
  const end = (side: 'bass' | 'treble', x: number, ems: number): Mark =>
    upright(`takeOff.${side}`, { x, y: edge }, at(x), x, ems, undefined, [fixedLength(pass.ends[side])]);
  return [
    stroke('takeOff', polyline([at(-half), at(half)], false), {
      line: 'thin',
      purpose: Math.min(pass.ends.bass, pass.ends.treble) < 0 ? 'show' : 'cut',
    }),
    end('bass', -half, -4.6),
    end('treble', half, 6.8),
  ];
};
