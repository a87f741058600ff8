import { freeFront } from '../../bridge/footprints/free.ts';
import type { Design } from '../../design.ts';
import type { Settled } from '../../settle.ts';
import type { Point } from '../../shape/types.ts';
import { downPage, found, type Grip } from './grip.ts';

type Given = Settled['bridge']['points'][number];

/** How little of a point's way along the guitar may be left to it for it to be taken hold of, as a share: the one that makes the front edge on the centre line stays where the saddle line holds it. */
const leastWay = 0.05;

/** How far a point is moved to see which way it goes, mm. */
const hair = 1e-3;

/**
 * The points of a free outline. What is typed of them is measured from where the outline's own front edge meets the centre line, which hangs on them in turn: where they are dragged to is looked for on the outline itself. A point
 * on the centre line of a mirrored outline stays on that line; every other one can be taken hold of on either side.
 */
export const pointGrips = (job: Settled, { datum }: Design): readonly Grip[] => {
  const { bridge } = job;
  const front = datum.x - bridge.frontToSaddle;
  const withPoint = (at: number, changed: Given) => ({ ...bridge, points: bridge.points.with(at, changed) });
  return bridge.points.flatMap((point, k): readonly Grip[] => {
    const { id, across, along } = point;
    const place = (x: number) => (value: number) => {
      try {
        return front + value - freeFront(withPoint(k, { ...point, across: x, along: value }));
      } catch {
        return undefined;
      }
    };
    const here = place(across);
    const now = here(along);
    const beside = here(along + hair);
    if (now === undefined || beside === undefined || (beside - now) / hair < leastWay) return [];
    const slope = (beside - now) / hair;
    const isOnCentre = bridge.mirrored === 'yes' && across === 0;
    const jobPath = (key: 'across' | 'along') => `bridge.points.${id}.${key}`;
    const alongAt = ({ x, y }: Point) => found(place(isOnCentre ? across : x), y, along, slope);
    const grip = { id: `point.${id}`, at: { x: across, y: now } };
    return isOnCentre
      ? [{ ...grip, jobPath: jobPath('along'), value: alongAt, axis: downPage }]
      : [
          {
            ...grip,
            jobPath: jobPath('across'),
            value: ({ x }) => x,
            also: { jobPath: jobPath('along'), value: alongAt },
          },
          ...(bridge.mirrored === 'yes'
            ? [
                {
                  id: `${grip.id}.bass`,
                  at: { x: -across, y: now },
                  jobPath: jobPath('across'),
                  value: ({ x }: Point) => -x,
                  also: { jobPath: jobPath('along'), value: ({ x, y }: Point) => alongAt({ x: -x, y }) },
                  isTwin: true,
                },
              ]
            : []),
        ];
  });
};
