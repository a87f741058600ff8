import { deckHeight } from '../../geometry/bridge/surface.ts';
import type { Mark } from '../../geometry/drawing.ts';
import {
  across,
  fixedLength,
  forHand,
  length,
  mirrored,
  note,
  radius,
  showLine,
  stroke,
  upright,
} from '../../geometry/marks.ts';
import { shortName } from '../../geometry/names.ts';
import { halfSaddle, onFace, saddleOutline } from '../../geometry/saddle/face.ts';
import { pen, polyline } from '../../geometry/shape/path.ts';
import type { Piece } from './piece.ts';

/** The saddle's front face, the one towards the nut: it mirrors the view from the tail, so bass and treble are named on it. */
export const saddle: Piece = {
  id: 'saddle',
  title: 'Saddle, front face',
  faceUp: 'front face, towards the nut',
  use: 'Cut the saddle to its height and crown, seen from its face.',
  draw: (job, design) => {
    const { strings, slotFloor, crown } = design;
    const half = halfSaddle(design, 'along');
    const toAcross = half === 0 ? 1 : halfSaddle(design, 'across') / half;
    const bottom = -slotFloor;
    const deckEnd = (x: number) => ({ x, y: -deckHeight(job, x * toAcross) });
    const deck =
      job.bridge.topRadius === 'flat'
        ? polyline([deckEnd(-half), deckEnd(half)], false)
        : pen(deckEnd(-half)).arc(deckEnd(half), job.bridge.topRadius, 1).path();
    const highest = -Math.max(...strings.map((s) => s.heightAboveFretPlane));
    const places = strings.map((s) => ({ s, x: onFace(design, s.acrossAtSaddle, 'along') }));
    const first = places[0];
    const last = places.at(-1);
    if (first === undefined || last === undefined) throw new RangeError('A saddle needs strings to carry.');
    const marks: Mark[] = [
      stroke('outline', saddleOutline(design, 'along'), { line: 'outline', purpose: 'cut' }),
      stroke('deck', deck, { line: 'hidden', purpose: 'show' }),
      ...places.flatMap(({ s, x }): Mark[] => [
        showLine(`string.${s.id}`, { x, y: -s.heightAboveFretPlane - 3 }, { x, y: -s.deck }),
        note(`string.${s.id}.name`, { x, y: -s.heightAboveFretPlane - 3 }, [shortName(s.name)], {
          bold: true,
          shift: { dx: 0, dy: -0.4 },
          stagger: 'names',
        }),
      ]),
      upright(
        'height.bass',
        { x: first.x, y: -first.s.heightAboveFretPlane },
        { x: first.x, y: bottom },
        -half,
        -2.4,
        undefined,
        [fixedLength(first.s.saddleHeight)],
      ),
      upright(
        'height.treble',
        { x: last.x, y: -last.s.heightAboveFretPlane },
        { x: last.x, y: bottom },
        half,
        2.4,
        undefined,
        [fixedLength(last.s.saddleHeight)],
      ),
      across('spread', { x: first.x, y: bottom }, { x: last.x, y: bottom }, bottom, 2.6, undefined, [
        'strings ',
        length(last.x - first.x),
      ]),
      across('length', { x: -half, y: bottom }, { x: half, y: bottom }, bottom, 4.8),
      note('bass', { x: -half, y: highest - 3 }, ['bass'], { anchor: 'start', bold: true, shift: { dx: 0, dy: -2 } }),
      note('treble', { x: half, y: highest - 3 }, ['treble'], { anchor: 'end', bold: true, shift: { dx: 0, dy: -2 } }),
      note(
        'crown',
        { x: 0, y: bottom },
        ['crown ', radius(crown.radius), ', thickness ', length(job.slot.width), ', dashed: bridge top'],
        { anchor: 'middle', shift: { dx: 0, dy: 6.4 } },
      ),
    ];
    return { id: 'saddle', title: 'Saddle, front face', marks: mirrored(forHand(marks, job.hand)) };
  },
};
