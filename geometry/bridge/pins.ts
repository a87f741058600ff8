import type { Design } from '../design.ts';
import { courseCount, courseOf, isSecond } from '../instrument/courses.ts';
import { pairsAcross, placesAcross } from '../instrument/spacing.ts';
import type { Job } from '../job.ts';
import type { Settled } from '../settle.ts';
import { pathIntersections } from '../shape/intersect.ts';
import { bounds } from '../shape/measure.ts';
import { pen, polyline } from '../shape/path.ts';
import { drop, radiusFromSagitta } from '../shape/sagitta.ts';
import type { Path, Point } from '../shape/types.ts';
import { footprintOutline } from './outline.ts';
import type { SaddleLine } from './slot.ts';
import { deckHeight } from './surface.ts';

/** How much wider than its string a ramp is, mm [practice]. */
const rampRoom = 0.4;

/** How far the pin row at y lies behind its middle, mm: square to the centre line, slanted with the slot, or on the exact circle through the outer pins and its sagitta. */
const rowAt = ({ row, arcRise, spread }: Job['pins'], line: SaddleLine, y: number): number => {
  switch (row) {
    case 'square':
      return 0;
    case 'slanted':
      return line.slant * y;
    case 'arc':
      return arcRise === 0 ? 0 : -Math.sign(arcRise) * drop(radiusFromSagitta(spread, Math.abs(arcRise)), y);
  }
};

/** Places across of the holes, mm, bass first: of pins in two rows each row equally spaced, the second aside of the first; without pins, of pairs each string by itself. */
const holesAcross = ({ pins, strings }: Job): readonly number[] => {
  const { spread, hold, secondAside } = pins;
  if (strings.courses !== 'pairs')
    return placesAcross(
      spread,
      strings.list.map(({ gauge }) => gauge),
      'centres',
    );
  if (hold !== 'pins')
    return pairsAcross(
      spread,
      strings.list.map(({ gauge }) => gauge),
      'centres',
      (strings.pairGap * spread) / strings.spread,
    );
  const step = (spread - secondAside) / (courseCount(strings) - 1);
  return strings.list.map(
    (_, k) => -spread / 2 + step * courseOf(strings, k) + (isSecond(strings, k) ? secondAside : 0),
  );
};

/**
 * Middles of the pin holes from above (x across, y the distance from the nut), mm, bass first. Without pins: where each string goes into the tie block, or comes out of the deck. Pairs of strings have two rows of pins, the
 * second string's behind the first's and aside of it.
 */
export const pinCentres = (job: Job, line: SaddleLine): readonly Point[] => {
  const { pins, strings } = job;
  return holesAcross(job).map((y, k) => {
    const behind = pins.hold === 'pins' && isSecond(strings, k) ? pins.secondRow : 0;
    return { x: y, y: line.x + pins.fromSaddle + behind + rowAt(pins, line, y) };
  });
};

/** What a string next touches behind its break point: the typed place; the front edge of its pin hole; the beginning or the foot of its ramp; the hole in the tie block; or the hole that leads to the back edge. */
export type Touch = 'typed' | 'hole' | 'rampStart' | 'rampFoot' | 'tieHole' | 'backHole';

/** Where a string next touches the bridge: distance from the nut, and height above the fret plane, mm. */
export interface Leaves {
  readonly x: number;
  readonly z: number;
  readonly touch: Touch;
}

/**
 * Where a string that comes over the crown at `breakX`, `height` above the fret plane, next touches the bridge. The deck is taken as parallel to the fret plane along the string. Before a ramp the string is stretched over
 * two corners of the wood, the ramp's beginning at the deck and its foot in the hole's front wall: it lies on the one to which it falls less steeply, as the steeper way would lead through the other.
 */
