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
  const digits = kind === 'length' ? { digits: show.length === 'mm' ? 2 : 4 } : { digits: 2 };
  const text = formatQuantity(value, kind, show, { unit: true, ...digits });
  return value > 0 && /[1-9]/.test(text) ? `+${text}` : text;
};

/** What a row of changes comes to: one for all strings, or from the bass to the treble. */
const span = (values: readonly number[], kind: QuantityKind, job: Job): string => {
  const texts = values.map((value) => signed(value, kind, job));
  const [first = '', last = ''] = [texts[0], texts.at(-1)];
  const name = (k: number) => shortName(job.strings.list.at(k)?.name ?? '');
  return texts.every((text) => text === first) ? says.everywhere(first) : says.toAt(first, name(0), last, name(-1));
};

/** How exposure and break angle move when the number in focus is made a little larger. */
export const WhatIf = ({ path, job }: { path: string; job: Job }) => {
  // It may lag behind a hand that types fast.
  const rested = useDeferredValue(job);
  const moved = useMemo(() => whatIf(rested, path), [rested, path]);
  const field = fieldAt(path);
  if (moved === undefined || field === undefined || field.kind === 'word' || field.kind === 'text') return null;
  const exposures = moved.strings.map(({ exposure }) => exposure);
  const angles = moved.strings.map(({ breakAngle }) => breakAngle);
  const isStill = [...exposures, ...angles].every((value) => Math.abs(value) < 5e-4);
  return (
    <span className="what-if">
      {says.whatIf(formatQuantity(moved.step, field.kind, rested.show, { unit: true }))}{' '}
      {isStill ? says.whatIfNone : says.whatIfSays(span(exposures, 'length', rested), span(angles, 'angle', rested))}
    </span>
  );
};
