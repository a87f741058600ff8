import * as breakAngle from './break-angle.ts';
import * as breakPoints from './break-points.ts';
import * as bridge from './bridge.ts';
import * as crown from './crown.ts';
import type { Figure } from './figure.ts';
import * as glue from './glue.ts';
import * as heights from './heights.ts';
import { neededSetback } from './intonation.ts';
import * as life from './life.ts';
import * as load from './load.ts';
import * as neck from './neck.ts';
import * as outline from './outline.ts';
import * as plateCap from './plate-cap.ts';
import * as position from './position.ts';
import * as saddle from './saddle.ts';
import * as saddleHeights from './saddle-heights.ts';
import * as scale from './scale.ts';
import * as section from './section.ts';
import * as setUp from './set-up.ts';
import * as slot from './slot.ts';
import * as stock from './stock.ts';
import * as strings from './strings.ts';
import * as tension from './tension.ts';

/** Every derived number, in the order of the bench. A new figure is a constant in the file of its family, and its name here. */
export const figures: readonly Figure[] = [
  scale.scale,
  scale.scaleByFrets,
  scale.scaleError,
  scale.fret1,
  scale.fret12,
  scale.bodyJoint,
  scale.lastFret,
  neck.strungSaddleHeight,
  neck.neckPlaneStrung,
  neck.neckPlaneStraightedge,
  neck.neckPlaneHeight,
  neck.rise,
  neck.straightedgeClearance,
  neck.suitsFrom,
  neck.suitsTo,
  neck.suitingThickness,
  neck.resetRaise,
  neck.resetAngle,
  neck.resetOffHeel,
  heights.boardRadiusAtSaddle,
  strings.acrossAtNut,
  strings.acrossAtSaddle,
  strings.actionWanted,
  strings.firstFretWanted,
  tension.tension,
  tension.totalTension,
  neededSetback,
  slot.saddleLineFromNut,
  slot.saddleSlant,
  slot.bestSlotFromNut,
  slot.bestSlotSlant,
  slot.thicknessForAll,
  slot.bestThicknessForAll,
  saddle.saddleThickness,
  saddle.saddleLength,
  breakPoints.missed,
  breakPoints.fromFront,
  breakPoints.setback,
  breakPoints.breakPointFromNut,
  breakPoints.behindSlotMiddle,
  position.nutToSaddle,
  position.fret12ToSaddle,
  outline.outlineLength,
  outline.outlineDepth,
  bridge.bridgeFront,
  bridge.bridgeRear,
  position.overFront,
  position.overRear,
  position.overBass,
  position.overTreble,
  position.bareScar,
  bridge.topHeight,
  bridge.deckCentre,
  bridge.deckHeight,
  bridge.shoulderBass,
  bridge.shoulderTreble,
  bridge.tipTop,
  section.sectionTop,
  section.sectionUnderside,
  section.sectionThickness,
  bridge.slotFloor,
  bridge.woodUnderSlot,
  heights.crownAtFret1,
  heights.crownAtFret12,
  heights.slope,
  heights.heightAboveFretPlane,
  saddleHeights.saddleBottom,
  saddleHeights.exposure,
  saddleHeights.saddleHeight,
  saddleHeights.fromBassEnd,
  crown.bestRadius,
  crown.bestTilt,
  crown.bestRadiusMiss,
  crown.nearestGauge,
  crown.nearestGaugeMiss,
  crown.gaugeMiss,
  crown.crownRadius,
  crown.crownHeight,
  crown.crownMiss,
  saddleHeights.endHeightBass,
  saddleHeights.endHeightTreble,
  saddleHeights.highest,
  saddleHeights.blankLength,
  saddleHeights.blankHeight,
  saddleHeights.blankThickness,
  breakAngle.pinAcross,
  breakAngle.pinFromNut,
  breakAngle.reamDepth,
  breakAngle.leavesFromNut,
  breakAngle.leavesHeight,
  breakAngle.slopeAngle,
  breakAngle.angleBehind,
  breakAngle.breakAngle,
  breakAngle.fanAngle,
  breakAngle.downforce,
  breakAngle.totalDownforce,
  plateCap.capApart,
  plateCap.capStagger,
  glue.gluedArea,
  glue.gluedCentre,
  glue.secondMoment,
  load.stringMoment,
  load.stringMomentFree,
  ...load.loadCases,
  life.lifeAtSaddle,
  life.lifeLeft,
  setUp.passAction,
  setUp.passBreakPoint,
  setUp.takeOff,
  setUp.takeOffBass,
  setUp.takeOffTreble,
  setUp.takeOffSquare,
  setUp.afterLine,
  setUp.afterSquare,
  setUp.newBreakPoint,
  setUp.lifeAfterLine,
  stock.bridgeVolumeFigure,
  stock.bridgeWeightFigure,
  ...stock.blanks,
];

const byId = new Map(figures.map((figure) => [figure.id, figure]));

/** A string's figure as a figure of the job: always this string's, whichever is asked for. */
const bind = (figure: Figure, stringId: string): Figure => {
  const at = (strings: readonly { readonly id: string }[]) => strings.findIndex(({ id }) => id === stringId);
  return {
    ...figure,
    id: `${figure.id}.${stringId}`,
    title: `${figure.title}, ${stringId}`,
    per: 'job',
    value: (job, design) => figure.value(job, design, at(design.strings)),
    how: (job, design) => figure.how(job, design, at(design.strings)),
  };
};

/** The figure with this id; `tension.E2` is the tension of the string with the key E2, whichever string is asked for. Undefined where there is none. */
export const figureAt = (id: string): Figure | undefined => {
  const stop = id.indexOf('.');
  if (stop < 0) return byId.get(id);
  const figure = byId.get(id.slice(0, stop));
  return figure?.per === 'string' ? bind(figure, id.slice(stop + 1)) : undefined;
};
