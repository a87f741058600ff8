import { applies, type FieldInfo, fieldAt, getAt } from '../../fields.ts';
import type { Job } from '../../job.ts';
import { checkField } from '../../job-file.ts';
import type { Settled } from '../../settle.ts';
import { alikeIn, formatQuantity, MM_PER_INCH, parseQuantity, type QuantityKind, unitFor } from '../../units.ts';
import type { Change } from '../check.ts';

/** How finely a number is typed: in stored units, with so many decimals where they are not the usual ones. */
export interface Fineness {
  readonly step: number;
  readonly digits?: number;
}

/** One field that may be changed, as a measure along which a step can be taken. */
export interface Axis {
  readonly path: string;
  readonly field: FieldInfo;
  /** The value now, as stored; a flat radius is infinite. */
  readonly now: number;
  /** How much of a change in wood (mm, at an outer string) takes the value there from where it is now; nearly even for all that follows from it. */
  readonly stepTo: (value: number) => number;
  /** The value at such a step. */
  readonly valueAt: (step: number) => number;
  /** The least and the greatest step that the field allows. */
  readonly reach: readonly [number, number];
  /** How finely it is typed, coarsest first. */
  readonly finenesses: readonly Fineness[];
}

/** Where an outer string lies across, mm [practice]: only to weigh a change of radius or tilt, which moves the deck at both of them, against one of length. */
const outerString = 28;

const finenessesOf = (kind: QuantityKind, show: Job['show']): readonly Fineness[] => {
  const unit = unitFor(kind, show);
  switch (kind) {
    case 'length':
      return unit === 'mm'
        ? [
            { step: 0.1, digits: 1 },
            { step: 0.05, digits: 2 },
            { step: 0.01, digits: 2 },
          ]
        : unit === 'fraction'
          ? [{ step: MM_PER_INCH / 64 }, { step: MM_PER_INCH / 1000, digits: 3 }]
          : [
              { step: MM_PER_INCH / 200, digits: 3 },
              { step: MM_PER_INCH / 1000, digits: 3 },
            ];
    case 'radius':
      return (unit === 'mm' ? [5, 1] : [MM_PER_INCH / 2, MM_PER_INCH / 4, MM_PER_INCH / 20]).map((step) => ({ step }));
    case 'slope':
      return [
        { step: 0.001, digits: 1 },
        { step: 0.0001, digits: 2 },
      ];
    default:
      return [{ step: 1 }, { step: 0.1 }];
  }
};

/** Whether this work leaves the field free: where the bridge stays, so do the neck, its pins, and its slot unless it is cut anew. */
const mayChange = (path: string, { work, slot }: Job): boolean =>
  work === 'bridge' ||
  !(
    path === 'guitar.neckPlaneHeight' ||
    path.startsWith('bridge.') ||
    path.startsWith('pins.') ||
    path === 'slot.fromNut' ||
    path === 'slot.slant' ||
    (path.startsWith('slot.') && slot.line === 'typed')
  );

/** The field as an axis; undefined where it does not count, may not change in this work, or holds a word (but “flat”, which is a radius). */
const axisAt = (job: Job, settled: Settled, path: string): Omit<Axis, 'finenesses'> | undefined => {
  const field = fieldAt(path);
  if (field === undefined || field.kind === 'word' || field.kind === 'text') return undefined;
  if (!applies(field, job) || !mayChange(path, job)) return undefined;
  // How the neck plane was read does not matter to a neck that is reset.
  const value = path === 'guitar.neckPlaneHeight' ? getAt(settled, path) : getAt(job, path);
  const { kind, min = 0, max = 0 } = field;
  const now = value === 'flat' ? Number.POSITIVE_INFINITY : value;
  if (typeof now !== 'number') return undefined;
  if (kind === 'radius') {
    const weight = 2 * (outerString ** 2 / 2);
    const stepTo = (radius: number) => weight * (1 / radius - 1 / now);
    return {
      path,
      field,
      now,
      stepTo,
      valueAt: (step) => 1 / (step / weight + 1 / now),
      reach: [stepTo(max), stepTo(min)],
    };
  }
  const weight = kind === 'slope' ? 2 * outerString : 1;
  const stepTo = (to: number) => weight * (to - now);
  return {
    path,
    field,
    now,
    stepTo,
    valueAt: (step) => now + step / weight,
    reach: [stepTo(min), stepTo(max)],
  };
};

/** These fields as axes, typed in fractions only where each length among them reads as one now, so that what is said instead of what is all of a kind; those left out that are none. */
export const axesAt = (job: Job, settled: Settled, paths: readonly string[]): readonly Axis[] => {
  const axes = paths.flatMap((path) => axisAt(job, settled, path) ?? []);
  const lengths = axes.filter(({ field }) => field.kind === 'length');
  const show = alikeIn(
    job.show,
    lengths.map(({ now }) => now),
  );
  return axes.map((axis) => ({ ...axis, finenesses: finenessesOf(axis.field.kind as QuantityKind, show) }));
};

/** A value as a person types it: its text, and what is read back from that; undefined where the field would not take it. */
export const typed = (field: FieldInfo, value: number, show: Job['show'], digits?: number): Change | undefined => {
  const kind = field.kind as QuantityKind;
  const text = formatQuantity(value, kind, show, { unit: true, ...(digits !== undefined && { digits }) });
  const read = parseQuantity(text, kind, unitFor(kind, show), field.word === undefined ? {} : { word: field.word });
  if (!read.ok || typeof read.value !== 'number' || checkField(field.path, read.value) !== undefined) return undefined;
  return { path: field.path, value: read.value, text };
};
