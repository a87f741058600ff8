import { footprintOutline } from '../../geometry/bridge/outline.ts';
import { reamDepth, stringWays } from '../../geometry/bridge/pins.ts';
import { saddleLineAt } from '../../geometry/bridge/slot.ts';
import { stretchesAlong } from '../../geometry/bridge/spans.ts';
import type { Design, SolvedString } from '../../geometry/design.ts';
import type { Label, Mark } from '../../geometry/drawing.ts';
import { across, forHand, length, note, showLine, stroke, upright } from '../../geometry/marks.ts';
import { shortName } from '../../geometry/names.ts';
import type { Settled } from '../../geometry/settle.ts';
import { circle } from '../../geometry/shape/arc.ts';
import { keepSide } from '../../geometry/shape/clip.ts';
import { bounds } from '../../geometry/shape/measure.ts';
import type { Path, Point } from '../../geometry/shape/types.ts';
import { block } from '../../geometry/views/element.ts';
import { onlyForBridge } from './only-for-bridge.ts';
import { notesUnder } from './over-strings.ts';
import type { OnePiece } from './piece.ts';

const id = 'pin-strip';
const title = 'Pin drilling strip';

/** How far the strip reaches beyond the outer holes and before the saddle line; a flap over a tie block's edge, and below its holes; mm. */
const SIDE = 10;
const BEFORE = 8;
const FLAP = 10;
const UNDER = 5;
/** How far a drill's cross reaches beyond its hole, and the lines that place the strip beyond it, mm. */
const CROSS = 1.5;
const BEYOND = 4;

/** A hole to drill: a circle, and a cross to punch its middle by. */
const drill = ({ id: string }: SolvedString, at: Point, diameter: number): readonly Mark[] => {
  const arm = diameter / 2 + CROSS;
  return [
    stroke(`pin.${string}`, circle(at, diameter / 2), { line: 'outline', purpose: 'drill' }),
    showLine(`pin.${string}.across`, { x: at.x - arm, y: at.y }, { x: at.x + arm, y: at.y }),
    showLine(`pin.${string}.along`, { x: at.x, y: at.y - arm }, { x: at.x, y: at.y + arm }),
  ];
};

/** The strings' names over the strip, each above its hole. */
const names = (strings: readonly SolvedString[], y: number): readonly Mark[] =>
  strings.map((s) =>
    note(`pin.${s.id}.name`, { x: s.pin.x, y }, [shortName(s.name)], {
      bold: true,
      scale: 0.8,
      shift: { dx: 0, dy: -0.5 },
      stagger: 'names',
    }),
  );

const ends = (left: number, right: number, y: number): readonly Mark[] => [
  note('bass', { x: left, y }, ['bass'], { anchor: 'end', bold: true, shift: { dx: -0.6, dy: -0.5 } }),
  note('treble', { x: right, y }, ['treble'], { anchor: 'start', bold: true, shift: { dx: 0.6, dy: -0.5 } }),
];

/** The outer holes' places across, and how far the strip reaches to either side. */
const reach = ({ bridge }: Settled, { strings }: Design) => {
  const places = strings.map(({ pin }) => pin.x);
  const half = bridge.length / 2;
  return {
    left: Math.max(-half, Math.min(...places) - SIDE),
    right: Math.min(half, Math.max(...places) + SIDE),
  };
};

/** The bridge from just before its saddle line to its rear edge, as far as its holes reach across. */
const stripOutline = (job: Settled, design: Design): Path => {
  const { left, right } = reach(job, design);
  const front = Math.min(...[left, right].map((x) => saddleLineAt(design.saddleLine, x))) - BEFORE;
  const whole = footprintOutline(job, design);
  const sides = [
    [
      { x: left, y: 0 },
      { x: 1, y: 0 },
    ],
    [
      { x: right, y: 0 },
      { x: -1, y: 0 },
    ],
    [
      { x: 0, y: front },
      { x: 0, y: 1 },
    ],
  ] as const;
  return sides.reduce((outline, [at, inward]) => keepSide(outline, at, inward) ?? outline, whole);
};

const pinWords = ({ pins, strings }: Settled, ream: number | undefined): readonly (readonly [string, Label])[] => [
  ['drill', [`${strings.list.length} holes ⌀ `, length(pins.hole), ', square to the top']],
  ...(ream !== undefined && ream > 0
    ? ([
        [
          'ream',
          [
            'ream them, taper ',
            { value: pins.taper, kind: 'slope' },
            ', until a pin ⌀ ',
            length(pins.pinDiameter),
            ' seats: ',
            length(ream),
            ' deep',
          ],
        ],
      ] as const)
    : []),
];

