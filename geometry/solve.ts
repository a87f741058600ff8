import { footprints } from './bridge/footprints/index.ts';
import { heldIn } from './bridge/held.ts';
import { leavesAt, pinCentres } from './bridge/pins.ts';
import { profileHeights } from './bridge/profile.ts';
import { type SaddleLine, saddleLineAt, slotLine } from './bridge/slot.ts';
import { deckHeight, floorRadius, topHeight, undersideHeight } from './bridge/surface.ts';
import type { Design, SolvedString } from './design.ts';
import { fretAt } from './instrument/frets.ts';
import { neededSetback } from './instrument/setbacks.ts';
import { spreadOf, stringPlaces } from './instrument/spacing.ts';
import { tension } from './instrument/tension.ts';
import type { Job } from './job.ts';
import type { Problem } from './problem.ts';
import { breakPoint, saddleThickness, thicknessNeeded } from './saddle/break-points.ts';
import { isMarkedIn, layGauges, nearestGauge } from './saddle/gauges.ts';
import { type StringLine, stringLine, wantedAt } from './saddle/heights.ts';
import { bestRadius, type CrownFit } from './saddle/radius.ts';
import { type Settled, settle } from './settle.ts';
import { drop } from './shape/sagitta.ts';
import type { Point } from './shape/types.ts';
import { unsolvable } from './unsolvable.ts';

const DEGREES = 180 / Math.PI;

export type Solved =
  | { readonly ok: true; readonly job: Settled; readonly design: Design }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** The wanted heights across the saddle, as points (y across, height). */
const heightPoints = (strings: readonly StringLine[]): readonly Point[] =>
  strings.map((s) => ({ x: s.acrossAtSaddle, y: s.heightAboveFretPlane }));

/** What every string of a job shares. */
interface Shared {
  readonly nut: readonly number[];
  readonly saddle: readonly number[];
  readonly needed: readonly number[];
  readonly line: SaddleLine;
  readonly pins: readonly Point[];
  readonly thickness: number;
  readonly bottom: number;
}

const solveString = (job: Settled, k: number, shared: Shared): SolvedString => {
  const string = job.strings.list[k] as Job['strings']['list'][number];
  const { scale } = job.guitar;
  const y = shared.saddle[k] ?? 0;
  const neededSetback = shared.needed[k] ?? 0;
  const point = breakPoint(shared.line, y, scale + neededSetback, shared.thickness);
  const line = stringLine(job, k, shared.nut[k] ?? 0, y, point.breakX);
  const { breakX, slope, heightAboveFretPlane } = line;
  const pin = shared.pins[k] as Point;
  const deck = deckHeight(job, y);
  const leaves = leavesAt(job, pin, y, breakX, heightAboveFretPlane);
  const angleIn = Math.atan(slope);
  const angleOut = Math.atan((heightAboveFretPlane - leaves.z) / (leaves.x - breakX));
  const pull = tension(string, scale);
  const inTheFan = Math.atan((y - line.acrossAtNut) / breakX);
  return {
    acrossAtNut: line.acrossAtNut,
    acrossAtSaddle: line.acrossAtSaddle,
    breakX,
    slope,
    heightAboveFretPlane,
    id: string.id,
    name: string.name,
    setback: point.missed === 0 ? neededSetback : breakX - scale,
    neededSetback,
    missed: point.missed,
    fromFront: point.fromFront,
    gauge: string.gauge,
    pin,
    deck,
    exposure: heightAboveFretPlane - deck,
    saddleHeight: heightAboveFretPlane - (shared.bottom - drop(floorRadius(job), y)),
    behindMiddle: breakX - saddleLineAt(shared.line, y),
    leaves,
    angleIn: angleIn * DEGREES,
    angleOut: angleOut * DEGREES,
    breakAngle: (angleIn + angleOut) * DEGREES,
    fan: (Math.atan((pin.x - y) / (pin.y - breakX)) - inTheFan) * DEGREES,
    tension: pull,
    downforce: pull * (Math.sin(angleIn) + Math.sin(angleOut)),
  };
};

/** A job whose strings' places are typed has the spreads that these give it: from outer string to outer string. */
const withSpreads = (job: Settled): Settled => {
  if (job.strings.spacing !== 'typed') return job;
  const { nut, saddle } = stringPlaces(job);
  return {
    ...job,
    guitar: { ...job.guitar, nutSpread: spreadOf(nut) },
    strings: { ...job.strings, spread: spreadOf(saddle) },
  };
};

/** The crown that is cut: undefined where it follows each string's own height. */
const crownToCut = (job: Job, best: CrownFit, fits: readonly CrownFit[]): CrownFit | undefined => {
  switch (job.saddle.crown) {
    case 'best':
      return best;
    case 'gauge':
      return nearestGauge(fits.filter(({ radius }) => isMarkedIn(radius, job.show.radius))) ?? best;
    case 'heights':
      return undefined;
  }
};

/**
 * Every derived number of a job, with the job as its readings settle it; or the problems that keep them from being worked out: a job can be readable and still ask for an arc that
 * cannot span its width. Whether what they describe can be made, `build` asks. Formulas and their sources stand beside each part. Throws nothing for a valid job.
 */
export const solve = (asked: Job): Solved => {
  const settled = settle(asked);
  if (!settled.ok) return settled;
  const { readings } = settled;
  const job = withSpreads(settled.job);
  const early = unsolvable(job);
  if (early.length > 0) return { ok: false, problems: early };

  const { guitar, bridge, slot, strings } = job;
  const { nut, saddle } = stringPlaces(job);
  const needed = strings.list.map((string, k) => neededSetback(strings, string, guitar.scale, wantedAt(job, k).action));
  const asks = needed.map((setback, k) => ({ x: saddle[k] ?? 0, y: guitar.scale + setback }));
  const saddleLine = slotLine(slot, asks);
  const datum = job.work === 'saddle' ? { x: slot.fromNut, slant: slot.slant } : saddleLine;
  const deckCentre = deckHeight(job, 0);
  const slotFloor = deckCentre - slot.depth;
  const thickness = saddleThickness(job);
  const bottom = slotFloor + job.saddle.under;
  const shared = { nut, saddle, needed, line: saddleLine, pins: pinCentres(job, datum), thickness, bottom };
  const solved = strings.list.map((_, k) => solveString(job, k, shared));
  const points = heightPoints(solved);
  const crown = bestRadius(points);
  const fits = layGauges(points);
  const bridgeFront = datum.x - bridge.frontToSaddle - (footprints[bridge.footprint].frontAtCentre?.(bridge) ?? 0);
  const design: Design = {
    readings,
    strings: solved,
    saddleLine,
    datum,
    fret12: fretAt(guitar.scale, 12),
    bridgeFront,
    bridgeRear: bridgeFront + bridge.depth,
    held: heldIn(job),
    topHeight: topHeight(job),
    deckCentre,
    slotFloor,
    woodUnderSlot: slotFloor - undersideHeight(job, 0),
    saddle: {
      thickness,
      length: slot.length - job.saddle.play,
      bottom,
      thicknessNeeded: thicknessNeeded(
        saddleLine,
        asks.map(({ x, y }) => ({ across: x, neededX: y })),
      ),
    },
    profile: profileHeights(job),
    straightedgeClearance: guitar.neckPlaneHeight - bridge.thickness,
    crown,
    cut: crownToCut(job, crown, fits),
    gauges: fits,
    nearestGauge: nearestGauge(fits) ?? crown,
    totalTension: sum(solved.map((s) => s.tension)),
    totalDownforce: sum(solved.map((s) => s.downforce)),
  };
  return { ok: true, job, design };
};
