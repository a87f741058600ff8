import { footprintOutline } from '../../geometry/bridge/outline.ts';
import { reamDepth } from '../../geometry/bridge/pins.ts';
import { type Position, position } from '../../geometry/bridge/position.ts';
import { saddleLineAt, slotCut } from '../../geometry/bridge/slot.ts';
import type { Label, Mark } from '../../geometry/drawing.ts';
import { across, forHand, length, lengthsAlike, note, showLine, stroke, upright } from '../../geometry/marks.ts';
import { shortName } from '../../geometry/names.ts';
import { acrossAt } from '../../geometry/saddle/heights.ts';
import { bounds } from '../../geometry/shape/measure.ts';
import { TICK } from '../../geometry/views/above.ts';
import { deckLines } from '../../geometry/views/deck-lines.ts';
import { drilled } from '../../geometry/views/drilled.ts';
import { oldScar } from '../../geometry/views/old-scar.ts';
import { oldSlot } from '../../geometry/views/old-slot.ts';
import { roundAbout, whatIsThere, whatIsThereSays } from '../../geometry/views/what-is-there.ts';
import { wireHole } from '../../geometry/views/wire-hole.ts';
import { notesUnder } from './over-strings.ts';
import type { OnePiece } from './piece.ts';

/** Half the length of the cross that marks a drill centre, mm. */
const CROSS = 3.5;
/** How far the strings are drawn in front of the bridge, mm. */
const BEFORE = 10;

/** How far the outline reaches beyond the old scar, in a line of words; none where no scar was measured. */
const overScar = ({ overlap }: Position): readonly (readonly [string, Label])[] => {
  if (overlap === undefined) return [];
  const { bare } = overlap;
  const [front, rear, bassTip, trebleTip, wide] = lengthsAlike(
    overlap.front,
    overlap.rear,
    overlap.bassTip,
    overlap.trebleTip,
    bare,
  );
  const sides: Label = [
    'beyond the old scar: front ',
    front,
    ', rear ',
    rear,
    ', bass tip ',
    bassTip,
    ', treble tip ',
    trebleTip,
  ];
  return [['overScar', sides], ...(bare > 0 ? ([['bareScar', ['bare scar up to ', wide, ' wide']]] as const) : [])];
};

