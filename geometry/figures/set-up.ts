import type { Design } from '../design.ts';
import { courseOf } from '../instrument/courses.ts';
import { heardShift } from '../instrument/intonation.ts';
import type { Job } from '../job.ts';
import { breakPoint } from '../saddle/break-points.ts';
import { type PassAdvice, type PassString, setUp } from '../saddle/setup.ts';
import type { Settled } from '../settle.ts';
import { breakPointFromNut } from './break-points.ts';
import type { Figure } from './figure.ts';
import { bassOf, every, type Given, inputs, trebleOf } from './inputs.ts';
import { lifeLeft } from './life.ts';
import { saddleLength, saddleThickness } from './saddle.ts';
import { fromBassEnd } from './saddle-heights.ts';
import { fret12, scale } from './scale.ts';
import { kept, saddleLineFromNut, saddleSlant } from './slot.ts';
import { sources } from './sources.ts';
import { acrossAtSaddle, actionWanted } from './strings.ts';

type Pass = Job['setup']['log'][number];

/** The last pass of the log whose readings say something, with those before it. */
const lastPass = (job: Settled, design: Design) => {
  const passes = setUp(job, design);
  const at = passes.findLastIndex(({ ok }) => ok);
  const outcome = passes[at];
  const pass = job.setup.log[at];
  if (outcome?.ok !== true || pass === undefined) return undefined;
  return { pass, earlier: job.setup.log.slice(0, at), advice: outcome.advice };
};

const readingOf = (pass: Pass, id: string) => pass.readings.find((reading) => reading.id === id);
const idOf = (design: Design, k: number) => design.strings[k]?.id ?? '';

/** The cents that were heard at a string in these passes, by their paths. */
const centsIn = (passes: readonly Pass[], id: string): readonly { readonly path: string; readonly cents: number }[] =>
  passes.flatMap((pass) => {
    const cents = readingOf(pass, id)?.cents;
    return typeof cents === 'number' ? [{ path: `setup.log.${pass.id}.readings.${id}.cents`, cents }] : [];
  });

const common = { kind: 'length' } as const;

const ofString = (
  id: string,
  title: string,
  about: string,
  value: (string: PassString) => number,
  how: Figure['how'],
): Figure => ({
  ...common,
  id,
  title,
  about,
  per: 'string',
  value: (job, design, k) => {
    const found = lastPass(job, design)?.advice.strings[k];
    return found && value(found);
  },
  how,
});

const ofJob = (
  id: string,
  title: string,
  about: string,
  value: (advice: PassAdvice) => number,
  how: Figure['how'],
): Figure => ({
  ...common,
  id,
  title,
  about,
  per: 'job',
  value: (job, design) => {
    const found = lastPass(job, design);
    return found && value(found.advice);
  },
  how,
});

export const passAction = ofString(
  'passAction',
  'Action measured',
  'The string’s action as measured in the last pass, or reckoned straight from its measured neighbours.',
  ({ action }) => action,
  (job, design, k) => {
    const pass = lastPass(job, design)?.pass;
    const path = (at: number) => `setup.log.${pass?.id}.readings.${idOf(design, at)}.action`;
    const isMeasured = (at: number) =>
      pass !== undefined && typeof readingOf(pass, idOf(design, at))?.action === 'number';
    if (pass === undefined || isMeasured(k))
      return {
        formula: 'a = the length typed, a_t',
        inputs: inputs(job, design, k, { a_t: pass && path(k) }),
        source: sources.typed,
      };
    const places = design.strings.map((_, at) => at).filter(isMeasured);
    const course = (at: number) => courseOf(job.strings, at);
    const mate = places.find((at) => course(at) === course(k));
    if (mate !== undefined)
      return {
        formula: 'a = a_m, of the other string of its pair',
        inputs: inputs(job, design, k, { a_m: path(mate) }),
        source: sources.wanted,
      };
    const before = places.findLast((at) => at < k) ?? 0;
    const after = places.find((at) => at > k) ?? 0;
    const numbers = job.strings.courses === 'pairs' ? 'course’s' : 'string’s';
    const place = (name: string, at: number): Given => ({ name, value: course(at) + 1, kind: 'count' });
    return {
      formula: 'a = a_p + (a_q − a_p)·(k − p)/(q − p)',
      inputs: inputs(job, design, k, {
        a_p: path(before),
        a_q: path(after),
        k: place(`the ${numbers} number, from the bass`, k),
        p: place('the measured one’s before it', before),
        q: place('the measured one’s after it', after),
      }),
      source: sources.wanted,
    };
  },
);

const shift = 'δ = x·b·(q − 1)/(x − q·b), b = x − L/2, q = 2^(c/1200)';
const onCrown = { L: scale, x_0: saddleLineFromNut, m: saddleSlant, y: acrossAtSaddle, t: saddleThickness, e: kept };

