import type { Design } from '../../design.ts';
import type { Settled } from '../../settle.ts';
import type { Point } from '../../shape/types.ts';
import { acrossPage, downPage, even, type Grip } from './grip.ts';

type Outline = (job: Settled, design: Design) => readonly Grip[];

const half = ({ bridge }: Settled): number => bridge.length / 2;

/** Half the width of a belly or a waist, as it is drawn. */
const swing = (width: number, job: Settled): number => Math.min(width / 2, half(job));

/** How far along an eased corner's arc, from its tangents' meeting, its middle lies in either direction, as a share of its radius. */
const onArc = 1 - Math.SQRT1_2;

/** The tips of a bridge, half-way between two distances from the nut. */
const tips = (job: Settled, from: number, to: number): readonly Grip[] =>
  ([1, -1] as const).map((side) =>
    even({
      id: side === 1 ? 'length' : 'length.bass',
      jobPath: 'bridge.length',
      at: { x: side * half(job), y: (from + to) / 2 },
      axis: { x: side, y: 0 },
      now: job.bridge.length,
      rate: 2,
      ...(side === -1 && { isTwin: true }),
    }),
  );

/** The rear edge, or where the rearmost point of it lies. */
const rear = (job: Settled, at: Point, rate = 1): Grip =>
  even({ id: 'depth', jobPath: 'bridge.depth', at, axis: downPage, now: job.bridge.depth, rate });

/** A belly's two numbers, where its curve leaves the wing at a distance `wing` from the nut; `out` is +1 where the belly lies behind. */
const bellyGrips = (job: Settled, wing: number, out: 1 | -1): readonly Grip[] => {
  const { bellyWidth, wingDepth } = job.bridge;
  const a = swing(bellyWidth, job);
  return [
    even({
      id: 'wingDepth',
      jobPath: 'bridge.wingDepth',
      at: { x: -(a + half(job)) / 2, y: wing },
      axis: { x: 0, y: out },
      now: wingDepth,
    }),
    even({
      id: 'bellyWidth',
      jobPath: 'bridge.bellyWidth',
      at: { x: a, y: wing },
      axis: acrossPage,
      now: bellyWidth,
      rate: 2,
    }),
  ];
};

const belly: Outline = (job, { bridgeFront: front, bridgeRear }) => {
  const wing = front + job.bridge.wingDepth;
  return [...tips(job, front, wing), rear(job, { x: 0, y: bridgeRear }), ...bellyGrips(job, wing, 1)];
};

const bellyBefore: Outline = (job, { bridgeRear: last }) => {
  const wing = last - job.bridge.wingDepth;
  return [...tips(job, wing, last), rear(job, { x: half(job) / 2, y: last }), ...bellyGrips(job, wing, -1)];
};

const rectangle: Outline = (job, { bridgeFront: front, bridgeRear: last }) => {
  const { ends, cornerRadius: r } = job.bridge;
  const sides = [...tips(job, front, last), rear(job, { x: half(job) / 2, y: last })];
  if (ends !== 'eased') return sides;
  const inwards = { x: -Math.SQRT1_2, y: -Math.SQRT1_2 };
  return [
    ...sides,
    even({
      id: 'cornerRadius',
      jobPath: 'bridge.cornerRadius',
      at: { x: half(job) - onArc * r, y: last - onArc * r },
      axis: inwards,
      now: r,
      rate: 1 / (onArc * Math.SQRT2),
    }),
  ];
};

const pyramid: Outline = (job, design) => {
  const { bridgeFront: front, bridgeRear: last } = design;
  const { pyramidWidth } = job.bridge;
  return [
    ...tips(job, front, last),
    rear(job, { x: half(job) / 2, y: last }),
    even({
      id: 'pyramidWidth',
      jobPath: 'bridge.pyramidWidth',
      at: { x: half(job) - pyramidWidth, y: (front + last) / 2 },
      axis: { x: -1, y: 0 },
      now: pyramidWidth,
    }),
  ];
};

/** A waisted one hangs on its waist's front, which the saddle line holds: what is made deeper at the ends grows by half at the rear. */
const waisted: Outline = (job, { bridgeFront: front, bridgeRear: last, datum }) => {
  const { waistDepth, waistWidth, frontToSaddle } = job.bridge;
  const a = swing(waistWidth, job);
  return [
    ...tips(job, front, last),
    rear(job, { x: -(a + half(job)) / 2, y: last }, 2),
    even({
      id: 'waistDepth',
      jobPath: 'bridge.waistDepth',
      at: { x: 0, y: datum.x - frontToSaddle + waistDepth },
      axis: downPage,
      now: waistDepth,
    }),
    even({
      id: 'waistWidth',
      jobPath: 'bridge.waistWidth',
      at: { x: a, y: last },
      axis: acrossPage,
      now: waistWidth,
      rate: 2,
    }),
  ];
};

/** The grips of each footprint's own numbers; a free one has those of its points. */
export const outlineGrips: Readonly<Record<Exclude<Settled['bridge']['footprint'], 'free'>, Outline>> = {
  belly,
  bellyBefore,
  rectangle,
  pyramid,
  waisted,
};
