// How strings are placed and held that cannot be built: where the tool looks for the fault, what it says, and that the number it gives will do.
import { describe, expect, it } from 'vitest';
import { build } from '../../../geometry/build.ts';
import { setAt } from '../../../geometry/fields.ts';
import { withSet } from '../../../geometry/instrument/sets.ts';
import type { Job } from '../../../geometry/job.ts';
import { validateJob } from '../../../geometry/job-file.ts';
import { workedExample } from '../../solved.ts';

type Values = Readonly<Record<string, unknown>>;
const put = (job: Job, values: Values): Job =>
  Object.entries(values).reduce((changed, [path, value]) => setAt(changed, path, value), job);

const six = (): Job => put(workedExample(), { 'pins.leaves': 'pins', 'show.radius': 'mm' });
const twelve = (): Job =>
  put(withSet(six(), 'twelve'), {
    'strings.spread': 58,
    'guitar.nutSpread': 40,
    'pins.spread': 62,
    'bridge.depth': 46,
    'slot.line': 'least',
  });
const typed = (saddle: readonly number[], nut = saddle.map((place) => place * 0.65)): Values => ({
  'strings.spacing': 'typed',
  ...Object.fromEntries(
    workedExample().strings.list.flatMap(({ id }, k) => [
      [`strings.list.${id}.saddlePlace`, saddle[k]],
      [`strings.list.${id}.nutPlace`, nut[k]],
    ]),
  ),
});

interface Row {
  readonly what: string;
  readonly from: () => Job;
  readonly values: Values;
  readonly path: string;
  /** What the sentence names; the last group is the number that will do, and by how much beyond it. */
  readonly names: RegExp;
  readonly beyond: number;
}

