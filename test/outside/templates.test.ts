// The templates as they leave the command, measured by readers that did not write them (pdf.js, a DOM parser): what the job says is what lies on the paper.
import { describe, expect, it } from 'vitest';
import { footprintOutline } from '../../geometry/bridge/outline.ts';
import { readJob } from '../../geometry/job-file.ts';
import { bounds } from '../../geometry/shape/measure.ts';
import type { Cubic, Path, Point, Segment } from '../../geometry/shape/types.ts';
import { makeFiles } from '../../src/command/make-files.ts';
import { starters } from '../../src/jobs/index.ts';
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

const files = async (job: (typeof jobs)[number][1]) => {
  const settled = built(job);
  const made = await makeFiles(settled.job, settled.design, 'a4');
  if (!made.ok) throw new Error(made.says);
  const file = (name: string) => {
    const found = made.files.find((one) => one.name === name);
    if (!found) throw new Error(`no ${name}`);
    return found.content;
  };
  return { text: (name: string) => String(file(name)), pdf: new Uint8Array(file('templates.pdf') as Uint8Array) };
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

describe.each(jobs)('%s', (_, job) => {
  const { job: settled, design } = built(job);
  const radius = design.cut?.radius ?? Number.NaN;

  it('has the footprint’s length and depth on paper, within 0.01 mm', async () => {
    const pdf = await readPdf((await files(job)).pdf);
    const found = cuts(pdf).map(({ segments }) => sides(segments));
    // A free outline is as long and deep as its points make it; any other as its numbers say.
    const { minX, maxX, minY, maxY } = bounds(footprintOutline(settled, design));
    const [length, depth] =
      job.bridge.footprint === 'free' ? [maxX - minX, maxY - minY] : [job.bridge.length, job.bridge.depth];
    const near = found.filter(([long, short]) => Math.abs(long - length) < 0.01 && Math.abs(short - depth) < 0.01);
    expect(near).toHaveLength(1);
  });

  it('has the saddle’s crown at the report’s radius within 0.1 %, and as long as the slot less its play', async () => {
    const pdf = await readPdf((await files(job)).pdf);
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

  it('has the pin holes that are to be drilled and the old ones that are kept, as wide as the job says and as far from each other', async () => {
    const pdf = await readPdf((await files(job)).pdf);
    const holes = pdf.pages
      .flatMap(({ paths }) => paths)
      // The legend shows a hole too, smaller than any that is drilled.
      .filter(({ layer, segments }) => layer === 'drill' && sides(segments)[0] > job.pins.hole - 0.01)
      .map(({ segments }) => fitCircle(onCubics(segments)));
    const drilled = holes.filter(({ radius }) => Math.abs(2 * radius - job.pins.hole) < 0.01);
    const pins = job.pins.hold === 'pins' ? design.strings.map(({ pin }) => pin) : [];
    // A kept hole that a new pin meets is drilled once; it is drawn all the same.
    expect(drilled.length).toBeGreaterThanOrEqual(pins.length);
    const apart = (points: readonly Point[]) =>
      points.flatMap((a, k) => points.slice(k + 1).map((b) => Math.hypot(a.x - b.x, a.y - b.y)));
    const found = apart(drilled);
    for (const far of apart(pins))
      expect(
        found.some((one) => Math.abs(one - far) < 0.01),
        `${far} apart`,
      ).toBe(true);
    if (job.top.holes.length > 0) return;
    expect(drilled).toHaveLength(pins.length);
    if (pins.length === 0 || job.strings.courses === 'pairs') return;
    const slanted = job.pins.row === 'slanted' ? Math.hypot(1, design.saddleLine.slant) : 1;
    expect(Math.abs(Math.max(...found) - job.pins.spread * slanted)).toBeLessThan(0.01);
  });

  it('stands the saddle as high at each string as was solved: the SVG’s crown over its bottom, within what its circle misses', async () => {
    const svg = readSvg((await files(job)).text('pieces/saddle.svg'));
    const outline = svg.elements.find(({ id }) => id === 'outline')?.paths[0] as Path;
    const arc = outline.segments.find((s) => s.kind === 'arc');
    const [highest] = outline.segments
      .filter((s) => s.kind === 'line')
      .toSorted((a, b) => a.from.y + a.to.y - b.from.y - b.to.y);
    const bottom = Math.max(...outline.segments.flatMap(ends).map(({ y }) => y));
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

it('has a check bar that measures 100 mm within a pixel at 600 dots an inch, on the demo’s own sheet', async () => {
  const { pdf: bytes } = await files(jobs[0]?.[1] ?? workedExample());
  const pdf = await readPdf(bytes.slice());
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
