import type { SayLength } from '../bridge/footprints/say-length.ts';
import type { Job } from '../job.ts';
import type { Problem } from '../problem.ts';
import { courseCount } from './courses.ts';
import { clearGaps, type Places, smallestGap, stringPlaces } from './spacing.ts';

const ends = [
  { at: 'nut', where: 'at the nut', path: 'guitar.nutSpread', own: 'nutPlace' },
  { at: 'saddle', where: 'at the saddle', path: 'strings.spread', own: 'saddlePlace' },
] as const;

const gaugesOf = (job: Pick<Job, 'strings'>) => job.strings.list.map(({ gauge }) => gauge);

/** Typed places run from bass to treble, and leave each string its own width. Of two that do not, the one is named without which the others stand in order. */
const typedProblems = (job: Job, places: Places, mm: SayLength): readonly Problem[] =>
  ends.flatMap(({ at, where, own }) => {
    const { list } = job.strings;
    const at1 = (i: number) => places[at][i] ?? 0;
    const half = (i: number, j: number) => ((list[i]?.gauge ?? 0) + (list[j]?.gauge ?? 0)) / 2;
    const clear = (i: number, j: number) => i < 0 || j >= list.length || at1(j) - at1(i) > half(i, j);
    const k = clearGaps(places[at], gaugesOf(job)).findIndex((gap) => gap <= 0);
    if (k < 0) return [];
    const amiss = clear(k - 1, k + 1) && !clear(k, k + 2) ? k : k + 1;
    const [before, string, after] = [list[amiss - 1], list[amiss], list[amiss + 1]];
    if (string === undefined) return [];
    const low = before && at1(amiss - 1) + half(amiss - 1, amiss);
    const high = after && at1(amiss + 1) - half(amiss, amiss + 1);
    const hasRoom = low === undefined || high === undefined || low < high;
    const way =
      low !== undefined && (high === undefined || !hasRoom)
        ? `at more than ${mm(low, 'up')}`
        : low === undefined
          ? `at less than ${mm(high ?? 0, 'down')}`
          : `between ${mm(low, 'up')} and ${mm(high ?? 0, 'down')}`;
    const neighbours = [before, after].flatMap((one) => (one ? [one.name] : [])).join(' and ');
    return [
      {
        path: `strings.list.${string.id}.${own}`,
        value: at1(amiss),
        says: `The places of the strings run from bass to treble, each clear of the next; ${string.name} at ${mm(at1(amiss))} ${where} does not lie clear between its neighbours, ${neighbours}. Put ${string.name} ${way}.`,
      },
    ];
  });

/** The two strings of a pair do not touch each other, at the nut as little as at the saddle. */
const pairProblem = (job: Job, mm: SayLength): Problem | undefined => {
  const { list, pairGap, spread } = job.strings;
  const widest = Math.max(
    ...list.flatMap(({ gauge }, k) => (k % 2 === 1 ? [(gauge + (list[k - 1]?.gauge ?? 0)) / 2] : [])),
  );
  const least = widest * Math.max(1, spread / job.guitar.nutSpread);
  return pairGap > least
    ? undefined
    : {
        path: 'strings.pairGap',
        value: pairGap,
        says: `Two strings of a pair ${mm(pairGap)} apart over the saddle would touch, there or at the nut. Put them more than ${mm(least, 'up')} apart.`,
      };
};

/** Strings that a spread holds do not run into each other. At the nut the pairs' own spacing grows with the spread, so that courses win only what the pairs leave of it. */
const spreadProblems = (job: Job, places: Places, mm: SayLength): readonly Problem[] => {
  const { strings, guitar } = job;
  const steps = courseCount(strings) - 1;
  const left = strings.courses === 'pairs' ? 1 - ((steps + 1) * strings.pairGap) / strings.spread : 1;
  return ends.flatMap(({ at, where, path }) => {
    const gap = smallestGap(places[at], gaugesOf(job));
    // Where the pairs alone are wider than the spread at the saddle, no spread at the nut mends it.
    if (gap > 0 || (at === 'nut' && left <= 0)) return [];
    const spread = at === 'nut' ? guitar.nutSpread : strings.spread;
    const enough = spread - (gap * steps) / (at === 'nut' ? left : 1);
    return [
      {
        path,
        value: spread,
        says: `With a spread of ${mm(spread)} ${where}, neighbouring strings run into each other by ${mm(-gap)}. Make the spread at least ${mm(enough, 'up')}.`,
      },
    ];
  });
};

/** What keeps the strings from having places of their own: an odd number in pairs, typed places out of order, or strings that touch. */
export const stringProblems = (job: Job, mm: SayLength): readonly Problem[] => {
  const { spacing, courses, list } = job.strings;
  if (courses === 'pairs' && list.length % 2 === 1)
    return [
      {
        path: 'strings.courses',
        value: courses,
        says: `${list.length} strings cannot stand in pairs: one would be left over. Add a string, take one away, or choose single strings.`,
      },
    ];
  const places = stringPlaces(job);
  if (spacing === 'typed') return typedProblems(job, places, mm);
  const pair = courses === 'pairs' ? pairProblem(job, mm) : undefined;
  return pair === undefined ? spreadProblems(job, places, mm) : [pair];
};
