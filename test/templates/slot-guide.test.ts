import { EndType, inflatePathsD, JoinType, type PathD } from 'clipper2-ts';
import { describe, expect, it } from 'vitest';
import { setAt } from '../../geometry/fields.ts';
import type { Job } from '../../geometry/job.ts';
import { layOut, sayWith } from '../../geometry/layout.ts';
import { pointOn } from '../../geometry/shape/index.ts';
import { distanceTo } from '../../geometry/shape/nearest.ts';
import type { Path, Point } from '../../geometry/shape/types.ts';
import { slotGuide } from '../../templates/pieces/slot-guide.ts';
import { newShop, type Shop } from '../../templates/shop/index.ts';
import { built, workedExample } from '../solved.ts';

type Values = Readonly<Record<string, unknown>>;

const draw = (values: Values, router: Partial<Shop['router']>) => {
  const { job, design } = built(
    Object.entries(values).reduce<Job>((j, [path, value]) => setAt(j, path, value), workedExample()),
  );
  const shop = newShop();
  const { marks } = slotGuide.draw(job, design, { ...shop, router: { ...shop.router, ...router } });
  const path = (id: string): Path | undefined => {
    const found = marks.find((mark) => mark.id === id);
    return found?.kind === 'path' ? found.path : undefined;
  };
  const texts = layOut(marks, { em: 3.5, say: sayWith(job.show) }).flatMap((p) => (p.kind === 'text' ? [p.text] : []));
  return { job, design, path, texts };
};

/** The window that a repairer would find with clipper2-ts 2.0 (a general library for offsetting polygons): where the cutter's middle may stand, and half the guide round it. */
const dense = (path: Path): PathD =>
  path.segments.flatMap((s) => Array.from({ length: 64 }, (_, k) => ({ ...pointOn(s, k / 64), z: 0 })));
const inflate = (polygons: PathD[], by: number) =>
  inflatePathsD(polygons, by, JoinType.Round, EndType.Polygon, 2, 6, 5e-4);

const toPolygon = (polygon: PathD, p: Point): number =>
  polygon.reduce((least, b, k) => {
    const a = polygon.at(k - 1) as Point;
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const t = Math.max(0, Math.min(1, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy || 1)));
    return Math.min(least, Math.hypot(a.x + t * dx - p.x, a.y + t * dy - p.y));
  }, Number.POSITIVE_INFINITY);

const apart = (ours: Path, theirs: PathD[]): number => {
  expect(theirs).toHaveLength(1);
  const polygon = theirs[0] as PathD;
  return Math.max(...dense(ours).map((p) => toPolygon(polygon, p)), ...polygon.map((p) => distanceTo(ours, p)));
};

describe('the slot guide’s window', () => {
  it.each([
    ['round ends, a bush', { 'slot.ends': 'round' }, { bush: 12, cutter: 2.4 }],
    ['square ends, a bush', { 'slot.ends': 'square' }, { bush: 8, cutter: 3 }],
    ['round ends, a round base', { 'slot.ends': 'round', 'slot.width': 4 }, { guide: 'round', base: 90, cutter: 2.4 }],
  ] as const)('%s: is as clipper2-ts has it, within 0.01 mm', (_, values, router) => {
    const { path } = draw(values, router);
    const [slot, window] = [path('slot'), path('window')];
    if (!slot || !window) throw new Error('no window');
    const guide = 'base' in router ? router.base : router.bush;
    const middles = inflate([dense(slot)], -router.cutter / 2);
    expect(apart(window, inflate(middles, guide / 2))).toBeLessThan(0.01);
    // And back: a guide kept inside the window lets the cutter take the slot, but for the corners that its own radius leaves.
    const reached = inflate(inflate([dense(window)], -guide / 2), router.cutter / 2);
    const corner = values['slot.ends'] === 'square' ? (Math.SQRT2 - 1) * (router.cutter / 2) : 0;
    expect(apart(slot, reached)).toBeLessThan(corner + 0.01);
  });

  it('has ends of exact arcs: half the slot’s width and (bush − cutter)/2, about the ends of the slot’s walls', () => {
    const { path, job } = draw({}, { bush: 11, cutter: 2.8 });
    const arcs = path('window')?.segments.filter((s) => s.kind === 'arc') ?? [];
    expect(arcs).toHaveLength(4);
    const slots = path('slot')?.segments.filter((s) => s.kind === 'arc') ?? [];
    for (const arc of arcs) {
      expect(arc.radius).toBeCloseTo(job.slot.width / 2 + 4.1, 9);
      const near = Math.min(...slots.map((s) => Math.hypot(s.centre.x - arc.centre.x, s.centre.y - arc.centre.y)));
      expect(near).toBeLessThan(1e-9);
    }
  });

  it('with a cutter as wide as the slot is as wide as the bush', () => {
    const { texts } = draw({ 'slot.width': 3 }, { bush: 10, cutter: 'slot' });
    expect(texts).toContain('window 83.0 mm by 10.0 mm: 3.5 mm larger all round than what is cut');
    expect(texts).toContain('5.0 mm deep in 4 passes of 1.25 mm');
  });

  it('lets the cutter run out of an open slot, its walls straight up to the shoulders', () => {
    const { path, job, design } = draw({ 'slot.ends': 'through', 'pins.hold': 'tied', 'pins.hole': 2.4 }, { bush: 10 });
    const slot = path('slot');
    const window = path('window');
    if (!slot || !window) throw new Error('no window');
    const reached = inflate([dense(window)], -5 + job.slot.width / 2);
    // The four corners of the slot's walls lie on what is cut, and the cutter's round end beyond them.
    for (const s of slot.segments) expect(toPolygon(reached[0] as PathD, pointOn(s, 0))).toBeLessThan(0.06);
    const far = Math.max(...(reached[0] ?? []).map(({ x }) => x));
    expect(far).toBeGreaterThan(job.bridge.deckWidth / 2 + job.slot.width / 2);
    expect(far).toBeLessThan(job.bridge.deckWidth / 2 + job.slot.width / 2 + Math.abs(design.saddleLine.slant) * 6);
  });

  it('says why there is none, and the way out, where the cutter is too wide or its guide too narrow', () => {
    const wide = draw({ 'slot.width': 3 }, { cutter: 3.2 });
    expect(wide.path('window')).toBeUndefined();
    expect(wide.texts).toEqual([
      'The cutter is 3.2 mm wide, the slot only 3.0 mm.',
      'Take a cutter of at most 3.0 mm.',
    ]);
    const narrow = draw({}, { bush: 2, cutter: 2.4 });
    expect(narrow.path('window')).toBeUndefined();
    expect(narrow.texts).toEqual([
      'The guide is 2.0 mm wide, the cutter 2.4 mm: it cannot lead it.',
      'Take a guide wider than 2.4 mm, or a narrower cutter.',
    ]);
  });
});
