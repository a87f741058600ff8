import { Bezier } from 'bezier-js';
import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../geometry/drawing.ts';
import { boundsOfPrimitives, sayWith } from '../../geometry/layout.ts';
import { note, showLine, stroke } from '../../geometry/marks.ts';
import { pointOn } from '../../geometry/shape/along.ts';
import { circle } from '../../geometry/shape/arc.ts';
import { polyline } from '../../geometry/shape/path.ts';
import type { Path, Point } from '../../geometry/shape/types.ts';
import { onPaper } from '../../templates/paper.ts';
import { laySheets, type Sheet } from '../../templates/sheets.ts';
import { newShop, type Shop } from '../../templates/shop/index.ts';
import { toSvg } from '../../templates/svg.ts';
import { svgWindow } from '../../templates/svg-window.ts';
import { sheetInfo } from '../../templates/title-block.ts';
import { readSvg } from '../read-svg.ts';
import { workedExample } from '../solved.ts';

const job = workedExample();
const info = sheetInfo(job, '1');
const say = sayWith(job.show);

/* A made-up piece that is larger than any page: a rectangle, a circle about its middle, a cubic across it, and words that lie over every joint. */
const [width, height, radius] = [420, 330, 150];
const bow = { from: { x: 5, y: 20 }, c1: { x: 160, y: 420 }, c2: { x: 220, y: -160 }, to: { x: 410, y: 310 } };
const middle = { x: width / 2, y: height / 2 };
const corners = [
  { x: 0, y: 0 },
  { x: width, y: 0 },
  { x: width, y: height },
  { x: 0, y: height },
];
const big: Drawing = {
  id: 'big',
  title: 'Big',
  marks: [
    stroke('box', polyline(corners, true), { line: 'outline', purpose: 'cut' }),
    stroke('ring', circle(middle, radius), { line: 'outline', purpose: 'drill' }),
    stroke('bow', { segments: [{ kind: 'cubic', ...bow }], closed: false }, { line: 'outline', purpose: 'fold' }),
    showLine('corner', { x: -5, y: -5 }, { x: 5, y: 5 }),
    ...[0.1, 0.3, 0.5, 0.7, 0.9].flatMap((u) =>
      [0.1, 0.3, 0.5, 0.7, 0.9].map((v) =>
        note(`word.${u}.${v}`, { x: width * u, y: height * v }, ['a word or two here']),
      ),
    ),
  ],
};

/** A page as an independent reader finds it: its strokes by the id they have, and the middles of its registration crosses. */
const readPage = (sheet: Sheet) => {
  const { elements, widthMm, viewBox } = readSvg(toSvg(sheet.primitives, { ...sheet, window: svgWindow() }));
  expect(widthMm).toBeCloseTo(viewBox.width, 9);
  const crosses = new Map<string, Point>();
  for (const { id, paths } of elements) {
    const name = /^join\.(.+\.cross\d+)\.x$/.exec(id)?.[1];
    const [line] = paths[0]?.segments ?? [];
    if (name !== undefined && line?.kind === 'line')
      crosses.set(name, { x: (line.from.x + line.to.x) / 2, y: (line.from.y + line.to.y) / 2 });
  }
  return { name: / ([A-Z]+\d+)$/.exec(sheet.title)?.[1] ?? '', elements, crosses };
};

type Page = ReturnType<typeof readPage>;

/** Lays the pages over each other by their crosses alone, from the first on: how far each is moved, mm. Every cross must then meet its twin. */
const joined = (pages: readonly Page[]): ReadonlyMap<Page, Point> => {
  const [first, ...rest] = pages as [Page, ...Page[]];
  const at = new Map<Page, Point>([[first, { x: 0, y: 0 }]]);
  let waiting = rest;
  while (waiting.length > 0) {
    const next = waiting.find((page) =>
      [...at.keys()].some((laid) => [...page.crosses.keys()].some((k) => laid.crosses.has(k))),
    );
    if (!next) throw new Error('a page has no crosses to join it by');
    const [laid, [key, own]] = [...at.keys()].flatMap((other) =>
      [...next.crosses].filter(([k]) => other.crosses.has(k)).map((cross) => [other, cross] as const),
    )[0] as readonly [Page, readonly [string, Point]];
    const twin = laid.crosses.get(key) as Point;
    const moved = at.get(laid) as Point;
    at.set(next, { x: moved.x + twin.x - own.x, y: moved.y + twin.y - own.y });
    waiting = waiting.filter((page) => page !== next);
  }
  return at;
};

const pointsOf = (path: Path, n: number): readonly Point[] =>
  path.segments.flatMap((s) => Array.from({ length: n + 1 }, (_, i) => pointOn(s, i / n)));

