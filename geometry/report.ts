import { existing } from './bridge/existing.ts';
import { load } from './bridge/load.ts';
import { pinHoles, reamDepth } from './bridge/pins.ts';
import { capToBrace, plateCap } from './bridge/plate-cap.ts';
import { position } from './bridge/position.ts';
import { bridgeBlank, capBlank } from './bridge/stock.ts';
import { bridgeVolume, bridgeWeight } from './bridge/volume.ts';
import { woods } from './bridge/woods.ts';
import { advise } from './checks/advise.ts';
import { findings } from './checks/findings.ts';
import type { Design } from './design.ts';
import { bestLine } from './figures/slot.ts';
import { boardRadius } from './instrument/board.ts';
import { neckOrBridge } from './instrument/neck.ts';
import type { Job } from './job.ts';
import { blank, wholeHeights } from './saddle/blank.ts';
import { thicknessNeeded } from './saddle/break-points.ts';
import { halfSaddle, onFace } from './saddle/face.ts';
import { lifeLeft } from './saddle/life.ts';
import type { CrownFit } from './saddle/radius.ts';
import { setUp } from './saddle/setup.ts';
import type { Settled } from './settle.ts';

const fitted = ({ radius, misses, worst }: CrownFit) => ({ radius, misses, worst });

/** Where the settled measurements come from; null for what was not measured. */
const readings = ({ guitar }: Settled, { readings: { frets, atPitch, ...from } }: Design) => ({
  scale: guitar.scale,
  scaleFrom: from.scaleFrom,
  scaleByFrets: frets?.scale ?? null,
  scaleError: frets?.error ?? null,
  fretMisses: frets?.misses ?? null,
  neckPlaneHeight: guitar.neckPlaneHeight,
  neckPlaneFrom: from.neckPlaneFrom,
  neckPlaneAtPitch: { strung: atPitch.strung ?? null, straightedge: atPitch.straightedge ?? null },
  rise: guitar.rise,
  riseFrom: from.riseFrom,
});

/** The slot's best place, and what the slot as it is drawn cannot reach: each string's `missed` says by how much. */
const slot = (job: Settled, design: Design) => {
  const { strings, saddleLine } = design;
  const best = bestLine(job, design);
  return {
    fromNut: best.x,
    slant: best.slant,
    width: job.slot.width,
    length: job.slot.length,
    ends: job.slot.ends,
    thicknessNeeded: thicknessNeeded(
      best,
      strings.map((s) => ({ across: s.acrossAtSaddle, neededX: job.guitar.scale + s.neededSetback })),
    ),
    drawn: { fromNut: saddleLine.x, slant: saddleLine.slant, thicknessNeeded: design.saddle.thicknessNeeded },
    notReached: strings.filter(({ missed }) => missed !== 0).map(({ id }) => id),
  };
};

/** What the saddle is sawn from and to. */
const saddle = (job: Settled, design: Design) => {
  const half = halfSaddle(design, 'along');
  const { bass, treble, highest } = wholeHeights(job, design);
  return {
    thickness: design.saddle.thickness,
    length: design.saddle.length,
    bottomHeight: design.saddle.bottom,
    under: job.saddle.under,
    proud: job.saddle.proud,
    blank: blank(job, design),
    crown: { by: job.saddle.crown, radius: design.cut?.radius ?? null },
    heights: { bassEnd: bass, trebleEnd: treble, highest },
    strings: design.strings.map((s) => ({ id: s.id, fromBassEnd: half + onFace(design, s.acrossAtSaddle, 'along') })),
  };
};

/** Where the bridge sits; null where no old scar was measured. */
const placed = (job: Settled, design: Design) => {
  const { bass, treble, overlap } = position(job, design);
  return { bass, treble, overlap: overlap ?? null };
};

/** What is there already, and what becomes of it; null for register pins where there are none. */
const there = (job: Settled, design: Design) => {
  const { kept, plugged, meetings, registerApart, risesUnder } = existing(job, design);
  return {
    kept: kept.map(({ hole: { id, what, plan, diameter }, wall, isInside }) => ({
      id,
      what,
      plan,
      diameter,
      wall,
      isInside,
    })),
    plugged: plugged.map(({ id }) => id),
    pinHoles: meetings.map(({ hole, string, miss }) => ({ id: hole.id, string: string.id, miss })),
    registerApart: registerApart ?? null,
    risesUnder: risesUnder.map(({ id, height }) => ({ id, height })),
  };
};

