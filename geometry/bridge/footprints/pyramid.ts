import { bridge as fields } from '../../schema/bridge.ts';
import { words } from '../../schema/field.ts';
import type { Footprint } from './footprint.ts';
import { oblong } from './oblong.ts';
import { slack } from './swing.ts';

const least = (key: 'pyramidWidth' | 'deckWidth'): number => words.get(fields.shape[key])?.min ?? 0;

/** What is proposed stays clear of the least that the field takes by this much, mm: rounded in inches it is still taken. */
const margin = 0.1;

/** A rectangle from above; its ends rise to pyramids, which the wings' line draws. */
export const pyramid: Footprint = {
  style: 'pyramid',
  problems: ({ length, deckWidth, pyramidWidth }, mm) => {
    const most = (length - deckWidth) / 2;
    if (pyramidWidth <= most + slack) return [];
    const says = `Pyramids ${mm(pyramidWidth)} wide do not fit between the deck, ${mm(deckWidth)} wide, and the ends of a bridge ${mm(length)} across.`;
    const narrowest = least('pyramidWidth') + margin;
    if (most >= narrowest)
      return [
        {
          path: 'bridge.pyramidWidth',
          value: pyramidWidth,
          says: `${says} Make them at most ${mm(most, 'down')} wide, or the deck narrower.`,
        },
      ];
    const beside = length - 2 * pyramidWidth;
    const deck = beside >= least('deckWidth') + margin ? beside : length - 2 * narrowest;
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
