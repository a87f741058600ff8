// The templates as they leave the command, measured by readers that did not write them (pdf.js, a DOM parser): what the job says is what lies on the paper.
import { describe, expect, it } from 'vitest';
import type { Job } from '../../geometry/job.ts';
import { readJob } from '../../geometry/job-file.ts';
import type { Cubic, Path, Point, Segment } from '../../geometry/shape/types.ts';
import { makeFiles } from '../../src/command/make-files.ts';
import { starters } from '../../src/jobs/index.ts';
import { newShop } from '../../templates/shop/index.ts';
import { centripetal } from '../centripetal.ts';
import { fitCircle, pointAt } from '../fit-circle.ts';
import { type PdfFile, readPdf, renderPdf } from '../read-pdf.ts';
import { readSvg } from '../read-svg.ts';
import { built, workedExample } from '../solved.ts';

const jobs = [
  ...starters.map(({ id, text }) => {
    const read = readJob(text);
    if (!read.ok) throw new Error(read.problems[0]?.says);
    return [id, read.job] as const;
  }),
  ['the worked example', workedExample()] as const,
];

const make = async (job: Job) => {
  const settled = built(job);
  const made = await makeFiles({ ...settled, shop: newShop() }, { cut: false, keepSettings: false });
  if (!made.ok) throw new Error(made.lines.join(' '));
  const file = (name: string) => {
    const found = made.files.find((one) => one.name === name);
    if (!found) throw new Error(`no ${name}`);
    return found.content;
  };
  const pdf = new Uint8Array(file('templates.pdf') as Uint8Array);
  return { text: (name: string) => String(file(name)), pdf, read: await readPdf(pdf) };
};

const known = new Map<Job, ReturnType<typeof make>>();
/** What the command writes for a job, and its PDF as it was read; made once. */
const files = (job: Job) => {
  const made = known.get(job) ?? make(job);
  known.set(job, made);
  return made;
};

const ends = (s: Segment): readonly Point[] => (s.kind === 'arc' ? [] : [s.from, s.to]);

/** Sides of the box around a path's ends, the longer first: on a sheet a piece may lie turned by a quarter. */
const sides = (segments: readonly Segment[]): readonly [number, number] => {
  const points = segments.flatMap((s) =>
    s.kind === 'cubic' ? Array.from({ length: 41 }, (_, n) => pointAt(s, n / 40)) : ends(s),
  );
  const span = (key: 'x' | 'y') => Math.max(...points.map((p) => p[key])) - Math.min(...points.map((p) => p[key]));
  const [a, b] = [span('x'), span('y')];
  return a > b ? [a, b] : [b, a];
};

const cuts = (pdf: PdfFile) => pdf.pages.flatMap(({ paths }) => paths.filter(({ layer }) => layer === 'cut'));
const cubics = (segments: readonly Segment[]) => segments.filter((s): s is Cubic => s.kind === 'cubic');
const onCubics = (segments: readonly Segment[]) =>
  cubics(segments).flatMap((s) => Array.from({ length: 21 }, (_, n) => pointAt(s, n / 20)));

/** A footprint's length and depth: as typed; of a free outline, from end to end of its points and of the published curve between them. */
const footprintSize = ({ bridge }: Job): readonly [number, number] => {
  if (bridge.footprint !== 'free') return [bridge.length, bridge.depth];
  const given = bridge.points.map(({ across, along, turn }) => ({ x: across, y: along, isCorner: turn === 'corner' }));
  const n = given.length;
  const at = (k: number) => given[k % n] as (typeof given)[number];
  // Beside a corner the curve has no fourth point; godwit's stands nowhere farthest there.
  const curve = given.flatMap((a, k) =>
    at(k + 1).isCorner || at(k + 2).isCorner
      ? []
      : Array.from({ length: 201 }, (_, i) => centripetal(a, at(k + 1), at(k + 2), at(k + 3), i / 200)),
  );
  const span = (key: 'x' | 'y') => {
    const all = [...given, ...curve].map((p) => p[key]);
    return Math.max(...all) - Math.min(...all);
  };
  return [span('x'), span('y')];
};

