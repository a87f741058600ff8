import { describe, expect, it } from 'vitest';
import { setAt } from '../../geometry/fields.ts';
import type { Job } from '../../geometry/job.ts';
import { layOut, sayWith } from '../../geometry/layout.ts';
import { area, bounds, isSimple, pathIntersections, polyline } from '../../geometry/shape/index.ts';
import type { Path } from '../../geometry/shape/types.ts';
import { sections } from '../../templates/pieces/sections.ts';
import { newShop, readShop, type Shop } from '../../templates/shop/index.ts';
import { built, workedExample } from '../solved.ts';
import { footprintJobs } from './full-job.ts';

const make = (values: Readonly<Record<string, unknown>>, from: Job = workedExample()) =>
  built(Object.entries(values).reduce<Job>((job, [path, value]) => setAt(job, path, value), from));

const profiles = ({ job, design }: ReturnType<typeof built>, settings: Partial<Shop['sections']> = {}) => {
  const shop = newShop();
  const drawings = sections.draw(job, design, { ...shop, sections: { ...shop.sections, ...settings } });
  return drawings.map(({ id, title, marks }) => {
    const path = (mark: string): Path => {
      const found = marks.find((one) => one.id === mark);
      if (found?.kind !== 'path') throw new Error(`no ${mark} on ${id}`);
      return found.path;
    };
    const texts = layOut(marks, { em: 3.5, say: sayWith(job.show) }).flatMap((p) => (p.kind === 'text' ? [p] : []));
    return { id, title, path, has: (mark: string) => marks.some((one) => one.id === mark), texts };
  });
};

const upright = (x: number) =>
  polyline(
    [
      { x, y: -60 },
      { x, y: 60 },
    ],
    false,
  );
/** From the line that is sawn down to the wood's underside at a place on the page, mm. */
const woodAt = (path: (mark: string) => Path, x: number): number => {
  const under = pathIntersections(upright(x), path('under.1'))[0]?.y ?? Number.NaN;
  const over = Math.max(...pathIntersections(upright(x), path('gauge')).map(({ y }) => y));
  return under - over;
};

