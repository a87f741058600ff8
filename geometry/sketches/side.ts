import { bow, box, high, lines, shape, sketch, turned } from './sketch.ts';

const crowns = 38;
const top = 60;
/** Places of frets along the neck, from the side. */
const places = [14, 20, 26, 32, 37, 42, 47, 51, 55, 59, 63, 67, 70, 73, 76, 79, 82, 85];
const twelfth = 67;
const fret = (x: number, y = crowns) => lines('thin', [x, y], [x, y + 3]);
const board = shape('outline', 'wood', [8, crowns + 3], [89, crowns + 3], [89, crowns + 8], [8, crowns + 8]);
const body = [
  lines('outline', [70, top], [146, top]),
  shape('thin', 'wood', [8, crowns + 8], [70, crowns + 8], [70, 86], [62, 86], [58, 62], [50, 56], [8, 54]),
];
const edge = box('outline', 'pin', 6, crowns - 6, 132, crowns);
const bridge = { front: 106, rear: 134, deck: 45 };

/** A straightedge on the frets, carried over the place of the bridge; strings off. */
export const straightedge = turned(
  sketch(
    [
      ...body,
      board,
      ...places.map((x) => fret(x)),
      edge,
      lines('hidden', [bridge.front, top], [bridge.front, bridge.deck], [bridge.rear, bridge.deck], [bridge.rear, top]),
    ],
    {
      height: [high(crowns, top, 117)],
      rise: [lines('hidden', [8, crowns], [140, crowns + 8]), high(crowns, crowns + 7.6, 140, [132, 140])],
      heel: [high(top, 86, 52, [70, 62])],
    },
  ),
);

/** A straightedge from fret 1 to the body joint, over crowns that sag. */
const sag = (x: number) => 40 + 7 * (1 - ((x - 75) / 62) ** 2);
export const relief = turned(
  sketch(
    [
      box('outline', 'pin', 9, 33, 141, 40),
      bow('outline', [6, 43], [75, 50], [144, 43]),
      ...Array.from({ length: 13 }, (_, k) => 13 + k * (124 / 12)).map((x) =>
        lines('thin', [x, sag(x)], [x, sag(x) + 3]),
      ),
    ],
    { relief: [high(40, 47, 75)] },
  ),
);

const saddleX = 118;
const stringAt = (x: number) => 30 - ((x - 8) * 8) / 110;
const strungBase = [
  ...body,
  board,
  ...places.map((x) => fret(x)),
  box('outline', 'bone', 5, stringAt(8), 8, crowns + 3),
  box('outline', 'wood', bridge.front, bridge.deck, bridge.rear, top),
  box('outline', 'bone', saddleX - 2, 22, saddleX + 2, bridge.deck),
  lines('thin', [6, 30], [saddleX, 22], [130, bridge.deck + 1]),
];

/** The strung guitar from the side. */
export const strung = turned(
  sketch(strungBase, {
    action: [high(stringAt(twelfth), crowns, twelfth)],
    firstFret: [high(stringAt(14), crowns, 14)],
    exposure: [high(22, bridge.deck, 143, [saddleX + 2, bridge.rear])],
    thickness: [high(bridge.deck, top, 143, bridge.rear)],
    light: [box('outline', 'pin', 10, crowns - 3.5, 140, crowns), high(crowns, bridge.deck, 126)],
    octave: [lines('outline', [twelfth, crowns], [saddleX, 22]), fret(twelfth)],
    finger: [
      lines('outline', [6, 30], [twelfth - 3, crowns + 3], [twelfth, crowns], [saddleX, 22]),
      lines('outline', [twelfth - 3, 12], [twelfth - 3, 30]),
      lines('outline', [twelfth - 6, 24], [twelfth - 3, 30], [twelfth, 24]),
    ],
    string: [lines('outline', [6, 30], [saddleX, 22])],
  }),
);

/** The joint's end profile of a bridge on the top's dome. */
export const dome = sketch(
  [
    bow('outline', [6, 70], [75, 56], [144, 70]),
    bow('outline', [6, 76], [75, 62], [144, 76]),
    lines('thin', [27, 61], [27, 56], [48, 47], [102, 47], [123, 56], [123, 61]),
  ],
  {
    across: [bow('outline', [6, 70], [75, 56], [144, 70])],
    height: [bow('outline', [84, 56.4], [100, 51], [118, 60]), high(51, 57.8, 100)],
  },
);

/** The same dome from the side: the bridge is short along the guitar. */
export const domeAlong = turned(
  sketch(
    [
      bow('outline', [6, 66], [75, 56], [144, 66]),
      bow('outline', [6, 72], [75, 62], [144, 72]),
      lines('thin', [58, 56.8], [58, 38], [92, 38], [92, 56.8]),
      box('thin', 'bone', 67, 26, 71, 46),
    ],
    { along: [bow('outline', [6, 66], [75, 56], [144, 66])] },
  ),
);