/** The overlay on the plate; null where there is none. */
const capOf = (job: Settled, design: Design) => {
  const cap = plateCap(job, design);
  if (cap === undefined) return null;
  const { middle, thickness, apart, stagger, wall } = cap;
  return {
    length: job.plate.length,
    depth: job.plate.depth,
    thickness,
    middle: { across: middle.x, fromNut: middle.y },
    apartAcrossGrain: apart,
    stagger,
    wall,
    braces: job.top.braces.map((brace) => ({ id: brace.id, clear: capToBrace(cap, brace) })),
  };
};

/** What the bridge is sawn from and what it weighs; a volume in mm³, a weight in g. */
const stock = (job: Settled, design: Design) => ({
  wood: woods[job.stock.wood].name,
  density: woods[job.stock.wood].density,
  volume: bridgeVolume(job, design),
  weight: bridgeWeight(job, design),
  allowance: job.stock.allowance,
  bridgeBlank: bridgeBlank(job, design),
  capBlank: capBlank(job) ?? null,
});

/** What every check finds and what is advised, for the job as it was asked. */
const found = (job: Settled, design: Design, asked: Job) =>
  findings(job, design).map(({ check, level, says, means, range, source }) => ({
    check,
    level,
    says,
    means,
    range,
    source,
    advice: advise(asked, check).map((advice) => ({
      says: advice.says,
      changes: advice.changes.map(({ path, value }) => ({ path, value })),
      worsens: advice.worsens,
    })),
  }));

/**
 * Everything that was solved, as plain JSON: unrounded, mm, degrees, N, N·mm, MPa. Strings bass first; heights above the fret plane, at pitch. Advice is worked out for the job as it was `asked`, with its words such as
 * “readings” still in it; where that is left out, for the settled one.
 */
export const report = (job: Settled, design: Design, asked: Job = job) => {
  const neck = neckOrBridge(job);
  const life = lifeLeft(job, design);
  const glue = load(job, design);
  return {
    format: 'sagitta-report',
    version: 1,
    units: {
      length: 'mm',
      angle: 'degree',
      force: 'N',
      moment: 'N·mm',
      stress: 'MPa',
      area: 'mm²',
      secondMoment: 'mm⁴',
      slope: 'mm/mm',
      volume: 'mm³',
      weight: 'g',
      density: 'kg/m³',
    },
    job: { name: job.name, date: job.date, hand: job.hand, work: job.work },
    readings: readings(job, design),
    neck: { ...neck, thickness: neck.thickness ?? null },
    boardRadiusAtSaddle: boardRadius(job.guitar, design.saddleLine.x),
    straightedgeClearance: design.straightedgeClearance,
    bestSaddleRadius: design.crown.radius,
    bestSaddleRadiusMisses: design.crown.misses,
    nearestGauge: fitted(design.nearestGauge),
    gauges: design.gauges.map(fitted),
    strings: design.strings.map((s, k) => ({
      id: s.id,
      name: s.name,
      acrossAtNut: s.acrossAtNut,
      acrossAtSaddle: s.acrossAtSaddle,
      breakPointFromNut: s.breakX,
      setback: s.setback,
      neededSetback: s.neededSetback,
      missed: s.missed,
      breakPoint: s.fromFront,
      heightAboveFretPlane: s.heightAboveFretPlane,
      deckHeight: s.deck,
      exposure: s.exposure,
      crownMiss: design.cut?.misses[k] ?? 0,
      saddleHeight: s.saddleHeight,
      behindSlotMiddle: s.behindMiddle,
      leavesBridgeAt: { x: s.leaves.x, z: s.leaves.z },
      slopeAngle: s.angleIn,
      breakAngle: s.breakAngle,
      fanAngle: s.fan,
      tension: s.tension,
      downforce: s.downforce,
      lifeLeft: life[k]?.atFret12 ?? null,
      lifeLimit: life[k]?.limit ?? null,
      leavesBridgeBy: s.leaves.touch,
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
    slot: slot(job, design),
    saddle: saddle(job, design),
    pins: {
      hold: job.pins.hold,
      holes: pinHoles(job, design).map(({ id, at, diameter }) => ({ id, across: at.x, fromNut: at.y, diameter })),
      reamDepth: reamDepth(job) ?? null,
    },
    load: {
      says: 'An estimate, to compare alternatives by: peel concentrates at the edge, so it never says that one is right.',
      area: glue.area,
      centreFromNut: glue.centreFromNut,
      secondMoment: glue.secondMoment,
      tension: design.totalTension,
      downforce: design.totalDownforce,
      held: design.held,
      cases: glue.cases,
      strings: glue.strings,
    },
    position: placed(job, design),
    existing: there(job, design),
    plateCap: capOf(job, design),
    stock: stock(job, design),
    setUp: setUp(job, design),
    findings: found(job, design, asked),
  };
};

export type Report = ReturnType<typeof report>;