describe('section profiles', () => {
  it('are of the middle and half-way down either wing, and of what the screen shows besides', () => {
    expect(profiles(make({})).map(({ title }) => title)).toEqual([
      'Profile along, middle',
      'Profile along, bass wing',
      'Profile along, treble wing',
    ]);
    const shown = profiles(make({ 'show.sectionAcross': 30, 'show.sectionAlong': 20 }));
    expect(shown.slice(3).map(({ title }) => title)).toEqual([
      'Profile along, 30.0 mm to the treble',
      'Profile across, 20.0 mm behind the front edge',
    ]);
  });

  it('are as high over the bare top as the job’s own numbers make the wood: T − drop(R, y) + tilt·y + drop(R_t, y)', () => {
    const made = make({
      'bridge.tilt': 0.01,
      'bridge.topRadius': 400,
      'guitar.topRadius': 5000,
      'bridge.edge': 'square',
    });
    const own = profiles(made, {
      usual: 'out',
      stations: [-35, 0, 28].map((at, k) => ({ id: `s${k}`, runs: 'along', at })),
    });
    const { bridge } = made.job;
    for (const [k, y] of [-35, 0, 28].entries()) {
      const drop = (r: number) => r - Math.sqrt(r * r - y * y);
      const wood = bridge.thickness - drop(400) + 0.01 * y + drop(5000);
      // A tilted deck's arc leaves the sheared surface by a micrometre or two.
      const { path } = own[k] as (typeof own)[number];
      for (const x of [-9, 0, 8]) expect(Math.abs(woodAt(path, x) - wood)).toBeLessThan(0.005);
    }
  });

  it('stand on the top with feet of the length that is asked for, before and behind the bridge', () => {
    const made = make({ 'top.radiusAlong': 3000 });
    const [middle] = profiles(made, { foot: 25, back: 30 });
    if (!middle) throw new Error('no profile');
    const [gauge, wood] = [bounds(middle.path('gauge')), bounds(middle.path('under.1'))];
    expect(wood.minX - gauge.minX).toBeCloseTo(25, 9);
    expect(gauge.maxX - wood.maxX).toBeCloseTo(25, 9);
    expect(wood.maxX - wood.minX).toBeCloseTo(made.job.bridge.depth, 9);
    expect(isSimple(middle.path('gauge'))).toBe(true);
    // The feet lie on the dome: about 3000 mm below, through both ends of the underside too.
    const [line] = middle.path('under.1').segments;
    expect(line).toMatchObject({ kind: 'arc', radius: 3000 });
    const feet = middle.path('gauge').segments.filter((s) => s.kind === 'arc' && s.radius === 3000);
    expect(feet).toHaveLength(2);
    for (const foot of feet)
      if (foot.kind === 'arc' && line?.kind === 'arc') expect(foot.centre.y).toBeCloseTo(line.centre.y, 6);
  });

  it('are of the wood as it is shaped: neither slot nor pin holes break the line, but the slot’s walls are shown', () => {
    const across = profiles(make({}), { usual: 'out', stations: [{ id: 'pins', runs: 'across', at: 22.1 }] })[0];
    if (!across) throw new Error('no profile');
    expect(across.has('under.2')).toBe(false);
    const along = profiles(make({}))[0];
    const [one, two] = [along?.path('slot.1.1'), along?.path('slot.1.2')].map((wall) => (wall ? bounds(wall).minX : 0));
    const { slot } = workedExample();
    expect(Math.abs((two ?? 0) - (one ?? 0))).toBeGreaterThanOrEqual(slot.width);
    expect(Math.abs((two ?? 0) - (one ?? 0))).toBeLessThan(slot.width * 1.01);
  });

  it('round the front and back edges over as the job says, over the deck only', () => {
    const made = make({ 'bridge.edge': 'round', 'bridge.edgeSize': 2.5 });
    const [middle, bass] = profiles(made);
    const radii = (one: typeof middle) =>
      one?.path('gauge').segments.flatMap((s) => (s.kind === 'arc' && s.radius === 2.5 ? [s.radius] : []));
    expect(radii(middle)).toEqual([2.5, 2.5]);
    expect(radii(bass)).toEqual([]);
    const said = (one: typeof middle) => one?.texts.some(({ text }) => text === 'edges rounded 2.5 mm');
    expect([said(middle), said(bass)]).toEqual([true, false]);
  });

  it.each(Object.entries(footprintJobs))(
    'of %s part the card along one line: gauge and wood are all of it, and lie on a level top beside each other',
    (_, asked) => {
      for (const { path, has } of profiles(make({ 'guitar.topRadius': 'flat', 'top.radiusAlong': 'flat' }, asked()))) {
        expect(has('under.2')).toBe(false);
        const [card, wood] = [bounds(path('gauge')), bounds(path('under.1'))];
        const places = 400;
        const step = (wood.maxX - wood.minX) / places;
        const sum = Array.from({ length: places }, (_, k) => woodAt(path, wood.minX + (k + 0.5) * step) * step);
        const together = Math.abs(area(path('gauge'))) + sum.reduce((total, part) => total + part, 0);
        const whole = (card.maxX - card.minX) * (card.maxY - card.minY);
        expect(Math.abs(together / whole - 1)).toBeLessThan(1e-4);
        expect(isSimple(path('gauge'))).toBe(true);
      }
    },
  );

  it('say where there is no bridge, and what to do', () => {
    const [none] = profiles(make({}), { usual: 'out', stations: [{ id: 'far', runs: 'along', at: 90 }] });
    expect(none?.texts.map(({ text }) => text)).toEqual([
      'no bridge 90.0 mm to the treble',
      'it reaches 76.0 mm to the bass and 76.0 mm to the treble',
      'take the section within that',
    ]);
    expect(none?.has('gauge')).toBe(false);
  });

  it('are chosen in the shop’s settings, whose list is read by its keys', () => {
    const read = readShop('{"format": "sagitta-shop", "sections": {"stations": [{"id": "a", "at": 500}]}}');
    expect(read).toMatchObject({ ok: false, problems: [{ path: 'sections.stations.a.at' }] });
  });
});
