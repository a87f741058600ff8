import type { Design } from './design.ts';
import type { CrownFit } from './saddle/radius.ts';
import type { Settled } from './settle.ts';

const fitted = ({ radius, misses, worst }: CrownFit) => ({ radius, misses, worst });

/** Everything that was solved, as plain JSON: unrounded, mm, degrees, N. Strings bass first; heights above the fret plane, at pitch. */
export const report = (job: Settled, design: Design) => ({
  format: 'sagitta-report',
  version: 1,
  units: { length: 'mm', angle: 'degree', force: 'N' },
  job: { name: job.name, date: job.date, hand: job.hand },
  straightedgeClearance: design.straightedgeClearance,
  bestSaddleRadius: design.crown.radius,
  bestSaddleRadiusMisses: design.crown.misses,
  nearestGauge: fitted(design.nearestGauge),
  gauges: design.gauges.map(fitted),
  strings: design.strings.map((s) => ({
    id: s.id,
    name: s.name,
    acrossAtNut: s.acrossAtNut,
    acrossAtSaddle: s.acrossAtSaddle,
    breakPointFromNut: s.breakX,
    setback: s.setback,
    heightAboveFretPlane: s.heightAboveFretPlane,
    deckHeight: s.deck,
    exposure: s.exposure,
    saddleHeight: s.saddleHeight,
    behindSlotMiddle: s.behindMiddle,
    leavesBridgeAt: s.leaves,
    slopeAngle: s.angleIn,
    breakAngle: s.breakAngle,
    fanAngle: s.fan,
    tension: s.tension,
    downforce: s.downforce,
    pin: { across: s.pin.x, fromNut: s.pin.y },
  })),
  totals: { tension: design.totalTension, downforce: design.totalDownforce },
  saddleLine: {
    fromNut: design.saddleLine.x,
    slant: design.saddleLine.slant,
    fromFret12: design.saddleLine.x - design.fret12,
  },
  bridge: {
    frontEdgeFromNut: design.bridgeFront,
    rearEdgeFromNut: design.bridgeRear,
    topHeight: design.topHeight,
    deckHeightAtCentre: design.deckCentre,
    slotFloorHeight: design.slotFloor,
    woodUnderSlot: design.woodUnderSlot,
    shoulderHeightBass: design.profile.shoulderBass,
    shoulderHeightTreble: design.profile.shoulderTreble,
  },
});

export type Report = ReturnType<typeof report>;
