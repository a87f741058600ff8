import type { Design } from '../../design.ts';
import type { Settled } from '../../settle.ts';
import type { Point } from '../../shape/types.ts';
import { downPage, even, type Grip } from './grip.ts';

/** How far out on a slot, as a share of its length, its slant and its width are taken hold of. */
const slantAt = -0.3;
const widthAt = 0.2;

/** The slot from above: its end, its front wall, the hole in its floor, and where it is measured its place and its slant. */
export const slotGrips = (job: Settled, { saddleLine, datum }: Design): readonly Grip[] => {
  const { slot, saddle } = job;
  const cos = 1 / Math.hypot(1, saddleLine.slant);
  const axis = { x: cos, y: saddleLine.slant * cos };
  const forwards = { x: axis.y, y: -axis.x };
  const isMeasured = job.work === 'saddle' || slot.line === 'typed';
  const out = slantAt * slot.length;
  /** A place along the slot's centre line from the guitar's, and so far before it. */
  const at = (along: number, before = 0): Point => ({
    x: along * axis.x + before * forwards.x,
    y: saddleLine.x + along * axis.y + before * forwards.y,
  });
  return [
    ...(slot.ends === 'through'
      ? []
      : [
          even({
            id: 'slot.length',
            jobPath: 'slot.length',
            at: at(slot.length / 2),
            axis,
            now: slot.length,
            rate: 2,
          }),
        ]),
    even({
      id: 'slot.width',
      jobPath: 'slot.width',
      at: at(widthAt * slot.length, slot.width / 2),
      axis: forwards,
      now: slot.width,
      rate: 2,
    }),
    ...(saddle.wireHole === 'none'
      ? []
      : [
          even({
            id: 'saddle.wireAcross',
            jobPath: 'saddle.wireAcross',
            at: at(saddle.wireAcross),
            axis,
            now: saddle.wireAcross,
          }),
        ]),
    ...(isMeasured
      ? [
          even({
            id: 'slot.fromNut',
            jobPath: 'slot.fromNut',
            at: { x: 0, y: datum.x },
            axis: downPage,
            now: slot.fromNut,
          }),
          even({
            id: 'slot.slant',
            jobPath: 'slot.slant',
            at: { x: out, y: datum.x + datum.slant * out },
            axis: downPage,
            now: slot.slant,
            rate: 1 / out,
          }),
        ]
      : []),
  ];
};
