import { pyramidOf } from '../../bridge/pyramid.ts';
import type { Design, SolvedString } from '../../design.ts';
import { setAt } from '../../fields.ts';
import type { Settled } from '../../settle.ts';
import type { Point } from '../../shape/types.ts';
import { solve } from '../../solve.ts';
import { acrossPage, even, found, type Grip, gripsForHand } from './grip.ts';

const up: Point = { x: 0, y: -1 };

/** The deck's arc at the bass shoulder: how far it has fallen there from the middle gives its radius, `(s² + d²)/(2d)` for a fall d at a distance s. None where the deck is flat. */
const radiusGrip = (job: Settled, { deckCentre, profile }: Design): readonly Grip[] => {
  const { topRadius, deckWidth, tilt } = job.bridge;
  if (topRadius === 'flat') return [];
  const s = deckWidth / 2;
  const level = deckCentre - tilt * s;
  return [
    {
      id: 'topRadius',
      jobPath: 'bridge.topRadius',
      at: { x: -s, y: -profile.shoulderBass },
      axis: up,
      value: ({ y }) => {
        const fall = Math.min(level + y, s);
        return fall > 0 ? (s * s + fall * fall) / (2 * fall) : Number.POSITIVE_INFINITY;
      },
    },
  ];
};

const shoulders = ({ bridge }: Settled, { profile }: Design): readonly Grip[] =>
  bridge.deckWidth >= bridge.length
    ? []
    : [
        even({
          id: 'deckWidth',
          jobPath: 'bridge.deckWidth',
          at: { x: bridge.deckWidth / 2, y: -profile.shoulderTreble },
          axis: acrossPage,
          now: bridge.deckWidth,
          rate: 2,
        }),
      ];

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

/** The outer strings' undersides on the crown: the action that is wanted there. A computed setback moves with it, so its place is looked for. */
const actions = (job: Settled, { strings }: Design): readonly Grip[] =>
  (['bass', 'treble'] as const).map((side) => {
    const k = side === 'bass' ? 0 : strings.length - 1;
    const { acrossAtSaddle, heightAboveFretPlane } = strings[k] as SolvedString;
    const jobPath = `action.${side}`;
    const height = (action: number) => {
      const solved = solve(setAt(job, jobPath, action));
      return solved.ok ? solved.design.strings[k]?.heightAboveFretPlane : undefined;
    };
    return {
      id: jobPath,
      jobPath,
      at: { x: acrossAtSaddle, y: -heightAboveFretPlane },
      axis: up,
      // Some twice as much at the saddle as at fret 12.
      value: ({ y }) => found(height, -y, job.action[side], 2),
    };
  });

/** Where the bridge and its saddle are taken hold of in the view from the tail; places as in that view, heights not stretched. */
export const tailGrips = (job: Settled, design: Design): readonly Grip[] =>
  gripsForHand(
    [
      ...radiusGrip(job, design),
      ...shoulders(job, design),
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
      ...actions(job, design),
    ],
    job,
  );
