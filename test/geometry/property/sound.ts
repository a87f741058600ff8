import { footprintOutline } from '../../../geometry/bridge/outline.ts';
import { endProfile } from '../../../geometry/bridge/profile.ts';
import { slotCut } from '../../../geometry/bridge/slot.ts';
import { deckHeight, floorRadius, undersideHeight } from '../../../geometry/bridge/surface.ts';
import { findings } from '../../../geometry/checks/findings.ts';
import type { Design } from '../../../geometry/design.ts';
import { saddleOutline } from '../../../geometry/saddle/face.ts';
import type { Settled } from '../../../geometry/settle.ts';
import { contains, levelCrossings } from '../../../geometry/shape/crossing.ts';
import { area, bounds, isSimple, mirrorX, type Path, place, pointOn } from '../../../geometry/shape/index.ts';
import { distanceTo } from '../../../geometry/shape/nearest.ts';
import { segmentEnd, segmentStart } from '../../../geometry/shape/path.ts';

/** Throws, and says what is amiss. */
export const must = (holds: boolean, says: () => string): void => {
  if (!holds) throw new Error(says());
};

/** Whether every number in a value, however deep, is one. */
export const allFinite = (value: unknown): boolean => {
  if (typeof value === 'number') return Number.isFinite(value);
  return typeof value !== 'object' || value === null || Object.values(value).every(allFinite);
};

/** Every outline that a bridge and its saddle are cut by. */
export const outlinesOf = (job: Settled, design: Design): Readonly<Record<string, Path>> => ({
  footprint: footprintOutline(job, design),
  slot: slotCut(job, design.saddleLine),
  'end profile': endProfile(job),
  saddle: saddleOutline(design, 'along', floorRadius(job)),
});

/** Ends no farther apart than this are one, mm. */
const joint = 1e-6;

/** The outline is closed, joined up, simple, made of numbers, encloses something, and turns the way all of its kind do. */
export const soundOutline = (name: string, outline: Path): void => {
  must(outline.closed, () => `${name} is open`);
  must(allFinite(outline), () => `${name} has a number that is none: ${JSON.stringify(outline)}`);
  outline.segments.forEach((segment, k) => {
    const [a, b] = [segmentEnd(outline.segments.at(k - 1) ?? segment), segmentStart(segment)];
    must(Math.hypot(a.x - b.x, a.y - b.y) <= joint, () => `${name} is torn before segment ${k}`);
  });
  must(area(outline) > 1, () => `${name} encloses ${area(outline)} mm²`);
  must(isSimple(outline), () => `${name} meets itself`);
};

/** Its two mirror images are each other's, number for number. */
export const mirrorsBack = (name: string, outline: Path): void => {
  const [there, back] = [outline, mirrorX(mirrorX(outline))];
  const near = (a: number, b: number) => Math.abs(a - b) < 1e-9;
  there.segments.forEach((segment, k) => {
    const other = back.segments[k];
    const same =
      other !== undefined &&
      [0, 0.5, 1].every((t) => {
        const [p, q] = [pointOn(segment, t), pointOn(other, t)];
        return near(p.x, q.x) && near(p.y, q.y);
      });
    must(same, () => `${name}, mirrored twice, is another`);
  });
  must(near(area(mirrorX(outline)), -area(outline)), () => `${name}, mirrored, does not turn the other way`);
};

/** How far inside a closed path a point lies, mm; outside it is negative. */
const depthIn = (outline: Path, p: { readonly x: number; readonly y: number }): number =>
  distanceTo(outline, p) * (contains(outline, p) ? 1 : -1);

const slack = 1e-6;

/** The slot and the holes lie inside the footprint, and no wall is thinner than nothing, or a finding says so. */
export const soundWood = (job: Settled, design: Design, outlines: Readonly<Record<string, Path>>): void => {
  const { footprint, slot } = outlines;
  if (!footprint || !slot) throw new Error('no outline');
  for (const segment of slot.segments)
    for (const t of [0, 0.25, 0.5, 0.75]) {
      const p = pointOn(segment, t);
      must(depthIn(footprint, p) >= -slack * 2, () => `the slot leaves the footprint at ${p.x}, ${p.y}`);
    }
  const hole = job.pins.hold === 'pins' ? job.pins.hole / 2 : 0;
  design.strings.forEach(({ pin, name }, k) => {
    must(depthIn(footprint, pin) >= hole - slack, () => `the hole of ${name} leaves the footprint`);
    for (const other of design.strings.slice(k + 1)) {
      const apart = Math.hypot(pin.x - other.pin.x, pin.y - other.pin.y);
      must(apart > 2 * hole - slack, () => `the holes of ${name} and ${other.name} meet`);
    }
  });
  if (job.pins.hold === 'pins') {
    const wall = Math.min(...design.strings.map(({ pin }) => -depthIn(slot, pin) - hole));
    if (wall < 0) {
      const said = findings(job, design).find(({ check }) => check === 'pinWood');
      must(said?.level === 'wrong', () => `${wall} mm between slot and holes, and ${said?.says ?? 'no finding'}`);
    }
  }
  must(design.woodUnderSlot > 0, () => 'no wood under the slot');
  must(design.saddle.thickness > 0 && design.saddle.length > 0, () => 'no saddle');
  for (const s of design.strings) must(s.exposure > 0 && s.saddleHeight > 0, () => `no saddle under ${s.name}`);
  const half = job.bridge.deckWidth / 2;
  for (const part of [-1, -0.5, 0, 0.5, 1]) {
    const thick = deckHeight(job, part * half) - undersideHeight(job, part * half);
    must(thick > 0, () => `the deck is ${thick} mm thick`);
  }
};

/** The end profile has wood from tip to tip: upright lines cross it twice, the top above the underside. */
export const soundProfile = (profile: Path): void => {
  const { minX, maxX } = bounds(profile);
  // Upright lines are level ones in the profile laid on its side.
  const at = levelCrossings(place(profile, { turn: -Math.PI / 2 }));
  for (const part of [0.001, 0.05, 0.2, 0.35, 0.5, 0.65, 0.8, 0.95, 0.999]) {
    const ys = at(-(minX + (maxX - minX) * part)).map(({ x }) => x);
    must(ys.length === 2, () => `the end profile is crossed ${ys.length} times at ${part}`);
    must(Math.abs((ys[0] ?? 0) - (ys[1] ?? 0)) > 0, () => `the end profile has no thickness at ${part}`);
  }
};
