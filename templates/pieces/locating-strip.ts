import { footprintOutline } from '../../geometry/bridge/outline.ts';
import { saddleLineAt } from '../../geometry/bridge/slot.ts';
import { stretchesAlong } from '../../geometry/bridge/spans.ts';
import type { Design, SolvedString } from '../../geometry/design.ts';
import type { Label, Mark, Quantity } from '../../geometry/drawing.ts';
import { fixedLength, forHand, moved, note, showLine, stroke } from '../../geometry/marks.ts';
import { shortName } from '../../geometry/names.ts';
import type { Settled } from '../../geometry/settle.ts';
import { block } from '../../geometry/views/element.ts';
import { notesUnder } from './over-strings.ts';
import type { OnePiece } from './piece.ts';

/** A strip's half width, and from one strip's middle to the next, mm. */
const HALF = 12;
const PITCH = 30;
/** How far a strip runs on before fret 12 and behind the saddle line, mm. */
const BEFORE = 14;
const BEHIND = 16;
/** How far a strip's middle line runs on behind the saddle line, mm. */
const ON = 8;
/** Half the length of a tick on a strip's middle line, mm. */
const TICK = 5;
/** Where lines of words run along a strip, mm aside of its middle; and the height of small ones, in ems. */
const NEAR = 3.6;
const FAR = 8.6;
const SMALL = 0.7;
const TINY = 0.6;
/** Rows of break points on the middle strip: from one to the next, and the first one behind fret 12, mm. */
const ROW = 4;
const FIRST = 8;

/** A length that a strip shows, mm, as it is read: with all of its decimals, or a fraction where every length of the strips reads as one. */
type Say = (value: number) => Quantity;

/** Where a strip lies: along the guitar, its middle so far across. */
interface Strip {
  readonly id: 'bass' | 'centre' | 'treble';
  readonly across: number;
  /** The string whose break point it shows. */
  readonly string: SolvedString | undefined;
}

/** How far from the nut the bridge's front edge lies so far across, mm; undefined beside the bridge. */
const frontAt = (job: Settled, design: Design, across: number): number | undefined =>
  stretchesAlong(footprintOutline(job, design))(across)[0]?.[0];

/** Every length that the strips show, mm. */
const lengthsOn = (job: Settled, design: Design, strips: readonly Strip[]): readonly number[] => {
  const { fret12, saddleLine, strings } = design;
  const places = [
    ...strips.flatMap(({ across }) => [saddleLineAt(saddleLine, across), frontAt(job, design, across) ?? []].flat()),
    ...strings.map(({ breakX }) => breakX),
  ];
  const aside = strips.flatMap(({ across }) => (across === 0 ? [] : Math.abs(across)));
  return [...places.map((x) => x - fret12), ...aside];
};