/** Drilled from above: pin holes, or the holes out of which strings come that are held at the back edge. */
const fromAbove = (job: Settled, design: Design): readonly Mark[] => {
  const { pins } = job;
  const { strings, saddleLine, datum } = design;
  const outline = stripOutline(job, design);
  const { minX, maxX, minY, maxY } = bounds(outline);
  const hasPins = pins.hold === 'pins';
  const row = datum.x + pins.fromSaddle;
  const isPaired = job.strings.courses === 'pairs' && hasPins;
  const rear = stretchesAlong(footprintOutline(job, design))(0).at(-1)?.[1] ?? maxY;
  const line = (x: number) => ({ x, y: saddleLineAt(saddleLine, x) });
  const [first, last] = [strings[0], strings.at(-1)] as [SolvedString, SolvedString];
  const marks: readonly Mark[] = [
    stroke('outline', outline, { line: 'outline', purpose: 'cut' }),
    ...strings.flatMap((s) => drill(s, s.pin, pins.hole)),
    ...names(strings, minY),
    ...ends(minX, maxX, minY),
    showLine('saddleLine', line(minX - BEYOND), line(maxX + BEYOND), 'centre'),
    note('saddleLine.name', line(minX + 0.3 * (maxX - minX)), ['saddle line'], { roams: true, scale: 0.8 }),
    note('size', line(minX + 0.7 * (maxX - minX)), ['drill ⌀ ', length(pins.hole)], { roams: true, scale: 0.8 }),
    showLine('centre', { x: 0, y: minY }, { x: 0, y: maxY + BEYOND }, 'centre'),
    across('spread', first.pin, last.pin, maxY, 3, undefined, [
      hasPins ? 'pins ' : 'holes ',
      length(last.pin.x - first.pin.x),
    ]),
    upright('saddleToPins', { x: minX, y: saddleLine.x }, { x: minX, y: row }, minX, -4.4),
    upright('pinsToRear', { x: maxX, y: row }, { x: maxX, y: rear }, maxX, 4.4),
    ...(isPaired ? [upright('secondRow', { x: maxX, y: row }, { x: maxX, y: row + pins.secondRow }, maxX, 7)] : []),
  ];
  const below: readonly (readonly [string, Label])[] = [
    ...(hasPins
      ? pinWords(job, reamDepth(job))
      : ([
          ['drill', [`${strings.length} holes ⌀ `, length(pins.hole), ', from the back edge to the deck here']],
        ] as const)),
    ['lay', ['lay it flush with the rear edge, its saddle line on the slot’s middle']],
  ];
  return [...forHand(marks, job.hand), ...notesUnder(maxY, 5, below)];
};

/** Drilled from behind: the holes in a tie block's rear face, the strip folded over its upper edge. */
const fromBehind = (job: Settled, design: Design): readonly Mark[] => {
  const { pins } = job;
  const { strings } = design;
  const { left, right } = reach(job, design);
  const bottom = pins.below + pins.hole / 2 + UNDER;
  const at = ({ pin }: SolvedString): Point => ({ x: pin.x, y: pins.below });
  const [first, last] = [strings[0], strings.at(-1)] as [SolvedString, SolvedString];
  const long = Math.max(...stringWays(job, design).map(({ from, to }) => to.y - from.y));
  const marks: readonly Mark[] = [
    stroke('outline', block({ x: left, y: -FLAP }, { x: right, y: bottom }), { line: 'outline', purpose: 'cut' }),
    stroke(
      'edge',
      { segments: [{ kind: 'line', from: { x: left, y: 0 }, to: { x: right, y: 0 } }], closed: false },
      { line: 'thin', purpose: 'fold' },
    ),
    ...strings.flatMap((s) => drill(s, at(s), pins.hole)),
    ...names(strings, -FLAP),
    ...ends(left, right, -FLAP),
    note('size', { x: right / 2, y: -FLAP }, ['drill ⌀ ', length(pins.hole)], {
      scale: 0.8,
      shift: { dx: 0, dy: 1.1 },
    }),
    showLine('centre', { x: 0, y: -FLAP }, { x: 0, y: bottom + BEYOND }, 'centre'),
    across('spread', at(first), at(last), bottom, 3, undefined, ['holes ', length(last.pin.x - first.pin.x)]),
    upright('below', { x: left, y: 0 }, { x: left, y: pins.below }, left, -5.4),
  ];
  const below: readonly (readonly [string, Label])[] = [
    ['drill', [`${strings.length} holes ⌀ `, length(pins.hole), ' through the tie block, ', length(long), ' long']],
    ['lay', ['fold the flap over the upper rear edge, the centre line on the bridge’s']],
  ];
  return [...forHand(marks, job.hand), ...notesUnder(bottom, 5, below)];
};

/** The middles of the holes that hold the strings, on a strip that is laid against the rear edge and the saddle line, or over a tie block's edge. */
export const pinStrip: OnePiece = {
  id,
  title,
  faceUp: 'the printed one',
  use: 'Lay the strip on the bridge, punch the middle of each hole through it and drill.',
  whyNot: onlyForBridge,
  usually: 0,
  draw: (job, design) => ({
    id,
    title,
    marks: job.pins.hold === 'tied' ? fromBehind(job, design) : fromAbove(job, design),
  }),
};
