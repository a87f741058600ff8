import { braceCut, type Caul, insideCaul, insideRadius } from '../../geometry/bridge/caul.ts';
import { pinHoles } from '../../geometry/bridge/pins.ts';
import type { Design } from '../../geometry/design.ts';
import type { Label, Mark } from '../../geometry/drawing.ts';
import { across, fixedLength, forHand, length, note, radius, showLine, stroke, upright } from '../../geometry/marks.ts';
import type { Settled } from '../../geometry/settle.ts';
import { circle } from '../../geometry/shape/arc.ts';
import { bounds } from '../../geometry/shape/measure.ts';
import { polyline } from '../../geometry/shape/path.ts';
import { drop, sagitta } from '../../geometry/shape/sagitta.ts';
import { braceMarks } from '../../geometry/views/what-is-there.ts';
import type { Shop } from '../shop/index.ts';
import { channelWords } from './caul.ts';
import { caulPlan } from './caul-plan.ts';
import { onlyForBridge } from './only-for-bridge.ts';
import { notesUnder } from './over-strings.ts';
import type { ManyPiece, PieceDrawing } from './piece.ts';

type Lines = readonly (readonly [string, Label])[];

/** A face that follows a dome: its radius, and how far that falls over a chord; the word of one that does not. */
const domed = (way: string, dome: number | 'flat', chord: number, sizes: Shop['caul']): Label => {
  const r = insideRadius(dome, sizes);
  return r === 'flat'
    ? [`${way} flat`]
    : [`${way} `, radius(r), ', its sagitta ', fixedLength(sagitta(r, chord)), ' over ', length(chord)];
};

/** What the slots for the braces have to be told of. */
const braceWords = (job: Settled, { braceDepth, insideThickness }: Shop['caul']): Lines =>
  job.top.braces.length === 0
    ? []
    : braceDepth < insideThickness
      ? [['braces', ['brace slots ', length(braceDepth), ' deep, sawn along the braces']]]
      : [['braces', ['brace slots run right through: saw the block apart along the braces']]];

/** The block's end, to saw its face by, with the braces' slots where the saddle line crosses them on the centre line. */
const profile = (job: Settled, design: Design, made: Caul, sizes: Shop['caul']): PieceDrawing => {
  const { minX, maxX, minY: top, maxY: back } = bounds(made.profile);
  const r = insideRadius(job.guitar.topRadius, sizes);
  const box = made.channel?.box;
  const floor = sizes.channelDepth;
  const deep = Math.min(sizes.braceDepth, sizes.insideThickness);
  const slots = job.top.braces.flatMap((brace): Mark[] => {
    const cut = braceCut(brace, design.saddleLine.x, sizes.braceRoom);
    if (cut === undefined || cut[1] <= minX || cut[0] >= maxX) return [];
    const [from, to] = [Math.max(minX, cut[0]), Math.min(maxX, cut[1])];
    const slot = polyline(
      [
        { x: from, y: drop(r, from) },
        { x: from, y: deep },
        { x: to, y: deep },
        { x: to, y: drop(r, to) },
      ],
      false,
    );
    return [stroke(`brace.${brace.id}`, slot, { line: 'hidden', purpose: 'show' })];
  });
  const below: Lines = [
    ['faceLine', domed('face across', job.guitar.topRadius, maxX - minX, sizes)],
    ['along', domed('face along', job.top.radiusAlong, made.plan.maxY - made.plan.minY, sizes)],
    ...channelWords(made, sizes, 'the face’s'),
    ...(slots.length > 0 ? ([['braces.dashed', ['dashed: brace slots, at the saddle line']]] as const) : []),
  ];
  const marks: readonly Mark[] = [
    stroke('outline', made.profile, { line: 'outline', purpose: 'cut' }),
    ...(box
      ? [
          stroke(
            'channel',
            polyline(
              [
                { x: box.minX, y: drop(r, box.minX) },
                { x: box.minX, y: floor },
                { x: box.maxX, y: floor },
                { x: box.maxX, y: drop(r, box.maxX) },
              ],
              false,
            ),
            { line: 'hidden', purpose: 'show' },
          ),
        ]
      : []),
    ...slots,
    showLine('centre', { x: 0, y: top - 4 }, { x: 0, y: back + 4 }, 'centre'),
    note('bass', { x: minX, y: top }, ['bass'], { anchor: 'start', bold: true, shift: { dx: 0, dy: -0.6 } }),
    note('treble', { x: maxX, y: top }, ['treble'], { anchor: 'end', bold: true, shift: { dx: 0, dy: -0.6 } }),
    upright('thickness', { x: 0, y: top }, { x: 0, y: back }, maxX, 3),
    across('length', { x: minX, y: back }, { x: maxX, y: back }, back, 2.8),
  ];
  return {
    id: 'inside-caul-profile',
    title: 'Inside caul, profile',
    faceUp: 'its end, seen from the tail',
    marks: [...forHand(marks, job.hand), ...notesUnder(back, 4.4, below)],
  };
};

const plan = (job: Settled, design: Design, made: Caul, sizes: Shop['caul']): PieceDrawing => {
  // A slot that is less deep than the block is sawn into its face, not through it.
  const isThrough = sizes.braceDepth >= sizes.insideThickness;
  const besides: readonly Mark[] = [
    ...job.top.braces
      .flatMap((brace) => braceMarks({ ...brace, width: brace.width + 2 * sizes.braceRoom }, made.plan))
      .map(
        (mark): Mark =>
          mark.kind === 'path'
            ? { ...mark, ...(isThrough ? { line: 'outline', purpose: 'cut' } : { line: 'thin', purpose: 'show' }) }
            : mark,
      ),
    ...pinHoles(job, design).map(({ id, at, diameter }) =>
      stroke(`pin.${id}`, circle(at, diameter / 2), { line: 'hidden', purpose: 'show' }),
    ),
  ];
  const below: Lines = [
    ['stands', ['seen from above, through the top; its face lies against the plate']],
    ...(job.pins.hold === 'pins' ? ([['dashed', ['dashed: pin holes, in the top']]] as const) : []),
    ...channelWords(made, sizes, 'the face’s'),
    ...braceWords(job, sizes),
  ];
  return {
    id: 'inside-caul-plan',
    title: 'Inside caul, plan',
    faceUp: 'its face',
    marks: caulPlan(job, design, made, { ...sizes, seenFrom: 'above' }, besides, below),
  };
};

/** The block inside the guitar against which the bridge is clamped: its face follows the underside of the top, with a channel under the pins and slots for the braces. */
export const insideCaulPiece: ManyPiece = {
  id: 'inside-caul',
  title: 'Inside caul',
  faceUp: 'profile: its end, seen from the tail; plan: its face',
  use: 'Saw the block that lies inside under the top while the bridge is clamped, with its channel under the pins and a slot for each brace.',
  whyNot: onlyForBridge,
  draw: (job, design, { caul: sizes }) => {
    const made = insideCaul(job, design, sizes);
    return [profile(job, design, made, sizes), plan(job, design, made, sizes)];
  },
};
