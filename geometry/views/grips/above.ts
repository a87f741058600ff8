import type { Design } from '../../design.ts';
import type { Settled } from '../../settle.ts';
import { outlineGrips } from './footprint.ts';
import { downPage, even, type Grip, gripsForHand } from './grip.ts';
import { pinGrips } from './pins.ts';
import { pointGrips } from './points.ts';
import { slotGrips } from './slot.ts';
import { stringGrips } from './strings.ts';

/** Where across the front edge is taken hold of: on the centre line where it is measured there and runs elsewhere beside it, else clear of what stands in the middle. */
const frontAt = ({ bridge }: Settled): number =>
  bridge.footprint === 'belly' || bridge.footprint === 'rectangle' || bridge.footprint === 'pyramid'
    ? -bridge.length / 4
    : 0;

/** Where the bridge is taken hold of from above; places as in that view. */
export const aboveGrips = (job: Settled, design: Design): readonly Grip[] => {
  const { bridge } = job;
  return gripsForHand(
    [
      ...(bridge.footprint === 'free' ? pointGrips(job, design) : outlineGrips[bridge.footprint](job, design)),
      even({
        id: 'frontToSaddle',
        jobPath: 'bridge.frontToSaddle',
        at: { x: frontAt(job), y: design.datum.x - bridge.frontToSaddle },
        axis: downPage,
        now: bridge.frontToSaddle,
        rate: -1,
      }),
      ...slotGrips(job, design),
      ...pinGrips(job, design),
      ...stringGrips(job, design),
    ],
    job,
  );
};
