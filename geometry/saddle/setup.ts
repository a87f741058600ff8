import type { Design } from '../design.ts';
import { courseOf } from '../instrument/courses.ts';
import { heardShift } from '../instrument/intonation.ts';
import type { Job } from '../job.ts';
import type { Settled } from '../settle.ts';
import { breakPoint } from './break-points.ts';
import { halfSaddle, onFace } from './face.ts';
import { wantedAt } from './heights.ts';
import { type Life, lifeLeft } from './life.ts';

type Pass = Job['setup']['log'][number];

export interface PassString {
  readonly id: string;
  readonly name: string;
  /** Action as measured, or reckoned from its neighbours, mm. */
  readonly action: number;
  readonly isMeasured: boolean;
  readonly wanted: number;
  /** What has to come off the saddle here: `(x_s/x_12)·(action − wanted)`; negative where it is too low already. */
  readonly takeOff: number;
  /** The action once the bottom is cut along the line through the outer strings; as it is where both are too low already, as nothing can be put back. */
  readonly afterLine: number;
  /** The action once the bottom is only squared: the same taken off all along. */
  readonly afterSquare: number;
  /** Where the break point is to be filed now, from the saddle's front face; as it is where nothing was heard. */
  readonly fromFront: number;
  /** How far it moves back, mm along the string; 0 where nothing was heard. */
  readonly shift: number;
  /** How far it would have to go beyond the crown's edge. */
  readonly missed: number;
  /** What is left to lower after the line is cut: at fret 12, and which limit is met. */
  readonly life: Life;
}

export interface PassAdvice {
  readonly id: string;
  readonly strings: readonly PassString[];
  /** To take off the bottom at the saddle's two ends, on the line through the outer strings. */
  readonly ends: { readonly bass: number; readonly treble: number };
  /** To take off all along if the bottom is only squared: as much as leaves no string lower than wanted. */
  readonly square: number;
  /** Both outer strings are as close to what is wanted as a gauge tells: nothing to take off. */
  readonly isThere: boolean;
}

export type PassOutcome =
  | { readonly ok: true; readonly advice: PassAdvice }
  | { readonly ok: false; readonly id: string; readonly missing: readonly string[] };

/** Within this of the wanted action at fret 12 nothing more is taken off, mm [practice]: what a gauge at the bench tells apart. */
export const closeEnough = 0.05;

/**
 * The actions of all strings: as measured; in a pair, of one that was not, as its neighbour's in the course; else straight between the nearest measured courses by their numbers, taking of a pair the string on the far side where both were
 * measured. Undefined while an outer course is missing.
 */
const allActions = (
  strings: Job['strings'],
  measured: readonly (number | undefined)[],
): readonly number[] | undefined => {
  const course = measured.map((_, k) => courseOf(strings, k));
  const own = measured.map(
    (value, k) => value ?? measured.find((other, i) => other !== undefined && course[i] === course[k]),
  );
  if (own[0] === undefined || own.at(-1) === undefined) return undefined;
  return own.map((value, k) => {
    if (value !== undefined) return value;
    const before = own.findLastIndex((one, i) => i < k && one !== undefined);
    const after = own.findIndex((one, i) => i > k && one !== undefined);
    const [low, high] = [own[before] ?? 0, own[after] ?? 0];
    const [from, to] = [course[before] ?? 0, course[after] ?? 0];
    return low + ((high - low) * ((course[k] ?? 0) - from)) / (to - from);
  });
};

/**
 * What each reading of the strung guitar asks for, pass by pass, oldest first. The string pivots at the nut, so the saddle changes by `x_s/x_12` of the change wanted at fret 12 [practice: twice]. Break points follow the
 * cents heard, each pass from where the one before left them.
 */
export const setUp = (job: Settled, design: Design): readonly PassOutcome[] => {
  const { strings, fret12, saddleLine, saddle } = design;
  const { scale } = job.guitar;
  const life = lifeLeft(job, design);
  const half = halfSaddle(design, 'along');
  const places = strings.map((s) => onFace(design, s.acrossAtSaddle, 'along'));
  let breaks: readonly number[] = strings.map((s) => s.breakX);
  return job.setup.log.map((pass: Pass): PassOutcome => {
    const of = (id: string) => pass.readings.find((reading) => reading.id === id);
    const measured = strings.map(({ id }) => {
      const action = of(id)?.action;
      return typeof action === 'number' ? action : undefined;
    });
    const before = breaks;
    const points = strings.map((s, k) => {
      const x = before[k] ?? s.breakX;
      const cents = of(s.id)?.cents;
      const shift = typeof cents === 'number' ? heardShift(scale, x - scale, cents) : 0;
      return { shift, ...breakPoint(saddleLine, s.acrossAtSaddle, x + shift, saddle.thickness) };
    });
    breaks = points.map(({ breakX }) => breakX);
    const actions = allActions(job.strings, measured);
    if (actions === undefined) {
      const missing = [strings[0], strings.at(-1)].flatMap((s) =>
        s !== undefined && typeof of(s.id)?.action !== 'number' ? [s.name] : [],
      );
      return { ok: false, id: pass.id, missing };
    }
    const wanted = strings.map((_, k) => wantedAt(job, k).action);
    const lever = strings.map((_, k) => (before[k] ?? 0) / fret12);
    const takes = strings.map((_, k) => ((actions[k] ?? 0) - (wanted[k] ?? 0)) * (lever[k] ?? 0));
    const [first = 0, last = 0] = [takes[0], takes.at(-1)];
    const [left = 0, right = 0] = [places[0], places.at(-1)];
    const lineAt = (x: number) => first + ((last - first) * (x - left)) / (right - left);
    const isCut = first > 0 || last > 0;
    const square = Math.max(0, Math.min(...takes));
    return {
      ok: true,
      advice: {
        id: pass.id,
        ends: { bass: lineAt(-half), treble: lineAt(half) },
        square,
        isThere: [0, strings.length - 1].every((k) => Math.abs((actions[k] ?? 0) - (wanted[k] ?? 0)) <= closeEnough),
        strings: strings.map((s, k) => {
          const [action = 0, want = 0, turn = 2, take = 0, x = 0] = [
            actions[k],
            wanted[k],
            lever[k],
            takes[k],
            places[k],
          ];
          const afterLine = action - (isCut ? lineAt(x) / turn : 0);
          const left12 = life[k] as Life;
          return {
            id: s.id,
            name: s.name,
            action,
            isMeasured: measured[k] !== undefined,
            wanted: want,
            takeOff: take,
            afterLine,
            afterSquare: action - square / turn,
            fromFront: points[k]?.fromFront ?? s.fromFront,
            shift: points[k]?.shift ?? 0,
            missed: points[k]?.missed ?? 0,
            life: {
              ...left12,
              atFret12: left12.atFret12 + (afterLine - want),
              atSaddle: left12.atSaddle + (afterLine - want) * turn,
            },
          };
        }),
      },
    };
  });
};

/** Height of the saddle's bottom line, seen from the tail, at a place along it, mm above its bottom now. */
export const takeOffAt = (ends: PassAdvice['ends'], half: number, x: number): number =>
  ends.bass + ((ends.treble - ends.bass) * (x + half)) / (2 * half);
