import type { Caul } from '../../geometry/bridge/caul.ts';
import { placeOf } from '../../geometry/bridge/existing.ts';
import { saddleLineAt } from '../../geometry/bridge/slot.ts';
import type { Design } from '../../geometry/design.ts';
import type { Label, Mark } from '../../geometry/drawing.ts';
import { across, forHand, length, mirrored, note, showLine, stroke, upright } from '../../geometry/marks.ts';
import type { Settled } from '../../geometry/settle.ts';
import { circle } from '../../geometry/shape/arc.ts';
import type { Bounds } from '../../geometry/shape/types.ts';
import { block } from '../../geometry/views/element.ts';
import { notesUnder } from './over-strings.ts';

const boxPath = ({ minX, minY, maxX, maxY }: Bounds) => block({ x: minX, y: minY }, { x: maxX, y: maxY });

/** How far the lines that place it run on beyond the block, mm. */
const ON = 4;

/** Holes in which register pins stand, where a block covers them. */
const registerHoles = ({ top }: Settled, { minX, minY, maxX, maxY }: Bounds, play: number): readonly Mark[] =>
  top.holes.flatMap((hole) => {
    const at = placeOf(hole);
    const isOn = at.x > minX && at.x < maxX && at.y > minY && at.y < maxY;
    return hole.plan === 'register' && isOn
      ? [
          stroke(`register.${hole.id}`, circle(at, (hole.diameter + play) / 2), { line: 'outline', purpose: 'drill' }),
          note(`register.${hole.id}.name`, at, ['register ⌀ ', length(hole.diameter + play)], { roams: true }),
        ]
      : [];
  });

/** A caul's block, its face up: seen from above as the footprint lies, or from below and so the other way round. Its outline, the channel in its face, the holes for register pins and the lines by which it is laid; with what is told under it. */
export const caulPlan = (
  job: Settled,
  design: Design,
  { plan, channel }: Caul,
  { registerPlay, seenFrom }: { readonly registerPlay: number; readonly seenFrom: 'above' | 'below' },
  besides: readonly Mark[],
  below: readonly (readonly [string, Label])[],
): readonly Mark[] => {
  const { minX, minY, maxX, maxY } = plan;
  const { saddleLine } = design;
  const left = minX - ON;
  const right = maxX + ON;
  const marks: readonly Mark[] = [
    stroke('outline', boxPath(plan), { line: 'outline', purpose: 'cut' }),
    ...besides,
    ...(channel
      ? [
          // Routed into the face, so no cutter may go through along it.
          stroke('channel', boxPath(channel.box), { line: 'thin', purpose: 'show' }),
          upright('channel.width', { x: maxX, y: channel.box.minY }, { x: maxX, y: channel.box.maxY }, maxX, 3.4),
          ...(channel.box.minY > minY + 1e-6
            ? [upright('channel.front', { x: minX, y: minY }, { x: minX, y: channel.box.minY }, minX, -3)]
            : []),
          across(
            'channel.length',
            { x: channel.box.minX, y: maxY },
            { x: channel.box.maxX, y: maxY },
            maxY,
            2.6,
            undefined,
            ['channel ', length(channel.box.maxX - channel.box.minX)],
          ),
        ]
      : []),
    ...registerHoles(job, plan, registerPlay),
    showLine('centre', { x: 0, y: minY - ON }, { x: 0, y: maxY + ON }, 'centre'),
    showLine(
      'saddleLine',
      { x: left, y: saddleLineAt(saddleLine, left) },
      { x: right, y: saddleLineAt(saddleLine, right) },
      'centre',
    ),
    note('bass', { x: minX, y: minY }, ['bass'], { anchor: 'start', bold: true, shift: { dx: 0, dy: -0.6 } }),
    note('treble', { x: maxX, y: minY }, ['treble'], { anchor: 'end', bold: true, shift: { dx: 0, dy: -0.6 } }),
    note('towardsNut', { x: 0, y: minY - ON }, ['towards the nut ↑'], { shift: { dx: 0, dy: -0.4 } }),
    across('length', { x: minX, y: maxY }, { x: maxX, y: maxY }, maxY, 4.8),
    upright('depth', { x: minX, y: minY }, { x: minX, y: maxY }, minX, -5.4),
  ];
  const seen = forHand(marks, job.hand);
  return [
    ...(seenFrom === 'below' ? mirrored(seen) : seen),
    ...notesUnder(maxY, 6.4, [['lines', ['chain lines: centre line and saddle line']], ...below]),
  ];
};
