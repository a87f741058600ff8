import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DimensionMark, Mark, NoteMark, PathMark, Stroke, Text } from '../../geometry/drawing.ts';
import { boundsOfPrimitives, layOut, sayWith } from '../../geometry/layout.ts';
import { mirrored, moved } from '../../geometry/marks.ts';
import { digits, pathData } from '../../geometry/path-data.ts';
import { circle } from '../../geometry/shape/arc.ts';
import { bounds } from '../../geometry/shape/bounds.ts';
import { end, pen, polyline, start } from '../../geometry/shape/path.ts';
import type { Bounds, Path, Point } from '../../geometry/shape/types.ts';
import { textWidth } from '../../geometry/text.ts';
import { textBox } from '../../geometry/text-box.ts';
import type { ShowUnits } from '../../geometry/units.ts';
import { stretched } from '../../geometry/views/stretch.ts';
import { readPathData } from '../read-path-data.ts';

const metric: ShowUnits = { length: 'mm', radius: 'mm', gauge: 'mm' };
const em = 3.5;
const say = sayWith(metric);
const lay = (marks: readonly Mark[]) => layOut(marks, { em, say });

const part = (mark: Mark, name: string): Stroke => {
  const found = lay([mark]).find((p) => p.id === `${mark.id}.${name}`);
  if (found?.kind !== 'stroke') throw new Error(`${name} is not drawn`);
  return found;
};
const valueIn = (mark: Mark): Text => {
  const found = lay([mark]).find((p) => p.kind === 'text');
  if (found?.kind !== 'text') throw new Error('no value');
  return found;
};
const corners = (path: Path): Point[] => path.segments.flatMap((s) => (s.kind === 'line' ? [s.from] : []));
const apart = (a: Bounds, b: Bounds) => a.minX >= b.maxX || b.minX >= a.maxX || a.minY >= b.maxY || b.minY >= a.maxY;

const across = (length: number, more: Partial<DimensionMark> = {}): DimensionMark => ({
  kind: 'dimension',
  id: 'width',
  jobPath: 'bridge.length',
  from: { x: 10, y: 4 },
  to: { x: 10 + length, y: 6 },
  along: 'x',
  at: { base: 20, ems: 2 },
  label: [{ value: length, kind: 'length' }],
  ...more,
});

describe('a dimension along x', () => {
  const mark = across(100);

  it('has its line at the base moved by ems, from feature to feature', () => {
    const line = part(mark, 'line').path;
    expect(start(line)).toEqual({ x: 10, y: 20 + 2 * em });
    expect(end(line)).toEqual({ x: 110, y: 20 + 2 * em });
  });

  it('has extension lines that leave a gap at the feature and run past the line', () => {
    for (const [name, feature] of [
      ['from', mark.from],
      ['to', mark.to],
    ] as const) {
      const line = part(mark, name).path;
      expect(start(line).x).toBe(feature.x);
      expect(end(line).x).toBe(feature.x);
      expect(start(line).y - feature.y).toBeGreaterThan(0.2 * em);
      expect(start(line).y - feature.y).toBeLessThan(em);
      expect(end(line).y).toBeGreaterThan(27);
      expect(end(line).y).toBeLessThan(27 + em);
    }
  });

  it('turns its extension lines round when the features lie below the line', () => {
    const line = part(across(100, { at: { base: -20, ems: -1 } }), 'from').path;
    expect(start(line).y).toBeLessThan(4);
    expect(end(line).y).toBeLessThan(-20 - em);
  });

  it('leaves out an extension line where the feature stands on the dimension line', () => {
    const ids = lay([across(100, { at: { base: 4, ems: 0 } })]).map((p) => p.id);
    expect(ids).not.toContain('width.from');
    expect(ids).toContain('width.to');
  });

  it('has filled arrowheads of 15° whose tips touch both features', () => {
    for (const [name, feature] of [
      ['from-arrow', mark.from],
      ['to-arrow', mark.to],
    ] as const) {
      const { path, matter } = part(mark, name);
      expect(matter).toBe('ink');
      expect(path.closed).toBe(true);
      const [tip, a, b] = corners(path);
      if (!tip || !a || !b) throw new Error('not a triangle');
      expect(tip).toEqual({ x: feature.x, y: 27 });
      const angle = Math.abs(
        Math.atan2(a.y - tip.y, Math.abs(a.x - tip.x)) - Math.atan2(b.y - tip.y, Math.abs(b.x - tip.x)),
      );
      // ISO 129-1: closed filled arrowheads of 15°.
      expect((angle * 180) / Math.PI).toBeCloseTo(15, 9);
      expect(a.x).toBeGreaterThan(10);
      expect(a.x).toBeLessThan(110);
    }
  });

  it('writes the value over the middle of the line, upright, in the reader’s unit', () => {
    expect(valueIn(mark)).toMatchObject({
      text: '100.0',
      turn: 0,
      anchor: 'middle',
      size: em,
      jobPath: 'bridge.length',
    });
    expect(valueIn(mark).at.x).toBeCloseTo(60, 12);
    expect(valueIn(mark).at.y).toBeLessThan(27);
    const inches = layOut([mark], { em, say: sayWith({ ...metric, length: 'in' }, { unit: true }) });
    expect(inches.find((p) => p.kind === 'text')).toMatchObject({ text: '3.937 in' });
  });
});

