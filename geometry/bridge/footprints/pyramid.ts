import type { Footprint } from './footprint.ts';
import { oblong } from './oblong.ts';
import { slack } from './swing.ts';

/** The narrowest pyramid and the narrowest deck that their fields take, mm. */
export const narrowestPyramid = 5;
export const narrowestDeck = 20;

/** What is proposed stays clear of the least that the field takes by this much, mm: rounded in inches it is still taken. */
const margin = 0.1;

/** A rectangle from above; its ends rise to pyramids, which the wings' line draws. */
export const pyramid: Footprint = {
  name: 'pyramid ends',
  problems: ({ length, deckWidth, pyramidWidth }, mm) => {
    const most = (length - deckWidth) / 2;
    if (pyramidWidth <= most + slack) return [];
    const says = `Pyramids ${mm(pyramidWidth)} wide do not fit between the deck, ${mm(deckWidth)} wide, and the ends of a bridge ${mm(length)} across.`;
    const narrowest = narrowestPyramid + margin;
    if (most >= narrowest)
      return [
        {
          path: 'bridge.pyramidWidth',
          value: pyramidWidth,
          says: `${says} Make them at most ${mm(most, 'down')} wide, or the deck narrower.`,
        },
      ];
    const beside = length - 2 * pyramidWidth;
    const deck = beside >= narrowestDeck + margin ? beside : length - 2 * narrowest;
    return [
      {
        path: 'bridge.deckWidth',
        value: deckWidth,
        says: `${says} Make the deck at most ${mm(deck, 'down')} wide.`,
      },
    ];
  },
  outline: oblong,
};
