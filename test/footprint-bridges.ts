import type { Footprint } from '../geometry/bridge/footprints/footprint.ts';
import { footprints } from '../geometry/bridge/footprints/index.ts';
import type { Job } from '../geometry/job.ts';
import { jobFile, workedExampleFile } from './solved.ts';

export type Bridge = Job['bridge'];

/** Points of a free outline from `[across, along]`, or `[across, along, 'corner']`. */
export const pointsOf = (given: readonly (readonly [number, number, ('smooth' | 'corner')?])[]): Bridge['points'] =>
  given.map(([across, along, turn = 'smooth'], k) => ({ id: `p${k}`, across, along, turn }));

/** The treble half of an invented outline: level front, wings with corners, and a belly. */
export const trebleHalf = pointsOf([
  [0, 0],
  [40, 0.8],
  [74, 2, 'corner'],
  [76, 25, 'corner'],
  [52, 28],
  [30, 36],
  [0, 40],
]);

const asymmetric = pointsOf([
  [-70, 3, 'corner'],
  [0, 0],
  [66, 1, 'corner'],
  [72, 20],
  [60, 27],
  [20, 38],
  [-25, 41],
  [-68, 30, 'corner'],
]);

const allSmooth = pointsOf([
  [0, 1],
  [55, 0],
  [78, 14],
  [52, 30],
  [0, 40],
]);

const based = jobFile(workedExampleFile).bridge;

/** Every footprint with the numbers of an invented bridge, by what sets it apart. */
export const bridges: Readonly<Record<string, Bridge>> = {
  belly: based,
  'belly, from tip to tip': { ...based, bellyWidth: based.length },
  'belly before': { ...based, footprint: 'bellyBefore' },
  'rectangle, square': { ...based, footprint: 'rectangle', ends: 'square' },
  'rectangle, eased': { ...based, footprint: 'rectangle', ends: 'eased', cornerRadius: 4 },
  'rectangle, eased to half its depth': {
    ...based,
    footprint: 'rectangle',
    ends: 'eased',
    cornerRadius: based.depth / 2,
  },
  'rectangle, half-round': { ...based, footprint: 'rectangle', ends: 'round' },
  pyramid: { ...based, footprint: 'pyramid' },
  waisted: { ...based, footprint: 'waisted' },
  'waisted, from end to end': { ...based, footprint: 'waisted', waistWidth: based.length },
  'free, mirrored': { ...based, footprint: 'free', points: trebleHalf },
  'free, smooth': { ...based, footprint: 'free', points: allSmooth },
  'free, each side its own': { ...based, footprint: 'free', mirrored: 'no', points: asymmetric },
};

export const footprintOf = (bridge: Bridge): Footprint => footprints[bridge.footprint];

export const outlineOf = (bridge: Bridge) => footprintOf(bridge).outline(bridge);

/** A bridge's numbers under other ones. */
export const problemsOf = (bridge: Bridge, mm = (length: number) => `${length} mm`) =>
  footprintOf(bridge).problems(bridge, mm);
