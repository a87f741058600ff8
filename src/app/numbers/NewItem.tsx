import { type FocusEvent, useRef, useState } from 'react';
import type { FieldInfo } from '../../../geometry/fields.ts';
import { showAsRead } from '../decimal.ts';
import { readField, shown } from '../typing.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import type { ListPath, Values } from './lists.ts';
import { helpId } from './use-field.ts';

export const newItemId = (list: ListPath): string => `new-${list}`;

interface NewItemProps {
  readonly list: ListPath;
  readonly columns: readonly FieldInfo[];
  readonly heads: readonly string[];
  /** What stands in a field before anything is typed there. */
  readonly proposed: Readonly<Record<string, string>>;
  readonly called: (field: FieldInfo) => string;
  readonly add: string;
  readonly addStep: (values: Values) => string;
  readonly span: number;
}

const keyOf = ({ path }: FieldInfo): string => path.split('.').at(-1) ?? '';

/** What is typed of an item to add. It is no part of the job until all its numbers are read: one that nobody measured would count. */
export const NewItem = ({ list, columns, heads, proposed, called, add: addCalled, addStep, span }: NewItemProps) => {
  const bench = useBench();
  const show = useBenchState(showAsRead);
  const focus = useBenchState((state) => state.focus);
  const first = useRef<HTMLInputElement>(null);
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({});
  const [refused, setRefused] = useState<string>();
  const preset = (field: FieldInfo) => proposed[keyOf(field)] ?? shown(field, field.preset, show);
  const textOf = (field: FieldInfo) => typed[keyOf(field)] ?? preset(field);
  /** The numbers that nobody could know before they are measured. */
  const measured = columns.filter(
    (field) => field.kind !== 'text' && field.choices === undefined && preset(field) === '',
  );
  const isBegun = measured.some((field) => textOf(field).trim() !== '');
  const start = measured[0] ?? columns[0];

  /** Puts it into the list; the next one can be typed at once. */
  const add = () => {
    const all = columns.map((field) => ({ field, read: readField(field, textOf(field), show) }));
    const wrong = all.flatMap(({ field: { label }, read }) =>
      read.ok ? [] : read.says.startsWith(label) ? read.says : `${label}: ${read.says}`,
    );
    if (wrong.length > 0) return setRefused(wrong.join(' '));
    const values = Object.fromEntries(all.map(({ field, read }) => [keyOf(field), read.ok ? read.value : '']));
    bench.addItem(list, values, addStep(values));
    setTyped({});
    setRefused(undefined);
  };
  const press = () => {
    if (isBegun) add();
    first.current?.focus();
  };
  /** Whoever goes on to another number has not called it off. */
  const onBlur = ({ currentTarget, relatedTarget }: FocusEvent<HTMLTableRowElement>) => {
    if (isBegun && !(relatedTarget instanceof Node && currentTarget.contains(relatedTarget))) add();
  };
  const keys = ({ key }: { key: string }) => {
    if (key === 'Enter') press();
    if (key === 'Escape') {
      setTyped({});
      setRefused(undefined);
    }
  };
  const id = newItemId(list);
  return (
    <>
      <tr onBlur={onBlur} className="new">
        {columns.map((field, k) => {
          const common = {
            'aria-label': called(field),
            'aria-invalid': refused === undefined ? undefined : (true as const),
            'aria-describedby':
              [refused && `${id}-says`, focus === field.path && helpId].filter(Boolean).join(' ') || undefined,
            value: textOf(field),
            onFocus: () => bench.enter(field.path),
            onBlur: () => bench.leave(field.path),
            onChange: ({ target }: { target: { value: string } }) =>
              setTyped({ ...typed, [keyOf(field)]: target.value }),
          };
          return (
            <td key={field.path} data-head={heads[k]}>
              {field.choices === undefined ? (
                <input
                  {...common}
                  {...(field === start ? { id, ref: first } : {})}
                  type="text"
                  autoComplete="off"
                  spellCheck={false}
                  inputMode={
                    field.kind === 'count'
                      ? 'numeric'
                      : show.length === 'mm' && (field.min ?? 0) >= 0
                        ? 'decimal'
                        : 'text'
                  }
                  data-kind={field.kind}
                  onKeyDown={keys}
                />
              ) : (
                <select {...common}>
                  {Object.entries(field.choices).map(([key, name]) => (
                    <option key={key} value={key}>
                      {name}
                    </option>
                  ))}
                </select>
              )}
            </td>
          );
        })}
        <td colSpan={span - columns.length}>
          <button type="button" onClick={press}>
            {addCalled}
          </button>
        </td>
      </tr>
      {refused !== undefined && (
        <tr>
          <td colSpan={span}>
            <p className="says" id={`${id}-says`} role="alert">
              {refused}
            </p>
          </td>
        </tr>
      )}
    </>
  );
};