/** One strip, its middle at x = 0 and y the distance from the nut, mm. */
const stripMarks = (job: Settled, design: Design, { id, across, string }: Strip, say: Say): readonly Mark[] => {
  const { fret12, saddleLine, strings } = design;
  const line = (x: number) => saddleLineAt(saddleLine, across + x);
  const [top, bottom] = [fret12 - BEFORE, Math.max(line(-HALF), line(HALF)) + BEHIND];
  const front = frontAt(job, design, across);
  const listed = id === 'centre' ? strings : [];
  const listEnd = fret12 + FIRST + ROW * listed.length;
  const middle = (listEnd + line(0)) / 2;
  const along = (name: string, aside: number, label: Label, bold = false): Mark =>
    note(`${id}.${name}`, { x: aside, y: middle }, label, {
      turn: -90,
      bold,
      scale: bold ? 1 : 0.85,
      // Read from the right whichever hand: the mirror image turns this shift round.
      shift: { dx: (job.hand === 'left' ? -1 : 1) * (bold ? 0.36 : 0.3), dy: 0 },
    });
  const tick = (name: string, y: number): Mark => showLine(`${id}.${name}`, { x: -TICK, y }, { x: TICK, y });
  return [
    stroke(`${id}.outline`, block({ x: -HALF, y: top }, { x: HALF, y: bottom }), { line: 'outline', purpose: 'cut' }),
    showLine(`${id}.fret12`, { x: -HALF, y: fret12 }, { x: HALF, y: fret12 }),
    note(`${id}.fret12.name`, { x: 0, y: fret12 }, ['fret 12: crown'], { scale: SMALL, shift: { dx: 0, dy: -0.4 } }),
    note(`${id}.towardsNut`, { x: 0, y: fret12 }, ['nut ↑'], { scale: SMALL, shift: { dx: 0, dy: -1.7 } }),
    ...listed.map((s, k) =>
      note(
        `${id}.break.${s.id}`,
        { x: 0, y: fret12 + FIRST + ROW * k },
        [`${shortName(s.name)} `, say(s.breakX - fret12)],
        { scale: TINY },
      ),
    ),
    showLine(`${id}.middle`, { x: 0, y: listed.length > 0 ? listEnd : fret12 }, { x: 0, y: line(0) + ON }, 'centre'),
    showLine(`${id}.saddleLine`, { x: -HALF, y: line(-HALF) }, { x: HALF, y: line(HALF) }),
    note(`${id}.saddleLine.name`, { x: 0, y: bottom }, ['saddle line ↑'], { scale: SMALL, shift: { dx: 0, dy: -0.7 } }),
    ...(front === undefined
      ? []
      : [
          tick('front', front),
          note(`${id}.front.name`, { x: HALF, y: front }, ['front'], {
            anchor: 'end',
            scale: SMALL,
            shift: { dx: -0.3, dy: -0.4 },
          }),
          along('toFront', NEAR, ['fret 12 to front edge ', say(front - fret12)]),
        ]),
    along('toSaddle', -NEAR, ['fret 12 to saddle line ', say(line(0) - fret12)]),
    ...(string
      ? [
          tick('break', string.breakX),
          along('title', -FAR, [`${id}, `, { ...say(Math.abs(across)), fixed: false }, ' from the centre line'], true),
          along('toBreak', FAR, [`fret 12 to break point ${shortName(string.name)} `, say(string.breakX - fret12)]),
        ]
      : [along('title', -FAR, ['on the centre line'], true)]),
  ];
};

/** Strips from fret 12 to the saddle line, on the bass side, in the middle and on the treble side: they show where the slot, the break points and the bridge's front edge come. */
export const locatingStrip: OnePiece = {
  id: 'locating-strip',
  title: 'Locating strips',
  faceUp: 'the printed one',
  use: 'Lay each strip along the guitar, its line on the crown of fret 12, and mark where saddle line and front edge fall.',
  usually: 0,
  draw: (job, design) => {
    const { strings, saddleLine } = design;
    const [bass, treble] = [strings[0], strings.at(-1)];
    if (bass === undefined || treble === undefined)
      throw new RangeError('Locating strips need strings to be placed by.');
    const strips: readonly Strip[] = [
      { id: 'bass', across: bass.acrossAtSaddle, string: bass },
      { id: 'centre', across: 0, string: undefined },
      { id: 'treble', across: treble.acrossAtSaddle, string: treble },
    ];
    const ends = strips.map(({ across }) => saddleLineAt(saddleLine, across));
    const beside = lengthsOn(job, design, strips);
    const say: Say = (value) => ({ ...fixedLength(value), beside });
    const marks = strips.flatMap((strip, k) => moved(stripMarks(job, design, strip, say), (k - 1) * PITCH, 0));
    return {
      id: 'locating-strip',
      title: 'Locating strips',
      marks: [
        ...forHand(marks, job.hand),
        ...notesUnder(Math.max(...ends) + BEHIND, 2.6, [
          ['stick', ['glue each on a straight stick that reaches over the board']],
          ['square', ['carry its marks down square to the stick: it lies above the top']],
          ['list', ['short lines: front edge, break point; middle strip: fret 12 to each break point']],
        ]),
      ],
    };
  },
};
