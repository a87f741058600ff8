import { footprintOutline } from '../bridge/outline.ts';
import { saddleLineAt } from '../bridge/slot.ts';
import { nearestOn } from '../shape/nearest.ts';
import { segmentEnd, segmentStart } from '../shape/path.ts';
import type { Point } from '../shape/types.ts';
import type { Check } from './check.ts';
import { pointsAlong, slotSpine } from './slot-walls.ts';

/** Places along the slot that are looked at: the ends among them, where a straight front edge is nearest. */
const places = 9;

/** The wood before the slot: the least distance from its outline to the footprint's front edge. */
export const frontWall: Check = {
  id: 'frontWall',
  path: 'bridge.frontToSaddle',
  facts: (job, design) => {
    const isBefore = (p: Point) => p.y < saddleLineAt(design.saddleLine, p.x);
    const front = footprintOutline(job, design).segments.filter(
      (segment) => isBefore(segmentStart(segment)) && isBefore(segmentEnd(segment)),
    );
    const { spine, off } = slotSpine(job, design);
    const ways = pointsAlong(spine, places).flatMap((p) => front.map((segment) => nearestOn(segment, p).distance));
    return ways.length === 0 ? [] : [{ value: Math.min(...ways) - off }];
  },
  says: ({ worst, say }) => `Wood before the slot: ${say(worst.value)}`,
  means: { low: 'The strings lean the saddle on this wall, and it may split off.' },
  fixes: [['bridge.frontToSaddle'], ['bridge.frontToSaddle', 'bridge.depth'], ['slot.length'], ['slot.width']],
};
