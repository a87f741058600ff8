import { type Caul, caul } from '../../geometry/bridge/caul.ts';
import { pinHoles } from '../../geometry/bridge/pins.ts';
import { slotCut } from '../../geometry/bridge/slot.ts';
import type { Design } from '../../geometry/design.ts';
import type { Label, Mark } from '../../geometry/drawing.ts';
import { across, forHand, length, note, radius, showLine, stroke, upright } from '../../geometry/marks.ts';
import type { Settled } from '../../geometry/settle.ts';
import { circle } from '../../geometry/shape/arc.ts';
import { bounds } from '../../geometry/shape/measure.ts';
import type { Shop } from '../shop/index.ts';
import { caulPlan } from './caul-plan.ts';
import { onlyForBridge } from './only-for-bridge.ts';
import { notesUnder } from './over-strings.ts';
import type { ManyPiece, PieceDrawing } from './piece.ts';

type Lines = readonly (readonly [string, Label])[];

/** What the channel has to be told of, where its width was typed. */
export const channelWords = ({ channel }: Caul, { channelWidth, channelDepth }: Shop['caul'], crest: string): Lines => {
  if (channel === undefined) return [];
  const isNarrow = channelWidth !== 'clears' && channelWidth < channel.needed - 1e-6;
  return [
    ['channel.deep', ['channel ', length(channelDepth), ` deep at ${crest} crest: rout it, do not cut through`]],
    ...(isNarrow
      ? ([['channel.narrow', ['too narrow: slot and pins with their room need ', length(channel.needed)]]] as const)
      : []),
  ];
};

/** The block's end, to saw its face by. */
const profile = (job: Settled, made: Caul, sizes: Shop['caul']): PieceDrawing => {
  const { minX, maxX, minY: back, maxY: foot } = bounds(made.profile);
  const face = back + sizes.thickness;
  const floor = face - sizes.channelDepth;
  const box = made.channel?.box;
  const { bridge } = job;
  const shoulder = bridge.deckWidth / 2;
  const below: Lines = [
    ['faceLine', ['face: the bridge’s own top line, deck ', radius(bridge.topRadius)]],
    ...(bridge.tilt === 0 ? [] : ([['tilted', ['the deck is tilted: lay this end to the tail']]] as const)),
    ...channelWords(made, sizes, 'the deck’s'),
  ];
  const marks: readonly Mark[] = [
    stroke('outline', made.profile, { line: 'outline', purpose: 'cut' }),
    ...(box
      ? [
          showLine('channel.floor', { x: box.minX, y: floor }, { x: box.maxX, y: floor }, 'hidden'),
          ...[box.minX, box.maxX].map((x, k) =>
            showLine(`channel.end.${k + 1}`, { x, y: floor }, { x, y: face }, 'hidden'),
          ),
        ]
      : []),
    showLine('centre', { x: 0, y: back - 5 }, { x: 0, y: foot + 4 }, 'centre'),
    note('bass', { x: minX, y: back }, ['bass'], { anchor: 'start', bold: true, shift: { dx: 0, dy: -0.6 } }),
    note('treble', { x: maxX, y: back }, ['treble'], { anchor: 'end', bold: true, shift: { dx: 0, dy: -0.6 } }),
    upright('thickness', { x: 0, y: back }, { x: 0, y: face }, maxX, 3),
    ...(maxX > shoulder + 1e-6
      ? [
          across('deck', { x: -shoulder, y: foot }, { x: shoulder, y: foot }, foot, 2.8, undefined, [
            'deck ',
            length(bridge.deckWidth),
          ]),
        ]
      : []),
    across('length', { x: minX, y: foot }, { x: maxX, y: foot }, foot, 5),
  ];
  return {
    id: 'caul-profile',
    title: 'Caul, profile',
    faceUp: 'its end, seen from the tail',
    marks: [...forHand(marks, job.hand), ...notesUnder(foot, 6.6, below)],
  };
};

const plan = (job: Settled, design: Design, made: Caul, sizes: Shop['caul']): PieceDrawing => {
  const { hold } = job.pins;
  const besides: readonly Mark[] = [
    stroke('slot', slotCut(job, design.saddleLine), { line: 'hidden', purpose: 'show' }),
    ...pinHoles(job, design).map(({ id, at, diameter }) =>
      stroke(`pin.${id}`, circle(at, diameter / 2), { line: 'hidden', purpose: 'show' }),
    ),
  ];
  const below: Lines = [
    ['dashed', [hold === 'pins' ? 'dashed: slot and pin holes, in the bridge' : 'dashed: slot, in the bridge']],
    ...channelWords(made, sizes, 'the deck’s'),
  ];
  return {
    id: 'caul-plan',
    title: 'Caul, plan',
    faceUp: 'its face, seen from below',
    marks: caulPlan(job, design, made, { ...sizes, seenFrom: 'below' }, besides, below),
  };
};

/** The block that presses the bridge down while its glue sets: its face the bridge's top line, with a channel over slot and pins. */
export const caulPiece: ManyPiece = {
  id: 'caul',
  title: 'Caul',
  faceUp: 'profile: its end, seen from the tail; plan: its face, seen from below',
  use: 'Saw the block that presses the bridge down while its glue sets, and rout the channel that keeps it off slot and pins.',
  whyNot: onlyForBridge,
  draw: (job, design, { caul: sizes }) => {
    const made = caul(job, design, sizes);
    return [profile(job, made, sizes), plan(job, design, made, sizes)];
  },
};
