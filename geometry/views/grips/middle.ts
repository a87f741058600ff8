import type { Design } from '../../design.ts';
import type { Settled } from '../../settle.ts';
import { even, type Grip } from './grip.ts';

/** The deck behind the pins, in the section on the centre line: the bridge's thickness. None in a section elsewhere. */
export const middleGrips = (job: Settled, { datum, bridgeRear, deckCentre }: Design): readonly Grip[] =>
  job.show.sectionAcross === 0
    ? [
        even({
          id: 'thickness',
          jobPath: 'bridge.thickness',
          at: { x: -(datum.x + job.pins.fromSaddle + bridgeRear) / 2, y: -deckCentre },
          axis: { x: 0, y: -1 },
          now: job.bridge.thickness,
        }),
      ]
    : [];
