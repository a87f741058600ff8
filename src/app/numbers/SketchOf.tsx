import { useMemo } from 'react';
import type { Primitive } from '../../../geometry/drawing.ts';
import type { Job } from '../../../geometry/job.ts';
import { litPath, paper, sketchOf, sketchPrimitives } from '../../../geometry/sketches/index.ts';
import { Primitives } from '../sheet/Primitives.tsx';

const isLit = ({ jobPath }: Primitive): boolean => jobPath === litPath;

/** A small drawing of where a field is measured; what the field's help says in words, so it is not read out. */
export const SketchOf = ({ path, job }: { path: string; job: Job }) => {
  const primitives = useMemo(() => {
    const shown = sketchOf(path, job);
    return shown && sketchPrimitives(shown);
  }, [path, job]);
  return (
    primitives && (
      <svg className="sketch" viewBox={`0 0 ${paper.width} ${paper.height}`} aria-hidden="true" data-sketch={path}>
        <Primitives primitives={primitives} isLit={isLit} />
      </svg>
    )
  );
};
