import { heightOn } from '../../bridge/graph.ts';
import { pyramidOf } from '../../bridge/pyramid.ts';
import { deckHeight, floorRadius, undersideHeight } from '../../bridge/surface.ts';
import { topLine, wingSpan } from '../../bridge/top-line.ts';
import { levelRadius } from '../../bridge/wings/hollow.ts';
import type { Design, SolvedString } from '../../design.ts';
import { setAt } from '../../fields.ts';
import { halfSaddle } from '../../saddle/face.ts';
import type { Settled } from '../../settle.ts';
import { segmentEnd, segmentStart } from '../../shape/path.ts';
import { drop } from '../../shape/sagitta.ts';
import type { Path, Point, Segment } from '../../shape/types.ts';
import { acrossPage, even, found, type Grip, gripsForHand } from './grip.ts';
import { sought } from './sought.ts';

/** Radii nearer than this are one, mm. */
const hair = 1e-9;

const up: Point = { x: 0, y: -1 };

/** The deck's arc at the bass shoulder: how far it has fallen there from the middle gives its radius, `(s² + d²)/(2d)` for a fall d at a distance s; infinite for a flat deck, which has not fallen. */
const radiusGrip = (job: Settled, { deckCentre, profile }: Design): Grip => {
  const { deckWidth, tilt } = job.bridge;
  const s = deckWidth / 2;
  const level = deckCentre - tilt * s;
  return {
    id: 'topRadius',
    jobPath: 'bridge.topRadius',
    at: { x: -s, y: -profile.shoulderBass },
    axis: up,
    value: ({ y }) => {
      const fall = Math.min(level + y, s);
      return fall > 0 ? (s * s + fall * fall) / (2 * fall) : Number.POSITIVE_INFINITY;
    },
  };
};

/** The deck's treble shoulder, or half-way out to it where it is rounded, clear of the rounding's own grip: how far it is tilted. */
const tiltGrip = (job: Settled): Grip => {
  const { deckWidth, tilt, shoulder } = job.bridge;
  const x = deckWidth / (shoulder === 'sharp' ? 2 : 4);
  return even({
    id: 'tilt',
    jobPath: 'bridge.tilt',
    at: { x, y: -deckHeight(job, x) },
    axis: up,
    now: tilt,
    rate: 1 / x,
  });
};

/** What the upper line holds when a number of the bridge is another one; undefined where no such line can be. */
const onTopLine = (job: Settled, jobPath: string, read: (line: Path) => number | undefined) => (value: number) => {
  try {
    return read(topLine(setAt(job, jobPath, value)));
  } catch {
    return undefined;
  }
};

/** The segment of the upper line next to the deck on the treble side: the rounding of the shoulder, where that is rounded. */
const behindDeck = ({ segments }: Path): Segment | undefined =>
  segments[segments.findIndex((s) => segmentEnd(s).x > 0) + 1];

/** Where the deck goes over into the rounding of its treble shoulder; none where that is sharp, or so blunt that nothing is rounded. */
const shoulderGrips = (job: Settled): readonly Grip[] => {
  const { shoulder, deckWidth } = job.bridge;
  if (shoulder === 'sharp') return [];
  const rounding = behindDeck(topLine(job));
  if (rounding?.kind !== 'arc' || Math.abs(rounding.radius - shoulder) > hair) return [];
  const at = segmentStart(rounding);
  const reached = onTopLine(job, 'bridge.shoulder', (line) => {
    const now = behindDeck(line);
    return now && segmentStart(now).x;
  });
  const slope = (at.x - deckWidth / 2) / shoulder;
  return [
    {
      id: 'shoulder',
      jobPath: 'bridge.shoulder',
      at,
      axis: { x: -1, y: 0 },
      value: ({ x }) => found(reached, x, shoulder, slope),
    },
  ];
};

/** The middle of a hollow wing on the treble side: how deep its arc is. The place goes nearly evenly with the arc's curvature, so that is looked for. */
const scoopGrips = (job: Settled): readonly Grip[] => {
  const { bridge } = job;
  const span = wingSpan(job, 1);
  if (bridge.wing !== 'hollow' || span === undefined || span.fall <= 0) return [];
  const x = (bridge.deckWidth + span.width) / 2;
  const now = bridge.scoop === 'level' ? levelRadius(span) : bridge.scoop;
  const reached = onTopLine(job, 'bridge.scoop', (line) => heightOn(line, x));
  const slope = (span.width ** 2 + span.fall ** 2) / 8;
  return [
    {
      id: 'scoop',
      jobPath: 'bridge.scoop',
      at: { x, y: heightOn(topLine(job), x) },
      axis: up,
      value: ({ y }) => 1 / found((bend) => (bend > 0 ? reached(1 / bend) : undefined), y, 1 / now, slope),
    },
  ];
};

