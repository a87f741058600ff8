import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing, Primitive } from '../../geometry/drawing.ts';
import { boundsOfPrimitives, sayWith } from '../../geometry/layout.ts';
import { bounds, polyline } from '../../geometry/shape/index.ts';
import type { Bounds } from '../../geometry/shape/types.ts';
import { starters } from '../../src/jobs/index.ts';
import { pieceSheet } from '../../templates/one-page.ts';
import { onPaper, type PaperId, papers } from '../../templates/paper.ts';
import { laySheets, type Sheet } from '../../templates/sheets.ts';
import { newShop } from '../../templates/shop/index.ts';
import { withPrinter } from '../../templates/shop/printers.ts';
import { toSvg } from '../../templates/svg.ts';
import { svgWindow } from '../../templates/svg-window.ts';
import { sheetInfo } from '../../templates/title-block.ts';
import { drawnPieces } from '../drawn.ts';
import { readSvg } from '../read-svg.ts';
import { built, jobOf, solved, workedExample } from '../solved.ts';
import { fullJob, oldTop } from './full-job.ts';

const job = workedExample();
const info = sheetInfo(job, '9.8.7');
const say = sayWith(job.show);
const on = (id: PaperId) => onPaper(newShop(), id);
const { margin } = newShop().paper;
const paperIds = Object.keys(papers) as PaperId[];

/** A made-up piece: a rectangle to cut, with a corner cut off so that a mirrored one would show, and a hole. */
const slab = (id: string, width: number, height: number): Drawing => ({
  id,
  title: `Slab ${id}`,
  marks: [
    {
      kind: 'path',
      id: 'outline',
      path: polyline(
        [
          { x: -width / 2, y: 7 },
          { x: width / 2, y: 7 },
          { x: width / 2, y: 7 + height },
          { x: -width / 2 + 2, y: 7 + height },
          { x: -width / 2, y: 7 + height - 1 },
        ],
        true,
      ),
      line: 'outline',
      purpose: 'cut',
    },
    { kind: 'note', id: 'upright', at: { x: 0, y: 7 + height / 2 }, label: ['I'], anchor: 'middle', turn: -90 },
  ],
});

const overlap = (a: Bounds, b: Bounds) =>
  a.minX < b.maxX - 1e-9 && b.minX < a.maxX - 1e-9 && a.minY < b.maxY - 1e-9 && b.minY < a.maxY - 1e-9;

const groupBounds = (sheet: Sheet, prefix: string) =>
  boundsOfPrimitives(sheet.primitives.filter((p) => p.id.startsWith(prefix)));

const texts = (sheet: Sheet) => sheet.primitives.flatMap((p) => (p.kind === 'text' ? [p.text] : []));

/** The length of a straight line in an SVG file, mm on paper, and the way it runs. */
const barInSvg = (svg: ReturnType<typeof readSvg>, id: string) => {
  const bar = svg.elements.find((element) => element.id === id);
  const segments = bar?.paths.flatMap((path) => path.segments) ?? [];
  const [line] = segments;
  if (segments.length !== 1 || line?.kind !== 'line') throw new Error(`${id} is not one straight line`);
  const dx = ((line.to.x - line.from.x) * svg.widthMm) / svg.viewBox.width;
  const dy = ((line.to.y - line.from.y) * svg.heightMm) / svg.viewBox.height;
  return { dx: Math.abs(dx), dy: Math.abs(dy) };
};

const expectCheckBars = (sheet: Sheet) => {
  const bars = sheet.primitives.filter(({ id }) => id.startsWith('check.'));
  const svg = readSvg(toSvg(bars, { ...sheet, window: svgWindow() }));
  // 4 in = 101.6 mm: international yard and pound agreement, 1959. The limit is a hundredth of a millimetre.
  for (const [id, dx, dy] of [
    ['check.x100', 100, 0],
    ['check.x4in', 101.6, 0],
    ['check.y100', 0, 100],
    ['check.y4in', 0, 101.6],
  ] as const) {
    const bar = barInSvg(svg, id);
    expect(Math.abs(bar.dx - dx), id).toBeLessThan(0.01);
    expect(Math.abs(bar.dy - dy), id).toBeLessThan(0.01);
  }
  // The longer ones on the opposite edges, as far as there is room for them.
  for (const { id } of bars) {
    const [, way, length] = /^check\.far\.([xy])(\d+)$/.exec(id) ?? [];
    if (length === undefined) continue;
    const bar = barInSvg(svg, id);
    expect(Math.abs((way === 'x' ? bar.dx : bar.dy) - Number(length)), id).toBeLessThan(0.01);
    expect(way === 'x' ? bar.dy : bar.dx, id).toBeLessThan(0.01);
  }
};

