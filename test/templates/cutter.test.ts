import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../geometry/drawing.ts';
import { sayWith } from '../../geometry/layout.ts';
import { note, stroke } from '../../geometry/marks.ts';
import { circle } from '../../geometry/shape/arc.ts';
import { bounds, boundsOf, pathLength } from '../../geometry/shape/measure.ts';
import { end, pen, polyline, start } from '../../geometry/shape/path.ts';
import { distance } from '../../geometry/shape/point.ts';
import type { Path } from '../../geometry/shape/types.ts';
import { textBox } from '../../geometry/text-box.ts';
import { cutFiles } from '../../templates/cutter/cut-file.ts';
import { lettersOf } from '../../templates/letters.ts';
import { line } from '../../templates/primitive.ts';
import { newShop, readShop, type Shop, writeShop } from '../../templates/shop/index.ts';
import { layersToSvg, toSvg } from '../../templates/svg.ts';
import { svgWindow } from '../../templates/svg-window.ts';
import { drawnPieces } from '../drawn.ts';
import { fontFiles, fonts } from '../fonts.ts';
import { readSvg, type SvgElement } from '../read-svg.ts';
import { built } from '../solved.ts';
import { fullJob } from './full-job.ts';

type Cutter = Shop['cutter'];

const host = { say: sayWith(built(fullJob()).job.show), window: svgWindow(), fonts: () => fonts };
const withCutter = (more: Partial<Cutter>): Shop => ({ ...newShop(), cutter: { ...newShop().cutter, ...more } });

const write = async (drawing: Drawing, more: Partial<Cutter> = {}) => {
  const made = await cutFiles(drawing, withCutter(more), host);
  if (!made.ok) throw new Error(made.problems.join('\n'));
  return made.files.map(({ id, svg }) => ({ id, svg, file: readSvg(svg) }));
};
const elements = async (drawing: Drawing, more: Partial<Cutter> = {}) =>
  (await write(drawing, more))[0]?.file.elements ?? [];
const refusal = async (drawing: Drawing, more: Partial<Cutter>) => {
  const made = await cutFiles(drawing, withCutter(more), host);
  return made.ok ? [] : made.problems;
};
const found = (all: readonly SvgElement[], id: string): Path => {
  const path = all.find((e) => e.id === id)?.paths[0];
  if (!path) throw new Error(`no ${id} among ${all.map((e) => e.id)}`);
  return path;
};

const rectangle = (x: number, y: number, width: number, height: number): Path =>
  polyline(
    [
      { x, y },
      { x: x + width, y },
      { x: x + width, y: y + height },
      { x, y: y + height },
    ],
    true,
  );
const edge = (id: string, path: Path) => stroke(id, path, { line: 'outline', purpose: 'cut' });
/** A part 100 by 60 with a window 60 by 30, in it an island 20 by 10, a slot 3 wide and a hole. */
const frame: Drawing = {
  id: 'frame',
  title: 'Frame',
  marks: [
    edge('outline', rectangle(0, 0, 100, 60)),
    edge('window', rectangle(30, 5, 60, 30)),
    edge('island', rectangle(40, 10, 20, 10)),
    edge(
      'slot',
      pen({ x: 10, y: 45 })
        .line({ x: 90, y: 45 })
        .arc({ x: 90, y: 48 }, 1.5, 1)
        .line({ x: 10, y: 48 })
        .arc({ x: 10, y: 45 }, 1.5, 1)
        .close(),
    ),
    stroke('hole', circle({ x: 15, y: 20 }, 4), { line: 'outline', purpose: 'drill' }),
    stroke('ramp', rectangle(10, 25, 10, 1), { line: 'thin', purpose: 'cut' }),
    stroke(
      'knife',
      polyline(
        [
          { x: 5, y: 2 },
          { x: 20, y: 2 },
        ],
        false,
      ),
      { line: 'outline', purpose: 'cut' },
    ),
    stroke(
      'fold',
      polyline(
        [
          { x: 5, y: 3 },
          { x: 20, y: 3 },
        ],
        false,
      ),
      { line: 'hidden', purpose: 'fold' },
    ),
    note('name', { x: 50, y: 55 }, ['bass, Ærø']),
  ],
};
const size = (path: Path): readonly number[] => {
  const { minX, minY, maxX, maxY } = bounds(path);
  return [maxX - minX, maxY - minY];
};
const near = (...values: readonly number[]) => values.map((value) => expect.closeTo(value, 4));
/** The parts of a contour that was cut up by tabs, in the file's order. */
const parts = (all: readonly SvgElement[], id: string): readonly Path[] =>
  all.filter((e) => e.id.startsWith(`${id}.`)).flatMap(({ paths }) => paths);
