import type { Design, SolvedString } from '../design.ts';
import { isSecond } from '../instrument/courses.ts';
import type { Job } from '../job.ts';
import { type Found, found, type Problem } from '../problem.ts';
import type { Settled } from '../settle.ts';
import { circle } from '../shape/arc.ts';
import { pathIntersections } from '../shape/intersect.ts';
import { contains } from '../shape/measure.ts';
import { start } from '../shape/path.ts';
import { distance, dot, subtract } from '../shape/point.ts';
import type { Path, Point } from '../shape/types.ts';
import type { SayLength } from './footprints/say-length.ts';
import { footprintOutline } from './outline.ts';
import { pinCentres } from './pins.ts';
import { saddleLineAt } from './slot.ts';
import { deckHeight, undersideHeight } from './surface.ts';

const insideOf = (inner: Path, outer: Path): boolean =>
  contains(outer, start(inner)) && pathIntersections(inner, outer).length === 0;

/** Whether a string's hole lies inside the outline, moved along the guitar; without pins, the place where the string goes in. */
const isInside = (job: Job, outline: Path, { pin }: SolvedString, moved: number): boolean => {
  const at: Point = { x: pin.x, y: pin.y + moved };
  return job.pins.hold === 'pins' ? insideOf(circle(at, job.pins.hole / 2), outline) : contains(outline, at);
};

/** The distance from the saddle line nearest to the present one at which all holes lie inside the footprint, mm; undefined if there is none that is less. */
const fitting = (job: Job, design: Design, outline: Path): number | undefined => {
  const fits = (moved: number) => design.strings.every((string) => isInside(job, outline, string, moved));
  const least = 3 - job.pins.fromSaddle;
  const steps = 40;
  const coarse = Array.from({ length: steps }, (_, k) => (least * (k + 1)) / steps).find(fits);
  if (coarse === undefined) return undefined;
  let [inside, outside] = [coarse, coarse - least / steps];
  for (let step = 0; step < 20; step += 1) {
    const middle = (inside + outside) / 2;
    if (fits(middle)) inside = middle;
    else outside = middle;
  }
  return job.pins.fromSaddle + inside;
};

const outsideProblem = (job: Job, design: Design, mm: SayLength): Found => {
  const { pins, bridge } = job;
  const outline = footprintOutline(job, design);
  const lost = design.strings.find((string) => !isInside(job, outline, string, 0));
  if (lost === undefined) return undefined;
  const hasPins = pins.hold === 'pins';
  const width = hasPins ? pins.hole : 0;
  if (pins.spread + width >= bridge.length)
    return {
      path: 'pins.spread',
      value: pins.spread,
      says: `${hasPins ? 'Pins' : 'Strings'} spread over ${mm(pins.spread)} do not fit on a bridge ${mm(bridge.length)} across. Make the spread less than ${mm(bridge.length - width, 'down')}.`,
    };
  const at = fitting(job, design, outline);
  const out =
    at === undefined
      ? `Move ${hasPins ? 'the pins' : 'it'}, or make the bridge deeper there.`
      : `${hasPins ? 'Move the pins' : 'Move it'} to ${mm(at, 'down')} or nearer, or make the bridge deeper there.`;
  const what = {
    pins: `The pin hole of ${lost.name} (${mm(pins.hole)} wide, ${mm(pins.fromSaddle)} behind the saddle line) does not lie inside the footprint.`,
    tied: `The tie block would begin ${mm(pins.fromSaddle)} behind the saddle line: at ${lost.name} the footprint does not reach so far.`,
    behind: `The hole of ${lost.name}, ${mm(pins.fromSaddle)} behind the saddle line, does not come out of the bridge: the footprint does not reach so far.`,
  }[pins.hold];
  return { path: 'pins.fromSaddle', value: pins.fromSaddle, says: `${what} ${out}` };
};

const earlyProblem = ({ pins }: Job, { strings }: Design, mm: SayLength): Found => {
  const early = strings.find(({ leaves, breakX }) => leaves.x <= breakX);
  if (early === undefined) return undefined;
  const hole = { pins: 'its pin hole', tied: 'the tie block', behind: 'its hole' }[pins.hold];
  return {
    path: 'pins.fromSaddle',
    value: pins.fromSaddle,
    says: `The string ${early.name} would reach ${hole} before its break point on the saddle. Make this more than ${mm(pins.fromSaddle + early.breakX - early.leaves.x, 'up')}.`,
  };
};

/** Pin holes that run into each other leave no wood between them. */
const crowded = ({ pins, strings: { list } }: Job, { strings }: Design, mm: SayLength): Found => {
  if (pins.hold !== 'pins') return undefined;
  const pairs = strings.flatMap((a, k) => strings.slice(k + 1).map((b) => ({ a, b, apart: distance(a.pin, b.pin) })));
  const worst = pairs.reduce((least, pair) => (pair.apart < least.apart ? pair : least));
  if (worst.apart > pins.hole) return undefined;
  const { a, b } = worst;
  const into = `The pin holes of ${a.name} and ${b.name}, ${mm(pins.hole)} wide and ${mm(worst.apart)} from middle to middle, run into each other.`;
  const k = list.findIndex(({ id }) => id === b.id);
  const isAcrossRows = Math.abs(b.pin.y - a.pin.y) > pins.secondRow / 2 && b.pin.y > a.pin.y;
  return isAcrossRows && isSecond({ courses: 'pairs' }, k)
    ? {
        path: 'pins.secondRow',
        value: pins.secondRow,
        says: `${into} Put the second row more than ${mm(pins.secondRow + pins.hole - (b.pin.y - a.pin.y), 'up')} behind, or make the holes less than ${mm(worst.apart, 'down')} wide.`,
      }
    : {
        path: 'pins.hole',
        value: pins.hole,
        says: `${into} Make the holes less than ${mm(worst.apart, 'down')} wide, or the pin spread larger.`,
      };
};

