import { pinCentres } from './bridge/pins.ts';
import { profileHeights } from './bridge/profile.ts';
import { type SaddleLine, saddleLineAt, saddleLineThrough } from './bridge/slot.ts';
import { deckHeight, topHeight, undersideHeight } from './bridge/surface.ts';
import { unbuildable, unsolvable } from './constructible.ts';
import type { Design, SolvedString } from './design.ts';
import { fretAt } from './instrument/frets.ts';
import { placesAcross } from './instrument/spacing.ts';
import { tension } from './instrument/tension.ts';
import type { Job } from './job.ts';
import type { Problem } from './problem.ts';
import { layGauges, nearestGauge } from './saddle/gauges.ts';
import { type StringLine, stringLine } from './saddle/heights.ts';
import { bestRadius } from './saddle/radius.ts';
import type { Point } from './shape/types.ts';

const DEGREES = 180 / Math.PI;

export type Solved =
  | { readonly ok: true; readonly design: Design }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** The wanted heights across the saddle, as points (y across, height). */
const heightPoints = (strings: readonly StringLine[]): readonly Point[] =>
  strings.map((s) => ({ x: s.acrossAtSaddle, y: s.heightAboveFretPlane }));

const solveString = (
  job: Job,
  k: number,
  line: StringLine,
  saddleLine: SaddleLine,
  floor: number,
  pin: Point,
): SolvedString => {
  const string = job.strings.list[k] as Job['strings']['list'][number];
  const { acrossAtSaddle: y, breakX, slope, heightAboveFretPlane } = line;
  const deck = deckHeight(job, y);
  const leaves =
    job.pins.leaves === 'pins'
      ? { x: pin.y - job.pins.hole / 2, z: deckHeight(job, pin.x) }
      : { x: breakX + job.pins.leaves, z: deck };
  const angleIn = Math.atan(slope);
  const angleOut = Math.atan((heightAboveFretPlane - leaves.z) / (leaves.x - breakX));
  const pull = tension(string, job.guitar.scale);
  const inTheFan = Math.atan((y - line.acrossAtNut) / breakX);
  return {
    ...line,
    id: string.id,
    name: string.name,
    setback: string.setback,
    gauge: string.gauge,
    pin,
    deck,
    exposure: heightAboveFretPlane - deck,
    saddleHeight: heightAboveFretPlane - floor,
    behindMiddle: breakX - saddleLineAt(saddleLine, y),
    leaves,
    angleIn: angleIn * DEGREES,
    angleOut: angleOut * DEGREES,
    breakAngle: (angleIn + angleOut) * DEGREES,
    fan: (Math.atan((pin.x - y) / (pin.y - breakX)) - inTheFan) * DEGREES,
    tension: pull,
    downforce: pull * (Math.sin(angleIn) + Math.sin(angleOut)),
  };
};

/**
 * Every derived number of a job, or the problems that keep it from being built: a job can be readable and still ask for an arc that
 * cannot span its width, or a slot outside the footprint. Formulas and their sources stand beside each part. Throws nothing for a valid job.
 */
export const solve = (job: Job): Solved => {
  const early = unsolvable(job);
  if (early.length > 0) return { ok: false, problems: early };

  const { guitar, bridge, slot, strings } = job;
  const gauges = strings.list.map((string) => string.gauge);
  const nut = placesAcross(guitar.nutSpread, gauges, strings.spacing);
  const saddle = placesAcross(strings.spread, gauges, strings.spacing);
  const lines = strings.list.map((_, k) => stringLine(job, k, nut[k] ?? 0, saddle[k] ?? 0));
  const saddleLine = saddleLineThrough(lines[0] as StringLine, lines.at(-1) as StringLine);
  const pins = pinCentres(job, saddleLine);
  const deckCentre = deckHeight(job, 0);
  const slotFloor = deckCentre - slot.depth;
  const solved = lines.map((line, k) => solveString(job, k, line, saddleLine, slotFloor, pins[k] as Point));
  const points = heightPoints(lines);
  const crown = bestRadius(points);
  const fits = layGauges(points);
  const bridgeFront = saddleLine.x - bridge.frontToSaddle;
  const design: Design = {
    strings: solved,
    saddleLine,
    fret12: fretAt(guitar.scale, 12),
    bridgeFront,
    bridgeRear: bridgeFront + bridge.depth,
    topHeight: topHeight(job),
    deckCentre,
    slotFloor,
    woodUnderSlot: slotFloor - undersideHeight(job, 0),
    profile: profileHeights(job),
    straightedgeClearance: guitar.neckPlaneHeight - bridge.thickness,
    crown,
    gauges: fits,
    nearestGauge: nearestGauge(fits) ?? crown,
    totalTension: sum(solved.map((s) => s.tension)),
    totalDownforce: sum(solved.map((s) => s.downforce)),
  };
  const late = unbuildable(job, design);
  return late.length > 0 ? { ok: false, problems: late } : { ok: true, design };
};