export const leavesAt = (job: Settled, pin: Point, across: number, breakX: number, height: number): Leaves => {
  const { hold, leaves, hole, ramp, rampDepth, below } = job.pins;
  const deck = deckHeight(job, pin.x);
  if (hold === 'tied') return { x: pin.y, z: deck - below, touch: 'tieHole' };
  if (hold === 'behind') return { x: pin.y, z: deck, touch: 'backHole' };
  if (leaves !== 'pins') return { x: breakX + leaves, z: deckHeight(job, across), touch: 'typed' };
  const edge = pin.y - hole / 2;
  if (ramp === 'none') return { x: edge, z: deck, touch: 'hole' };
  const start: Leaves = { x: edge - ramp, z: deck, touch: 'rampStart' };
  const foot: Leaves = { x: edge, z: deck - rampDepth, touch: 'rampFoot' };
  const fall = ({ x, z }: Leaves) => (height - z) / (x - breakX);
  // A ramp that begins before the break point is refused; the string is then taken to its foot.
  return start.x > breakX && fall(start) <= fall(foot) ? start : foot;
};

/** One hole to drill from above, mm: x across, y the distance from the nut. */
export interface PinHole {
  /** The string's key. */
  readonly id: string;
  readonly at: Point;
  readonly diameter: number;
}

type Strung = Pick<Design, 'strings'>;

/** The pin holes that are drilled, bass first; none where the strings are held without pins. */
export const pinHoles = ({ pins }: Pick<Job, 'pins'>, { strings }: Strung): readonly PinHole[] =>
  pins.hold === 'pins' ? strings.map(({ id, pin }) => ({ id, at: pin, diameter: pins.hole })) : [];

/**
 * The ramps before the pin holes from above (x across, y the distance from the nut), closed, mm: each runs along its string from its round beginning to the hole's edge, a little wider than the string. None
 * where the pins are slotted, or where there are no pins. Their ids are those of the holes, in the same order.
 */
export const ramps = ({ pins }: Pick<Job, 'pins'>, { strings }: Strung): readonly Path[] => {
  const { ramp, hole, hold } = pins;
  if (hold !== 'pins' || ramp === 'none') return [];
  const radius = hole / 2;
  return strings.map(({ pin, acrossAtSaddle, breakX, gauge }) => {
    const far = Math.hypot(acrossAtSaddle - pin.x, breakX - pin.y);
    const towards = { x: (acrossAtSaddle - pin.x) / far, y: (breakX - pin.y) / far };
    // As wide as the hole, or its beginning as long as the ramp, at most.
    const half = Math.min((gauge + rampRoom) / 2, radius, ramp);
    const at = (along: number, aside: number): Point => ({
      x: pin.x + along * towards.x - aside * towards.y,
      y: pin.y + along * towards.y + aside * towards.x,
    });
    const edge = Math.sqrt(radius ** 2 - half ** 2);
    const shoulder = radius + ramp - half;
    return pen(at(edge, -half))
      .line(at(shoulder, -half))
      .arc(at(radius + ramp, 0), half, 1)
      .arc(at(shoulder, half), half, 1)
      .line(at(edge, half))
      .arc(at(edge, -half), radius, -1)
      .close();
  });
};

/** A string's way inside the bridge, from above: from where it goes in to the bridge's rear edge. */
export interface StringWay {
  readonly id: string;
  readonly from: Point;
  readonly to: Point;
}

/** The holes in which strings without pins run back through a tie block, or to the back edge, from above (x across, y the distance from the nut), mm; none where pins hold the strings. */
export const stringWays = (job: Job, design: Strung & Pick<Design, 'bridgeFront'>): readonly StringWay[] => {
  if (job.pins.hold === 'pins') return [];
  const outline = footprintOutline(job, design);
  const beyond = bounds(outline).maxY + 1;
  return design.strings.flatMap(({ id, pin }) => {
    const ray = polyline([pin, { x: pin.x, y: beyond }], false);
    const rear = pathIntersections(ray, outline).reduce<Point | undefined>(
      (last, p) => (last === undefined || p.y > last.y ? p : last),
      undefined,
    );
    return rear === undefined ? [] : [{ id, from: pin, to: rear }];
  });
};

/**
 * How deep a pin's hole is reamed until the pin seats under its head, mm from the bridge's top: `(D − d)/taper`, the hole drilled d wide and opened to the pin's D at the top, where the reamer has the pin's taper [def].
 * Negative where the pin is thinner than its hole; undefined where there are no pins, or where they have no taper.
 */
export const reamDepth = ({ pins }: Pick<Job, 'pins'>): number | undefined =>
  pins.hold === 'pins' && pins.taper > 0 ? (pins.pinDiameter - pins.hole) / pins.taper : undefined;