/** The outline to trace, with the slot to rout, the pin holes to drill and the lines that place it on the guitar. */
export const footprint: OnePiece = {
  id: 'footprint',
  title: 'Footprint, slot and pins',
  faceUp: 'bridge top up',
  use: 'Trace the outline, rout the slot, drill the pin holes and place the bridge on the top.',
  draw: (job, design) => {
    const { bridge, slot, pins } = job;
    const { bridgeFront: front, bridgeRear: rear, saddleLine, datum, strings } = design;
    const outline = footprintOutline(job, design);
    const half = bridge.length / 2;
    const bass = strings[0];
    const treble = strings.at(-1);
    if (bass === undefined || treble === undefined) throw new RangeError('A footprint needs strings to be placed by.');
    const pinRow = datum.x + pins.fromSaddle;
    const hasPins = pins.hold === 'pins';
    const ream = reamDepth(job) ?? 0;
    const place = position(job, design);
    const [bassFromNut, trebleFromNut] = lengthsAlike(place.bass.fromNut, place.treble.fromNut);
    const [bassFromFret12, trebleFromFret12] = lengthsAlike(place.bass.fromFret12, place.treble.fromFret12);
    const sizes: Label = [
      'slot ',
      length(slot.length),
      ' by ',
      length(slot.width),
      ', ',
      length(slot.depth),
      ` deep · ${strings.length} holes ⌀ `,
      length(pins.hole),
    ];
    const { wireHole: wire, wireAcross } = job.saddle;
    const filled = oldSlot(job, design);
    const side = wireAcross === 0 ? '' : wireAcross < 0 ? ', bass side' : ', treble side';
    const signs: readonly Label[] = [
      ...(filled.length > 0 ? [['dashed: old slot, fill']] : []),
      ...whatIsThereSays(job),
    ];
    // Set out at the bridge's end, where they are dimensioned, a slanted line or a bent row would come elsewhere.
    const isSlanted = pins.row === 'arc' || Math.max(Math.abs(datum.slant), Math.abs(saddleLine.slant)) * half > 1e-6;
    const below: readonly (readonly [string, Label])[] = [
      ['sizes', sizes],
      ...(ream > 0
        ? ([['ream', ['ream ', length(ream), ' deep, until a pin ⌀ ', length(pins.pinDiameter), ' seats']]] as const)
        : []),
      [
        'fromNut',
        [
          'nut to saddle at ',
          shortName(bass.name),
          ': ',
          bassFromNut,
          ', at ',
          shortName(treble.name),
          ': ',
          trebleFromNut,
          ...(isSlanted
            ? [' · ', length(bridge.frontToSaddle), ' and ', length(pins.fromSaddle), ': on the centre line']
            : []),
        ],
      ],
      ...overScar(place),
      ...(wire === 'none'
        ? []
        : ([
            [
              'wireHole.size',
              [
                'wire hole ⌀ ',
                length(wire),
                ', ',
                length(Math.abs(wireAcross)),
                ` along the slot from the centre line${side}`,
              ],
            ],
          ] as const)),
      ...(signs.length > 0
        ? ([['signs', signs.flatMap((clause, k) => (k === 0 ? clause : [' · ', ...clause]))]] as const)
        : []),
    ];
    const marks: Mark[] = [
      ...oldScar(job),
      stroke('outline', outline, { line: 'outline', purpose: 'cut' }),
      stroke('slot', slotCut(job, saddleLine), { line: 'outline', purpose: 'cut' }),
      ...filled,
      ...wireHole(job, design),
      ...deckLines(job, design, outline),
      ...whatIsThere(job, roundAbout(bounds(outline))),
      ...drilled(job, design),
      ...strings.flatMap((s): Mark[] => [
        ...(hasPins
          ? [
              showLine(`pin.${s.id}.across`, { x: s.pin.x - CROSS, y: s.pin.y }, { x: s.pin.x + CROSS, y: s.pin.y }),
              showLine(`pin.${s.id}.along`, { x: s.pin.x, y: s.pin.y - CROSS }, { x: s.pin.x, y: s.pin.y + CROSS }),
            ]
          : []),
        showLine(
          `string.${s.id}`,
          { x: acrossAt(s, front - BEFORE), y: front - BEFORE },
          { x: s.acrossAtSaddle, y: s.breakX },
        ),
        note(`string.${s.id}.name`, { x: acrossAt(s, front - BEFORE), y: front - BEFORE }, [shortName(s.name)], {
          shift: { dx: 0, dy: -0.4 },
          stagger: 'names',
        }),
      ]),
      ...[saddleLine.x, pinRow].map((y, k) => showLine(`centre.tick.${k}`, { x: -TICK, y }, { x: TICK, y })),
      showLine('centre', { x: 0, y: front - BEFORE - 6 }, { x: 0, y: rear + 4 }, 'centre'),
      showLine(
        'saddleLine',
        { x: -half - 6, y: saddleLineAt(saddleLine, -half - 6) },
        { x: half + 6, y: saddleLineAt(saddleLine, half + 6) },
        'centre',
      ),
      note('saddleLine.name', { x: half - 10, y: saddleLineAt(saddleLine, half - 10) }, ['saddle line'], {
        roams: true,
      }),
      // In two lines each: in one they would reach over the strings' ways.
      note('fromFret12.bass.what', { x: -half, y: front }, ['fret 12 to saddle'], {
        anchor: 'start',
        shift: { dx: 0.6, dy: -1.8 },
      }),
      note('fromFret12.treble.what', { x: half, y: front }, ['fret 12 to saddle'], {
        anchor: 'end',
        shift: { dx: -0.6, dy: -1.8 },
      }),
      note('fromFret12.bass', { x: -half, y: front }, ['at ', shortName(bass.name), ': ', bassFromFret12], {
        anchor: 'start',
        shift: { dx: 0.6, dy: -0.6 },
      }),
      note('fromFret12.treble', { x: half, y: front }, ['at ', shortName(treble.name), ': ', trebleFromFret12], {
        anchor: 'end',
        shift: { dx: -0.6, dy: -0.6 },
      }),
      note('bass', { x: -half, y: front - BEFORE }, ['bass'], {
        anchor: 'start',
        bold: true,
        shift: { dx: 0.6, dy: -0.4 },
      }),
      note('treble', { x: half, y: front - BEFORE }, ['treble'], {
        anchor: 'end',
        bold: true,
        shift: { dx: -0.6, dy: -0.4 },
      }),
      note('towardsNut', { x: half, y: front - BEFORE }, ['towards the nut ↑'], {
        anchor: 'end',
        shift: { dx: -0.6, dy: -1.7 },
      }),
      across('length', { x: -half, y: front }, { x: half, y: front }, front - BEFORE - 6, -2.6),
      upright('depth', { x: half, y: front }, { x: 0, y: rear }, half, 4.2),
      upright('frontToSaddle', { x: -half, y: datum.x - bridge.frontToSaddle }, { x: -half, y: datum.x }, -half, -3.6),
      upright('saddleToPins', { x: -half, y: datum.x }, { x: -half, y: pinRow }, -half, -6),
      across('pinSpread', bass.pin, treble.pin, rear, 3, undefined, [
        hasPins ? 'pins ' : 'holes ',
        length(pins.spread),
      ]),
    ];
    return {
      id: 'footprint',
      title: 'Footprint, slot and pins',
      marks: [...forHand(marks, job.hand), ...notesUnder(rear, 4.5, below)],
    };
  },
};
