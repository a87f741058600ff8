import { footprintOutline } from '../../geometry/bridge/outline.ts';
import { pinHoles } from '../../geometry/bridge/pins.ts';
import { reachOf } from '../../geometry/bridge/position.ts';
import { saddleLineAt } from '../../geometry/bridge/slot.ts';
import type { Label, Mark } from '../../geometry/drawing.ts';
import { across, forHand, length, lengthsAlike, note, showLine, stroke, upright } from '../../geometry/marks.ts';
import { circle } from '../../geometry/shape/arc.ts';
import { bounds } from '../../geometry/shape/measure.ts';
import { offset } from '../../geometry/shape/offset.ts';
import { oldScar } from '../../geometry/views/old-scar.ts';
import { roundAbout, whatIsThere, whatIsThereSays } from '../../geometry/views/what-is-there.ts';
import { onlyForBridge } from './only-for-bridge.ts';
import { notesUnder } from './over-strings.ts';
import type { OnePiece } from './piece.ts';

const id = 'finish-mask';
const title = 'Finish mask';

/** How far the centre line and the saddle line run beyond the bridge's outline, and half the length of the cross in a hole, mm. */
const BEYOND = 8;
const CROSS = 3.5;

/** What is cleared of finish under the bridge, and the line along which it is scored: inside the outline by so much. */
export const finishMask: OnePiece = {
  id,
  title,
  faceUp: 'the printed one, the top below it',
  use: 'Cut along the knife line: score the finish round the inside of what is left and clear it, or stick down what came out to keep finish off the bare wood.',
  whyNot: onlyForBridge,
  usually: 0,
  draw: (job, design, shop) => {
    const { inset } = shop.mask;
    const { saddleLine, fret12 } = design;
    const outline = footprintOutline(job, design);
    const knife = offset(outline, -inset);
    const { minX, maxX, minY, maxY } = bounds(outline);
    const { front } = reachOf(job, design);
    const [left, right] = [minX - BEYOND, maxX + BEYOND];
    const line = (x: number) => ({ x, y: saddleLineAt(saddleLine, x) });
    const inner = knife.map(bounds);
    const marks: readonly Mark[] = [
      ...oldScar(job),
      ...(inset > 0 ? [stroke('outline', outline, { line: 'phantom', purpose: 'show' })] : []),
      ...knife.map((path, k) => stroke(`knife.${k + 1}`, path, { line: 'outline', purpose: 'cut' })),
      // Its holes alone: braces and bellies are of no account to a knife.
      ...whatIsThere({ ...job, top: { ...job.top, rises: [], braces: [] } }, roundAbout(bounds(outline))),
      ...pinHoles(job, design).flatMap(({ id: pin, at, diameter }): Mark[] => [
        stroke(`pin.${pin}`, circle(at, diameter / 2), { line: 'outline', purpose: 'drill' }),
        showLine(`pin.${pin}.across`, { x: at.x - CROSS, y: at.y }, { x: at.x + CROSS, y: at.y }),
        showLine(`pin.${pin}.along`, { x: at.x, y: at.y - CROSS }, { x: at.x, y: at.y + CROSS }),
      ]),
      showLine('centre', { x: 0, y: minY - BEYOND }, { x: 0, y: maxY + BEYOND }, 'centre'),
      showLine('saddleLine', line(left), line(right), 'centre'),
      note('saddleLine.name', line(0.75 * minX), ['saddle line'], { roams: true, scale: 0.8 }),
      ...(inset > 0 && knife.length > 0
        ? [note('outline.name', { x: 0.5 * maxX, y: minY }, ['bridge’s outline'], { roams: true, scale: 0.8 })]
        : []),
      note('bass', { x: left, y: minY }, ['bass'], { anchor: 'start', bold: true, shift: { dx: 0, dy: -0.8 } }),
      note('treble', { x: right, y: minY }, ['treble'], { anchor: 'end', bold: true, shift: { dx: 0, dy: -0.8 } }),
      note('towardsNut', { x: 0, y: minY - BEYOND }, ['towards the nut ↑'], { shift: { dx: 0, dy: -0.6 } }),
      ...(inner.length > 0
        ? [
            across(
              'length',
              { x: Math.min(...inner.map((b) => b.minX)), y: maxY },
              { x: Math.max(...inner.map((b) => b.maxX)), y: maxY },
              maxY + BEYOND,
              2.4,
            ),
            upright(
              'depth',
              { x: maxX, y: Math.min(...inner.map((b) => b.minY)) },
              { x: maxX, y: Math.max(...inner.map((b) => b.maxY)) },
              right,
              3,
            ),
          ]
        : []),
    ];
    const [fromNut, fromFret12] = lengthsAlike(front, front - fret12);
    const below: readonly (readonly [string, Label])[] = [
      ...(knife.length === 0
        ? ([
            ['none', ['nothing of the bridge’s outline is left ', length(inset), ' inside it']],
            ['wayOut', ['choose a knife line nearer to the outline']],
          ] as const)
        : ([
            [
              'inset',
              inset === 0
                ? ['knife line on the bridge’s outline']
                : ['knife line ', length(inset), ' inside the bridge’s outline'],
            ],
          ] as const)),
      ['place', ['bridge’s front edge on the centre line: ', fromNut, ' from the nut, ', fromFret12, ' from fret 12']],
      ...whatIsThereSays(job).map((label, k) => [`signs.${k + 1}`, label] as const),
    ];
    return { id, title, marks: [...forHand(marks, job.hand), ...notesUnder(maxY + BEYOND, 4.4, below)] };
  },
};