/** Middles of the holes that take the strings, from the job's own numbers: equally spaced in each row; a slanted row lies along the saddle, an arc on the circle of its chord and sagitta. */
const holesFor = ({ pins, strings }: Job, slant: number): readonly Point[] => {
  const { spread, secondAside, secondRow, row, arcRise } = pins;
  const isPaired = strings.courses === 'pairs';
  const rows = isPaired ? 2 : 1;
  const places = strings.list.length / rows;
  const step = (spread - (isPaired ? secondAside : 0)) / (places - 1);
  const radius = arcRise / 2 + spread ** 2 / (8 * arcRise);
  return strings.list.map((_, k) => {
    const second = k % rows;
    const x = Math.floor(k / rows) * step + second * secondAside - spread / 2;
    const bent = { square: 0, slanted: slant * x, arc: Math.sqrt(radius ** 2 - x ** 2) - radius }[row];
    return { x, y: second * secondRow + bent };
  });
};

/** How far the points lie from each other, every two of them, nearest first. */
const distances = (points: readonly Point[]): readonly number[] =>
  points.flatMap((a, k) => points.slice(k + 1).map((b) => Math.hypot(a.x - b.x, a.y - b.y))).toSorted((a, b) => a - b);

const areAsFarApart = (found: readonly Point[], wanted: readonly Point[]) => {
  expect(found).toHaveLength(wanted.length);
  const far = distances(wanted);
  distances(found).forEach((one, k) => {
    expect(Math.abs(one - (far[k] ?? Number.NaN))).toBeLessThan(0.01);
  });
};

describe.each(jobs)('%s', (_, job) => {
  const { design } = built(job);
  const radius = design.cut?.radius ?? Number.NaN;

  it('has the footprint’s length and depth on paper, within 0.01 mm', async () => {
    const { read: pdf } = await files(job);
    const found = cuts(pdf).map(({ segments }) => sides(segments));
    const [length, depth] = footprintSize(job);
    const near = found.filter(([long, short]) => Math.abs(long - length) < 0.01 && Math.abs(short - depth) < 0.01);
    expect(near).toHaveLength(1);
  });

  it('has the saddle’s crown at the report’s radius within 0.1 %, and as long as the slot less its play', async () => {
    const { read: pdf } = await files(job);
    const saddles = cuts(pdf).filter(
      ({ segments }) => Math.abs(sides(segments)[0] - (job.slot.length - job.saddle.play)) < 0.01,
    );
    const faces = saddles.filter(({ segments }) => segments.some((s) => s.kind === 'line'));
    if (radius === 'flat') {
      expect(faces.some(({ segments }) => cubics(segments).length === 0)).toBe(true);
      return;
    }
    const radii = faces.map(({ segments }) => (cubics(segments).length > 0 ? fitCircle(onCubics(segments)).radius : 0));
    expect(radii.some((found) => Math.abs(found / radius - 1) < 0.001)).toBe(true);
  });

  it('has a pin hole for each string on the footprint and on the plate’s cap, as wide as the job says and as far from each other; none where no pins hold the strings', async () => {
    const { read: pdf } = await files(job);
    const holes = pdf.pages
      .flatMap(({ paths }) => paths)
      // The legend shows a hole too, smaller than any that is drilled for a pin.
      .filter(({ layer, segments }) => layer === 'drill' && sides(segments)[0] > 4)
      .map(({ segments }) => fitCircle(onCubics(segments)));
    const wanted = job.pins.hold === 'pins' ? holesFor(job, design.datum.slant) : [];
    const drilled = holes.filter(({ radius }) => Math.abs(2 * radius - job.pins.hole) < 0.01);
    expect(drilled).toHaveLength(wanted.length * (job.plate.cap === 'none' ? 1 : 2));
    if (wanted.length === 0) expect(holes).toEqual([]);
    // A piece's holes are drawn one after the other.
    for (let from = 0; from < drilled.length; from += wanted.length)
      areAsFarApart(drilled.slice(from, from + wanted.length), wanted);
  });

  it('stands the saddle as high at each string as was solved: the SVG’s crown over its bottom, within what its circle misses', async () => {
    const svg = readSvg((await files(job)).text('pieces/saddle.svg'));
    const outline = svg.elements.find(({ id }) => id === 'outline')?.paths[0] as Path;
    const arc = outline.segments.find((s) => s.kind === 'arc');
    const [highest] = outline.segments
      .filter((s) => s.kind === 'line')
      .toSorted((a, b) => a.from.y + a.to.y - b.from.y - b.to.y);
    const lowest = Math.max(...outline.segments.flatMap(ends).map(({ y }) => y));
    const finished = svg.elements.find(({ id }) => id === 'finishedBottom')?.paths[0]?.segments.flatMap(ends) ?? [];
    // Cut in one outline, as far below the finished bottom as it is left proud.
    const bottom = job.saddle.proud > 0 ? Math.max(...finished.map(({ y }) => y)) : lowest;
    expect(lowest - bottom).toBeCloseTo(job.saddle.proud, 6);
    if (radius === 'flat') expect(arc).toBeUndefined();
    else expect(Math.abs((arc?.radius ?? 0) - radius)).toBeLessThan(1e-6);
    const crownAt = (x: number) => {
      if (arc) return arc.centre.y - Math.sqrt(arc.radius ** 2 - (x - arc.centre.x) ** 2);
      if (!highest) throw new Error('no crown');
      const { from, to } = highest;
      return from.y + ((to.y - from.y) * (x - from.x)) / (to.x - from.x);
    };
    for (const [k, s] of design.strings.entries()) {
      const mark = svg.elements.find(({ id }) => id === `string.${s.id}`)?.paths[0]?.segments[0];
      if (mark?.kind !== 'line') throw new Error(`no mark for ${s.id}`);
      const miss = design.cut?.misses[k] ?? 0;
      expect(Math.abs(bottom - crownAt(mark.from.x) - (s.saddleHeight + miss))).toBeLessThan(0.01);
    }
  });
});

