import { slotOutline } from '../../geometry/bridge/slot.ts';
import type { Design, SolvedString } from '../../geometry/design.ts';
import type { Label, Mark } from '../../geometry/drawing.ts';
import { across, fixedLength, forHand, mirrored, note, showLine, stroke, upright } from '../../geometry/marks.ts';
import { shortName } from '../../geometry/names.ts';
import type { PassString } from '../../geometry/saddle/setup.ts';
import type { Point } from '../../geometry/shape/types.ts';
import { lastPass } from './last-pass.ts';
import { notesUnder, overStrings, stringMark } from './over-strings.ts';
import type { OnePiece } from './piece.ts';

/** Half the length of the line that marks a break point, and of the shorter one where the last reading puts it, half that of a cross beside the crown, and how far the strings' marks run on, mm. */
const BREAK = 1.4;
const NOW = 0.7;
const MISS = 0.7;
const ON = 1.2;

/**
 * Where a point of the guitar (x across, y the distance from the nut) lies on the saddle seen from above: x along it from its middle, + treble; y towards the tail from its middle
 * line, square to its face, mm.
 */
export const onCrown = ({ saddleLine: { x: line, slant } }: Pick<Design, 'saddleLine'>, { x, y }: Point): Point => {
  const long = Math.hypot(1, slant);
  return { x: (x + (y - line) * slant) / long, y: (y - line - x * slant) / long };
};

/** Nearer than this, mm, is the same place: what numbers leave in their last digits. */
const SAME = 1e-6;

/** A string's place on the crown, mm: where its break point lies by the design, how far that is from the front face by the last reading where that moves it, and where it would have to lie. */
const placeOf = (design: Design, s: SolvedString, read: PassString | undefined) => {
  const at = onCrown(design, { x: s.acrossAtSaddle, y: s.breakX });
  const isMoved = read !== undefined && Math.abs(read.fromFront - s.fromFront) > SAME;
  const { fromFront, missed } = read && (isMoved || Math.abs(read.missed) > SAME) ? read : s;
  const { slant } = design.saddleLine;
  const beyond = Math.abs(missed) > SAME ? missed : 0;
  return {
    s,
    at,
    now: isMoved ? fromFront : undefined,
    beyond,
    needed: {
      x: at.x + (beyond * slant) / Math.hypot(1, slant),
      y: fromFront - design.saddle.thickness / 2 + beyond / Math.hypot(1, slant),
    },
  };
};

type Place = ReturnType<typeof placeOf>;

const marksOf = ({ s, at, now, beyond, needed }: Place, front: number, above: number): readonly Mark[] => [
  stringMark(s.id, at.x, above, front + ON),
  showLine(`break.${s.id}`, { x: at.x - BREAK, y: -at.y }, { x: at.x + BREAK, y: -at.y }),
  ...(now === undefined
    ? []
    : [showLine(`now.${s.id}`, { x: at.x - NOW, y: front - now }, { x: at.x + NOW, y: front - now })]),
  ...(beyond === 0
    ? []
    : [-1, 1].map((turn) =>
        showLine(
          `missed.${s.id}.${turn < 0 ? 'falling' : 'rising'}`,
          { x: needed.x - MISS, y: -needed.y + turn * MISS },
          { x: needed.x + MISS, y: -needed.y - turn * MISS },
        ),
      )),
];

const notesOf = (places: readonly Place[], { saddle }: Design): readonly (readonly [string, Label])[] => {
  const missed = places.filter(({ beyond }) => beyond !== 0);
  return [
    [
      'over',
      [
        places.some(({ now }) => now !== undefined)
          ? 'over each string: front face to break point; small: by the last reading, short mark'
          : 'over each string: front face to break point',
      ],
    ],
    ...missed.map(
      ({ s, beyond }) =>
        [
          `missed.${s.id}`,
          [
            `${shortName(s.name)} would need `,
            fixedLength(Math.abs(beyond)),
            beyond > 0 ? ' more, behind' : ' more, in front',
          ],
        ] as const,
    ),
    ...(missed.length > 0 && places.every(({ now }) => now === undefined)
      ? ([
          [
            'thicknessNeeded',
            ['crosses: what it needs; a saddle ', fixedLength(saddle.thicknessNeeded), ' thick reaches all'],
          ],
        ] as const)
      : []),
  ];
};

/** The saddle seen from above, turned as its front face lies: the face towards the nut below. */
export const saddleCrown: OnePiece = {
  id: 'saddle-crown',
  title: 'Saddle, crown',
  faceUp: 'crown from above, front face towards you',
  use: 'File each string’s break point to its mark, measured from the saddle’s front face.',
  draw: (job, design) => {
    const { length: long, thickness } = design.saddle;
    const half = long / 2;
    const front = thickness / 2;
    // The saddle's ends fill the slot's; in one that is open, they are sawn square.
    const ends = job.slot.ends === 'round' ? 'round' : 'square';
    const pass = lastPass(job, design);
    const places = design.strings.map((s, k) => placeOf(design, s, pass?.strings[k]));
    // What is written keeps clear of the crosses, wherever they lie.
    const crosses = places.flatMap(({ beyond, needed }) => (beyond === 0 ? [] : [-needed.y]));
    const above = Math.min(-front - ON, ...crosses.map((y) => y - MISS));
    const below = Math.max(front + ON, ...crosses.map((y) => y + MISS));
    // The page is turned: its y runs down towards the front face.
    const marks: readonly Mark[] = [
      stroke('outline', slotOutline({ length: long, width: thickness, ends }, { x: 0, slant: 0 }), {
        line: 'outline',
        purpose: 'cut',
      }),
      ...places.flatMap((place) => marksOf(place, front, above)),
      upright('thickness', { x: half - front, y: -front }, { x: half - front, y: front }, half, 2),
      across('length', { x: -half, y: 0 }, { x: half, y: 0 }, below, 3.2),
    ];
    const words = [
      note('bass', { x: -half, y: 0 }, ['bass'], { anchor: 'start', bold: true }),
      note('treble', { x: half, y: 0 }, ['treble'], { anchor: 'end', bold: true }),
    ];
    const seen = (all: readonly Mark[]) => mirrored(forHand(all, job.hand));
    const bassSide = job.hand === 'left' ? -1 : 1;
    const over = places.map(({ s, at, now }) => ({
      id: s.id,
      name: s.name,
      x: -at.x * bassSide,
      value: fixedLength(s.fromFront),
      more: now === undefined ? undefined : fixedLength(now),
    }));
    return {
      id: 'saddle-crown',
      title: 'Saddle, crown',
      marks: [
        ...seen(marks),
        ...overStrings(over, above, seen(words)),
        note('front', { x: 0, y: below }, ['front face, towards the nut'], {
          scale: 0.8,
          shift: { dx: 0, dy: 0.9 },
        }),
        ...notesUnder(below, 4.8, notesOf(places, design)),
      ],
    };
  },
};
