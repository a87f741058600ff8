import type { ChangeEvent, KeyboardEvent } from 'react';
import { type FieldInfo, getAt } from '../../../geometry/fields.ts';
import { unitFor } from '../../../geometry/units.ts';
import { jobAsRead, showAsRead } from '../decimal.ts';
import { absenceOf, shown } from '../typing.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { settledNumber } from './settled.ts';

/** The id of a field's input; what is said of it and its help stand under ids made from it. */
export const fieldId = (path: string): string => `field-${path}`;
export const helpId = 'field-help';
export const saysId = (path: string): string => `${fieldId(path)}-says`;
/** Where a number that is not typed comes from. */
export const fromId = (path: string): string => `${fieldId(path)}-from`;

/** What a phone's keys must offer: fractions, notes and words need more than digits. */
export const keysFor = (field: FieldInfo, unit: string): 'text' | 'decimal' | 'numeric' => {
  if (field.kind === 'count') return 'numeric';
  return field.kind === 'text' ||
    field.kind === 'frequency' ||
    field.min === undefined ||
    unit !== 'mm' ||
    field.min < 0
    ? 'text'
    : 'decimal';
};

/** A field as its input needs it: what stands in it, what is said of it, and what happens at it. */
export const useField = (field: FieldInfo) => {
  const bench = useBench();
  const { path } = field;
  const draft = useBenchState((state) => state.drafts[path]);
  const value = useBenchState((state) => getAt(state.job, path));
  const settled = useBenchState((state) => settledNumber(jobAsRead(state), path));
  const show = useBenchState(showAsRead);
  const hasFocus = useBenchState((state) => state.focus === path);
  const isPointed = useBenchState((state) => state.pointed === path);
  const problem = useBenchState((state) =>
    state.solved.ok ? undefined : state.solved.problems.find((p) => p.path === path)?.says,
  );
  const says = draft?.says ?? problem;
  const unit = field.kind === 'word' || field.kind === 'text' ? 'mm' : unitFor(field.kind, show);
  const described = [
    says === undefined ? '' : saysId(path),
    settled === undefined ? '' : fromId(path),
    hasFocus ? helpId : '',
  ]
    .filter(Boolean)
    .join(' ');
  return {
    value,
    settled,
    says,
    isRefused: draft?.says !== undefined,
    unit,
    hasFocus,
    isLit: hasFocus || isPointed,
    focusProps: {
      id: fieldId(path),
      'aria-describedby': described === '' ? undefined : described,
      'aria-invalid': says !== undefined ? (true as const) : undefined,
      onFocus: () => bench.enter(path),
      onBlur: () => bench.leave(path),
    },
    textProps: {
      type: 'text' as const,
      autoComplete: 'off',
      spellCheck: false,
      inputMode: keysFor(field, unit),
      value: draft?.text ?? shown(field, settled ?? value, show),
      placeholder: absenceOf(field),
      onChange: ({ target }: ChangeEvent<HTMLInputElement>) => bench.type(path, target.value),
      onKeyDown: ({ key }: KeyboardEvent) => {
        if (key === 'Escape') bench.forget(path);
      },
    },
    choiceProps: {
      value: String(value),
      onChange: ({ target }: ChangeEvent<HTMLSelectElement>) => bench.put(path, target.value),
    },
  };
};