describe.each(jobs.filter(([, { pins }]) => pins.hold !== 'pins'))('%s, without pins', (_, job) => {
  const { design } = built(job);

  it('shows each string’s way from its hole to the straight rear edge, as wide as the hole, as far from each other as the job says', async () => {
    const svg = readSvg((await files(job)).text('pieces/footprint.svg'));
    const side = (id: string, word: 'bass' | 'treble') => {
      const line = svg.elements.find((one) => one.id === `way.${id}.${word}`)?.paths[0]?.segments[0];
      if (line?.kind !== 'line') throw new Error(`no way for ${id}`);
      return line;
    };
    const begins = job.strings.list.map(({ id }) => {
      const [bass, treble] = [side(id, 'bass'), side(id, 'treble')];
      expect(treble.from.x - bass.from.x).toBeCloseTo(job.pins.hole, 3);
      for (const { from, to } of [bass, treble]) expect(to.x).toBe(from.x);
      expect(treble.from.y).toBe(bass.from.y);
      return { x: (bass.from.x + treble.from.x) / 2, y: bass.from.y };
    });
    const wanted = holesFor(job, design.datum.slant);
    areAsFarApart(begins, wanted);
    job.strings.list.forEach(({ id }, k) => {
      const { from, to } = side(id, 'bass');
      const { depth, frontToSaddle } = job.bridge;
      const long = depth - frontToSaddle - job.pins.fromSaddle - (wanted[k]?.y ?? 0);
      expect(Math.abs(to.y - from.y - long)).toBeLessThan(0.01);
    });
  });
});

it('has a check bar that measures 100 mm within a pixel at 600 dots an inch, on the demo’s own sheet', async () => {
  const { pdf: bytes, read: pdf } = await files(jobs[0]?.[1] ?? workedExample());
  const bar = pdf.pages[0]?.paths.flatMap(({ segments: [line, ...rest] }) =>
    line?.kind === 'line' && rest.length === 0 && Math.abs(line.to.x - line.from.x - 100) < 0.01 ? [line] : [],
  )[0];
  if (!bar) throw new Error('no bar');
  const image = await renderPdf(bytes.slice(), 0, 600);
  const px = (mm: number) => (mm / 25.4) * 600;
  // A row through the end ticks, a millimetre under the bar: two dark strokes, measured from middle to middle.
  const row = Math.round(px(bar.from.y + 1));
  const dark = (x: number) => (image.data[(row * image.width + x) * 4] ?? 255) < 128;
  const middleNear = (mm: number) => {
    const xs = Array.from({ length: 60 }, (_, n) => Math.round(px(mm)) - 30 + n).filter(dark);
    return xs.reduce((sum, x) => sum + x, 0) / xs.length;
  };
  expect(Math.abs(middleNear(bar.to.x) - middleNear(bar.from.x) - px(100))).toBeLessThan(1);
}, 60_000);