const rows: readonly Row[] = [
  {
    what: 'typed places that touch',
    from: six,
    values: typed([-27, -16, -6, 5, 5.3, 27], [-18, -11, -4, 4, 11, 18]),
    path: 'strings.list.B3.saddlePlace',
    names: /B3 at 5\.3 mm at the saddle does not lie clear between its neighbours, G3 and E4.*between ([\d.]+) mm and/,
    beyond: 0.1,
  },
  {
    what: 'typed places out of order at the nut',
    from: six,
    values: typed([-27, -16, -6, 5, 16, 27], [-18, -11, -12, 4, 11, 18]),
    path: 'strings.list.D3.nutPlace',
    names: /D3 at −12\.0 mm at the nut does not lie clear.*between (−[\d.]+) mm and/,
    beyond: 0.1,
  },
  {
    what: 'one typed place far out of order, and not its neighbour',
    from: six,
    values: typed([-27, 30, -6, 5, 16, 27], [-18, -11, -4, 4, 11, 18]),
    path: 'strings.list.A2.saddlePlace',
    names: /A2 at 30\.0 mm at the saddle.*between (−[\d.]+) mm and/,
    beyond: 0.1,
  },
  {
    what: 'a pair that touches at the nut',
    from: twelve,
    values: { 'strings.pairGap': 1.2 },
    path: 'strings.pairGap',
    names: /pair 1\.2 mm apart.*more than ([\d.]+) mm apart/,
    beyond: 0.01,
  },
  {
    what: 'pairs in too small a spread at the nut',
    from: twelve,
    values: {
      'guitar.nutSpread': 20,
      'strings.pairGap': 6,
      'strings.list.E2.gauge': 1.6,
      'strings.list.A3.gauge': 2,
    },
    path: 'guitar.nutSpread',
    names: /20\.0 mm at the nut.*at least ([\d.]+) mm/,
    beyond: 0.01,
  },
  {
    what: 'pairs in too small a spread at the saddle',
    from: twelve,
    values: { 'strings.pairGap': 6, 'strings.spread': 38, 'guitar.nutSpread': 38 },
    path: 'strings.spread',
    names: /38\.0 mm at the saddle.*at least ([\d.]+) mm/,
    beyond: 0.01,
  },
  {
    what: 'an arc of more than half a circle',
    from: six,
    values: { 'pins.row': 'arc', 'pins.arcRise': 15, 'pins.spread': 28, 'pins.hole': 4, 'pins.fromSaddle': 22 },
    path: 'pins.arcRise',
    names: /28\.0 mm wide on an arc of 15\.0 mm.*less than ([\d.]+) mm/,
    beyond: -8,
  },
  {
    what: 'pin holes behind the footprint',
    from: six,
    values: { 'pins.fromSaddle': 27 },
    path: 'pins.fromSaddle',
    names: /pin hole of \S+ \(5\.0 mm wide, 27\.0 mm behind the saddle line\).*Move the pins to ([\d.]+) mm or nearer/,
    beyond: 0,
  },
  {
    what: 'a tie block behind the footprint',
    from: six,
    values: { 'pins.hold': 'tied', 'pins.fromSaddle': 40 },
    path: 'pins.fromSaddle',
    names: /tie block would begin 40\.0 mm behind.*Move it to ([\d.]+) mm or nearer/,
    beyond: 0,
  },
  {
    what: 'strings that would come out behind the back edge',
    from: six,
    values: { 'pins.hold': 'behind', 'pins.fromSaddle': 33 },
    path: 'pins.fromSaddle',
    names: /33\.0 mm behind the saddle line, does not come out of the bridge.*Move it to ([\d.]+) mm or nearer/,
    beyond: 0,
  },
  {
    what: 'a tie block before the break points',
    from: six,
    values: { 'pins.hold': 'tied', 'pins.fromSaddle': 3, 'strings.list.D3.setback': 7, 'slot.width': 8 },
    path: 'pins.fromSaddle',
    names: /would reach the tie block before its break point.*more than ([\d.]+) mm/,
    beyond: 0.1,
  },
  {
    what: 'pin holes in each other',
    from: six,
    values: { 'pins.hole': 10, 'pins.pinDiameter': 10.3, 'pins.spread': 48, 'bridge.depth': 48, 'pins.fromSaddle': 17 },
    path: 'pins.hole',
    names: /run into each other.*less than ([\d.]+) mm wide/,
    beyond: -0.1,
  },
  {
    what: 'two rows in each other',
    from: twelve,
    values: { 'pins.secondRow': 3, 'pins.secondAside': 3 },
    path: 'pins.secondRow',
    names: /holes of E3 and E2.*second row more than ([\d.]+) mm behind/,
    beyond: 3,
  },
  {
    what: 'strings over the first row’s pins',
    from: twelve,
    values: { 'pins.secondAside': 1 },
    path: 'pins.secondAside',
    names:
      /The string \S+ would run over the pin of \S+ on its way to the second row, by [\d.]+ mm.*second row ([\d.]+) mm aside/,
    beyond: 0,
  },
  {
    what: 'a ramp that would run into the slot',
    from: six,
    values: { 'pins.ramp': 9 },
    path: 'pins.ramp',
    names: /ramp 9\.0 mm long would run into the slot.*shorter than ([\d.]+) mm/,
    beyond: -0.1,
  },
  {
    what: 'a ramp where there is no room for any',
    from: six,
    values: { 'pins.ramp': 2, 'pins.fromSaddle': 4.4 },
    path: 'pins.ramp',
    names: /ramp 2\.0 mm long.*Choose “none”, or move the pins to more than [\d.]+ mm behind/,
    beyond: Number.NaN,
  },
  {
    what: 'a ramp through the bridge',
    from: six,
    values: { 'pins.ramp': 3, 'pins.rampDepth': 8, 'bridge.thickness': 7, 'slot.depth': 4 },
    path: 'pins.rampDepth',
    names: /ramp 8\.0 mm deep would cut through the bridge.*shallower than ([\d.]+) mm/,
    beyond: -0.1,
  },
  {
    what: 'tie holes under the bridge',
    from: six,
    values: { 'pins.hold': 'tied', 'pins.below': 11 },
    path: 'pins.below',
    names: /Tie holes 11\.0 mm below the deck would lie under the bridge.*less than ([\d.]+) mm/,
    beyond: -0.1,
  },
];

describe('strings that cannot be placed or held so', () => {
  it.each(rows)('$what: said at $path, with a number that will do', ({ from, values, path, names, beyond }) => {
    const wrong = put(from(), values);
    expect(validateJob(wrong).ok).toBe(true);
    const result = build(wrong);
    if (result.ok) throw new Error('was built');
    const problem = result.problems.find((p) => p.path === path);
    expect(problem?.says, JSON.stringify(result.problems)).toMatch(names);
    // Where no number of the field itself will do, another way out is named.
    if (Number.isNaN(beyond)) return;
    const said = Number(names.exec(problem?.says ?? '')?.[1]?.replace('−', '-'));
    const mended = build(setAt(wrong, path, said + beyond));
    expect(mended.ok ? [] : mended.problems.filter((p) => p.path === path)).toEqual([]);
  });

  it('an odd number in pairs has one left over', () => {
    const odd = put(six(), { 'strings.courses': 'pairs', 'strings.list': workedExample().strings.list.slice(0, 5) });
    const result = build(odd);
    expect(!result.ok && result.problems.map(({ path, says }) => `${path}: ${says}`)).toEqual([
      'strings.courses: 5 strings cannot stand in pairs: one would be left over. Add a string, take one away, or choose single strings.',
    ]);
  });
});
