import type { Mark, PathMark } from '../../geometry/drawing.ts';
import { moved } from '../../geometry/marks.ts';
import { scaled } from '../../geometry/shape/transform.ts';
import type { Point } from '../../geometry/shape/types.ts';
import { litPath, paper, type Shown, type Sketch, sketchPrimitives } from '../../geometry/sketches/index.ts';

/** A sketch's width and height on paper, mm. */
export const sketchSize = { width: 23, height: (23 * paper.height) / paper.width };

/** What is measured in wide lines, all else in narrow ones. A sketch's few words are too small for paper. */
const onPaper = (shown: Shown): readonly PathMark[] =>
  sketchPrimitives(shown).flatMap((p): readonly PathMark[] => {
    if (p.kind !== 'stroke') return [];
    const wide = p.jobPath === litPath && p.line !== 'hidden' && p.line !== 'centre' && p.line !== 'phantom';
    return [
      {
        kind: 'path',
        id: p.id,
        path: scaled(p.path, sketchSize.width / paper.width),
        line: wide ? 'outline' : p.line === 'outline' ? 'thin' : p.line,
        purpose: 'show',
        ...(p.matter === 'ink' && { matter: p.matter }),
      },
    ];
  });

/** Sketches are few and their lines many: each is worked out once. */
const known = new WeakMap<Sketch, Map<string, readonly PathMark[]>>();

/** A sketch with its corner at a point, its ids put under `id`. */
export const sketchMarks = (shown: Shown, id: string, at: Point): readonly Mark[] => {
  const ofSketch = known.get(shown.sketch) ?? new Map<string, readonly PathMark[]>();
  known.set(shown.sketch, ofSketch);
  const marks = ofSketch.get(shown.lit) ?? onPaper(shown);
  ofSketch.set(shown.lit, marks);
  return moved(marks, at.x, at.y, `${id}.`);
};