/** How far a point lies from the rectangle's edge, the circle and the cubic, by other means than ours. */
const chords = new Bezier(bow.from, bow.c1, bow.c2, bow.to).getLUT(2000);
const toChord = (p: Point, a: Point, b: Point): number => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const t = Math.max(0, Math.min(1, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
};
const off: Readonly<Record<string, (p: Point) => number>> = {
  box: ({ x, y }) => Math.min(Math.abs(x), Math.abs(y), Math.abs(x - width), Math.abs(y - height)),
  ring: ({ x, y }) => Math.abs(Math.hypot(x - middle.x, y - middle.y) - radius),
  // Chords a third of a mm long lie within 0.001 mm of the curve.
  bow: (p) => Math.min(...chords.slice(1).map((b, i) => toChord(p, chords[i] as Point, b))),
};

const shops: readonly (readonly [string, Shop])[] = [
  ['A4', newShop()],
  [
    'Letter, little overlap',
    { ...onPaper(newShop(), 'letter'), paper: { ...newShop().paper, size: 'letter', overlap: 5 } },
  ],
  ['a small size', { ...newShop(), paper: { ...newShop().paper, size: 'typed', width: 190, height: 230, margin: 8 } }],
];

describe.each(shops)('a piece larger than the paper, on %s', (_, shop) => {
  const sheets = laySheets([big], shop, info, say);
  const pages = sheets.map(readPage);

  it('is parted over lettered pages, and each says how they join', () => {
    expect(sheets.length).toBeGreaterThan(3);
    expect(pages.map(({ name }) => name)).toContain('B1');
    for (const { name, elements } of pages) {
      const texts = elements.filter(({ tag }) => tag === 'text').map(({ text }) => text);
      expect(texts).toContain(`Page ${name} of ${pages.length} that join`);
      for (const other of pages) expect(elements.some(({ id }) => id === `plan.${other.name}`)).toBe(true);
    }
  });

  it('has at least three crosses on every joint, which meet on both of its pages', () => {
    const at = joined(pages);
    const joints = new Map<string, number>();
    for (const key of new Set(pages.flatMap(({ crosses }) => [...crosses.keys()]))) {
      const places = pages.flatMap((page) => {
        const own = page.crosses.get(key);
        const moved = at.get(page) as Point;
        return own ? [{ x: own.x + moved.x, y: own.y + moved.y }] : [];
      });
      expect(places, key).toHaveLength(2);
      const [a, b] = places as [Point, Point];
      expect(Math.hypot(a.x - b.x, a.y - b.y), key).toBeLessThan(0.01);
      const joint = key.split('.')[0] as string;
      joints.set(joint, (joints.get(joint) ?? 0) + 1);
    }
    for (const [joint, crosses] of joints) expect(crosses, joint).toBeGreaterThanOrEqual(3);
    // Rows × columns of pages have so many joints between neighbours.
    const rows = new Set(pages.map(({ name }) => name.replace(/\d+/, ''))).size;
    const columns = pages.length / rows;
    expect(joints.size).toBe(rows * (columns - 1) + columns * (rows - 1));
  });

  it('comes back whole and true within 0.01 mm when the pages are joined', () => {
    const at = joined(pages);
    // The piece's own place: the middle of the short stroke through its corner.
    const [corner] = pages.flatMap((page) =>
      page.elements.flatMap(({ id, paths }) => {
        const [line] = paths[0]?.segments ?? [];
        if (id !== 'big.corner' || line?.kind !== 'line') return [];
        const moved = at.get(page) as Point;
        return [
          { ...line, at: { x: moved.x + (line.from.x + line.to.x) / 2, y: moved.y + (line.from.y + line.to.y) / 2 } },
        ];
      }),
    );
    if (!corner) throw new Error('no corner');
    const origin = corner.at;
    // A turned piece is turned back: its rows were columns.
    const turned = corner.to.x > corner.from.x !== corner.to.y > corner.from.y;
    const home = (p: Point): Point =>
      turned ? { x: origin.y - p.y, y: p.x - origin.x } : { x: p.x - origin.x, y: p.y - origin.y };
    for (const id of ['box', 'ring', 'bow']) {
      const found = pages.flatMap((page) => {
        const moved = at.get(page) as Point;
        return page.elements
          .filter((e) => new RegExp(`^big\\.${id}(\\.\\d+)?$`).test(e.id))
          .flatMap(({ paths }) => paths)
          .flatMap((path) => pointsOf(path, 150))
          .map((p) => home({ x: p.x + moved.x, y: p.y + moved.y }));
      });
      expect(Math.max(...found.map(off[id] as (p: Point) => number)), id).toBeLessThan(0.01);
      // Nothing is missing: no point of the piece is farther from what was found than the samples lie apart.
      const whole = big.marks.find((m) => m.id === id);
      const wanted = whole?.kind === 'path' ? pointsOf(whole.path, 60) : [];
      for (const p of wanted)
        expect(Math.min(...found.map((q) => Math.hypot(p.x - q.x, p.y - q.y))), id).toBeLessThan(2);
    }
  });

  it('keeps arcs arcs and every text whole, inside the margins and off what stands on every sheet', () => {
    const drawn = sheets.flatMap(({ primitives }) => primitives.filter(({ id }) => id.startsWith('big.ring')));
    for (const p of drawn) expect(p.kind === 'stroke' && p.path.segments.every((s) => s.kind === 'arc')).toBe(true);
    const ids = new Set(sheets.flatMap(({ primitives }) => primitives.map(({ id }) => id)));
    for (const mark of big.marks) expect(ids).toContain(`big.${mark.id}`);
    for (const { primitives, width: w, height: h } of sheets) {
      expect(new Set(primitives.map(({ id }) => id)).size).toBe(primitives.length);
      const box = (prefix: RegExp) => boundsOfPrimitives(primitives.filter(({ id }) => prefix.test(id)));
      const own = box(/^big\./);
      for (const part of [
        /^title\./,
        /^legend\./,
        /^plan\./,
        /^check\.x/,
        /^check\.y/,
        /^check\.far\.x/,
        /^check\.far\.y/,
      ]) {
        const other = box(part);
        const apart =
          own.maxX <= other.minX || other.maxX <= own.minX || own.maxY <= other.minY || other.maxY <= own.minY;
        expect(apart, String(part)).toBe(true);
      }
      const all = boundsOfPrimitives(primitives);
      expect(Math.min(all.minX, all.minY, w - all.maxX, h - all.maxY)).toBeGreaterThanOrEqual(shop.paper.margin - 1e-9);
    }
  });
});
