import type { Job } from '../job.ts';
import { type QuantityKind, roundIn, type ShowUnits } from '../units.ts';

/**
 * What is right, and how far beyond it is doubtful; wrong beyond that. A side that is left out has no limit. In stored units: mm, degrees, shares of 1.
 */
export interface Range {
  readonly doubtfulFrom?: number;
  readonly from?: number;
  readonly to?: number;
  readonly doubtfulTo?: number;
}

export interface UsualRange {
  /** What is looked at, as a heading. */
  readonly title: string;
  readonly kind: QuantityKind;
  readonly steel: Range;
  /** Where gut-like strings have a range of their own. */
  readonly nylon?: Range;
}

const between = (doubtfulFrom: number, from: number, to: number, doubtfulTo: number): Range => ({
  doubtfulFrom,
  from,
  to,
  doubtfulTo,
});
const atLeast = (from: number, doubtfulFrom: number): Range => ({ doubtfulFrom, from });
const atMost = (to: number, doubtfulTo: number): Range => ({ to, doubtfulTo });

const define = <const T extends Readonly<Record<string, UsualRange>>>(
  ranges: T,
): Readonly<Record<keyof T, UsualRange>> => ranges;

/** The range that each check goes by. All of them are common practice, from memory [practice]: said so wherever they are shown, and a job may have its own. */
export const usualRanges = define({
  straightedge: {
    title: 'Straightedge clearance',
    kind: 'length',
    steel: between(-0.3, 0, 1, 1.5),
    nylon: between(-6, -5, -1, 0),
  },
  neck: {
    title: 'Bridge that suits the neck',
    kind: 'length',
    steel: between(6, 7, 10.5, 11.5),
    nylon: between(5.5, 6.5, 10, 11),
  },
  exposure: { title: 'Exposure', kind: 'length', steel: between(1.5, 2, 4.5, 5.5) },
  inSlot: { title: 'Saddle in the slot', kind: 'share', steel: atLeast(0.5, 0.4) },
  woodUnderSlot: { title: 'Wood under the slot', kind: 'length', steel: atLeast(2, 1.5) },
  frontWall: { title: 'Wood before the slot', kind: 'length', steel: atLeast(5, 3.5) },
  pinWood: { title: 'Wood between slot and pins', kind: 'length', steel: atLeast(3, 2) },
  breakAngle: {
    title: 'Break angle',
    kind: 'angle',
    steel: between(10, 15, 35, 40),
    nylon: between(15, 20, 50, 55),
  },
  thickness: {
    title: 'Bridge thickness',
    kind: 'length',
    steel: between(6, 7, 10.5, 11.5),
    nylon: between(5.5, 6.5, 10, 11),
  },
  tip: { title: 'Tip thickness', kind: 'length', steel: between(2, 2.5, 4, 5) },
  actionBass: {
    title: 'Action, bass',
    kind: 'length',
    steel: between(1.6, 2, 2.8, 3.2),
    nylon: between(2.7, 3.2, 4.2, 4.7),
  },
  actionTreble: {
    title: 'Action, treble',
    kind: 'length',
    steel: between(1.1, 1.5, 2.2, 2.6),
    nylon: between(2.1, 2.6, 3.4, 3.9),
  },
  firstFret: {
    title: 'First-fret clearance',
    kind: 'length',
    steel: between(0.15, 0.3, 0.6, 0.75),
    nylon: between(0.35, 0.5, 0.9, 1.05),
  },
  relief: { title: 'Relief', kind: 'length', steel: between(0, 0.1, 0.3, 0.45) },
  rise: { title: 'Rise under tension', kind: 'length', steel: between(0, 0.3, 1.5, 2.5), nylon: between(0, 0.1, 1, 2) },
  setback: { title: 'Setback', kind: 'length', steel: between(0, 1.5, 5.5, 7), nylon: between(-1, 0.5, 3, 4.5) },
  intonation: { title: 'Break points off the crown', kind: 'length', steel: atMost(0, 0.5) },
  saddleThickness: { title: 'Saddle thickness', kind: 'length', steel: between(2, 2.3, 3.3, 6.5) },
  saddleEnd: { title: 'Saddle beyond the outer strings', kind: 'length', steel: between(4, 6, 16, 22) },
  boardEdge: { title: 'Outer strings to the board’s edge', kind: 'length', steel: between(2, 2.8, 5, 6.5) },
  reaming: { title: 'Reaming for the pins', kind: 'length', steel: between(0, 0, 20, 30) },
  pinFan: { title: 'Sideways turn to the pins', kind: 'angle', steel: atMost(12, 20) },
  crownRadius: { title: 'Crown against the board', kind: 'share', steel: between(0.65, 0.8, 1.3, 1.6) },
  scar: { title: 'Old scar covered', kind: 'length', steel: atLeast(0.2, 0) },
  keptHoles: { title: 'Wood round kept holes', kind: 'length', steel: atLeast(3, 1.5) },
  pinsMeetHoles: { title: 'Pins against kept holes', kind: 'length', steel: between(-1, -0.3, 0.3, 1) },
  bracesClear: { title: 'Pin holes to braces', kind: 'length', steel: atLeast(1.5, 0) },
  topRise: { title: 'Top off its dome', kind: 'length', steel: between(-1.5, -0.5, 0.5, 1.5) },
  registerPins: { title: 'Register pins apart', kind: 'length', steel: atLeast(40, 25) },
  plateCap: { title: 'Plate cap', kind: 'length', steel: between(1, 1.5, 2.5, 3.5) },
  capEdge: { title: 'Cap beside the pin holes', kind: 'length', steel: atLeast(4, 2) },
  capGrain: { title: 'Holes along the cap’s grain', kind: 'length', steel: atLeast(1, 0) },
  capClear: { title: 'Cap to braces', kind: 'length', steel: atLeast(1, 0) },
  frets: { title: 'Measured frets', kind: 'length', steel: atMost(0.25, 0.5) },
  tension: {
    title: 'Tension of each string',
    kind: 'force',
    steel: between(40, 60, 165, 200),
    nylon: between(30, 45, 95, 120),
  },
  pinEdge: { title: 'Wood behind the pins', kind: 'length', steel: atLeast(3, 1.5) },
  pinGap: { title: 'Wood between the pin holes', kind: 'length', steel: atLeast(3, 1.5) },
  scale: { title: 'Scale against the frets', kind: 'length', steel: atMost(0.5, 1) },
  neckPlane: { title: 'Straightedge against the strung guitar', kind: 'length', steel: atMost(0.2, 0.4) },
});

