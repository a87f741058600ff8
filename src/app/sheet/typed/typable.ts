import type { Label, Mark } from '../../../../geometry/drawing.ts';
import { applies, fieldAt, getAt } from '../../../../geometry/fields.ts';
import type { Settled } from '../../../../geometry/settle.ts';

const near = 1e-9;

/** Whether a label shows this number: a side of the centre line it says in words. */
const shows = (label: Label, value: unknown): boolean =>
  label.some((part) => {
    if (typeof part === 'string') return false;
    return typeof part.value === 'number' && typeof value === 'number'
      ? Math.abs(Math.abs(part.value) - Math.abs(value)) < near
      : part.value === value;
  });

/**
 * The texts of a drawing that can be typed into where they stand: those that show the very number of a field that counts, by the id of the text, and the field's path. A number that only hangs on one, such as the light under the
 * straightedge, lights with it and cannot be typed.
 */
export const typable = (marks: readonly Mark[], job: Settled): ReadonlyMap<string, string> =>
  new Map(
    marks.flatMap((mark): (readonly [string, string])[] => {
      if (mark.kind === 'path' || mark.jobPath === undefined || mark.alternative !== undefined) return [];
      const field = fieldAt(mark.jobPath);
      if (field === undefined || field.choices !== undefined || !applies(field, job)) return [];
      if (!shows(mark.label, getAt(job, mark.jobPath))) return [];
      return [[mark.kind === 'note' ? mark.id : `${mark.id}.value`, mark.jobPath]];
    }),
  );