/** The deck's width, on the underside below its treble shoulder, where the line of its dimension passes. */
const deckEnd = (job: Settled): readonly Grip[] => {
  const { bridge } = job;
  const x = bridge.deckWidth / 2;
  return bridge.deckWidth >= bridge.length
    ? []
    : [
        even({
          id: 'deckWidth',
          jobPath: 'bridge.deckWidth',
          at: { x, y: -undersideHeight(job, x) },
          axis: acrossPage,
          now: bridge.deckWidth,
          rate: 2,
        }),
      ];
};

/** The upper edges of the tips: one number for both, or one for each. */
const tips = ({ bridge }: Settled, { profile }: Design): readonly Grip[] => {
  const half = bridge.length / 2;
  const isSame = bridge.tipTreble === 'same';
  return [
    even({
      id: 'tipThickness',
      jobPath: 'bridge.tipThickness',
      at: { x: -half, y: -profile.tipTop },
      axis: up,
      now: bridge.tipThickness,
    }),
    even({
      id: 'tipTreble',
      jobPath: isSame ? 'bridge.tipThickness' : 'bridge.tipTreble',
      at: { x: half, y: -profile.tipTopTreble },
      axis: up,
      now: bridge.tipTreble === 'same' ? bridge.tipThickness : bridge.tipTreble,
      ...(isSame && { isTwin: true }),
    }),
  ];
};

const ridge = (job: Settled): readonly Grip[] => {
  if (job.bridge.footprint !== 'pyramid') return [];
  const { x, y } = pyramidOf(job, 1).ridge;
  const now = job.bridge.pyramidThickness;
  return [even({ id: 'pyramidThickness', jobPath: 'bridge.pyramidThickness', at: { x, y: -y }, axis: up, now })];
};

/** The outer strings' undersides on the crown: the action that is wanted there, which moves a computed setback with it. */
const actions = (job: Settled, design: Design): readonly Grip[] =>
  (['bass', 'treble'] as const).map((side) =>
    sought(job, design, {
      id: `action.${side}`,
      jobPath: `action.${side}`,
      place: ({ strings }) => {
        const { acrossAtSaddle, heightAboveFretPlane } = strings.at(side === 'bass' ? 0 : -1) as SolvedString;
        return { x: acrossAtSaddle, y: -heightAboveFretPlane };
      },
      axis: up,
      now: job.action[side],
      // Some twice as much at the saddle as at fret 12.
      slope: 2,
    }),
  );

/** The end of a saddle in a slot that is open at both ends, whose length is the saddle's. */
const saddleEnd = (job: Settled, design: Design): readonly Grip[] => {
  const { slot } = job;
  if (slot.ends !== 'through') return [];
  const half = halfSaddle(design, 'across');
  return [
    even({
      id: 'slot.length',
      jobPath: 'slot.length',
      at: { x: half, y: drop(floorRadius(job), half) - design.saddle.bottom },
      axis: acrossPage,
      now: slot.length,
      rate: design.saddle.length / half,
    }),
  ];
};

/** Where the bridge and its saddle are taken hold of in the view from the tail; places as in that view, heights not stretched. */
export const tailGrips = (job: Settled, design: Design): readonly Grip[] =>
  gripsForHand(
    [
      radiusGrip(job, design),
      tiltGrip(job),
      ...deckEnd(job),
      ...shoulderGrips(job),
      ...scoopGrips(job),
      ...tips(job, design),
      ...ridge(job),
      ...(job.show.sectionAlong === 'saddle'
        ? [
            even({
              id: 'slot.depth',
              jobPath: 'slot.depth',
              at: { x: 0, y: -design.slotFloor },
              axis: { x: 0, y: 1 },
              now: job.slot.depth,
            }),
          ]
        : []),
      ...saddleEnd(job, design),
      ...actions(job, design),
    ],
    job,
  );
