import { sayLength } from './bridge/footprints/say-length.ts';
import { footprintOutline } from './bridge/outline.ts';
import { pinProblems } from './bridge/pin-problems.ts';
import { slotOutline } from './bridge/slot.ts';
import { deckHeight, slotFloorAt } from './bridge/surface.ts';
import { wingProblems } from './bridge/wings/problems.ts';
import { checkIds, rangeOf } from './checks/ranges.ts';
import type { Design } from './design.ts';
import { neckOrBridge } from './instrument/neck.ts';
import type { Job } from './job.ts';
import { type Found, found, type Problem } from './problem.ts';
import { wholeHeights } from './saddle/blank.ts';
import { crownEdgeOf } from './saddle/face.ts';
import { type Say, sayFor } from './say.ts';
import type { Settled } from './settle.ts';
import { pathIntersections } from './shape/intersect.ts';
import { contains } from './shape/measure.ts';
import { start } from './shape/path.ts';
import { translate } from './shape/transform.ts';
import type { Path } from './shape/types.ts';
import { formatQuantity } from './units.ts';

/** Whether a closed path lies wholly inside another. */
const inside = (inner: Path, outer: Path): boolean =>
  contains(outer, start(inner)) && pathIntersections(inner, outer).length === 0;

/** How far within the deck's shoulders a slot that is open there is looked at, mm: where there are no wings, it ends in the outline itself. */
const atShoulder = 1e-6;

/** A slot that its deck's arch lays open at the ends: deeper than `needed` would do, if the bridge has so much wood. */
const outOfTheArch = ({ mm, radius }: Say, { bridge, slot }: Job, needed: number): Problem => {
  const comesOut = `A slot ${mm(slot.depth)} deep at the centre comes out of the arched deck before its ends, ${mm(slot.length)} apart.`;
  return needed < bridge.thickness
    ? { path: 'slot.depth', value: slot.depth, says: `${comesOut} Make it deeper than ${mm(needed)}, or shorter.` }
    : {
        path: 'bridge.topRadius',
        value: bridge.topRadius,
        says: `${comesOut} A top radius of ${radius(bridge.topRadius)} falls by ${mm(needed)} over that: make the radius larger, or the slot shorter.`,
      };
};

const wireProblem = ({ mm }: Say, { saddle, slot }: Job): Found => {
  if (saddle.wireHole === 'none') return undefined;
  if (saddle.wireHole > slot.width)
    return {
      path: 'saddle.wireHole',
      value: saddle.wireHole,
      says: `A wire hole of ${mm(saddle.wireHole)} does not fit the slot’s floor, ${mm(slot.width)} wide. Make it at most ${mm(slot.width)}.`,
    };
  const most = (slot.length - saddle.wireHole) / 2;
  return (
    Math.abs(saddle.wireAcross) > most && {
      path: 'saddle.wireAcross',
      value: saddle.wireAcross,
      says: `A wire hole ${mm(Math.abs(saddle.wireAcross))} from the centre line lies beyond the slot’s end. Put it within ${mm(most)} of the middle.`,
    }
  );
};

/** How far a slot is moved to find a place for it, mm: at most, and step by step. */
const farthest = 60;
const slotStep = 0.25;

/** Where behind the front edge a slot that lies outside its footprint would lie inside; or what else would do. */
const slotPlace = (job: Settled, slot: Path, outline: Path): string => {
  const say = sayLength(job.show);
  const { frontToSaddle } = job.bridge;
  const holds = (by: number) => inside(slot, translate(outline, 0, -by));
  for (let by = slotStep; by <= farthest && job.work === 'bridge'; by += slotStep) {
    const sense = [1, -1].find((one) => frontToSaddle + one * by > 0 && holds(one * by));
    if (sense === undefined) continue;
    let [out, within] = [by - slotStep, by];
    for (let halving = 0; halving < 12; halving += 1) {
      const middle = (out + within) / 2;
      if (holds(sense * middle)) within = middle;
      else out = middle;
    }
    return `Put it ${say(frontToSaddle + sense * within, sense > 0 ? 'up' : 'down')} behind the front edge, or make it shorter or the bridge larger.`;
  }
  return 'No place behind the front edge holds it: make the slot shorter, or the bridge deeper or longer.';
};

/** A saddle whose crown falls to its bottom before its ends. */
const saddleEnds = ({ mm }: Say, job: Settled, design: Design): Found => {
  if (crownEdgeOf(design, 'along') === undefined) return undefined;
  const { bass, treble } = wholeHeights(job, design);
  const least = Math.min(bass, treble);
  return (
    least <= 0 && {
      path: 'slot.length',
      value: job.slot.length,
      says: `The saddle’s crown falls ${mm(-least)} below its bottom before its end, ${mm(job.slot.length / 2)} from the middle. Shorten the slot, make it deeper, or check the board radius.`,
    }
  );
};

