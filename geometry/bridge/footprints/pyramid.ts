import { polyline } from '../../shape/path.ts';
import type { Footprint } from './footprint.ts';

/** A rectangle from above; its ends rise to pyramids, which the wings' line draws. */
export const pyramid: Footprint = {
  style: 'pyramid',
  problems: ({ length, deckWidth, pyramidWidth }, mm) =>
    2 * pyramidWidth > length - deckWidth
      ? [
          {
            path: 'bridge.pyramidWidth',
            value: pyramidWidth,
            says: `Pyramids ${mm(pyramidWidth)} wide do not fit between the deck, ${mm(deckWidth)} wide, and the ends of a bridge ${mm(length)} across. Make them at most ${mm((length - deckWidth) / 2)} wide, or the deck narrower.`,
          },
        ]
      : [],
  outline: ({ length, depth }) => {
    const half = length / 2;
    return polyline(
      [
        { x: -half, y: 0 },
        { x: half, y: 0 },
        { x: half, y: depth },
        { x: -half, y: depth },
      ],
      true,
    );
  },
};
