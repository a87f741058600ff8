import { plateCap } from '../../geometry/bridge/plate-cap.ts';
import type { Label, Mark } from '../../geometry/drawing.ts';
import { across, forHand, length, note, showLine, stroke, upright } from '../../geometry/marks.ts';
import { circle } from '../../geometry/shape/arc.ts';
import { bounds } from '../../geometry/shape/measure.ts';
import type { Point } from '../../geometry/shape/types.ts';
import { braceMarks, roundAbout } from '../../geometry/views/what-is-there.ts';
import { notesUnder } from './over-strings.ts';
import type { OnePiece } from './piece.ts';

/** Half the length of the cross that marks a drill centre, and of the lines that show the grain; from one of these to the next, mm. */
const CROSS = 3.5;
const GRAIN = 4;
const PITCH = 1.2;

/** Three short lines along the grain about a place. */
const grainMarks = (grain: Point, about: Point): readonly Mark[] =>
  [-1, 0, 1].map((k) => {
    const at = (t: number): Point => ({
      x: about.x + t * grain.x - k * PITCH * grain.y,
      y: about.y + t * grain.y + k * PITCH * grain.x,
    });
    return showLine(`grain.${k + 2}`, at(-GRAIN), at(GRAIN));
  });

/** The overlay for a worn bridge plate: its outline, the pin holes through it, its grain, and the braces that it has to clear. */
export const plateCapPiece: OnePiece = {
  id: 'plate-cap',
  title: 'Plate cap',
  faceUp: 'the face that is glued to the plate',
  use: 'Saw the cap, drill its holes and glue it over the worn plate, under the pins.',
  whyNot: ({ plate, pins }) =>
    pins.hold !== 'pins'
      ? 'The strings are not held by pins, so no pins wear the plate.'
      : plate.cap === 'none'
        ? 'The plate gets no cap: choose one at “The bridge plate”.'
        : undefined,
  draw: (job, design) => {
    const cap = plateCap(job, design);
    if (cap === undefined)
      throw new RangeError('This job has no plate cap; give its thickness, and pins that go through it.');
    const { outline, middle, holes, grain, thickness, stagger } = cap;
    const box = bounds(outline);
    const { minX, minY, maxX, maxY } = box;
    const first = holes[0]?.at ?? middle;
    const last = holes.at(-1)?.at ?? middle;
    const below: readonly (readonly [string, Label])[] = [
      ['sizes', [length(thickness), ` thick · ${holes.length} holes ⌀ `, length(job.pins.hole)]],
      ...(stagger > 0
        ? ([
            ['inLine', ['pin holes stand in line along the grain: turn it, or']],
            ['stagger', ['stagger them by ', length(stagger), ' more, square to it']],
          ] as const)
        : []),
    ];
    const marks: readonly Mark[] = [
      ...job.top.braces.flatMap((brace) => braceMarks(brace, roundAbout(box))),
      stroke('outline', outline, { line: 'outline', purpose: 'cut' }),
      ...holes.flatMap(({ id, at, diameter }): Mark[] => [
        stroke(`pin.${id}`, circle(at, diameter / 2), { line: 'outline', purpose: 'drill' }),
        showLine(`pin.${id}.across`, { x: at.x - CROSS, y: at.y }, { x: at.x + CROSS, y: at.y }),
        showLine(`pin.${id}.along`, { x: at.x, y: at.y - CROSS }, { x: at.x, y: at.y + CROSS }),
      ]),
      ...grainMarks(grain, { x: (maxX + last.x) / 2, y: (middle.y + maxY) / 2 }),
      note('grain.name', { x: (maxX + last.x) / 2, y: (middle.y + maxY) / 2 }, ['grain'], { roams: true, scale: 0.8 }),
      showLine('centre', { x: 0, y: minY - 4 }, { x: 0, y: maxY + 3 }, 'centre'),
      note('bass', { x: minX, y: minY }, ['bass'], { anchor: 'start', bold: true, shift: { dx: 0, dy: -0.6 } }),
      note('treble', { x: maxX, y: minY }, ['treble'], { anchor: 'end', bold: true, shift: { dx: 0, dy: -0.6 } }),
      note('towardsNut', { x: 0, y: minY - 4 }, ['towards the nut ↑'], { shift: { dx: 0, dy: -0.6 } }),
      across('spread', first, last, maxY, 2.2, undefined, ['pins ', length(last.x - first.x)]),
      across('length', { x: minX, y: maxY }, { x: maxX, y: maxY }, maxY, 4.4),
      upright('depth', { x: maxX, y: minY }, { x: maxX, y: maxY }, maxX, 3.2),
    ];
    return {
      id: 'plate-cap',
      title: 'Plate cap',
      marks: [...forHand(marks, job.hand), ...notesUnder(maxY, 6, below)],
    };
  },
};