/** A range of the job's own has to run upwards. */
const limitProblems = (job: Job): readonly Problem[] =>
  checkIds.flatMap((id) => {
    if (job.limits[id] === undefined) return [];
    const { range, kind, title } = rangeOf(job, id);
    const bounds = (['doubtfulFrom', 'from', 'to', 'doubtfulTo'] as const).filter((key) => range[key] !== undefined);
    const say = (value: number | undefined) => formatQuantity(value ?? 0, kind, job.show, { unit: true });
    return bounds.slice(1).flatMap((upper, k): readonly Problem[] => {
      const lower = bounds[k] as keyof typeof range;
      return (range[lower] ?? 0) <= (range[upper] ?? 0)
        ? []
        : [
            {
              path: `limits.${id}.${typeof job.limits[id]?.[lower] === 'number' ? lower : upper}`,
              value: range[typeof job.limits[id]?.[lower] === 'number' ? lower : upper],
              says: `The range for “${title}” runs backwards: ${say(range[lower])} stands before ${say(range[upper])}. Make the limits run upwards, or go back to the usual ones.`,
            },
          ];
    });
  });

/** What the worked-out numbers must satisfy before anything can be drawn; empty when they do. */
export const unbuildable = (job: Settled, design: Design): readonly Problem[] => {
  const { bridge, slot } = job;
  const say = sayFor(job);
  const { mm } = say;
  const outline = footprintOutline(job, design);
  const slotEnd =
    Math.min(deckHeight(job, -slot.length / 2), deckHeight(job, slot.length / 2)) -
    slotFloorAt(job, design, slot.length / 2);
  const low = design.strings
    .filter((string) => string.heightAboveFretPlane <= string.deck)
    .reduce<(typeof design.strings)[number] | undefined>(
      (deepest, s) =>
        deepest === undefined || s.deck - s.heightAboveFretPlane > deepest.deck - deepest.heightAboveFretPlane
          ? s
          : deepest,
      undefined,
    );
  const neck = low && neckOrBridge(job);
  const slotWay = slotOutline(slot, design.saddleLine, bridge.deckWidth - 2 * atShoulder);
  return found(
    ...limitProblems(job),
    !inside(slotWay, outline) && {
      path: 'bridge.frontToSaddle',
      value: bridge.frontToSaddle,
      says: `The slot, ${mm(slot.length)} by ${mm(slot.width)} and ${mm(bridge.frontToSaddle)} behind the front edge, does not lie inside the footprint. ${slotPlace(job, slotWay, outline)}`,
    },
    ...pinProblems(job, design, sayLength(job.show)),
    design.woodUnderSlot <= 0 && {
      path: 'slot.depth',
      value: slot.depth,
      says: `A slot ${mm(slot.depth)} deep cuts through the bridge, ${mm(bridge.thickness)} thick. Make it shallower than ${mm(bridge.thickness)}.`,
    },
    slotEnd <= 0 && outOfTheArch(say, job, slot.depth - slotEnd),
    job.saddle.under >= slot.depth && {
      path: 'saddle.under',
      value: job.saddle.under,
      says: `What lies under the saddle, ${mm(job.saddle.under)}, fills the slot, ${mm(slot.depth)} deep. Make it less than ${mm(slot.depth)}, or the slot deeper.`,
    },
    wireProblem(say, job),
    low && {
      path: 'bridge.thickness',
      value: bridge.thickness,
      says: `The string ${low.name} would lie ${mm(low.deck - low.heightAboveFretPlane)} inside the bridge: no saddle stands above it. Make the bridge thinner than ${mm(bridge.thickness - (low.deck - low.heightAboveFretPlane))}, or the action higher.${neck?.says === 'bridge' ? '' : ` The neck stands too low for a usual bridge: a neck reset that raises the fret plane by ${mm(neck?.reset.raise ?? 0)} over the bridge would be the better repair.`}`,
    },
    ...wingProblems(job),
    saddleEnds(say, job, design),
    crownEdgeOf(design, 'along') === undefined && {
      path: 'slot.length',
      value: slot.length,
      says: `The crown’s radius, ${say.radius(design.crown.radius)}, does not reach the ends of a saddle ${mm(slot.length)} long. Shorten the slot, or check the board radius.`,
    },
  );
};
