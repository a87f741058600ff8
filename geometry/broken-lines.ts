import { breaks, grown } from './berths.ts';
import type { Primitive, Stroke } from './drawing.ts';
import { partOf } from './shape/along.ts';
import { bounds, boundsApart } from './shape/bounds.ts';
import type { Bounds, Path, Segment } from './shape/types.ts';
import { type Stretch, stretchesWithin } from './shape/within.ts';
import { wordBox } from './text-box.ts';

/** How far from a word a line is broken, in text heights: over and under it, where its own dimension line runs on, and at its ends. */
const away = 0.04;
const ends = 0.15;

/** What a segment keeps outside of all the boxes. */
const outside = (segment: Segment, boxes: readonly Bounds[]): readonly Stretch[] => {
  const hidden = boxes.flatMap((box) => stretchesWithin(segment, box)).sort(([a], [b]) => a - b);
  const kept: Stretch[] = [];
  let from = 0;
  for (const [low, high] of hidden) {
    if (low > from) kept.push([from, low]);
    from = Math.max(from, high);
  }
  if (from < 1) kept.push([from, 1]);
  return kept;
};

/** The parts of a path outside of all the boxes, each in one piece; the path itself if it meets none of them. */
const partsOutside = (path: Path, boxes: readonly Bounds[]): readonly Path[] => {
  const runs: Segment[][] = [];
  let isBroken = false;
  let isOn = false;
  for (const segment of path.segments) {
    const kept = outside(segment, boxes);
    for (const [from, to] of kept) {
      const part = from === 0 && to === 1 ? segment : partOf(segment, from, to);
      if (isOn && from === 0) runs.at(-1)?.push(part);
      else runs.push([part]);
      isOn = to === 1;
      isBroken ||= part !== segment;
    }
    if (kept.length === 0) {
      isOn = false;
      isBroken = true;
    }
  }
  return isBroken ? runs.map((segments) => ({ segments, closed: false })) : [path];
};

const broken = (stroke: Stroke, over: readonly Bounds[]): readonly Stroke[] =>
  partsOutside(stroke.path, over).map((path, k) =>
    path === stroke.path ? stroke : { ...stroke, id: k === 0 ? stroke.id : `${stroke.id}.${k + 1}`, path },
  );

/**
 * The same strokes and texts, narrow lines that are only shown broken where a word stands over them, as ISO 129-1 has it for dimensions and ISO 128-3 for hatching. The first part of a line keeps its id, those behind it have
 * numbers from 2 on. What is cut, drilled or filled, and every wide line, is left whole.
 */
export const brokenUnderWords = (primitives: readonly Primitive[]): Primitive[] => {
  const words: Bounds[] = [];
  for (const p of primitives)
    if (p.kind === 'text' && p.text !== '') words.push(grown(wordBox(p, ends), away * p.size));
  const drawn: Primitive[] = [];
  for (const p of primitives) {
    const box = p.kind === 'stroke' && breaks(p) ? bounds(p.path) : undefined;
    const over = box && words.filter((word) => !boundsApart(word, box, 0));
    if (p.kind === 'stroke' && over && over.length > 0) drawn.push(...broken(p, over));
    else drawn.push(p);
  }
  return drawn;
};
