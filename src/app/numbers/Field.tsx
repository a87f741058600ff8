import { memo } from 'react';
import type { FieldInfo } from '../../../geometry/fields.ts';
import { jobAsRead } from '../decimal.ts';
import { numberBefore } from '../store.ts';
import { absenceOf } from '../typing.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { isFromReadings, settledFrom } from './settled.ts';
import { fieldId, fromId, saysId, useField } from './use-field.ts';

/** The unit that stands behind a field's input. */
export const unitOf = (field: FieldInfo, unit: 'mm' | 'in' | 'fraction'): string => {
  const { kind } = field;
  if (kind === 'word' || kind === 'text') return '';
  return kind === 'length' || kind === 'radius' || kind === 'gauge'
    ? words.numbers.unit[unit]
    : words.numbers.kindUnit[kind];
};

/** The word that may stand in place of a number, put in and taken out by a button. */
const WordToggle = ({ field, word, value }: { field: FieldInfo; word: string; value: unknown }) => {
  const bench = useBench();
  const isWord = value === word;
  const called = words.numbers.wordCalled[word] ?? word;
  const put = () => bench.put(field.path, isWord ? numberBefore(bench.getState(), field.path) : word);
  return (
    <button type="button" className="word" aria-pressed={isWord} aria-label={`${field.label}: ${called}`} onClick={put}>
      {called}
    </button>
  );
};

/** The button for the word, under the number that the readings give and where that comes from. */
const FromReadings = ({ field, word, value }: { field: FieldInfo; word: string; value: unknown }) => {
  const from = useBenchState((state) => settledFrom(jobAsRead(state), field.path));
  return (
    <p className="from">
      <WordToggle field={field} word={word} value={value} />
      {from !== undefined && <span id={fromId(field.path)}>{from}</span>}
    </p>
  );
};

/** One number or choice of the job, with its word, its unit and what is said of it. */
export const Field = memo(({ field }: { field: FieldInfo }) => {
  const { value, settled, says, isRefused, unit, isLit, focusProps, textProps, choiceProps } = useField(field);
  const { path, label, choices, word } = field;
  const hasToggle = word !== undefined && absenceOf(field) === undefined;
  const isFrom = isFromReadings(path);
  const isNumber = value !== word || settled !== undefined;
  return (
    <div className="field" data-focus={isLit} data-path={path}>
      <label htmlFor={fieldId(path)}>{label}</label>
      {choices ? (
        <select {...focusProps} {...choiceProps}>
          {Object.entries(choices).map(([key, called]) => (
            <option key={key} value={key}>
              {called}
            </option>
          ))}
        </select>
      ) : (
        <>
          {hasToggle && !isFrom && <WordToggle field={field} word={word} value={value} />}
          <span className="value" data-from={settled !== undefined}>
            <input {...focusProps} {...textProps} data-kind={field.kind} />
            <span className="unit">{isNumber ? unitOf(field, unit) : ''}</span>
          </span>
          {hasToggle && isFrom && <FromReadings field={field} word={word} value={value} />}
        </>
      )}
      {says !== undefined && (
        <p className="says" id={saysId(path)} role={isRefused ? 'alert' : undefined}>
          {says}
        </p>
      )}
    </div>
  );
});
