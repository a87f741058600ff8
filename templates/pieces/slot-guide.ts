import { footprintOutline } from '../../geometry/bridge/outline.ts';
import { saddleLineAt, slotCut } from '../../geometry/bridge/slot.ts';
import { type Led, type SlotWindow, slotWindow, windowProblem } from '../../geometry/bridge/slot-window.ts';
import type { Design } from '../../geometry/design.ts';
import type { Drawing, Label, Mark } from '../../geometry/drawing.ts';
import { across, forHand, length, lengthsAlike, note, showLine, stroke, upright } from '../../geometry/marks.ts';
import { sayFor } from '../../geometry/say.ts';
import type { Settled } from '../../geometry/settle.ts';
import { bounds } from '../../geometry/shape/measure.ts';
import { block } from '../../geometry/views/element.ts';
import type { Shop } from '../shop/index.ts';
import { notesUnder } from './over-strings.ts';
import type { OnePiece } from './piece.ts';

const id = 'slot-guide';
const title = 'Slot guide';

/** How far the lines that place the guide run beyond it, mm. */
const BEYOND = 4;

const ledBy = ({ router }: Shop, { slot }: Settled): Led => ({
  cutter: router.cutter === 'slot' ? slot.width : router.cutter,
  guide: router.guide === 'bush' ? router.bush : router.base,
  shape: router.guide === 'square' ? 'square' : 'round',
});

const guideWords = { bush: 'guide bush ⌀ ', round: 'round base ⌀ ', square: 'square base ' } as const;

/** A depth, and the equal passes in which it is cut, none deeper than asked. */
const inPasses = (depth: number, pass: number): Label => {
  const count = Math.max(1, Math.ceil(depth / pass - 1e-9));
  if (count === 1) return [length(depth), ' deep in one pass'];
  const [deep, each] = lengthsAlike(depth, depth / count);
  return [deep, ` deep in ${count} passes of `, each];
};

/** What is set at the router, on the guide itself: it is read there when the rest of the paper is gone. */
const onGuide = (job: Settled, { router }: Shop, led: Led): readonly [tool: Label, depth: Label] => [
  ['cutter ⌀ ', length(led.cutter), ' · ', guideWords[router.guide], length(led.guide)],
  inPasses(job.slot.depth, router.pass),
];

const says = (job: Settled, { router }: Shop, led: Led, window: SlotWindow): readonly (readonly [string, Label])[] => {
  const { slot } = job;
  return [
    [
      'sizes',
      [
        ...(slot.ends === 'through' ? ['open slot '] : ['slot ', length(slot.length), ' long, ']),
        length(slot.width),
        ' wide, its depth from the top at the centre line',
      ],
    ],
    [
      'window.size',
      [
        'window ',
        length(window.length),
        ' by ',
        length(window.width),
        ': ',
        length(window.larger),
        ' larger all round than what is cut',
      ],
    ],
    ...(slot.ends === 'square' ? ([['ends', ['square the slot’s ends with a chisel']]] as const) : []),
    ...(slot.ends === 'through'
      ? ([['ends', ['the cutter runs out beyond both shoulders, by half its width']]] as const)
      : []),
    ...(router.guide === 'square' ? ([['turn', ['keep the base square to the window: do not turn it']]] as const) : []),
    ...(led.cutter < slot.width ? ([['walls', ['run along one wall, then along the other']]] as const) : []),
  ];
};

/** In place of a guide, why there is none; with the slot that it was for. */
const noGuide = (job: Settled, { saddleLine }: Design, problem: readonly string[]): Drawing => {
  const slot = slotCut(job, saddleLine);
  return {
    id,
    title,
    marks: [
      ...forHand([stroke('slot', slot, { line: 'thin', purpose: 'show' })], job.hand),
      ...notesUnder(
        bounds(slot).maxY,
        2,
        problem.map((sentence, k) => [`problem.${k + 1}`, [sentence]] as const),
      ),
    ],
  };
};

/** A frame with the window in which a guide bush, or the router's base, runs while the slot is cut. */
export const slotGuide: OnePiece = {
  id,
  title,
  faceUp: 'the face on which the router stands',
  use: 'Glue it on thin board, saw out the window, lay it with its saddle line and centre line over those on the bridge, clamp it and rout the slot.',
  usually: 0,
  draw: (job, design, shop) => {
    const led = ledBy(shop, job);
    const problem = windowProblem(job, led, sayFor(job).mm);
    if (problem !== undefined) return noGuide(job, design, problem);
    const { saddleLine } = design;
    const window = slotWindow(job, saddleLine, led);
    const inner = bounds(window.outline);
    const { frame } = shop.router;
    const [left, right] = [inner.minX - frame, inner.maxX + frame];
    const [front, rear] = [inner.minY - frame, inner.maxY + frame];
    const line = (x: number) => ({ x, y: saddleLineAt(saddleLine, x) });
    const bridge = footprintOutline(job, design);
    const beside = Math.max(right, bounds(bridge).maxX);
    const [tool, depth] = onGuide(job, shop, led);
    const marks: readonly Mark[] = [
      stroke('frame', block({ x: left, y: front }, { x: right, y: rear }), { line: 'outline', purpose: 'cut' }),
      stroke('window', window.outline, { line: 'outline', purpose: 'cut' }),
      stroke('slot', slotCut(job, saddleLine), { line: 'thin', purpose: 'show' }),
      stroke('bridge', bridge, { line: 'phantom', purpose: 'show' }),
      showLine('saddleLine', line(left - BEYOND), line(right + BEYOND), 'centre'),
      showLine('centre', { x: 0, y: front - BEYOND }, { x: 0, y: rear + BEYOND }, 'centre'),
      note('saddleLine.name', line(right - frame / 2), ['saddle line'], { roams: true, scale: 0.8 }),
      note('bass', { x: left, y: front }, ['bass'], { anchor: 'start', bold: true, shift: { dx: 0.6, dy: 1.2 } }),
      note('treble', { x: right, y: front }, ['treble'], { anchor: 'end', bold: true, shift: { dx: -0.6, dy: 1.2 } }),
      note('tool', { x: left, y: rear }, tool, { anchor: 'start', scale: 0.8, shift: { dx: 0.6, dy: -0.6 } }),
      note('depth', { x: right, y: rear }, depth, { anchor: 'end', scale: 0.8, shift: { dx: -0.6, dy: -0.6 } }),
      note('towardsNut', { x: 0, y: front - BEYOND }, ['towards the nut ↑'], { shift: { dx: 0, dy: -0.6 } }),
      across('frameLength', { x: left, y: rear }, { x: right, y: rear }, rear, 3.2),
      upright('frontToSaddle', { x: right, y: front }, { x: 0, y: saddleLine.x }, beside, 3.4),
      upright('frameDepth', { x: right, y: front }, { x: right, y: rear }, beside, 5.8),
    ];
    return { id, title, marks: [...forHand(marks, job.hand), ...notesUnder(rear, 5, says(job, shop, led, window))] };
  },
};