/** How far a string's way from its break point to its pin passes from another string's pin, mm, from above. */
const passes = ({ acrossAtSaddle, breakX }: SolvedString, pin: Point, other: Point): number => {
  const from = { x: acrossAtSaddle, y: breakX };
  const along = subtract(pin, from);
  const t = Math.min(1, Math.max(0, dot(subtract(other, from), along) / dot(along, along)));
  return distance(other, { x: from.x + t * along.x, y: from.y + t * along.y });
};

/** Where a string of the second row passes nearest to a pin of the first: which, and the room between them, mm; negative where it runs over it. */
const nearestPass = ({ pins, strings: { courses } }: Job, { strings }: Design, at: readonly Point[]) =>
  strings
    .flatMap((string, k) =>
      strings.flatMap((one, i) => {
        const [pin, other] = [at[k], at[i]];
        if (!isSecond({ courses }, k) || isSecond({ courses }, i) || !pin || !other) return [];
        return [{ string, one, room: passes(string, pin, other) - pins.hole / 2 - string.gauge / 2 }];
      }),
    )
    .reduce((least, pass) => (pass.room < least.room ? pass : least));

/** How far the second row may be moved aside, mm, and in what steps a way out is sought. */
const farthestAside = 12;
const asideStep = 0.1;

/** The strings of the second row pass beside the pins of the first. */
const overFirstRow = (job: Job, design: Design, mm: SayLength): Found => {
  const { pins, strings } = job;
  if (strings.courses !== 'pairs' || pins.hold !== 'pins') return undefined;
  const { string, one, room } = nearestPass(
    job,
    design,
    design.strings.map(({ pin }) => pin),
  );
  if (room > 0) return undefined;
  const clears = (secondAside: number) => {
    const at = pinCentres({ ...job, pins: { ...pins, secondAside } }, design.datum);
    return nearestPass(job, design, at).room > 0;
  };
  const most = Math.min(farthestAside, pins.spread - asideStep);
  const steps = Array.from({ length: Math.floor(most / asideStep) + 1 }, (_, k) => k * asideStep)
    .filter(clears)
    .toSorted((a, b) => Math.abs(a - pins.secondAside) - Math.abs(b - pins.secondAside));
  const [aside] = steps;
  return {
    path: 'pins.secondAside',
    value: pins.secondAside,
    says: `The string ${string.name} would run over the pin of ${one.name} on its way to the second row, by ${mm(-room)}. ${aside === undefined ? 'Make the holes smaller, or the pin spread larger.' : `Put the second row ${mm(aside, aside > pins.secondAside ? 'up' : 'down')} aside, or make the holes smaller.`}`,
  };
};

/** The shortest and the shallowest ramp that a job can have, mm. */
const leastRamp = 0.5;
const leastRampDepth = 0.2;

const rampProblem = (job: Settled, { strings, saddleLine }: Design, mm: SayLength): Found => {
  const { pins, slot } = job;
  if (pins.hold !== 'pins' || pins.ramp === 'none') return undefined;
  const rear = (slot.width / 2) * Math.hypot(1, saddleLine.slant);
  const room = Math.min(
    ...strings.map(
      ({ pin, breakX }) => pin.y - pins.hole / 2 - Math.max(saddleLineAt(saddleLine, pin.x) + rear, breakX),
    ),
  );
  if (pins.ramp >= room) {
    const only = room > 0 ? `only ${mm(room)} lie between it and the pin holes` : 'the pin holes reach it themselves';
    const out = room > leastRamp ? `Make it shorter than ${mm(room, 'down')}, or move` : 'Choose “none”, or move';
    return {
      path: 'pins.ramp',
      value: pins.ramp,
      says: `A ramp ${mm(pins.ramp)} long would run into the slot: ${only}. ${out} the pins to more than ${mm(pins.fromSaddle + pins.ramp - room, 'up')} behind the saddle line.`,
    };
  }
  const thickness = Math.min(...strings.map(({ pin }) => deckHeight(job, pin.x) - undersideHeight(job, pin.x)));
  return (
    pins.rampDepth >= thickness && {
      path: 'pins.rampDepth',
      value: pins.rampDepth,
      says: `A ramp ${mm(pins.rampDepth)} deep would cut through the bridge, ${mm(Math.max(0, thickness))} thick there. ${thickness > leastRampDepth ? `Make it shallower than ${mm(thickness, 'down')}` : 'Make the bridge thicker'}, or choose no ramp.`,
    }
  );
};

const tieProblem = (job: Settled, { strings }: Design, mm: SayLength): Found => {
  const { hold, below } = job.pins;
  if (hold !== 'tied') return undefined;
  const thickness = Math.min(...strings.map(({ pin }) => deckHeight(job, pin.x) - undersideHeight(job, pin.x)));
  return (
    below >= thickness && {
      path: 'pins.below',
      value: below,
      says: `Tie holes ${mm(below)} below the deck would lie under the bridge, ${mm(thickness)} thick there. Make this less than ${mm(thickness, 'down')}.`,
    }
  );
};

/** What keeps the strings from being held as the job asks: holes outside the footprint, in each other or before the break points, ramps in the slot, and strings over other strings' pins. */
export const pinProblems = (job: Settled, design: Design, mm: SayLength): readonly Problem[] =>
  found(
    outsideProblem(job, design, mm),
    earlyProblem(job, design, mm),
    crowded(job, design, mm),
    overFirstRow(job, design, mm),
    rampProblem(job, design, mm),
    tieProblem(job, design, mm),
  );
