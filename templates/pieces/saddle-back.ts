import { deckHeight } from '../../geometry/bridge/surface.ts';
import type { Design } from '../../geometry/design.ts';
import type { Label, Mark } from '../../geometry/drawing.ts';
import { across, fixedLength, forHand, length, note, showLine } from '../../geometry/marks.ts';
import { onFace } from '../../geometry/saddle/face.ts';
import type { Settled } from '../../geometry/settle.ts';
import { decimalText, MM_PER_INCH } from '../../geometry/units.ts';
import { lastPass } from './last-pass.ts';
import { notesUnder, overStrings, stringMark } from './over-strings.ts';
import type { OnePiece } from './piece.ts';
import { type SaddleFace, saddleFace, takeOff } from './saddle-face.ts';

/** From the highest string's crown up to where the strings' marks end, mm. */
const ABOVE = 2;

/** How far over what is left proud the bottom's lines reach, mm, and the share of the saddle's height that they never pass. */
const MORE = 2;
const SHARE = 0.5;
/** How far a named line runs out beyond the saddle's ends, mm; and the height of its name, in ems. */
const OUT = 1.5;
const SMALL = 0.55;

/** A half, a quarter …: k of so many parts, in lowest terms. */
const lowest = (k: number, parts: number): string => (k % 2 === 0 ? lowest(k / 2, parts / 2) : `${k}/${parts}`);

/** From one line over the bottom to the next, mm; which ones are named, and how; and the room that a name takes, mm. */
const scaleOf = ({ show }: Settled) =>
  show.length === 'mm'
    ? {
        step: 0.5,
        says: `${decimalText(0.5, 1, show.decimal)} mm`,
        every: 2,
        name: (k: number) => String(k / 2),
        room: 4,
      }
    : { step: MM_PER_INCH / 64, says: '1/64 in', every: 4, name: (k: number) => lowest(k, 64), room: 7 };

/** Lines parallel to the lowest edge, by which what comes off the bottom is scribed. Some are named at both ends, each name farther out than the one below it. */
const bottomLines = (
  job: Settled,
  { strings }: Design,
  { half, edge, bottom, bottomAt }: SaddleFace,
): readonly Mark[] => {
  const { step, every, name, room } = scaleOf(job);
  const proud = edge - bottom;
  const least = Math.min(...strings.map(({ saddleHeight }) => saddleHeight)) + proud;
  const lines = Math.floor(Math.min(proud + MORE, SHARE * least) / step + 1e-9);
  return Array.from({ length: lines }, (_, k) => k + 1).flatMap((k): readonly Mark[] => {
    const y = edge - k * step;
    // Where one is the finished bottom, that is drawn as itself.
    const isFinished = Math.abs(y - bottom) < 1e-6 && Math.abs(y - bottomAt(0)) < 1e-6;
    if (k % every > 0) return isFinished ? [] : [showLine(`line.${k}`, { x: -half, y }, { x: half, y })];
    const out = half + OUT + room * (k / every - 1);
    return [
      ...(isFinished
        ? [
            showLine(`line.${k}.bassEnd`, { x: -out, y }, { x: -half, y }),
            showLine(`line.${k}.trebleEnd`, { x: half, y }, { x: out, y }),
          ]
        : [showLine(`line.${k}`, { x: -out, y }, { x: out, y })]),
      ...([-1, 1] as const).map((side) =>
        note(`line.${k}.${side < 0 ? 'bass' : 'treble'}`, { x: side * out, y }, [name(k)], {
          anchor: side < 0 ? 'end' : 'start',
          scale: SMALL,
          shift: { dx: side * 0.15, dy: 0.36 * SMALL },
        }),
      ),
    ];
  });
};

/** The saddle's back face, the one towards the tail, with a scale of lines over its bottom for the set-up. */
export const saddleBack: OnePiece = {
  id: 'saddle-back',
  title: 'Saddle, back face',
  faceUp: 'back face, towards the tail',
  use: 'Scribe on the saddle’s back what the set-up takes off its bottom, and file the break points from there.',
  draw: (job, design) => {
    const face = saddleFace(job, design);
    const { half, top, edge } = face;
    const { thickness } = design.saddle;
    const { proud } = job.saddle;
    const pass = lastPass(job, design);
    const marksEnd = top - ABOVE;
    const places = design.strings.map((s, k) => ({
      s,
      x: onFace(design, s.acrossAtSaddle, 'along'),
      fromBack: thickness - (pass?.strings[k]?.fromFront ?? s.fromFront),
    }));
    const marks: readonly Mark[] = [
      ...face.marks,
      ...bottomLines(job, design, face),
      ...takeOff(pass, half, edge).filter(({ kind }) => kind === 'path'),
      ...places.map(({ s, x }) => stringMark(s.id, x, marksEnd, -deckHeight(job, s.acrossAtSaddle))),
      across('length', { x: -half, y: edge }, { x: half, y: edge }, edge, 2.6),
    ];
    const words = [
      note('bass', { x: -half, y: 0 }, ['bass'], { anchor: 'start', bold: true }),
      note('treble', { x: half, y: 0 }, ['treble'], { anchor: 'end', bold: true }),
    ];
    const bassSide = job.hand === 'left' ? -1 : 1;
    const over = places.map(({ s, x, fromBack }) => ({
      id: s.id,
      name: s.name,
      x: x * bassSide,
      value: fixedLength(fromBack),
    }));
    const notes: readonly (readonly [string, Label])[] = [
      [
        'over',
        [
          pass
            ? 'over each string: back face to break point, by the last reading'
            : 'over each string: back face to break point',
        ],
      ],
      ...(proud > 0
        ? ([
            ['finishedBottom.words', ['dash and two dots: finished bottom, ', length(proud), ' proud under it']],
          ] as const)
        : []),
      ['lines', [`lines ${scaleOf(job).says} apart from the lowest edge: scribe what is to come off`]],
      ...(pass && !pass.isThere
        ? ([
            [
              'takeOff.words',
              [
                'by the last reading: ',
                fixedLength(pass.ends.bass),
                ' off at the bass end, ',
                fixedLength(pass.ends.treble),
                Math.min(pass.ends.bass, pass.ends.treble) < 0 ? ' at the treble (−: too low)' : ' at the treble',
              ],
            ],
          ] as const)
        : []),
    ];
    return {
      id: 'saddle-back',
      title: 'Saddle, back face',
      marks: [
        ...forHand(marks, job.hand),
        ...overStrings(over, marksEnd, forHand(words, job.hand)),
        ...notesUnder(edge, 4.2, notes),
      ],
    };
  },
};
