import { acrossAt } from '../saddle/heights.ts';
import type { Check } from './check.ts';
import { listed } from './say.ts';

/** From each outer string's middle to the board's edge at fret 12. */
export const boardEdge: Check = {
  id: 'boardEdge',
  path: 'strings.spread',
  facts: ({ guitar: { boardWidth } }, { strings, fret12 }) =>
    typeof boardWidth !== 'number'
      ? []
      : [strings[0], strings.at(-1)].flatMap((string) =>
          string === undefined
            ? []
            : [{ where: string.name, value: boardWidth / 2 - Math.abs(acrossAt(string, fret12)) }],
        ),
  says: (found) => `Outer strings ${listed(found)} from the board’s edge at fret 12`,
  means: { low: 'The outer strings may slip off the board.', high: 'The strings crowd the middle of the board.' },
  fixes: [
    ['strings.spread'],
    ['strings.spread', 'pins.spread'],
    ['strings.spread', 'slot.length'],
    ['strings.spread', 'slot.length', 'pins.spread'],
    ['strings.spread', 'slot.length', 'pins.spread', 'bridge.deckWidth'],
    ['guitar.nutSpread'],
    ['guitar.nutSpread', 'strings.spread'],
    ['guitar.boardWidth'],
  ],
};
