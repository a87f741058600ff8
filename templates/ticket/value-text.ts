import type { FieldInfo } from '../../geometry/fields.ts';
import { cleanName } from '../../geometry/names.ts';
import { formatQuantity, noteName, type QuantityKind, type ShowUnits } from '../../geometry/units.ts';

/** Lengths of a row read as one with as many decimals each: hundredths of a mm, thousandths of an inch. */
const digitsFor = (kind: QuantityKind, show: ShowUnits) =>
  kind === 'length' ? { digits: show.length === 'mm' ? 2 : 3 } : {};

/** A derived number in the reader's unit, with its unit if wanted; a dash where there is none. */
export const figureText = (
  value: number | 'flat' | undefined,
  kind: QuantityKind,
  show: ShowUnits,
  unit: boolean,
): string => (value === undefined ? '–' : formatQuantity(value, kind, show, { unit, ...digitsFor(kind, show) }));

/** The unit that numbers of a kind are shown in, such as `mm`; empty for bare numbers. */
export const unitText = (kind: QuantityKind, show: ShowUnits): string =>
  formatQuantity(1, kind, show, { unit: true }).replace(/^[\d\s.,/]+/, '');

/** A field's value as people read it: a number with its unit, a pitch by its note, a choice by its name. */
export const fieldText = ({ kind, choices }: FieldInfo, value: unknown, show: ShowUnits): string => {
  if (kind === 'word') return choices?.[String(value)] ?? cleanName(String(value));
  if (typeof value !== 'number' || kind === 'text') return cleanName(String(value ?? '')) || '–';
  return (kind === 'frequency' ? noteName(value) : undefined) ?? formatQuantity(value, kind, show, { unit: true });
};
