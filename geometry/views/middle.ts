import type { Design, SolvedString } from '../design.ts';
import type { Drawing, Mark } from '../drawing.ts';
import { angle, length, note, showLine, stroke, upright } from '../marks.ts';
import { shortName } from '../names.ts';
import { crownHeight } from '../saddle/radius.ts';
import type { Settled } from '../settle.ts';
import { pen, polyline } from '../shape/path.ts';
import { block, elementMark } from './element.ts';

/** How far the planes are drawn before and behind the bridge, mm. */
const BEFORE = 27;
const BEHIND = 28;

/** The string that the section shows: the one next to the middle, on the bass side. */
export const middleString = (design: Design): SolvedString =>
  design.strings[Math.floor((design.strings.length - 1) / 2)] as SolvedString;

/**
 * A section along the middle, seen from the right of the view from the tail: the nut lies to the right, so page x = −(distance from the nut); y DOWN from the fret plane, mm.
 * The string next to the middle is seen beyond it. The straightedge lies as it did strings off: higher than the fret plane at pitch by the rise.
 */
export const middle = (job: Settled, design: Design): Drawing => {
  const { slot, pins, guitar } = job;
  const { bridgeFront: front, bridgeRear: rear, saddleLine, topHeight, deckCentre, slotFloor } = design;
  const { under } = job.saddle;
  const { bottom, thickness } = design.saddle;
  const string = middleString(design);
  const at = (x: number, z: number) => ({ x: -x, y: -z });
  const aslant = Math.hypot(1, saddleLine.slant);
  const halfSlot = (slot.width / 2) * aslant;
  const halfThick = (thickness / 2) * aslant;
  const crown = crownHeight(design.cut ?? design.crown, 0);
  const saddleFront = saddleLine.x - halfThick;
  const saddleRear = saddleLine.x + halfThick;
  const slotFront = saddleLine.x - halfSlot;
  const slotRear = saddleLine.x + halfSlot;
  const nutward = front - BEFORE;
  const tailward = rear + BEHIND;
  const halfHole = pins.hole / 2;
  const pinX = string.pin.y;
  const halfHead = pins.hole * 0.75;
  const rise = guitar.rise;

  const section = polyline(
    [
      at(rear, topHeight),
      at(rear, deckCentre),
      at(slotRear, deckCentre),
      at(slotRear, slotFloor),
      at(slotFront, slotFloor),
      at(slotFront, deckCentre),
      at(front, deckCentre),
      at(front, topHeight),
    ],
    true,
  );
  const round = Math.min(halfThick, crown - bottom);
  const saddle = pen(at(saddleRear, bottom))
    .line(at(saddleRear, crown - round))
    .arc(at(saddleLine.x, crown), halfThick, 1)
    .arc(at(saddleFront, crown - round), halfThick, 1)
    .line(at(saddleFront, bottom))
    .close();
  const element = block(at(slotRear, bottom), at(slotFront, slotFloor));
  const deckAtPin = string.leaves.z;
  const head = pen(at(pinX + halfHead, deckAtPin))
    .arc(at(pinX, deckAtPin + halfHead), halfHead, 1)
    .arc(at(pinX - halfHead, deckAtPin), halfHead, 1)
    .close();

  const marks: Mark[] = [
    stroke('bridge.section', section, {
      line: 'outline',
      purpose: 'show',
      matter: 'wood',
      hatch: { holes: [] },
      jobPath: 'bridge.thickness',
    }),
    stroke('saddle.section', saddle, {
      line: 'outline',
      purpose: 'show',
      matter: 'bone',
      hatch: { holes: [], angle: 135 },
      jobPath: 'slot.width',
    }),
    ...(under > 0 ? [elementMark(element)] : []),
    showLine('top', at(tailward, topHeight), at(nutward, topHeight), 'outline'),
    showLine('pin.hole.rear', at(pinX + halfHole, deckCentre), at(pinX + halfHole, topHeight), 'hidden'),
    showLine('pin.hole.front', at(pinX - halfHole, deckCentre), at(pinX - halfHole, topHeight), 'hidden'),
    showLine('pin.centre', at(pinX, deckAtPin + halfHead + 3), at(pinX, topHeight - 3), 'centre'),
    stroke('pin.head', head, { line: 'phantom', purpose: 'show', matter: 'pin' }),
    { ...showLine('fretPlane', at(tailward, 0), at(nutward, 0), 'phantom'), jobPath: 'guitar.neckPlaneHeight' },
    { ...showLine('straightedge', at(tailward, rise), at(nutward, rise), 'thin'), jobPath: 'guitar.rise' },
    stroke(
      'string',
      polyline(
        [
          at(nutward, string.heightAboveFretPlane - string.slope * (string.breakX - nutward)),
          at(string.breakX, string.heightAboveFretPlane),
          at(string.leaves.x, string.leaves.z),
          at(string.leaves.x, topHeight - 2),
        ],
        false,
      ),
      { line: 'outline', purpose: 'show' },
    ),
    note(
      'string.breakAngle',
      at(string.breakX, crown),
      [`${shortName(string.name)} breaks by `, angle(string.breakAngle)],
      {
        shift: { dx: 0, dy: -1 },
      },
    ),
    note('fretPlane.name', at(nutward, 0), ['fret plane'], { anchor: 'end', shift: { dx: 0.5, dy: 1.1 } }),
    note('straightedge.name', at(tailward, rise), ['straightedge'], { anchor: 'start', shift: { dx: -0.6, dy: -0.4 } }),
    note(
      'slot.depth',
      at(saddleLine.x, topHeight),
      ['slot ', length(slot.depth), ' deep', ...(under > 0 ? [', element ', length(under)] : [])],
      { anchor: 'start', shift: { dx: -1, dy: 1.4 }, jobPath: 'slot.depth' },
    ),
    upright(
      'guitar.neckPlaneHeight',
      at(nutward, rise),
      at(nutward, topHeight),
      -nutward,
      2.2,
      'guitar.neckPlaneHeight',
    ),
    upright('bridge.thickness', at(rear, deckCentre), at(rear, topHeight), -tailward, -1.4, 'bridge.thickness'),
    upright('light', at(rear, rise), at(rear, deckCentre), -tailward, -4.2, 'guitar.neckPlaneHeight', [
      'light ',
      length(design.straightedgeClearance),
    ]),
    note('title', at(nutward, Math.max(crown, rise)), ['Along the middle'], {
      anchor: 'end',
      bold: true,
      shift: { dx: 0.7, dy: -2.5 },
    }),
  ];
  return { id: 'middle', title: 'Along the middle', marks };
};
