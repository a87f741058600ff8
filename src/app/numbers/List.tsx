import type { ReactNode } from 'react';
import { type FieldInfo, itemFields, mostItems } from '../../../geometry/fields.ts';
import type { ShowUnits } from '../../../geometry/units.ts';
import { showAsRead } from '../decimal.ts';
import { fieldTitle, itemName } from '../strings.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { Cell, SaysRow } from './Cell.tsx';
import { unitOf } from './Field.tsx';
import { isFull, itemsOf, type ListPath, type Values } from './lists.ts';
import { NewItem, newItemId } from './NewItem.tsx';
import { fieldId } from './use-field.ts';

interface ListProps {
  readonly list: ListPath;
  /** What stands in the fields of an item to add, beside what is preset. */
  readonly proposed?: Readonly<Record<string, string>>;
  /** A column that is not typed: its head, and what stands in each row. */
  readonly extra?: { readonly head: string; readonly cells: readonly ReactNode[] };
}

const keyOf = ({ path }: FieldInfo): string => path.split('.').at(-1) ?? '';

/** What a column is called. */
const headOf = (list: ListPath, field: FieldInfo): string =>
  words.numbers.lists[list].heads[keyOf(field)] ?? field.label;

/** A column's name with its unit, where it has one. */
const headWithUnit = (list: ListPath, field: FieldInfo, { length }: ShowUnits): string =>
  `${headOf(list, field)} ${unitOf(field, length)}`.trim();

const Row = ({
  list,
  id,
  name,
  span,
  extra,
}: {
  list: ListPath;
  id: string;
  name: string;
  span: number;
  extra?: ReactNode;
}) => {
  const bench = useBench();
  const show = useBenchState(showAsRead);
  const fields = itemFields(list, id);
  /** The button goes with its row: the focus moves on to the next row's last number, or to the one to be added. */
  const remove = () => {
    const items = itemsOf(bench.getState().job, list);
    const next = items[items.findIndex((one) => one.id === id) + 1];
    bench.removeItem(list, id, words.numbers.lists[list].removeStep(name));
    const number = next && itemFields(list, next.id).findLast(({ kind }) => kind !== 'word');
    document.getElementById(number === undefined ? newItemId(list) : fieldId(number.path))?.focus();
  };
  return (
    <>
      <tr>
        {fields.map((field) => (
          <td key={field.path} data-head={headWithUnit(list, field, show)}>
            <Cell field={field} />
          </td>
        ))}
        {extra !== undefined && <td className="miss">{extra}</td>}
        <td>
          <button type="button" aria-label={words.numbers.removeOne(name)} onClick={remove}>
            {words.numbers.remove}
          </button>
        </td>
      </tr>
      {fields.map(({ path }) => (
        <SaysRow key={path} path={path} columns={span} />
      ))}
    </>
  );
};

/** A list of the job, a row an item, and a row for one to be added. */
export const List = ({ list, proposed = {}, extra }: ListProps) => {
  const job = useBenchState((state) => state.job);
  const says = words.numbers.lists[list];
  const columns = itemFields(list, '*');
  const items = itemsOf(job, list);
  const span = columns.length + (extra === undefined ? 1 : 2);
  const most = mostItems(list) ?? 0;
  return (
    <section className="scroll list" data-list={list} data-wide={columns.length > 4} aria-label={says.table}>
      <table>
        <thead>
          <tr>
            {columns.map((field) => (
              <th key={field.path} scope="col">
                {headOf(list, field)} <small>{unitOf(field, job.show.length)}</small>
              </th>
            ))}
            {extra !== undefined && <th scope="col">{extra.head}</th>}
            <td />
          </tr>
        </thead>
        <tbody>
          {items.map(({ id }, k) => (
            <Row
              key={id}
              list={list}
              id={id}
              name={itemName(job, list, id)}
              span={span}
              {...(extra === undefined ? {} : { extra: extra.cells[k] ?? '' })}
            />
          ))}
          {!isFull(job, list) && (
            <NewItem
              list={list}
              columns={columns}
              heads={columns.map((field) => headWithUnit(list, field, job.show))}
              proposed={proposed}
              called={(field) => says.toAdd[keyOf(field)] ?? `${fieldTitle(job, field.path)}, ${says.one}`}
              add={says.add}
              addStep={(values: Values) => says.addStep(values)}
              span={span}
            />
          )}
        </tbody>
      </table>
      {isFull(job, list) && <p>{says.most(most)}</p>}
    </section>
  );
};