/** A usual range of lengths, mm, in limits that are round in the reader's unit. */
export const roundRange = (range: Range, show: ShowUnits): Range =>
  Object.fromEntries(Object.entries(range).map(([key, limit]) => [key, roundIn(limit, 'length', show.length)]));

export type CheckId = keyof typeof usualRanges;

export const checkIds = Object.keys(usualRanges) as readonly CheckId[];

const bounds = ['doubtfulFrom', 'from', 'to', 'doubtfulTo'] as const;

/** The range that a job's check goes by: the usual one for its strings, with what the job puts in its place. */
export const rangeOf = (
  job: Pick<Job, 'limits' | 'strings'>,
  id: CheckId,
): {
  readonly range: Range;
  /** The limits that are the job's own. */
  readonly own: Range;
  readonly isOwn: boolean;
  readonly kind: QuantityKind;
  readonly title: string;
} => {
  const { steel, nylon, kind, title } = usualRanges[id];
  const usual = nylon !== undefined && hasSoftStrings(job) ? nylon : steel;
  const asked = job.limits[id];
  if (asked === undefined) return { range: usual, own: {}, isOwn: false, kind, title };
  const given = bounds.flatMap((key) => (typeof asked[key] === 'number' ? [[key, asked[key]] as const] : []));
  const own: Range = Object.fromEntries(given);
  return { range: { ...usual, ...own }, own, isOwn: given.length > 0, kind, title };
};

/** Whether a set is of nylon or the like rather than of steel: most of its strings, by what a plain one or a core is made of. */
export const hasSoftStrings = ({ strings: { list } }: Pick<Job, 'strings'>): boolean =>
  list.filter(({ material }) => material !== 'steel').length > list.length / 2;
