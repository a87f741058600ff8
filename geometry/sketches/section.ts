import { pen } from '../shape/path.ts';
import { bow, box, drawPath, high, lines, ring, shape, sketch, turned, wide } from './sketch.ts';

/** The section along the guitar, drawn with the nut on the left and then turned. */
const front = 40;
const rear = 128;
const deck = 36;
const under = 64;
const slot = [62, 72] as const;
const floor = 54;
const crown = 20;
const hole = [100, 108] as const;

const top = box('thin', 'top', 6, under, 146, under + 4);
const plate = box('thin', 'wood', 84, under + 4, 124, under + 9);
const saddle = drawPath(
  'outline',
  pen({ x: 63, y: floor })
    .line({ x: 63, y: crown + 3 })
    .arc({ x: 67, y: crown }, 5, 1)
    .arc({ x: 71, y: crown + 3 }, 5, 1)
    .line({ x: 71, y: floor })
    .close(),
  'bone',
);
const wood = shape(
  'outline',
  'wood',
  [front, under],
  [front, deck],
  [slot[0], deck],
  [slot[0], floor],
  [slot[1], floor],
  [slot[1], deck],
  [rear, deck],
  [rear, under],
);
const pinHole = shape(
  'thin',
  'hole',
  [hole[0], deck],
  [hole[1], deck],
  [hole[1] - 1, under + 9],
  [hole[0] + 1, under + 9],
);

/** The section along the guitar through slot and pin. */
export const section = turned(
  sketch(
    [top, plate, wood, saddle, pinHole, lines('thin', [6, 25], [67, crown], [hole[0], deck], [hole[0] + 2, under + 8])],
    {
      slotWidth: [wide(slot[0], slot[1], 62, floor)],
      slotDepth: [high(deck, floor, 53, [slot[0], slot[0]])],
      frontToSaddle: [wide(front, 67, 84, [under, floor])],
      toPins: [wide(67, 104, 84, [floor, under + 9])],
      held: [lines('outline', [67, crown], [hole[0], deck], [hole[0] + 2, under + 8])],
      leaves: [wide(67, hole[0], 9, [crown, deck])],
      under: [box('outline', 'ink', 63, floor - 4, 71, floor)],
      proud: [
        drawPath(
          'hidden',
          pen({ x: 63, y: crown + 3 })
            .line({ x: 63, y: crown - 4 })
            .arc({ x: 67, y: crown - 7 }, 5, 1)
            .arc({ x: 71, y: crown - 4 }, 5, 1)
            .line({ x: 71, y: crown + 3 })
            .path(),
        ),
        high(crown - 7, crown, 84, 67),
      ],
      hole: [wide(hole[0], hole[1], 28, deck)],
      ramp: [lines('outline', [88, deck], [hole[0], deck + 6]), wide(88, hole[0], 28, [deck, deck + 6])],
      rampDepth: [lines('outline', [88, deck], [hole[0], deck + 6]), high(deck, deck + 6, 116, [hole[0], hole[0]])],
      edge: [
        bow('outline', [front, deck + 7], [front + 2.05, deck + 2.05], [front + 7, deck]),
        bow('outline', [rear - 7, deck], [rear - 2.05, deck + 2.05], [rear, deck + 7]),
        wide(front, front + 7, 27, [deck + 7, deck]),
      ],
      cap: [box('outline', 'wood', 84, under + 9, 124, under + 14), high(under + 9, under + 14, 134, 124)],
    },
  ),
);

/** The section along a bridge whose strings are tied at a block. */
export const tied = turned(
  sketch(
    [
      top,
      shape(
        'outline',
        'wood',
        [front, under],
        [front, deck],
        [slot[0], deck],
        [slot[0], floor],
        [slot[1], floor],
        [slot[1], deck],
        [78, deck],
        [78, 58],
        [96, 58],
        [96, deck],
        [rear, deck],
        [rear, under],
      ),
      saddle,
      lines('hidden', [96, 45], [rear, 45]),
      lines('hidden', [96, 49], [rear, 49]),
      lines(
        'thin',
        [6, 25],
        [67, crown],
        [96, 47],
        [rear, 47],
        [rear + 4, 44],
        [rear, deck - 3],
        [96, deck - 3],
        [92, 42],
      ),
    ],
    {
      held: [
        lines('outline', [67, crown], [96, 47], [rear, 47], [rear + 4, 44], [rear, deck - 3], [96, deck - 3], [92, 42]),
      ],
      below: [high(deck, 47, 140, rear)],
      toPins: [wide(67, 96, 84, [floor, 58])],
      hole: [high(45, 49, 140, rear)],
    },
  ),
);

/** The section along a bridge whose strings are held at its back edge. */
export const behind = turned(
  sketch(
    [
      top,
      wood,
      saddle,
      lines('thin', [6, 25], [67, crown], [rear, deck + 6], [rear + 6, deck + 7]),
      ring('thin', rear + 8, deck + 7.5, 2.5),
    ],
    {
      held: [lines('outline', [67, crown], [rear, deck + 6], [rear + 6, deck + 7])],
      toPins: [wide(67, rear, 84, [floor, under])],
      hole: [ring('outline', rear + 8, deck + 7.5, 2.5)],
    },
  ),
);

/** A string over the saddle, large: its break point behind the nominal scale. */
export const crownOver = turned(
  sketch(
    [
      drawPath(
        'outline',
        pen({ x: 58, y: 86 })
          .line({ x: 58, y: 44 })
          .arc({ x: 80, y: 32 }, 26, 1)
          .arc({ x: 96, y: 44 }, 22, 1)
          .line({ x: 96, y: 86 })
          .path(),
        undefined,
      ),
      lines('thin', [6, 42], [80, 32], [144, 62]),
      lines('centre', [46, 10], [46, 84]),
    ],
    { setback: [ring('outline', 80, 32, 2.5), wide(46, 80, 18, [24, 32])] },
  ),
);

/** A pin in its hole. */
export const pin = sketch(
  [
    box('outline', 'wood', 10, 32, 140, 62),
    shape('outline', 'hole', [64, 32], [86, 32], [83, 62], [67, 62]),
    shape('outline', 'pin', [64.5, 30], [85.5, 30], [79, 86], [71, 86]),
    drawPath(
      'outline',
      pen({ x: 58, y: 24 }).arc({ x: 92, y: 24 }, 19, 1).line({ x: 92, y: 28 }).line({ x: 58, y: 28 }).close(),
      'pin',
    ),
  ],
  {
    diameter: [wide(64.5, 85.5, 42, 30)],
    taper: [
      lines('outline', [64.5, 30], [71, 86]),
      lines('outline', [85.5, 30], [79, 86]),
      wide(64.5, 85.5, 40, 32),
      wide(70, 80, 78),
    ],
    hole: [wide(64, 86, 50, 32)],
  },
);

/** A wound string, cut across. */
export const wire = sketch(
  [
    ring('outline', 75, 45, 34, 'pin'),
    ring('outline', 75, 45, 16, 'hole'),
    ...Array.from({ length: 14 }, (_, k) => (k * Math.PI) / 7).map((turn) =>
      lines(
        'thin',
        [75 + 18 * Math.cos(turn), 45 + 18 * Math.sin(turn)],
        [75 + 32 * Math.cos(turn + 0.2), 45 + 32 * Math.sin(turn + 0.2)],
      ),
    ),
  ],
  { gauge: [wide(41, 109, 86, 45)], core: [wide(59, 91, 45)] },
);