export const passBreakPoint: Figure = {
  ...common,
  id: 'passBreakPoint',
  title: 'Nut to break point, before the pass',
  about: 'Where the break point was when the last pass was measured: as drawn, or as earlier passes moved it.',
  per: 'string',
  value: (job, design, k) => {
    const string = design.strings[k];
    const found = lastPass(job, design);
    if (string === undefined || found === undefined) return undefined;
    return centsIn(found.earlier, string.id).reduce(
      (x, { cents }) =>
        breakPoint(
          design.saddleLine,
          string.acrossAtSaddle,
          x + heardShift(job.guitar.scale, x - job.guitar.scale, cents),
          design.saddle.thickness,
        ).breakX,
      string.breakX,
    );
  },
  how: (job, design, k) => {
    const heard = centsIn(lastPass(job, design)?.earlier ?? [], idOf(design, k));
    return heard.length === 0
      ? {
          formula: 'x = x_s',
          inputs: inputs(job, design, k, { x_s: breakPointFromNut }),
          source: sources.definition,
        }
      : {
          formula: `from x = x_s, for each c_k heard before, x grows by δ = x·b·(q − 1)/(x − q·b), b = x − L/2, q = 2^(c_k/1200), but not beyond x_0 + m·y ± (t/2 − e)·√(1 + m²)`,
          inputs: inputs(job, design, k, {
            x_s: breakPointFromNut,
            ...onCrown,
            ...Object.fromEntries(heard.map(({ path }, i) => [`c_${i + 1}`, path])),
          }),
          source: sources.heard,
        };
  },
};

export const takeOff = ofString(
  'takeOff',
  'Take off here',
  'What has to come off the saddle’s bottom at this string; negative where it is too low already.',
  ({ takeOff: off }) => off,
  (job, design, k) => ({
    formula: 'd = (a − a_w)·x/x_12',
    inputs: inputs(job, design, k, { a: passAction, a_w: actionWanted, x: passBreakPoint, x_12: fret12 }),
    source: 'Definition: the string pivots at the nut (practice: twice at the saddle).',
  }),
);

const end = (side: 'bass' | 'treble'): Figure =>
  ofJob(
    side === 'bass' ? 'takeOffBass' : 'takeOffTreble',
    `Take off at the ${side} end`,
    `What has to come off the saddle’s bottom at its ${side} end, on the line through the outer strings.`,
    ({ ends }) => ends[side],
    (job, design, k) => ({
      formula:
        side === 'bass' ? 'd = d_b − (d_t − d_b)·u_b/(u_t − u_b)' : 'd = d_b + (d_t − d_b)·(l − u_b)/(u_t − u_b)',
      inputs: inputs(job, design, k, {
        d_b: bassOf(takeOff),
        d_t: trebleOf(takeOff),
        u_b: bassOf(fromBassEnd),
        u_t: trebleOf(fromBassEnd),
        ...(side === 'treble' && { l: saddleLength }),
      }),
      source: sources.geometry,
    }),
  );

export const takeOffBass = end('bass');
export const takeOffTreble = end('treble');

export const takeOffSquare = ofJob(
  'takeOffSquare',
  'Or take the same off all along',
  'What can come off if the bottom is only squared: as much as leaves no string lower than wanted.',
  ({ square }) => square,
  (job, design, k) => ({
    formula: 'd = the least d_k, but not below 0',
    inputs: inputs(job, design, k, { d_k: every(takeOff) }),
    source: sources.definition,
  }),
);

export const afterLine = ofString(
  'afterLine',
  'Action after the line',
  'The action once the bottom is cut along the line through the outer strings.',
  (string) => string.afterLine,
  (job, design, k) => {
    const outer = [0, design.strings.length - 1].map((at) => takeOff.value(job, design, at));
    return outer.some((off) => typeof off === 'number' && off > 0)
      ? {
          formula: 'a_l = a − (d_b + (d_t − d_b)·u/l)·x_12/x',
          inputs: inputs(job, design, k, {
            a: passAction,
            d_b: takeOffBass,
            d_t: takeOffTreble,
            u: fromBassEnd,
            l: saddleLength,
            x_12: fret12,
            x: passBreakPoint,
          }),
          source: sources.geometry,
        }
      : {
          formula: 'a_l = a',
          inputs: inputs(job, design, k, { a: passAction }),
          source: 'Nothing is cut, as no outer string is too high; and nothing can be put back.',
        };
  },
);

export const afterSquare = ofString(
  'afterSquare',
  'Action if only squared',
  'The action once the same is taken off the bottom all along.',
  (string) => string.afterSquare,
  (job, design, k) => ({
    formula: 'a_q = a − d·x_12/x',
    inputs: inputs(job, design, k, { a: passAction, d: takeOffSquare, x_12: fret12, x: passBreakPoint }),
    source: sources.geometry,
  }),
);

export const newBreakPoint = ofString(
  'newBreakPoint',
  'Break point to file',
  'From the saddle’s front face back to where the break point is to be filed now.',
  ({ fromFront }) => fromFront,
  (job, design, k) => {
    const pass = lastPass(job, design)?.pass;
    const [heard] = centsIn(pass === undefined ? [] : [pass], idOf(design, k));
    const { L, ...crown } = onCrown;
    return {
      formula: `f = t/2 + o; o = w, but within ±(t/2 − e); w = (x${heard ? ' + δ' : ''} − x_0 − m·y)/√(1 + m²)${heard ? `; ${shift}` : ''}`,
      inputs: inputs(job, design, k, { x: passBreakPoint, ...crown, ...(heard && { L, c: heard.path }) }),
      source: sources.heard,
    };
  },
);

export const lifeAfterLine = ofString(
  'lifeAfterLine',
  'Life left after the line',
  'How far the action can still be lowered at fret 12, once the bottom is cut along the line.',
  ({ life }) => life.atFret12,
  (job, design, k) => ({
    formula: 'life = life_d + a_l − a_w',
    inputs: inputs(job, design, k, { life_d: lifeLeft, a_l: afterLine, a_w: actionWanted }),
    source: sources.pivot,
  }),
);
