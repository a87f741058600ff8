import fc from 'fast-check';
import { expect } from 'vitest';
import { footprintOutline } from '../../../geometry/bridge/outline.ts';
import { slotCut } from '../../../geometry/bridge/slot.ts';
import { build } from '../../../geometry/build.ts';
import type { Design } from '../../../geometry/design.ts';
import { schemaAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import { validateJob } from '../../../geometry/job-file.ts';
import type { Settled } from '../../../geometry/settle.ts';
import { type Path, pointOn } from '../../../geometry/shape/index.ts';
import { randomJob } from '../../random-job.ts';
import { scaledJob } from './scaled.ts';
import { allFinite, mirrorsBack, must, outlinesOf, soundOutline, soundProfile, soundWood } from './sound.ts';

/** Numbers of a path, as points on it. */
const places = (path: Path) => path.segments.flatMap((s) => [0, 0.3, 0.7].map((t) => pointOn(s, t)));

const k = 1.37;

const near = (a: number, b: number, says: string) =>
  must(Math.abs(a - b) < 1e-7 * Math.max(1, Math.abs(b)), () => `${says}: ${a}, not ${b}`);

/** Scaled by k with its typed setbacks, the job has every length times k and every angle as it was. */
const soundScale = (asked: Job, design: Design, job: Settled): boolean => {
  const result = build(scaledJob(asked, k));
  if (!result.ok) throw new Error(`scaled by ${k}, it is refused: ${result.problems[0]?.says}`);
  const larger = result.design;
  for (const key of ['bridgeFront', 'bridgeRear', 'deckCentre', 'slotFloor', 'woodUnderSlot', 'topHeight'] as const)
    near(larger[key], design[key] * k, key);
  near(larger.saddleLine.x, design.saddleLine.x * k, 'saddle line');
  near(larger.saddleLine.slant, design.saddleLine.slant, 'slant');
  for (const draw of [footprintOutline, (of: Settled, by: Design) => slotCut(of, by.saddleLine)]) {
    const [small, large] = [places(draw(job, design)), places(draw(result.job, larger))];
    must(small.length === large.length, () => 'an outline has other segments when it is scaled');
    small.forEach((p, n) => {
      near(large[n]?.x ?? 0, p.x * k, 'outline, x');
      near(large[n]?.y ?? 0, p.y * k, 'outline, y');
    });
  }
  // What a break point keeps from the crown's edge is the same at any size, so a string whose break point the crown cannot carry is left out.
  let carried = 0;
  design.strings.forEach((s, n) => {
    const t = larger.strings[n];
    if (t === undefined || s.missed !== 0 || t.missed !== 0) return;
    carried += 1;
    for (const key of ['exposure', 'breakX', 'saddleHeight', 'deck', 'acrossAtSaddle', 'gauge'] as const)
      near(t[key], s[key] * k, `${s.name}, ${key}`);
    near(t.pin.x, s.pin.x * k, 'pin, x');
    near(t.pin.y, s.pin.y * k, 'pin, y');
    for (const key of ['breakAngle', 'angleIn', 'angleOut', 'fan'] as const) near(t[key], s[key], `${s.name}, ${key}`);
  });
  return carried > 0;
};

/** How many random jobs all files here draw between them: `npm run long` asks for more. */
const total = Number(process.env.SAGITTA_RANDOM_JOBS ?? 10_000);

/** In how many files, which run side by side. */
const files = 2;

/** How many each file draws, and how long it may take on a busy machine, ms. */
export const count = Math.ceil(total / files);
export const timeout = 30_000 + count * 30;

/** Draws random jobs from a seed: each that can be built has to be sound, and to scale; each that cannot, to say why. */
export const holdJobs = (seed: number): void => {
  const seen = new Map<string, number>();
  const see = (...what: readonly string[]) => {
    for (const one of what) seen.set(one, (seen.get(one) ?? 0) + 1);
  };
  fc.assert(
    fc.property(randomJob(), (asked) => {
      see('asked');
      if ((seen.get('asked') ?? 0) % 10 === 1) {
        const read = validateJob(asked);
        must(read.ok, () => `it is not readable: ${JSON.stringify(read)}`);
      }
      const result = build(asked);
      if (!result.ok) {
        see('refused');
        must(result.problems.length > 0, () => 'refused without a word');
        for (const { path, says } of result.problems) {
          must(!/NaN|undefined|Infinity|\[object/.test(says), () => says);
          must(schemaAt(path) !== undefined, () => `${path} is no place in a job`);
        }
        return;
      }
      const { job, design } = result;
      const { bridge, strings, pins, slot } = job;
      see(
        'built',
        bridge.footprint,
        strings.courses,
        `${strings.list.length} strings`,
        pins.hold,
        pins.row,
        bridge.wing,
      );
      see(`${slot.ends} ends`, `${slot.floor} floor`, `${strings.spacing} spacing`, job.work, bridge.edge);
      must(allFinite({ ...design, readings: undefined }), () => `a number is none: ${JSON.stringify(design)}`);
      const outlines = outlinesOf(job, design);
      for (const [name, outline] of Object.entries(outlines)) {
        soundOutline(name, outline);
        mirrorsBack(name, outline);
      }
      soundWood(job, design, outlines);
      if (outlines['end profile']) soundProfile(outlines['end profile']);
      // A radius gauge is of one size, and a setback that is computed follows the pitch.
      if (asked.strings.setbacks !== 'typed' || asked.saddle.crown !== 'best') return;
      if (soundScale(asked, design, job)) see('scaled');
    }),
    { numRuns: count, seed, endOnFailure: true },
  );
  // Worth something only if every choice was built, and often.
  expect(seen.get('built') ?? 0).toBeGreaterThan(count / 3);
  expect(seen.get('scaled') ?? 0).toBeGreaterThan(count / 40);
  const choices =
    'belly bellyBefore rectangle pyramid waisted free,single pairs,pins tied behind,square slanted arc,hollow straight round ogee,round ends,square ends,through ends,level floor,dome floor,centres spacing,gaps spacing,typed spacing,bridge saddle,square round chamfer';
  for (const choice of choices.split(','))
    for (const one of / (ends|floor|spacing)$/.test(choice) ? [choice] : choice.split(' '))
      expect(seen.get(one) ?? 0, one).toBeGreaterThan(count / 100);
  for (let n = 4; n <= 12; n += 1) expect(seen.get(`${n} strings`) ?? 0, `${n} strings`).toBeGreaterThan(count / 200);
};
