import { halfSaddle, onFace } from '../saddle/face.ts';
import type { Check } from './check.ts';
import { listed } from './say.ts';

/** How far the saddle goes on beyond each outer string, along its face. */
export const saddleEnd: Check = {
  id: 'saddleEnd',
  path: 'slot.length',
  facts: (_, design) => {
    const half = halfSaddle(design, 'along');
    return [design.strings[0], design.strings.at(-1)].flatMap((string) =>
      string === undefined
        ? []
        : [{ where: string.name, value: half - Math.abs(onFace(design, string.acrossAtSaddle, 'along')) }],
    );
  },
  says: (found) => `Saddle goes on ${listed(found)} beyond the outer strings`,
  means: {
    low: 'The outer strings sit near the saddle’s rounded ends, and may slip off.',
    high: 'The slot takes wood where no string needs it.',
  },
  fixes: [['slot.length'], ['slot.length', 'bridge.deckWidth'], ['strings.spread'], ['strings.spread', 'pins.spread']],
};
