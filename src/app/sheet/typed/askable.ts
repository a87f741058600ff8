import type { Mark } from '../../../../geometry/drawing.ts';
import { figureAt } from '../../../../geometry/figures/index.ts';
import { stringNear } from '../../../../geometry/views/middle.ts';
import type { Asked } from '../../figures/ask.ts';
import type { Built } from '../../state.ts';

/** The figures that stand on the drawing, by their marks in a view; those of a string stand apart. */
const figures: Readonly<Record<string, string>> = {
  light: 'straightedgeClearance',
  fromNut: 'saddleLineFromNut',
  'crown.radius': 'crownRadius',
  'board.radius': 'boardRadiusAtSaddle',
  // Where they are no fields: of a free outline its points make them, off the middle the section does.
  'bridge.length': 'outlineLength',
  'bridge.depth': 'outlineDepth',
  thickness: 'sectionThickness',
};

const askedBy = (id: string, { job, design }: Built): Asked | undefined => {
  const [, stringId] = id.match(/^gap\.(.+)\.value$/) ?? [];
  const place = (of: string) => design.strings.findIndex((string) => string.id === of);
  if (stringId !== undefined) return { id: 'exposure', k: place(stringId) };
  if (id === 'string.breakAngle') return { id: 'breakAngle', k: place(stringNear(design, job.show.sectionAcross).id) };
  const figure = figures[id];
  return figure === undefined ? undefined : { id: figure, k: 0 };
};

/** The texts of a drawing that show a figure, and so can be asked how it came about, by the id of the text; a field's own number is typed instead. */
export const askable = (
  marks: readonly Mark[],
  built: Built,
  typed: ReadonlyMap<string, string>,
): ReadonlyMap<string, Asked> =>
  new Map(
    marks.flatMap((mark): (readonly [string, Asked])[] => {
      if (mark.kind === 'path' || mark.alternative !== undefined) return [];
      const text = mark.kind === 'note' ? mark.id : `${mark.id}.value`;
      const asked = typed.has(text) ? undefined : askedBy(mark.id.replace(/^(above|tail|middle)\./, ''), built);
      const value = asked && figureAt(asked.id)?.value(built.job, built.design, asked.k);
      return asked && value !== undefined ? [[text, asked]] : [];
    }),
  );
