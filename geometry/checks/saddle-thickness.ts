import { oneNumber } from './one-number.ts';

/** The saddle's thickness: the slot's width less the play. */
export const saddleThickness = oneNumber({
  id: 'saddleThickness',
  path: 'slot.width',
  value: (_, { saddle }) => saddle.thickness,
  says: (mm) => `Saddle ${mm} thick`,
  means: {
    low: 'A thin saddle bends, and carries break points over little of its top.',
    high: 'A thick saddle takes much wood out of the bridge.',
  },
  fixes: [['slot.width'], ['saddle.play'], ['slot.width', 'pins.fromSaddle']],
});
