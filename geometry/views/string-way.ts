import type { Design, SolvedString } from '../design.ts';
import type { Mark } from '../drawing.ts';
import { showLine, stroke } from '../marks.ts';
import type { Settled } from '../settle.ts';
import { pen, polyline } from '../shape/path.ts';
import type { Point } from '../shape/types.ts';

/** How far a string is drawn below the top, where its ball end bears on the plate, mm. */
const below = 2;

/** A place in the section along the guitar: distance from the nut and height, on the page. */
type Place = (x: number, z: number) => Point;

/** From where it next touches the bridge to where it is held: points in the section, whose underside lies at height `under`. */
const wayBehind = (job: Settled, design: Design, string: SolvedString, at: Place, under: number): readonly Point[] => {
  const { leaves, pin } = string;
  const { hole, rampDepth } = job.pins;
  const first = at(leaves.x, leaves.z);
  switch (leaves.touch) {
    case 'tieHole':
      return [first, at(design.bridgeRear, leaves.z)];
    case 'backHole':
      return [first, at(design.bridgeRear, (leaves.z + under) / 2)];
    case 'rampStart': {
      const edge = pin.y - hole / 2;
      return [first, at(edge, leaves.z - rampDepth), at(edge, under - below)];
    }
    default:
      return [first, at(leaves.x, under - below)];
  }
};

/** The string from the nut side over the crown to where it is held. */
export const stringMark = (
  job: Settled,
  design: Design,
  string: SolvedString,
  at: Place,
  nutward: number,
  under: number,
): Mark =>
  stroke(
    'string',
    polyline(
      [
        at(nutward, string.heightAboveFretPlane - string.slope * (string.breakX - nutward)),
        at(string.breakX, string.heightAboveFretPlane),
        ...wayBehind(job, design, string, at, under),
      ],
      false,
    ),
    { line: 'outline', purpose: 'show' },
  );

/** Half a pin's head, mm. */
const headHalf = ({ pins }: Settled): number => pins.hole * 0.75;

/** Where a string's pin ends towards the tail, mm from the nut. */
export const pinBehind = (job: Settled, { pin }: SolvedString): number => pin.y + headHalf(job);

/** A string's pin, its hole and its ramp, beyond the section's plane between the heights of top and underside there; none where no pin holds it. */
export const pinMarks = (
  job: Settled,
  string: SolvedString,
  at: Place,
  [over, under]: readonly [number, number],
): readonly Mark[] => {
  const { pins } = job;
  if (pins.hold !== 'pins') return [];
  const x = string.pin.y;
  const half = pins.hole / 2;
  const halfHead = headHalf(job);
  const deck = string.leaves.touch === 'rampFoot' ? over : string.leaves.z;
  const head = pen(at(x + halfHead, deck))
    .arc(at(x, deck + halfHead), halfHead, 1)
    .arc(at(x - halfHead, deck), halfHead, 1)
    .close();
  return [
    showLine('pin.hole.rear', at(x + half, over), at(x + half, under), 'hidden'),
    showLine('pin.hole.front', at(x - half, over), at(x - half, under), 'hidden'),
    ...(pins.ramp === 'none'
      ? []
      : [showLine('pin.ramp', at(x - half - pins.ramp, over), at(x - half, over - pins.rampDepth), 'hidden')]),
    showLine('pin.centre', at(x, deck + halfHead + 0.6), at(x, under - 3), 'centre'),
    stroke('pin.head', head, { line: 'phantom', purpose: 'show', matter: 'pin' }),
  ];
};