const gaps = (pieces: readonly Path[]): readonly number[] =>
  pieces.map((piece, k) => distance(end(piece), start(pieces[(k + 1) % pieces.length] as Path)));

describe('a file for a cutter', () => {
  it('runs the tool outside parts and inside windows, slots and holes, arcs about their own centres', async () => {
    const all = await elements(frame, { tool: 2 });
    expect(size(found(all, 'outline'))).toEqual(near(102, 62));
    expect(size(found(all, 'window'))).toEqual(near(58, 28));
    expect(size(found(all, 'island'))).toEqual(near(22, 12));
    expect(size(found(all, 'slot'))).toEqual(near(81, 1));
    expect(size(found(all, 'hole'))).toEqual(near(6, 6));
    const rounds = found(all, 'outline').segments.filter((s) => s.kind === 'arc');
    expect(rounds.map(({ radius }) => radius)).toEqual(near(1, 1, 1, 1));
  });

  it('leaves all where it is drawn for a knife, or where the tool is to run on the line; open cuts and work on the face always', async () => {
    for (const more of [{ tool: 0 }, { tool: 2, side: 'line' }] as const) {
      const all = await elements(frame, more);
      expect(size(found(all, 'outline'))).toEqual(near(100, 60));
      expect(size(found(all, 'hole'))).toEqual(near(8, 8));
    }
    const all = await elements(frame, { tool: 2, tabs: 3 });
    expect(size(found(all, 'ramp'))).toEqual(near(10, 1));
    expect(size(found(all, 'knife'))).toEqual(near(15, 0));
    expect(found(all, 'knife').closed).toBe(false);
  });

  it('comes in the order of work: marks, folds, holes, then what lies inside before what lies round it', async () => {
    const all = await elements(frame, { tool: 2 });
    expect(all.map((e) => e.id).filter((id) => !id.startsWith('check'))).toEqual([
      'name',
      'fold-2',
      'hole',
      'island',
      'window',
      'slot',
      'ramp',
      'knife',
      'outline',
    ]);
  });

  it('starts in the middle of the longest straight', async () => {
    const outline = found(await elements(frame), 'outline');
    const { minX, maxX } = bounds(outline);
    expect(start(outline).x).toBeCloseTo((minX + maxX) / 2, 5);
  });

  it('leaves tabs of their width, evenly, off the corners, where they are asked for', async () => {
    const more = { tool: 2, tabs: 4, tabWidth: 3 } as const;
    const all = await elements(frame, more);
    // The island, 66 mm round, has room for two such gaps and no more.
    for (const [id, count] of [
      ['outline', 4],
      ['window', 4],
      ['island', 2],
    ] as const) {
      const pieces = parts(all, id);
      expect(pieces).toHaveLength(count);
      // The round cut takes the tool's radius off either side of a tab, so the tool's middle stops 3 mm + 2 mm apart.
      for (const gap of gaps(pieces)) expect(gap).toBeCloseTo(5, 4);
      for (const piece of pieces) {
        // Both ends lie within a straight, a tab's gap clear of its corners.
        for (const s of [piece.segments[0], piece.segments.at(-1)]) expect(s?.kind).toBe('line');
      }
    }
    const long = parts(all, 'outline').map(pathLength);
    expect(Math.max(...long) / Math.min(...long)).toBeLessThan(2.2);
    // A tool of 2 mm leaves nothing of a slot 3 mm wide; one of 1 mm leaves a strip that tabs can hold.
    expect(parts(all, 'slot')).toEqual([]);
    expect(gaps(parts(await elements(frame, { ...more, tool: 1 }), 'slot'))).toEqual(near(4, 4, 4, 4));
    expect(parts(all, 'hole')).toEqual([]);
    const onlyParts = await elements(frame, { ...more, tabsIn: 'parts' });
    expect([parts(onlyParts, 'window').length, parts(onlyParts, 'island').length]).toEqual([0, 2]);
    const closer = await elements(frame, { ...more, tabSpacing: 40 });
    // 102 + 62 twice, less the corners that are rounded off: 326 mm round.
    expect(parts(closer, 'outline')).toHaveLength(9);
  });

  it('goes along the middle of a slot that is as wide as the tool', async () => {
    const slot = found(await elements(frame, { tool: 3 }), 'slot');
    const { minX, minY, maxX, maxY } = bounds(slot);
    // Round ends of 1.5 mm leave a way of 80 mm.
    expect(Math.abs(maxX - minX - 80)).toBeLessThan(0.001);
    expect(maxY - minY).toBeLessThan(0.001);
    const outline = bounds(found(await elements(frame, { tool: 3 }), 'outline'));
    // 45 to 48 down the frame, whose outline lies half the tool above its edge.
    expect(Math.abs(minY - outline.minY - (46.5 + 1.5))).toBeLessThan(0.001);
  });

  it('refuses a tool that is too wide, by the place, its width, the tool and the way out', async () => {
    expect(await refusal(frame, { tool: 4 })).toEqual([
      'In “Frame” a tool of 4.00 mm does not get through the cut “slot”, only 3.00 mm wide. Take a narrower tool (cutter.tool), or let it run on the line (cutter.side).',
    ]);
    const hole = (id: string, x: number) => stroke(id, circle({ x, y: 20 }, 4), { line: 'outline', purpose: 'drill' });
    const row: Drawing = { id: 'row', title: 'Row', marks: [hole('a', 0), hole('b', 20)] };
    expect(await refusal(row, { tool: 9 })).toEqual([
      'In “Row” a tool of 9.00 mm does not get through the holes “a”, “b”, only 8.00 mm wide. Take a narrower tool (cutter.tool), or mark holes by crosses or dots (cutter.holes).',
    ]);
    const bow = polyline(
      [
        { x: 0, y: 0 },
        { x: 20, y: 20 },
        { x: 20, y: 0 },
        { x: 0, y: 20 },
      ],
      true,
    );
    expect((await refusal({ id: 'bow', title: 'Bow', marks: [edge('tie', bow)] }, { tool: 1 })).join()).toContain(
      'no side of the cut “tie” is waste, as the line crosses itself',
    );
    expect(await refusal(frame, { tool: 4, side: 'line' })).toEqual([]);
    const bay = pen({ x: 0, y: 0 })
      .line({ x: 40, y: 0 })
      .line({ x: 40, y: 20 })
      .line({ x: 21, y: 20 })
      .line({ x: 22, y: 8 })
      .line({ x: 18, y: 8 })
      .line({ x: 19, y: 20 })
      .line({ x: 0, y: 20 })
      .close();
    const notched: Drawing = { id: 'n', title: 'Notched', marks: [edge('outline', bay)] };
    expect((await refusal(notched, { tool: 3 })).join()).toContain(
      'does not get into a bay of the cut “outline”, only 2.00 mm wide',
    );
    expect(await refusal(notched, { tool: 1.9 })).toEqual([]);
  });

  it('draws each purpose with its own line, and only those that go in', async () => {
    const lines = { use: 'in', colour: '#ff0000', width: 0.01 } as const;
    const usual = newShop().cutter;
    const [one] = await write(frame, {
      cut: lines,
      drill: { ...lines, colour: '#0000ff' },
      fold: { ...usual.fold, use: 'out' },
    });
    const group = (id: string) => one?.svg.match(new RegExp(`<g id="${id}"[^>]*>`))?.[0];
    expect(group('cut')).toContain('stroke="#ff0000"');
    expect(group('drill')).toContain('stroke="#0000ff"');
    expect(group('show')).toContain('stroke="#000000"');
    expect(group('fold')).toBeUndefined();
    for (const { purpose, attributes } of one?.file.elements ?? [])
      if (purpose === 'cut') expect(attributes['stroke-width']).toBe('0.01');
  });

  it('gives a file for each purpose, which lie over each other', async () => {
    const files = await write(frame, { files: 'each' });
    expect(files.map(({ id }) => id)).toEqual(['frame.show', 'frame.fold', 'frame.drill', 'frame.cut']);
    const [first] = files;
    for (const { file, id } of files) {
      expect(new Set(file.elements.map(({ purpose }) => purpose))).toEqual(new Set([id.split('.')[1], 'check']));
      expect([file.viewBox, file.widthMm]).toEqual([first?.file.viewBox, first?.file.widthMm]);
      expect(found(file.elements, 'check.square')).toEqual(found(first?.file.elements ?? [], 'check.square'));
    }
  });

  it('has a check square of its size in a group of its own, clear of the drawing, on a page of mm', async () => {
    for (const square of ['20', '10'] as const) {
      const [one] = await write(frame, { square, letters: 'text' });
      if (!one) throw new Error('no file');
      const { file } = one;
      expect([file.viewBox.width, file.viewBox.height]).toEqual([file.widthMm, file.heightMm]);
      const check = file.elements.filter(({ purpose }) => purpose === 'check');
      expect(check.map(({ text }) => text)).toEqual(['', `${square} mm`]);
      expect(size(check[0]?.paths[0] as Path)).toEqual(near(Number(square), Number(square)));
      const rest = boundsOf(file.elements.filter(({ purpose }) => purpose !== 'check').flatMap(({ paths }) => paths));
      expect(bounds(check[0]?.paths[0] as Path).minY).toBeGreaterThan(rest.maxY + 1);
    }
  });

  it('marks holes by a cross or a dot through their very centre, whatever the tool', async () => {
    const middle = (path: Path) => {
      const { minX, minY, maxX, maxY } = bounds(path);
      return near((minX + maxX) / 2, (minY + maxY) / 2);
    };
    const circles = found(await elements(frame), 'hole');
    const centre = (circles.segments[0] as { centre: { x: number; y: number } }).centre;
    const crosses = await elements(frame, { tool: 12, side: 'line', holes: 'crosses' });
    for (const id of ['hole.across', 'hole.along']) expect([centre.x, centre.y]).toEqual(middle(found(crosses, id)));
    const [dot] = (await elements(frame, { holes: 'points' })).filter(({ id }) => id === 'hole');
    expect(dot?.attributes).toMatchObject({ r: '0.1', cx: String(centre.x), cy: String(centre.y) });
  });

  it('can be made of templates of a job with everything, with a knife', async () => {
    const { job, design } = built(fullJob());
    const some = drawnPieces(job, design).filter((_, k) => k % 4 === 0);
    for (const drawing of some) {
      const [one] = await write(drawing, { tabs: 4, letters: 'text' });
      expect(one?.file.elements.some(({ purpose }) => purpose === 'check')).toBe(true);
      expect(one?.svg).not.toMatch(/NaN|Infinity/);
    }
  });
});

