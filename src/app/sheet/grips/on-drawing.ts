import { inRow } from '../../../../geometry/enumerate.ts';
import { type FieldInfo, fieldAt, getAt } from '../../../../geometry/fields.ts';
import type { Job } from '../../../../geometry/job.ts';
import type { Point } from '../../../../geometry/shape/types.ts';
import { type Grip, gripsOf, type Pull, putOnSheet } from '../../../../geometry/views/grips/index.ts';
import type { ViewName } from '../../../../geometry/views/index.ts';
import type { Built } from '../../state.ts';
import { fieldTitle } from '../../strings.ts';
import { stands } from '../../typing.ts';
import type { Fitted } from '../fit.ts';
import { startOf } from './step.ts';

/** A grip as it stands on the drawing, its id led by its view's. */
export interface Put {
  readonly view: ViewName;
  readonly grip: Grip;
}

/** The grips of every view that is drawn. */
export const gripsOn = ({ job, design }: Built, { places }: Pick<Fitted, 'places'>): readonly Put[] =>
  (Object.keys(places) as ViewName[]).flatMap((view) => {
    const place = places[view];
    return place === undefined
      ? []
      : putOnSheet(gripsOf(view, job, design), { place, heights: place.heights }).map((grip) => ({
          view,
          grip: { ...grip, id: `${view}.${grip.id}` },
        }));
  });

/** What a grip holds: its numbers' fields. */
export const pullsOf = (grip: Grip): readonly (Pull & { readonly field: FieldInfo })[] =>
  [grip, ...(grip.also ? [grip.also] : [])].flatMap((pull) => {
    const field = fieldAt(pull.jobPath);
    return field ? [{ jobPath: pull.jobPath, value: pull.value, field }] : [];
  });

/** The number that a grip stands at, in stored units; where a word stands for it, the one that a drag begins from. */
export const numberOf = (grip: Grip, job: Job): number | undefined => {
  const there = getAt(job, grip.jobPath);
  const field = fieldAt(grip.jobPath);
  return typeof there === 'number' ? there : field && startOf(field, grip.value(grip.at));
};

/** What a grip stands at, as it is read: “26 in”, or both numbers of a point by their names. */
export const saidOf = (grip: Grip, job: Job): string =>
  inRow(
    pullsOf(grip).map(({ field, jobPath }) => {
      const value = stands(field, getAt(job, jobPath), job.show);
      return grip.also ? `${field.label} ${value}` : value;
    }),
  );

/** What is read beside a grip in hand: its numbers' names and values. */
export const linesOf = (grip: Grip, job: Job): readonly string[] =>
  pullsOf(grip).map(
    ({ field, jobPath }) => `${fieldTitle(job, jobPath)}: ${stands(field, getAt(job, jobPath), job.show)}`,
  );

/** Where something stands on the drawing that is as large on the screen at every scale, px per mm, as an SVG transform. */
export const standsAt = ({ x, y }: Point, scale: number): string => `translate(${x} ${y}) scale(${1 / scale})`;

/** How a handle stands turned along the way that its grip goes, as an SVG transform; one that goes anywhere is not turned. */
export const alongAxis = (axis: Point | undefined): string =>
  `rotate(${axis ? (Math.atan2(axis.y, axis.x) * 180) / Math.PI : 0})`;
