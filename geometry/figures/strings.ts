import type { Design } from '../design.ts';
import { courseCount, courseOf, isSecond } from '../instrument/courses.ts';
import { type Places, stringPlaces } from '../instrument/spacing.ts';
import type { Job } from '../job.ts';
import { wantedAt } from '../saddle/heights.ts';
import type { Settled } from '../settle.ts';
import type { Figure, How } from './figure.ts';
import { count, every, type Given, inputs, number } from './inputs.ts';
import { sources } from './sources.ts';

/** Where a string lies by its spread and its number, as formula and inputs. */
const spaced = (job: Settled, design: Design, k: number, path: 'guitar.nutSpread' | 'strings.spread'): How => {
  const { spacing, courses } = job.strings;
  const inPairs = courses === 'pairs';
  const own = spacing === 'gaps' ? { d_k: every('strings.list.*.gauge') } : {};
  const pair = inPairs && {
    ...(path === 'guitar.nutSpread' && { S_s: 'strings.spread' }),
    p: 'strings.pairGap',
    q: place('its place in the pair: 0 for the first, 1 for the second', isSecond(job.strings, k) ? 1 : 0),
  };
  const within = path === 'guitar.nutSpread' ? 'p·S/S_s' : 'p';
  const apart = inPairs ? `; w = ${within}, m = n/2 courses, j = (k − q + 1)/2 the string’s` : '';
  const forms = {
    centres: inPairs ? `y = −S/2 + (S − w)·(j − 1)/(m − 1) + q·w${apart}` : 'y = −S/2 + S·(k − 1)/(n − 1)',
    gaps: inPairs
      ? `y = −S/2 + Σ(w + g + (d_2i + d_{2i+1})/2) over the courses i before it + q·w; g = (S − m·w − Σ(d_2i + d_{2i+1})/2)/(m − 1)${apart}; d_k as numbered from the bass`
      : 'y = −S/2 + Σ(g + (d_j + d_{j+1})/2) over the gaps before string k; g = (S − Σ(d_k + d_{k+1})/2)/(n − 1)',
  };
  return {
    formula: forms[spacing === 'gaps' ? 'gaps' : 'centres'],
    inputs: inputs(job, design, k, { S: path, k: number(k), n: count(design), ...own, ...pair }),
    source:
      spacing === 'gaps'
        ? `Definition: equal gaps, the strings’ own diameters${inPairs ? ' and the pairs’ widths' : ''} taken out.`
        : sources.definition,
  };
};

/** Where each string lies across, at a spread or as it was typed. */
const across = (
  id: string,
  title: string,
  about: string,
  at: keyof Places,
  path: 'guitar.nutSpread' | 'strings.spread',
  own: 'nutPlace' | 'saddlePlace',
): Figure => ({
  id,
  title,
  about,
  kind: 'length',
  per: 'string',
  value: (job, _, k) => stringPlaces(job)[at][k],
  how: (job, design, k) =>
    job.strings.spacing === 'typed'
      ? {
          formula: 'y = the place typed, y_t',
          inputs: inputs(job, design, k, { y_t: `strings.list.*.${own}` }),
          source: sources.typed,
        }
      : spaced(job, design, k, path),
});

export const acrossAtNut = across(
  'acrossAtNut',
  'Across, at the nut',
  'Where the string’s middle lies at the nut, from the centre line; + towards the treble.',
  'nut',
  'guitar.nutSpread',
  'nutPlace',
);

export const acrossAtSaddle = across(
  'acrossAtSaddle',
  'Across, at the saddle',
  'Where the string’s middle lies over the saddle, from the centre line; + towards the treble.',
  'saddle',
  'strings.spread',
  'saddlePlace',
);

const place = (name: string, value: number): Given => ({ name, value, kind: 'count' });

/** The string's number from the bass and how many there are; of pairs, the course's. */
export const numbered = (job: Job, design: Design, k: number): { readonly k: Given; readonly n: Given } =>
  job.strings.courses === 'pairs'
    ? {
        k: place('the course’s number, from the bass', courseOf(job.strings, k) + 1),
        n: place('how many courses', courseCount(job.strings)),
      }
    : { k: number(k), n: count(design) };

export const actionWanted: Figure = {
  id: 'actionWanted',
  title: 'Wanted action',
  about: 'Underside of the open string to the crown of fret 12, as wanted in the end.',
  kind: 'length',
  per: 'string',
  value: (job, _, k) => wantedAt(job, k).action,
  how: (job, design, k) => ({
    formula: 'a = a_b + (a_t − a_b)·(k − 1)/(n − 1)',
    inputs: inputs(job, design, k, { a_b: 'action.bass', a_t: 'action.treble', ...numbered(job, design, k) }),
    source: sources.wanted,
  }),
};

export const firstFretWanted: Figure = {
  id: 'firstFretWanted',
  title: 'Wanted first-fret clearance',
  about: 'Underside of the open string to the crown of fret 1, as wanted in the end.',
  kind: 'length',
  per: 'string',
  value: (job, _, k) => wantedAt(job, k).firstFret,
  how: (job, design, k) => ({
    formula: 'c = c_b + (c_t − c_b)·(k − 1)/(n − 1)',
    inputs: inputs(job, design, k, {
      c_b: 'action.firstFretBass',
      c_t: 'action.firstFretTreble',
      ...numbered(job, design, k),
    }),
    source: sources.wanted,
  }),
};
