import { footprintOutline } from '../bridge/outline.ts';
import { slotCut } from '../bridge/slot.ts';
import type { Design } from '../design.ts';
import type { Drawing, Label, Mark } from '../drawing.ts';
import { across, forHand, length, note, showLine, stroke, upright } from '../marks.ts';
import { shortName } from '../names.ts';
import { acrossAt } from '../saddle/heights.ts';
import type { Settled } from '../settle.ts';
import { bounds } from '../shape/measure.ts';
import { polyline } from '../shape/path.ts';
import { deckLines } from './deck-lines.ts';
import { drilled } from './drilled.ts';
import { oldScar } from './old-scar.ts';
import { oldSlot } from './old-slot.ts';
import { roundAbout, whatIsThere, whatIsThereSays } from './what-is-there.ts';
import { wireHole } from './wire-hole.ts';

/** How far the strings are drawn in front of the bridge, mm. */
const BEFORE = 12;

/** Half the length of the mark at each break point, mm. */
const BREAK = 1;

/** Half the length of the ticks that mark the saddle line and the pin row on the centre line, mm. */
export const TICK = 2;

/** The bridge from above: x across (+ treble, to the right; mirrored for the left hand), y the distance from the nut, mm. */
export const above = (job: Settled, design: Design): Drawing => {
  const { bridge, pins } = job;
  const { wireHole: wire } = job.saddle;
  const outline = footprintOutline(job, design);
  const filled = oldSlot(job, design);
  const half = bridge.length / 2;
  const { bridgeFront: front, bridgeRear: rear, saddleLine, datum } = design;
  const top = front - BEFORE;
  const bassPin = design.strings[0]?.pin ?? { x: 0, y: rear };
  const treblePin = design.strings.at(-1)?.pin ?? bassPin;
  const pinRow = datum.x + pins.fromSaddle;

  const marks: Mark[] = [
    ...oldScar(job),
    stroke('bridge.outline', outline, { line: 'outline', purpose: 'cut', matter: 'wood', jobPath: 'bridge.footprint' }),
    ...deckLines(job, design, outline),
    stroke('slot', slotCut(job, saddleLine), {
      line: 'outline',
      purpose: 'cut',
      matter: 'bone',
      jobPath: 'slot.length',
    }),
    ...filled,
    ...wireHole(job, design),
    ...whatIsThere(job, roundAbout(bounds(outline))),
    ...drilled(job, design),
    ...design.strings.map((s) => {
      return stroke(
        `string.${s.id}`,
        polyline([{ x: acrossAt(s, top), y: top }, { x: s.acrossAtSaddle, y: s.breakX }, s.pin], false),
        { line: 'thin', purpose: 'show', jobPath: `strings.list.${s.id}.setback` },
      );
    }),
    ...design.strings.map(({ id, acrossAtSaddle: x, breakX: y }) => ({
      ...showLine(`break.${id}`, { x: x - BREAK, y }, { x: x + BREAK, y }),
      jobPath: `strings.list.${id}.setback`,
    })),
    ...[saddleLine.x, pinRow].map((y, k) => showLine(`centre.tick.${k}`, { x: -TICK, y }, { x: TICK, y })),
    showLine('centre', { x: 0, y: top - 4 }, { x: 0, y: rear + 3 }, 'centre'),
    ...design.strings.map((s) =>
      note(`string.${s.id}.name`, { x: acrossAt(s, top), y: top }, [shortName(s.name)], {
        shift: { dx: 0, dy: -0.5 },
        stagger: 'names',
      }),
    ),
    across('bridge.length', { x: -half, y: front }, { x: half, y: front }, rear, 4.4, 'bridge.length'),
    upright('bridge.depth', { x: half, y: front }, { x: 0, y: rear }, half, 2.4, 'bridge.depth'),
    upright(
      'bridge.frontToSaddle',
      { x: -half, y: datum.x - bridge.frontToSaddle },
      { x: -half, y: datum.x },
      -half,
      -2.4,
      'bridge.frontToSaddle',
    ),
    upright('pins.fromSaddle', { x: -half, y: datum.x }, { x: -half, y: pinRow }, -half, -4.6, 'pins.fromSaddle'),
    across('pins.spread', bassPin, treblePin, rear, 2.2, 'pins.spread', [
      pins.hold === 'pins' ? 'pins ' : 'holes ',
      length(pins.spread),
    ]),
  ];
  const more: readonly { readonly label: Label; readonly jobPath?: string }[] = [
    ...(wire === 'none' ? [] : [{ label: ['wire hole ⌀ ', length(wire)], jobPath: 'saddle.wireHole' }]),
    ...(filled.length > 0 ? [{ label: ['dashed: old slot'] }] : []),
    ...whatIsThereSays(job).map((label) => ({ label })),
  ];
  const header: readonly Mark[] = [
    note('title', { x: -half, y: top }, ['From above'], {
      anchor: 'start',
      bold: true,
      shift: { dx: 0, dy: -0.5 },
      stagger: 'names',
    }),
    note('fromNut', { x: 0, y: rear }, ['saddle line ', length(saddleLine.x), ' from the nut'], {
      shift: { dx: 0, dy: 5.8 },
      ...(job.slot.line === 'typed' && { jobPath: 'slot.fromNut' }),
    }),
    // One under the other: a long line would take the room that the bridge needs.
    ...more.map(({ label, ...rest }, k) =>
      note(`more.${k}`, { x: 0, y: rear }, label, { shift: { dx: 0, dy: 7.1 + 1.3 * k }, ...rest }),
    ),
  ];
  return { id: 'above', title: 'From above', marks: [...forHand(marks, job.hand), ...header] };
};
