import { partBetween } from '../../geometry/bridge/graph.ts';
import { sectionAtSaddle } from '../../geometry/bridge/section.ts';
import { floorRadius, slotFloorAt, undersideHeight } from '../../geometry/bridge/surface.ts';
import { bridgeTopAt, topLine } from '../../geometry/bridge/top-line.ts';
import type { Design, SolvedString } from '../../geometry/design.ts';
import type { Label, Mark } from '../../geometry/drawing.ts';
import {
  across,
  forHand,
  length,
  lengthsAlike,
  note,
  radius,
  showLine,
  stroke,
  upright,
} from '../../geometry/marks.ts';
import { shortName } from '../../geometry/names.ts';
import { saddleOutline, underSaddle } from '../../geometry/saddle/face.ts';
import type { Settled } from '../../geometry/settle.ts';
import { elementMark } from '../../geometry/views/element.ts';
import { notesUnder } from './over-strings.ts';
import type { OnePiece } from './piece.ts';

/** What is left under the slot: in the middle, and at its ends. */
const woodUnder = (job: Settled, design: Design, end: number) => {
  const woodAt = (y: number) => slotFloorAt(job, design, y) - undersideHeight(job, y);
  return lengthsAlike(woodAt(0), woodAt(end));
};

/** What cannot be measured on the paper at a glance: how deep the slot is and what is left under it, where the saddle stands, and the three arcs. */
const numbers = (job: Settled, design: Design, end: number): readonly (readonly [string, Label])[] => {
  const { slot, bridge, guitar } = job;
  const { strings, cut } = design;
  const [bass, treble] = [strings[0], strings.at(-1)] as [SolvedString, SolvedString];
  const deepAt = (y: number) => bridgeTopAt(job, y) - slotFloorAt(job, design, y);
  const [deep, deepBass, deepTreble] = lengthsAlike(deepAt(0), deepAt(-end), deepAt(end));
  const [wood, woodAtEnds] = woodUnder(job, design, end);
  const [bassExposure, trebleExposure] = lengthsAlike(bass.exposure, treble.exposure);
  return [
    [
      'slot',
      ['slot ', deep, ' deep in the middle, ', deepBass, ' at its bass end, ', deepTreble, ' at its treble end'],
    ],
    ['wood', ['wood under it: ', wood, ' in the middle, ', woodAtEnds, ' at its ends']],
    [
      'stands',
      [
        'saddle stands out ',
        bassExposure,
        ` at ${shortName(bass.name)}, `,
        trebleExposure,
        ` at ${shortName(treble.name)}`,
      ],
    ],
    [
      'arcs',
      [
        'deck ',
        radius(bridge.topRadius),
        ...(cut === undefined ? [' · crown through each string’s height'] : [' · crown ', radius(cut.radius)]),
        ' · dome ',
        radius(guitar.topRadius),
        slot.floor === 'dome' ? ' · slot floor follows the dome' : ' · slot floor level',
      ],
    ],
  ];
};

/** The bridge cut along the saddle line, with the saddle in its slot: what is left where, to hold against the blank and to look up while the slot is cut. */
export const section: OnePiece = {
  id: 'section',
  title: 'Section at the saddle line',
  faceUp: 'seen from the tail',
  use: 'Hold it against the blank to see how deep the slot goes, what wood is left under it and how the saddle stands over the deck.',
  usually: 0,
  draw: (job, design) => {
    const { bridge } = job;
    const { profile, deckCentre, topHeight, slotFloor, strings } = design;
    const half = bridge.length / 2;
    const shoulder = bridge.deckWidth / 2;
    const { wood, slot } = sectionAtSaddle(job, design);
    const [slotFrom, slotTo] = slot[0] ?? [0, 0];
    const saddle = saddleOutline(design, 'across', floorRadius(job));
    const top = -Math.max(deckCentre, ...strings.map((s) => s.heightAboveFretPlane));
    const bottom = -profile.tipUnderside;
    const marks: Mark[] = [
      ...wood.map((face, k) =>
        stroke(k === 0 ? 'outline' : `outline.${k + 1}`, face, {
          line: 'outline',
          purpose: 'cut',
          hatch: { holes: [] },
        }),
      ),
      stroke(
        'deckLine',
        { segments: partBetween(topLine(job), slotFrom, slotTo), closed: false },
        { line: 'hidden', purpose: 'show' },
      ),
      stroke('saddle', saddle, { line: 'thin', purpose: 'show' }),
      ...(job.saddle.under > 0 ? [{ ...elementMark(underSaddle(job, design, 'across')), line: 'thin' } as const] : []),
      showLine('centre', { x: 0, y: top - 5 }, { x: 0, y: bottom + 4 }, 'centre'),
      ...strings.map((s) =>
        showLine(
          `string.${s.id}`,
          { x: s.acrossAtSaddle, y: -s.heightAboveFretPlane - 2 },
          { x: s.acrossAtSaddle, y: -s.deck },
        ),
      ),
      upright('tip', { x: -half, y: -profile.tipTop }, { x: -half, y: -profile.tipUnderside }, -half, -2.4),
      upright('floor', { x: 0, y: -slotFloor }, { x: 0, y: -topHeight }, -half, -5.2, undefined, [
        woodUnder(job, design, slotTo)[0],
      ]),
      upright('thickness', { x: 0, y: -deckCentre }, { x: 0, y: -topHeight }, half, 2.4),
      ...(bridge.tipTreble === 'same'
        ? []
        : [
            upright(
              'tipTreble',
              { x: half, y: -profile.tipTopTreble },
              { x: half, y: -profile.tipUnderside },
              half,
              5.2,
            ),
          ]),
      // Of a slot that runs aslant the view shows a little less than its length; what is cut is said.
      ...(job.slot.ends === 'through'
        ? []
        : [
            across('slotLength', { x: slotFrom, y: -slotFloor }, { x: slotTo, y: -slotFloor }, bottom, 3, undefined, [
              'slot ',
              length(job.slot.length),
              ' along it',
            ]),
          ]),
      across(
        'deck',
        { x: -shoulder, y: -profile.shoulderBass },
        { x: shoulder, y: -profile.shoulderTreble },
        bottom,
        5.2,
        undefined,
        ['deck ', length(bridge.deckWidth)],
      ),
      across('length', { x: -half, y: bottom }, { x: half, y: bottom }, bottom, 7.4),
      note('bass', { x: -half, y: top }, ['bass'], { anchor: 'start', bold: true, shift: { dx: 0, dy: -0.8 } }),
      note('treble', { x: half, y: top }, ['treble'], { anchor: 'end', bold: true, shift: { dx: 0, dy: -0.8 } }),
    ];
    return {
      id: 'section',
      title: 'Section at the saddle line',
      marks: [...forHand(marks, job.hand), ...notesUnder(bottom, 9.2, numbers(job, design, slotTo))],
    };
  },
};
