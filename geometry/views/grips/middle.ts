import type { Design } from '../../design.ts';
import type { Settled } from '../../settle.ts';
import { middleString } from '../middle.ts';
import { even, type Grip } from './grip.ts';

const towardsTail = { x: -1, y: 0 };
const up = { x: 0, y: -1 };
const down = { x: 0, y: 1 };

/** Where a round-over or chamfer of the front edge meets the deck. */
const edgeGrips = ({ bridge }: Settled, { datum, deckCentre }: Design): readonly Grip[] =>
  bridge.edge === 'square'
    ? []
    : [
        even({
          id: 'edgeSize',
          jobPath: 'bridge.edgeSize',
          at: { x: bridge.frontToSaddle - datum.x - bridge.edgeSize, y: -deckCentre },
          axis: towardsTail,
          now: bridge.edgeSize,
        }),
      ];

/** Where the string goes into the tie block. */
const tieGrips = ({ pins }: Settled, design: Design): readonly Grip[] => {
  const { x, z, touch } = middleString(design).leaves;
  return touch === 'tieHole'
    ? [even({ id: 'pins.below', jobPath: 'pins.below', at: { x: -x, y: -z }, axis: down, now: pins.below })]
    : [];
};

/** What is taken hold of in the section on the centre line: the deck behind the pins for the bridge's thickness, the front edge, and the hole in a tie block. None in a section elsewhere. */
export const middleGrips = (job: Settled, design: Design): readonly Grip[] => {
  const { datum, bridgeRear, deckCentre } = design;
  if (job.show.sectionAcross !== 0) return [];
  return [
    even({
      id: 'thickness',
      jobPath: 'bridge.thickness',
      at: { x: -(datum.x + job.pins.fromSaddle + bridgeRear) / 2, y: -deckCentre },
      axis: up,
      now: job.bridge.thickness,
    }),
    ...edgeGrips(job, design),
    ...tieGrips(job, design),
  ];
};