describe('papers', () => {
  it('have the sizes of their standards', () => {
    // ISO 216: A4 210 × 297, A3 297 × 420 mm. ANSI/ASME Y14.1: A 8.5 × 11, B 11 × 17 in.
    expect(papers.a4).toMatchObject({ width: 210, height: 297 });
    expect(papers.a3).toMatchObject({ width: 297, height: 420 });
    expect(papers.letter.width).toBeCloseTo(215.9, 9);
    expect(papers.letter.height).toBeCloseTo(279.4, 9);
    expect(papers.tabloid.width).toBeCloseTo(279.4, 9);
    expect(papers.tabloid.height).toBeCloseTo(431.8, 9);
  });
});

describe('sheets', () => {
  it.each(paperIds)('on %s have check bars in both directions that measure true in the file', (id) => {
    const sheets = laySheets([slab('a', 150, 100), slab('b', 150, 100), slab('c', 60, 20)], on(id), info, say);
    for (const sheet of sheets) {
      expectCheckBars(sheet);
      const ids = sheet.primitives.map((p) => p.id);
      expect(ids).toEqual(expect.arrayContaining(['check.far.x150', 'check.far.y150']));
    }
    const sides = [papers[id].width, papers[id].height].sort();
    for (const { width, height } of sheets) expect([width, height].sort()).toEqual(sides);
  });

  it('lay any pieces that fit, each once, apart from each other and from all else, inside the margins, unscaled', () => {
    const size = fc.tuple(fc.integer({ min: 5, max: 165 }), fc.integer({ min: 5, max: 110 }));
    const sets = fc.array(size, { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(sets, fc.constantFrom(...paperIds), (sizes, paperId) => {
        const pieces = sizes.map(([width, height], i) => slab(`s${i}s`, width, height));
        const sheets = laySheets(pieces, on(paperId), info, say);
        const laid = sheets.flatMap((sheet) => {
          const ids = pieces.filter(({ id }) => sheet.primitives.some((p) => p.id.startsWith(`${id}.`)));
          const parts = [...ids.map(({ id }) => `${id}.`), 'check.x', 'check.y', 'title.', 'legend.'];
          const bounds = parts.map((part) => groupBounds(sheet, part));
          bounds.forEach((a, i) => {
            bounds.slice(i + 1).forEach((b, j) => {
              expect(overlap(a, b), `${parts[i]} over ${parts[i + 1 + j]}`).toBe(false);
            });
          });
          const all = boundsOfPrimitives(sheet.primitives);
          expect(Math.min(all.minX, all.minY)).toBeGreaterThanOrEqual(margin - 1e-9);
          expect(all.maxX).toBeLessThanOrEqual(sheet.width - margin + 1e-9);
          expect(all.maxY).toBeLessThanOrEqual(sheet.height - margin + 1e-9);
          expect(new Set(sheet.primitives.map((p) => p.id)).size).toBe(sheet.primitives.length);
          for (const { id } of ids) {
            const outline = boundsOfPrimitives(sheet.primitives.filter((p) => p.id === `${id}.outline`));
            const sides = [outline.maxX - outline.minX, outline.maxY - outline.minY].sort((a, b) => a - b);
            const wanted = [...(sizes[Number.parseInt(id.slice(1), 10)] ?? [])].sort((a, b) => a - b);
            sides.forEach((side, k) => {
              expect(side).toBeCloseTo(wanted[k] ?? Number.NaN, 9);
            });
          }
          return ids.map(({ id }) => id);
        });
        expect(laid.sort()).toEqual(pieces.map(({ id }) => id).sort());
      }),
      { numRuns: 40 },
    );
  });

  it('on paper of any size, with any margin, overlap and correction keep everything apart and inside, or say what to change', () => {
    const size = fc.tuple(fc.integer({ min: 5, max: 400 }), fc.integer({ min: 5, max: 200 }));
    const share = fc.double({ min: 0.971, max: 1.03, noNaN: true });
    const setting = fc.record({
      width: fc.integer({ min: 100, max: 500 }),
      height: fc.integer({ min: 100, max: 500 }),
      margin: fc.integer({ min: 3, max: 30 }),
      overlap: fc.integer({ min: 5, max: 40 }),
    });
    fc.assert(
      fc.property(
        fc.array(size, { minLength: 1, maxLength: 3 }),
        setting,
        share,
        share,
        (sizes, paper, across, down) => {
          const shop = withPrinter(
            { ...newShop(), paper: { ...newShop().paper, ...paper, size: 'typed' } },
            { id: 'p', name: 'P', across, down, date: '', readings: [] },
          );
          let sheets: readonly Sheet[];
          try {
            sheets = laySheets(
              sizes.map(([width, height], i) => slab(`s${i}s`, width, height)),
              shop,
              info,
              say,
            );
          } catch (error) {
            expect(error).toBeInstanceOf(RangeError);
            expect(String(error)).toMatch(/Choose /);
            return;
          }
          for (const { primitives, width, height, correction } of sheets) {
            const parts = [
              /^check\.x/,
              /^check\.y/,
              /^check\.far\.x/,
              /^check\.far\.y/,
              /^title\./,
              /^legend\./,
              /^plan\./,
            ];
            const pieces = sizes.map((_, i) => new RegExp(`^s${i}s\\.`));
            const boxes = [...parts, ...pieces].flatMap((part) => {
              const own = primitives.filter(({ id }) => part.test(id));
              return own.length > 0 ? [{ part, box: boundsOfPrimitives(own) }] : [];
            });
            boxes.forEach(({ part, box }, i) => {
              for (const other of boxes.slice(i + 1))
                expect(overlap(box, other.box), `${part} over ${other.part}`).toBe(false);
            });
            // On the sheet as it is printed right, and on the page that is stretched for the printer.
            const { minX, minY, maxX, maxY } = boundsOfPrimitives(primitives);
            for (const [x, y] of [
              [1, 1],
              [correction?.across ?? Number.NaN, correction?.down ?? Number.NaN],
            ] as const) {
              const inside = [width / 2 - x * (width / 2 - minX), width / 2 - x * (maxX - width / 2)];
              const upright = [height / 2 - y * (height / 2 - minY), height / 2 - y * (maxY - height / 2)];
              expect(Math.min(...inside, ...upright)).toBeGreaterThanOrEqual(paper.margin - 1e-9);
            }
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('turn a piece by a quarter, without mirroring it, where it fits no other way', () => {
    // Too long for A4 lying (with its bars), too wide for A4 upright, so it can only lie turned on the upright sheet.
    const [sheet] = laySheets([slab('long', 185, 140)], on('a4'), info, say);
    expect(sheet).toMatchObject({ width: 210, height: 297 });
    const outline = sheet?.primitives.find((p) => p.id === 'long.outline');
    if (outline?.kind !== 'stroke') throw new Error('no outline');
    const area = outline.path.segments.reduce(
      (sum, s) => sum + (s.kind === 'line' ? (s.from.x * s.to.y - s.to.x * s.from.y) / 2 : 0),
      0,
    );
    // The corners run clockwise on the page as they did in the piece; a mirror image would run the other way.
    expect(area).toBeCloseTo(185 * 140 - 1, 6);
    const turns = sheet?.primitives.flatMap((p) => (p.kind === 'text' && p.id.startsWith('long.') ? [p.turn] : []));
    for (const turn of turns ?? []) expect(Math.cos((turn * Math.PI) / 180)).toBeGreaterThan(-1e-9);
  });

  it('lie on their side where that takes fewer sheets', () => {
    const sheets = laySheets([slab('wide', 245, 90)], on('a4'), info, say);
    expect(sheets.map(({ width, height }) => [width, height])).toEqual([[297, 210]]);
  });

  it('put several pieces on one sheet where they fit, and number the sheets', () => {
    const small = ['a', 'b', 'c', 'd'].map((id) => slab(id, 70, 30));
    const one = laySheets(small, on('a4'), info, say);
    expect(one).toHaveLength(1);
    expect(one[0]?.title).toBe('Slab a · Slab b · Slab c · Slab d');
    expect(texts(one[0] as Sheet)).toContain('1 of 1');
    const two = laySheets([slab('a', 160, 120), slab('b', 160, 120)], on('a4'), info, say);
    expect(two.map((sheet) => texts(sheet).filter((text) => / of 2$/.test(text)))).toEqual([['1 of 2'], ['2 of 2']]);
  });

  it('come in bench order, by the first piece on each, pages of words last', () => {
    const words = { ...slab('words', 40, 20), ownPage: true as const };
    const pieces = [words, slab('a', 60, 20), slab('b', 400, 60), slab('c', 160, 120), slab('d', 150, 110)];
    const titles = laySheets(pieces, on('a4'), info, say).map(({ title }) => title);
    const first = titles.map((title) => 'abcdw'.indexOf(title.charAt('Slab '.length)));
    expect(first).toEqual(first.toSorted((a, b) => a - b));
    expect(titles.at(-1)).toBe('Slab words');
    expect(titles).toContain('Slab b A1');
  });

  it('take a piece more beside the templates as they are', () => {
    const drawn = drawnPieces(job, solved(job)).filter(({ ownPage }) => !ownPage);
    const ids = [...drawn, slab('more', 90, 25)].map(({ id }) => `${id}.title`);
    const sheets = laySheets([...drawn, slab('more', 90, 25)], on('a4'), info, say);
    const laid = sheets.flatMap((sheet) => sheet.primitives.filter((p) => ids.includes(p.id)));
    expect(laid.map((p) => p.id).sort()).toEqual([...ids].sort());
    for (const sheet of sheets) expectCheckBars(sheet);
  });

  // The starters on one paper by turns, the fullest jobs on both.
  it.each([
    ...starters.map(({ id, text }, i) => [id, i % 2 === 0 ? 'a4' : 'letter', jobOf(text)] as const),
    ...(['a4', 'letter'] as const).flatMap((paper) => [
      ['everything', paper, fullJob()] as const,
      ['an old top', paper, oldTop()] as const,
    ]),
  ])('hold every template of %s on %s, unscaled', (_, paper, asked) => {
    const { job: own, design } = built(asked);
    const drawn = drawnPieces(own, design, on(paper));
    const sheets = laySheets(drawn, on(paper), sheetInfo(own, '1'), sayWith(own.show));
    const parted = new Set<string>();
    const sides = ({ minX, minY, maxX, maxY }: Bounds) => [maxX - minX, maxY - minY].sort((a, b) => a - b);
    for (const { id, title, marks, ownPage } of drawn) {
      if (ownPage) {
        expect(sheets.map((sheet) => sheet.title)).toContain(title);
        continue;
      }
      const paths = marks.flatMap((mark) =>
        mark.kind === 'path' ? [{ id: mark.id, box: sides(bounds(mark.path)) }] : [],
      );
      const [first] = paths;
      if (!first) throw new Error(`nothing is drawn in ${id}`);
      const size = ([thin = 0, long = 0]: readonly number[]) => thin + long;
      const largest = paths.reduce((a, b) => (size(b.box) > size(a.box) ? b : a), first);
      const laid = sheets.flatMap((sheet) => sheet.primitives.filter((p) => p.id === `${id}.${largest.id}`));
      if (laid.length === 1) {
        const [thin, long] = sides(boundsOfPrimitives(laid));
        expect(thin).toBeCloseTo(largest.box[0] ?? Number.NaN, 6);
        expect(long).toBeCloseTo(largest.box[1] ?? Number.NaN, 6);
      } else {
        expect(laid.length, id).toBeGreaterThan(1);
        expect(sheets.map((sheet) => sheet.title)).toContain(`${title} A1`);
        parted.add(id);
      }
    }
    // What is made of wood or bone, and is no larger than the bridge, lies on one page.
    for (const id of ['footprint', 'end-profile', 'saddle', 'saddle-crown']) expect(parted).not.toContain(id);
  });

  it('say whose they are, to which scale, and to measure them first', () => {
    const [sheet] = laySheets([{ ...slab('a', 70, 30), faceUp: 'the tail side' }], on('letter'), info, say);
    const words = texts(sheet as Sheet);
    for (const text of [
      job.name,
      job.date,
      '1:1',
      'mm',
      'right hand',
      'Sagitta 9.8.7',
      'Face up: the tail side',
      'cut',
    ])
      expect(words).toContain(text);
    expect(words.join(' ')).toContain('Measure the check bars before you cut: print at 100 %, no fit to page.');
    expect(words.join(' ')).toContain('Follow local rules; if in doubt, ask a qualified repairer.');
  });

  it('explain each kind of line that is on them with the line itself, and no other', () => {
    const [sheet] = laySheets([slab('a', 70, 30)], on('a4'), info, say);
    const lines = (id: string) => sheet?.primitives.filter((p) => p.id === id);
    expect(lines('legend.cut.outline')).toMatchObject([{ kind: 'stroke', line: 'outline' }]);
    expect(lines('legend.drill.outline')).toEqual([]);
    // Nothing of the legend is there to be cut.
    expect(sheet?.primitives.filter((p: Primitive) => p.kind === 'stroke' && p.purpose === 'cut')).toHaveLength(1);
  });

  it('keep a name of any length and with any characters inside its cell', () => {
    const name = `Line\u0000one\nline two \u202e ${'wide '.repeat(60)}`;
    const [sheet] = laySheets([slab('a', 70, 30)], on('a4'), sheetInfo({ ...job, name: name.slice(0, 200) }, '1'), say);
    const cell = groupBounds(sheet as Sheet, 'title.job');
    const next = groupBounds(sheet as Sheet, 'title.date.rule');
    expect(cell.maxX).toBeLessThanOrEqual(next.minX);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: it is they that must not be there.
    expect(texts(sheet as Sheet).join('')).not.toMatch(/[\u0000-\u001f\u202e]/);
  });

  it('refuse paper that has no room, naming it and the way out', () => {
    const tiny = { ...newShop().paper, size: 'typed', width: 120, height: 130 } as const;
    expect(() => laySheets([slab('a', 20, 20)], { ...newShop(), paper: tiny }, info, say)).toThrow(
      /^120\.0 × 130\.0 mm with a margin of 10\.0 mm has no room .*larger paper, A4 .*smaller margin\.$/,
    );
    const wide = { ...newShop().paper, overlap: 40, margin: 30, size: 'typed', width: 230, height: 215 } as const;
    expect(() => laySheets([slab('a', 190, 190)], { ...newShop(), paper: wide }, info, say)).toThrow(
      /overlap of 40\.0 mm/,
    );
  });
});

describe('a piece’s own page', () => {
  it('is cropped to it, with check bars in both directions that keep clear of it', () => {
    const sheet = pieceSheet(slab('a', 180, 40), info, say);
    expectCheckBars(sheet);
    const piece = boundsOfPrimitives(sheet.primitives.filter((p) => p.id === 'outline'));
    expect(piece.maxX - piece.minX).toBeCloseTo(180, 9);
    expect(sheet.width).toBeLessThan(180 + 30);
    for (const part of ['check.x', 'check.y', 'sheet.'])
      expect(overlap(piece, groupBounds(sheet, part)), part).toBe(false);
    const all = boundsOfPrimitives(sheet.primitives);
    expect(Math.min(all.minX, all.minY)).toBeGreaterThan(0);
    expect(all.maxX).toBeLessThan(sheet.width);
    expect(all.maxY).toBeLessThan(sheet.height);
    expect(texts(sheet)).toContain(`Slab a · 1:1 · ${job.name}`);
  });
});
