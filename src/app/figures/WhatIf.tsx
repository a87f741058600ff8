import { useDeferredValue, useMemo } from 'react';
import { fieldAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import { shortName } from '../../../geometry/names.ts';
import { formatQuantity, type QuantityKind } from '../../../geometry/units.ts';
import { whatIf } from '../../../geometry/what-if.ts';
import { words } from '../words.ts';

const says = words.figures;

/** A change as people read it, with its sign. */
const signed = (value: number, kind: QuantityKind, { show }: Job): string => {
  const digits = kind === 'length' ? { digits: show.length === 'mm' ? 2 : 3 } : { digits: 2 };
  const text = formatQuantity(value, kind, show, { unit: true, ...digits });
  return value > 0 && /[1-9]/.test(text) ? `+${text}` : text;
};

/** What a row of changes comes to: one for all strings, that of the one string that moves, from the bass to the treble, or from the least to the most; undefined where none is large enough to show. */
const span = (values: readonly number[], kind: QuantityKind, job: Job): string | undefined => {
  const texts = values.map((value) => signed(value, kind, job));
  const [first = '', last = ''] = [texts[0], texts.at(-1)];
  const name = (k: number) => shortName(job.strings.list.at(k)?.name ?? '');
  const moved = texts.flatMap((text, k) => (/[1-9]/.test(text) ? [k] : []));
  const [only = 0] = moved;
  if (moved.length === 0) return undefined;
  if (texts.every((text) => text === first)) return first;
  if (moved.length === 1) return says.at(texts[only] ?? '', name(only));
  if (first !== last) return says.toAt(first, name(0), last, name(-1));
  return says.to(signed(Math.min(...values), kind, job), signed(Math.max(...values), kind, job));
};

/** How exposure and break angle move when the number in focus is made a little larger. */
export const WhatIf = ({ path, job }: { path: string; job: Job }) => {
  // It may lag behind a hand that types fast.
  const rested = useDeferredValue(job);
  const moved = useMemo(() => whatIf(rested, path), [rested, path]);
  const field = fieldAt(path);
  if (moved === undefined || field === undefined || field.kind === 'word' || field.kind === 'text') return null;
  const exposure = span(
    moved.strings.map((string) => string.exposure),
    'length',
    rested,
  );
  const angle = span(
    moved.strings.map((string) => string.breakAngle),
    'angle',
    rested,
  );
  return (
    <span className="what-if">
      {says.whatIf(formatQuantity(moved.step, field.kind, rested.show, { unit: true }))}{' '}
      {exposure === undefined && angle === undefined
        ? says.whatIfNone
        : says.whatIfSays(exposure ?? says.stays, angle ?? says.stays)}
    </span>
  );
};