describe('letters as outlines', () => {
  const letters = lettersOf(fonts);
  const written = [
    line('a', { x: 10, y: 20 }, 'Fret 12 → saddle: 24 ½" ⌀', 3.5),
    { ...line('b', { x: 50, y: 50 }, 'Ærø, Größe', 5, true), anchor: 'middle', turn: -90 },
    { ...line('c', { x: 80, y: 30 }, 'שלום 12', 4), anchor: 'end' },
  ] as const;

  it.each(written)('“$text” covers what resvg draws of the text itself', (text) => {
    const page = { width: 100, height: 100, title: 't', window: svgWindow() };
    // resvg sets type by itself, so it is a reader from outside.
    const box = (svg: string) => {
      const read = new Resvg(svg, { font: { loadSystemFonts: false, fontFiles } }).getBBox();
      return [read?.x, read?.y, read?.width, read?.height].map((v) => expect.closeTo(v ?? Number.NaN, 1));
    };
    const outlines = layersToSvg([{ id: 'show', drawn: [letters(text)] }], page);
    const read = readSvg(outlines).elements[0];
    const { minX, minY, maxX, maxY } = boundsOf(read?.paths ?? []);
    expect([minX, minY, maxX - minX, maxY - minY]).toEqual(box(toSvg([text], page)));
    // And lies within the room that was measured for it, to a side bearing.
    const room = textBox(text);
    for (const [a, b] of [
      [room.minX, minX],
      [room.minY, minY],
      [maxX, room.maxX],
      [maxY, room.maxY],
    ] as const)
      expect(a - b).toBeLessThan(0.02 * text.size);
  });

  it('is as wide as measured: a capital H at either end leaves its side bearings', () => {
    // DejaVu Sans 2.37: H is 1540 units wide of 2048, its stems from 201 to 1339 [read in the font's own tables].
    const { minX, maxX } = boundsOf(letters(line('h', { x: 0, y: 0 }, 'HiiiH', 2048)).paths);
    expect([minX, maxX]).toEqual(near(201, 2 * 1540 + 3 * 569 - 201));
  });

  it('keeps a hostile name inert in what the outlines are called', () => {
    const name = '"/><script>alert(1)</script> %PDF \u0007\ud800';
    const page = { width: 100, height: 100, title: 't', window: svgWindow() };
    const { elements: all } = readSvg(
      layersToSvg([{ id: 'show', drawn: [letters(line('x', { x: 0, y: 0 }, name, 4))] }], page),
    );
    expect(all.map(({ tag, attributes }) => [tag, attributes['aria-label']])).toEqual([
      ['path', '"/><script>alert(1)</script> %PDF \ufffd\ufffd'],
    ]);
  });

  it('writes out what the font lacks, in the room of the text', () => {
    const text = line('x', { x: 0, y: 0 }, '木', 4);
    const { minX, maxX } = boundsOf(letters(text).paths);
    expect([minX > 0, maxX < 4]).toEqual([true, true]);
  });
});

describe('the cutter’s settings', () => {
  it('come back as they were written, and refuse a colour that is none', () => {
    const shop = withCutter({ tool: 3.175, cut: { use: 'in', colour: '#ff0000', width: 0.001 } });
    expect(readShop(writeShop(shop))).toEqual({ ok: true, shop, unknown: [] });
    const read = readShop(JSON.stringify({ format: 'sagitta-shop', cutter: { fold: { colour: 'red' } } }));
    expect(read.ok ? [] : read.problems.map(({ says }) => says)).toEqual([
      'Colour, fold (cutter.fold.colour) is “red”; it may be a colour as # and six hexadecimal digits, such as #000000 for black.',
    ]);
  });
});