describe('a dimension along y', () => {
  const mark = across(0, { along: 'y', from: { x: 0, y: 0 }, to: { x: 3, y: 40 }, at: { base: 30, ems: 1 } });

  it('has an upright line, and its value is read from the right', () => {
    const line = part(mark, 'line').path;
    expect(start(line).x).toBeCloseTo(30 + em, 12);
    expect(end(line).x).toBeCloseTo(30 + em, 12);
    expect([start(line).y, end(line).y].sort((a, b) => a - b)).toEqual([0, 40]);
    expect(valueIn(mark)).toMatchObject({ turn: -90, anchor: 'middle' });
    // Above the line as it is read, so left of it on the page.
    expect(valueIn(mark).at.x).toBeLessThan(30 + em);
    expect(valueIn(mark).at.y).toBeCloseTo(20, 12);
  });
});

describe('a dimension with little room', () => {
  it('puts its arrows outside and its value beside', () => {
    const mark = across(2, { label: ['2.00 of wood'] });
    const head = bounds(part(mark, 'from-arrow').path);
    const other = bounds(part(mark, 'to-arrow').path);
    expect(head.maxX).toBeCloseTo(10, 12);
    expect(other.minX).toBeCloseTo(12, 12);
    expect(textBox(valueIn(mark)).minX).toBeGreaterThan(other.maxX);
    expect(bounds(part(mark, 'line').path).maxX).toBeGreaterThanOrEqual(textBox(valueIn(mark)).maxX - 1e-9);
  });

  it('draws both arrows even for no length at all', () => {
    const mark = across(0);
    expect(bounds(part(mark, 'from-arrow').path).maxX).toBeCloseTo(10, 12);
    expect(bounds(part(mark, 'to-arrow').path).minX).toBeCloseTo(10, 12);
  });

  it('never lets the value touch its line or an extension line, however long it is and whichever way it runs', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -200, max: 200, noNaN: true }),
        fc.constantFrom<'x' | 'y'>('x', 'y'),
        fc.string({ minLength: 1, maxLength: 12, unit: 'grapheme-ascii' }),
        fc.double({ min: -4, max: 4, noNaN: true }),
        (length, along, label, ems) => {
          const to = along === 'x' ? { x: 10 + length, y: 6 } : { x: 12, y: 4 + length };
          const mark = across(length, { along, to, label: [label], at: { base: 5, ems } });
          const value = valueIn(mark);
          // What shows of a value is its capitals and figures: on the baseline and over it.
          const box = textBox(value);
          const shown = along === 'x' ? { ...box, maxY: value.at.y } : { ...box, maxX: value.at.x };
          for (const p of lay([mark])) {
            if (p.kind === 'text') continue;
            expect(p.id.startsWith('width.')).toBe(true);
            expect(p.jobPath).toBe('bridge.length');
            expect(apart(shown, bounds(p.path)), p.id).toBe(true);
          }
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe('a path mark', () => {
  const square: PathMark = {
    kind: 'path',
    id: 'section',
    jobPath: 'bridge.thickness',
    path: polyline(
      [
        { x: 0, y: 0 },
        { x: 40, y: 0 },
        { x: 40, y: 20 },
        { x: 0, y: 20 },
      ],
      true,
    ),
    line: 'outline',
    purpose: 'cut',
    matter: 'wood',
  };

  it('is a stroke of the same line, purpose and matter', () => {
    const { kind: _, ...rest } = square;
    expect(lay([square])).toEqual([{ kind: 'stroke', ...rest }]);
  });

  it('is hatched with thin lines of 45° for show, holes left out', () => {
    const hole = circle({ x: 20, y: 10 }, 5);
    const hatched = lay([{ ...square, hatch: { holes: [hole] } }]);
    expect(hatched[0]).toEqual(lay([square])[0]);
    const lines = hatched.slice(1) as Stroke[];
    expect(lines.length).toBeGreaterThan(10);
    expect(new Set(lines.map((l) => l.id)).size).toBe(lines.length);
    for (const { id, path, line, purpose, jobPath } of lines) {
      expect(id).toMatch(/^section\.hatch\.\d+$/);
      expect([line, purpose, jobPath]).toEqual(['thin', 'show', 'bridge.thickness']);
      const [a, b] = [start(path), end(path)];
      expect(-(b.y - a.y) / (b.x - a.x)).toBeCloseTo(1, 9);
      const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
      expect(Math.hypot(middle.x - 20, middle.y - 10)).toBeGreaterThan(5);
    }
    const steeper = lay([{ ...square, hatch: { holes: [], angle: 60 } }])[1] as Stroke;
    const [a, b] = [start(steeper.path), end(steeper.path)];
    expect(-(b.y - a.y) / (b.x - a.x)).toBeCloseTo(Math.tan(Math.PI / 3), 9);
  });
});

describe('notes', () => {
  const note = (id: string, x: number, text: string, more: Partial<NoteMark> = {}): NoteMark => ({
    kind: 'note',
    id,
    at: { x, y: 50 },
    label: [text],
    anchor: 'middle',
    ...more,
  });

  it('are moved by ems, scaled, turned and anchored as they ask', () => {
    const [text] = lay([
      note('a', 10, 'belly', {
        shift: { dx: 1, dy: -2 },
        scale: 0.8,
        turn: -90,
        anchor: 'end',
        bold: true,
        jobPath: 'x',
      }),
    ]);
    expect(text).toEqual({
      kind: 'text',
      id: 'a',
      at: { x: 10 + em, y: 50 - 2 * em },
      text: 'belly',
      size: 0.8 * em,
      anchor: 'end',
      turn: -90,
      bold: true,
      jobPath: 'x',
    });
  });

  it('of one group are spread over rows upwards until none overlaps, the first of them staying', () => {
    const notes = [0, 3, 6, 9, 60].map((x, n) => note(`n${n}`, x, `note ${n}`, { stagger: 'strings' }));
    const texts = lay(notes) as Text[];
    expect(texts.map((t) => t.id)).toEqual(notes.map((n) => n.id));
    for (const a of texts) for (const b of texts) if (a !== b) expect(apart(textBox(a), textBox(b))).toBe(true);
    expect(texts[0]?.at.y).toBe(50);
    expect(texts[4]?.at.y).toBe(50);
    expect(texts.every((t) => t.at.y <= 50)).toBe(true);
    expect(texts.map((t) => t.at.x)).toEqual([0, 3, 6, 9, 60]);
  });

  it('of different groups, or of none, stay where they are', () => {
    const texts = lay([
      note('a', 0, 'bass', { stagger: 'one' }),
      note('b', 0, 'bass', { stagger: 'two' }),
      note('c', 0, 'bass'),
    ]) as Text[];
    expect(texts.map((t) => t.at.y)).toEqual([50, 50, 50]);
  });
});

describe('boundsOfPrimitives', () => {
  it('holds strokes and texts', () => {
    const primitives = lay([
      { kind: 'path', id: 'p', path: circle({ x: 0, y: 0 }, 5), line: 'outline', purpose: 'drill' },
      { kind: 'note', id: 't', at: { x: 0, y: -20 }, label: ['wide enough'], anchor: 'start' },
    ]);
    const box = boundsOfPrimitives(primitives);
    expect(box.minX).toBeCloseTo(-5, 12);
    expect(box.maxY).toBeCloseTo(5, 12);
    expect(box.maxX).toBeCloseTo(textWidth('wide enough', em), 12);
    expect(box.minY).toBeLessThan(-20 - 0.7 * em);
  });

  it('refuses nothing at all', () => {
    expect(() => boundsOfPrimitives([])).toThrow(RangeError);
  });
});

describe('pathData', () => {
  it('keeps lines, arcs and cubics, within a millionth of a mm', () => {
    const path = pen({ x: 1 / 3, y: 0 })
      .line({ x: 100 / 7, y: 0 })
      .arc({ x: 20, y: 5 }, 508.123456789, -1)
      .cubic({ x: 25, y: 9 }, { x: 11, y: 30 }, { x: 2 / 3, y: 31 })
      .close();
    const [read] = readPathData(pathData(path));
    expect(read?.closed).toBe(true);
    expect(read?.segments.map((s) => s.kind)).toEqual(['line', 'arc', 'cubic', 'line']);
    const [line, arc] = read?.segments ?? [];
    if (line?.kind !== 'line' || arc?.kind !== 'arc') throw new Error('kinds');
    expect(Math.abs(line.to.x - 100 / 7)).toBeLessThan(1e-6);
    expect(Math.abs(arc.radius - 508.123456789)).toBeLessThan(1e-6);
    const drawn = path.segments[1];
    if (drawn?.kind !== 'arc') throw new Error('kind');
    expect(Math.sign(arc.sweep)).toBe(Math.sign(drawn.sweep));
    expect(arc.sweep).toBeCloseTo(drawn.sweep, 6);
  });

  it.each([Math.PI / 2, -Math.PI, 1.9 * Math.PI, 2 * Math.PI, -2 * Math.PI])(
    'keeps centre, radius and sense of an arc of %s radians',
    (sweep) => {
      const centre = { x: 12.3456789, y: -4 };
      const [read] = readPathData(
        pathData({ segments: [{ kind: 'arc', centre, radius: 1.6, start: 0.3, sweep }], closed: false }),
      );
      const arcs = read?.segments.flatMap((s) => (s.kind === 'arc' ? [s] : [])) ?? [];
      expect(arcs.reduce((sum, a) => sum + a.sweep, 0)).toBeCloseTo(sweep, 5);
      for (const a of arcs) {
        expect(Math.hypot(a.centre.x - centre.x, a.centre.y - centre.y)).toBeLessThan(2e-6);
        expect(a.radius).toBeCloseTo(1.6, 6);
      }
    },
  );

  it('writes numbers without exponents, trailing zeros or a minus before zero', () => {
    expect([0, -0, 1e-9, -1e-9, 0.1 + 0.2, 100, -2.5, 1 / 3].map(digits)).toEqual([
      '0',
      '0',
      '0',
      '0',
      '0.3',
      '100',
      '-2.5',
      '0.333333',
    ]);
  });
});

describe('a note that roams', () => {
  const at = { x: 10, y: 20 };
  const roaming: NoteMark = { kind: 'note', id: 'free', at, label: ['register'], anchor: 'middle', roams: true };
  const line = (id: string, from: Point, to: Point): PathMark => ({
    kind: 'path',
    id,
    path: polyline([from, to], false),
    line: 'thin',
    purpose: 'show',
  });
  const textOf = (marks: readonly Mark[], id = 'free'): Text => {
    const found = lay(marks).find((p) => p.id === id);
    if (found?.kind !== 'text') throw new Error(`no ${id}`);
    return found;
  };

  it('stands to the right of its point, level with it, where nothing is in the way', () => {
    const text = textOf([roaming]);
    expect(text.anchor).toBe('start');
    const { minX, minY, maxY } = textBox(text);
    expect(minX).toBeGreaterThan(10);
    expect(minX).toBeLessThan(10 + em);
    expect((minY + maxY) / 2).toBeCloseTo(20, 0);
  });

  it('goes round words and small shapes, whichever are drawn first, and keeps its place in the order', () => {
    const word: NoteMark = { kind: 'note', id: 'word', at: { x: 14, y: 21 }, label: ['in the way'], anchor: 'start' };
    for (const marks of [
      [roaming, word],
      [word, roaming],
    ]) {
      expect(apart(textBox(textOf(marks)), textBox(textOf(marks, 'word')))).toBe(true);
      expect(lay(marks).map(({ id }) => id)).toEqual(marks.map(({ id }) => id));
    }
    const ring: PathMark = { ...line('ring', at, { x: 11, y: 20 }), path: circle({ x: 18, y: 20 }, 3) };
    expect(apart(textBox(textOf([ring, roaming])), bounds(ring.path))).toBe(true);
  });

  it('goes a little farther off rather than be crossed by a line, but not far', () => {
    const wall = line('wall', { x: 20, y: 0 }, { x: 20, y: 60 });
    const aside = textBox(textOf([wall, roaming]));
    expect(aside.maxX <= 20 || aside.minX >= 20).toBe(true);
    // Walls on all sides as far as it could go: it stays where it is, and they are broken under it.
    const walls = Array.from({ length: 40 }, (_, k) =>
      line(`w${k}`, { x: k * 3 - 40, y: -90 }, { x: k * 3 - 40, y: 130 }),
    );
    expect(textOf([...walls, roaming]).at).toEqual(textOf([roaming]).at);
  });

  it('goes farther off with a leader line where wide lines leave no room near, and makes the drawing no larger if it can', () => {
    const wide = (k: number): PathMark => ({
      ...line(`wide${k}`, { x: k * 3 - 8, y: 5 }, { x: k * 3 - 8, y: 35 }),
      line: 'outline',
    });
    const marks = [
      ...Array.from({ length: 16 }, (_, k) => wide(k)),
      line('frame', { x: -60, y: -60 }, { x: 100, y: -60 }),
      roaming,
    ];
    const laid = lay(marks);
    const text = textOf(marks);
    const box = textBox(text);
    expect(box.maxY < 5 || box.minY > 35 || box.maxX < -8 || box.minX > 37).toBe(true);
    const leader = laid.find(({ id }) => id === 'free.leader');
    const arrow = laid.find(({ id }) => id === 'free.leader-arrow');
    if (leader?.kind !== 'stroke' || arrow?.kind !== 'stroke') throw new Error('no leader');
    expect([leader.line, leader.purpose, arrow.matter]).toEqual(['thin', 'show', 'ink']);
    expect(end(leader.path)).toEqual(at);
    expect(start(arrow.path)).toEqual(at);
    const { x, y } = start(leader.path);
    expect(x >= box.minX - em && x <= box.maxX + em && y >= box.minY - em && y <= box.maxY + em).toBe(true);
    expect(boundsOfPrimitives(laid)).toEqual(boundsOfPrimitives(lay(marks.slice(0, -1))));
    // The leader comes before its word, in the note's place in the order.
    expect(laid.slice(-3).map(({ id }) => id)).toEqual(['free.leader', 'free.leader-arrow', 'free']);
  });

  it('many of them stand clear of each other', () => {
    const many = Array.from({ length: 6 }, (_, k) => ({ ...roaming, id: `n${k}`, at: { x: 10 + k, y: 20 } }));
    const boxes = many.map(({ id }) => textBox(textOf(many, id)));
    boxes.forEach((box, k) => {
      for (const other of boxes.slice(k + 1)) expect(apart(box, other)).toBe(true);
    });
  });
});

describe('a note that names other places', () => {
  const own: NoteMark = {
    kind: 'note',
    id: 'choosy',
    at: { x: 10, y: 20 },
    label: ['deck'],
    anchor: 'start',
    or: [{ at: { x: 10, y: 40 } }, { anchor: 'end', shift: { dx: 0, dy: -4 } }],
  };
  const wordAt = (id: string, y: number): NoteMark => ({
    kind: 'note',
    id,
    at: { x: 10, y },
    label: ['word'],
    anchor: 'start',
  });
  const wall: PathMark = {
    kind: 'path',
    id: 'wall',
    path: polyline(
      [
        { x: 12, y: 0 },
        { x: 12, y: 30 },
      ],
      false,
    ),
    line: 'thin',
    purpose: 'show',
  };
  const textOf = (marks: readonly Mark[]): Text => {
    const found = lay(marks).find((p) => p.id === 'choosy');
    if (found?.kind !== 'text') throw new Error('no text');
    return found;
  };

  it('has its own as long as nothing is in the way, then the first that is free of words, else its own', () => {
    expect(textOf([own]).at).toEqual({ x: 10, y: 20 });
    expect(textOf([own, wordAt('one', 20)]).at).toEqual({ x: 10, y: 40 });
    const third = textOf([own, wordAt('one', 20), wordAt('two', 40)]);
    expect(third).toMatchObject({ anchor: 'end', at: { x: 10, y: 20 - 4 * em } });
    // What ends where a word begins stands beside it; one over both leaves nothing.
    const wide: NoteMark = { ...wordAt('three', 20 - 4 * em), anchor: 'middle', label: ['a word over both'] };
    expect(textOf([own, wordAt('one', 20), wordAt('two', 40), wide]).at).toEqual({ x: 10, y: 20 });
  });

  it('goes rather than be crossed by a line', () => {
    expect(textOf([own, wall]).at).toEqual({ x: 10, y: 40 });
  });

  it('is led to where the place that it goes to asks for it', () => {
    const led = { ...own, or: [{ at: { x: 40, y: 40 }, leads: { x: 10, y: 20 } }] };
    expect(lay([led]).map(({ id }) => id)).toEqual(['choosy']);
    expect(lay([led, wall]).map(({ id }) => id)).toEqual(['choosy.leader', 'choosy.leader-arrow', 'choosy', 'wall']);
    const [mirror] = mirrored([led]) as readonly NoteMark[];
    expect(mirror?.or?.[0]?.leads).toEqual({ x: -10, y: 20 });
    const [away] = moved([led], 5, 7) as readonly NoteMark[];
    expect(away?.or?.[0]?.leads).toEqual({ x: 15, y: 27 });
    const [high] = stretched({ id: 'd', title: 'd', marks: [led] }, 3).marks as readonly NoteMark[];
    expect(high?.or?.[0]?.leads).toEqual({ x: 10, y: 60 });
  });

  it('is mirrored, moved and stretched with all its places', () => {
    const [mirror] = mirrored([own]) as readonly NoteMark[];
    expect(mirror?.or).toEqual([{ at: { x: -10, y: 40 } }, { anchor: 'start', shift: { dx: -0, dy: -4 } }]);
    const [away] = moved([own], 5, 7) as readonly NoteMark[];
    expect(away?.or?.[0]?.at).toEqual({ x: 15, y: 47 });
    const [high] = stretched({ id: 'd', title: 'd', marks: [own] }, 3).marks as readonly NoteMark[];
    expect(high).toMatchObject({ at: { x: 10, y: 60 }, or: [{ at: { x: 10, y: 120 } }, { shift: { dx: 0, dy: -4 } }] });
  });
});

describe('a line under a word', () => {
  const word: NoteMark = { kind: 'note', id: 'word', at: { x: 0, y: 0 }, label: ['word'], anchor: 'middle' };
  const across = (more: Partial<PathMark> = {}): PathMark => ({
    kind: 'path',
    id: 'line',
    path: polyline(
      [
        { x: -30, y: -1 },
        { x: 30, y: -1 },
      ],
      false,
    ),
    line: 'thin',
    purpose: 'show',
    jobPath: 'bridge.length',
    ...more,
  });
  const strokes = (marks: readonly Mark[]) => lay(marks).filter((p) => p.kind === 'stroke');

  it.each(['thin', 'hidden', 'centre', 'phantom'] as const)('is broken where it is %s and only shown', (line) => {
    const [before, behind, ...more] = strokes([across({ line }), word]);
    if (!before || !behind) throw new Error('not broken');
    expect(more).toEqual([]);
    expect([before.id, behind.id]).toEqual(['line', 'line.2']);
    for (const part of [before, behind])
      expect(part).toMatchObject({ line, purpose: 'show', jobPath: 'bridge.length' });
    const half = textWidth('word', em) / 2;
    expect(start(before.path)).toEqual({ x: -30, y: -1 });
    expect(end(behind.path)).toEqual({ x: 30, y: -1 });
    for (const gap of [-half - end(before.path).x, start(behind.path).x - half]) {
      expect(gap).toBeGreaterThan(0.05 * em);
      expect(gap).toBeLessThan(0.5 * em);
    }
  });

  it.each([
    { line: 'outline' },
    { purpose: 'cut' },
    { purpose: 'drill' },
    { purpose: 'fold' },
    { matter: 'pin' },
  ] as const)('is left whole where it is %o', (more) => {
    const mark = across(more);
    const { kind: _, ...rest } = mark;
    expect(strokes([mark, word])).toEqual([{ kind: 'stroke', ...rest }]);
  });

  it('is left whole where the word only stands over it', () => {
    const mark = across({
      path: polyline(
        [
          { x: -30, y: 0.3 * em },
          { x: 30, y: 0.3 * em },
        ],
        false,
      ),
    });
    expect(strokes([mark, word])).toHaveLength(1);
    expect(strokes([mark, { ...word, label: ['gyp'] }])).toHaveLength(1);
    expect(strokes([mark, { ...word, label: [''] }])).toHaveLength(1);
  });

  it('is broken on its arcs too, and stays one piece round its corners', () => {
    const path = pen({ x: -30, y: -20 }).line({ x: -30, y: -1 }).line({ x: 30, y: -1 }).line({ x: 30, y: -20 }).path();
    expect(strokes([across({ path }), word]).map((one) => one.path.segments.length)).toEqual([2, 2]);
    const ring = circle({ x: 0, y: 20 }, 21);
    const [only, behind, ...more] = strokes([across({ path: ring }), word]);
    if (!only || !behind) throw new Error('not broken');
    expect(more).toEqual([]);
    for (const part of [only, behind]) {
      expect(part.path.closed).toBe(false);
      for (const p of [start(part.path), end(part.path)]) expect(Math.hypot(p.x, p.y - 20)).toBeCloseTo(21, 9);
    }
  });
});
