import { useRef, useState } from 'react';
import { type FieldInfo, fieldsOf, getAt, mostItems } from '../../../geometry/fields.ts';
import { shopSchema } from '../../../templates/shop/index.ts';
import { showAsRead } from '../decimal.ts';
import { unitOf } from '../numbers/Field.tsx';
import { readField, shown } from '../typing.ts';
import { useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { ShopField } from './ShopField.tsx';
import { useShopState, useShopStore } from './shop-store.ts';

const says = words.shop;
const keyOf = ({ path }: FieldInfo): string => path.split('.').at(-1) ?? '';

/** The fields of any item of a list, without its key. */
const columnsOf = (list: string): readonly FieldInfo[] =>
  fieldsOf(shopSchema).filter(({ path }) => path.startsWith(`${list}.*.`) && !path.endsWith('.id'));

/** An item to add: no part of the settings till all of it is read. */
const NewItem = ({ list, toAdd, label }: { list: string; toAdd: string; label: string }) => {
  const store = useShopStore();
  const show = useBenchState(showAsRead);
  const first = useRef<HTMLInputElement>(null);
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({});
  const [refused, setRefused] = useState('');
  const columns = columnsOf(list);
  const textOf = (field: FieldInfo) =>
    typed[keyOf(field)] ?? (field.choices ? String(field.preset) : shown(field, field.preset, show));
  const add = () => {
    const all = columns.map((field) => ({ field, read: readField(field, textOf(field), show, shopSchema) }));
    const wrong = all.flatMap(({ field: { label: called }, read }) =>
      read.ok ? [] : read.says.startsWith(called) ? read.says : `${called}: ${read.says}`,
    );
    setRefused(wrong.join(' '));
    first.current?.focus();
    if (wrong.length > 0) return;
    const kind = list.split('.')[0]?.replace(/s$/, '') ?? list;
    store.addItem(
      list,
      kind,
      Object.fromEntries(all.map(({ field, read }) => [keyOf(field), read.ok ? read.value : ''])),
    );
    setTyped({});
  };
  const id = `shop-${list}-new`;
  return (
    <li className="new">
      {columns.map((field) => {
        const own = `${id}-${keyOf(field)}`;
        const common = {
          id: own,
          'aria-invalid': refused === '' || field.choices ? undefined : (true as const),
          'aria-describedby': refused === '' ? undefined : `${id}-says`,
          value: textOf(field),
          onChange: ({ target }: { target: { value: string } }) => setTyped({ ...typed, [keyOf(field)]: target.value }),
        };
        return (
          <div key={field.path}>
            <label htmlFor={own}>{says.nameIn(field.label, toAdd)}</label>
            {field.choices ? (
              <select {...common}>
                {Object.entries(field.choices).map(([key, called]) => (
                  <option key={key} value={key}>
                    {called}
                  </option>
                ))}
              </select>
            ) : (
              <span className="typed-in">
                <input
                  {...common}
                  ref={first}
                  type="text"
                  autoComplete="off"
                  spellCheck={false}
                  data-kind={field.kind}
                  onKeyDown={({ key }) => key === 'Enter' && add()}
                />
                <span className="unit">{unitOf(field, show.length)}</span>
              </span>
            )}
          </div>
        );
      })}
      <button type="button" aria-label={says.addTo(label)} onClick={add}>
        {says.add}
      </button>
      {refused !== '' && (
        <p className="says" id={`${id}-says`} role="alert">
          {refused}
        </p>
      )}
    </li>
  );
};

/** A list of the shop, such as its own gauges: each item's fields, and one to be added. */
export const ShopList = ({ list }: { list: string }) => {
  const store = useShopStore();
  const items = useShopState(({ shop }) => getAt(shop, list)) as readonly { readonly id: string }[];
  const box = useRef<HTMLUListElement>(null);
  const called = says.lists[list];
  const most = mostItems(list, shopSchema) ?? Number.POSITIVE_INFINITY;
  if (called === undefined) return null;
  const remove = (id: string) => {
    store.removeItem(list, id);
    // The button goes with its item: the focus moves on to the one to be added.
    box.current?.querySelector<HTMLElement>('.new input, .new select')?.focus();
  };
  return (
    <section className="shop-list" aria-label={called.label}>
      <h3>{called.label}</h3>
      <ul ref={box} className="shop-items">
        {items.length === 0 && <li>{says.nothingListed}</li>}
        {items.map(({ id }, k) => (
          <li key={id}>
            <div>
              {columnsOf(list).map((field) => (
                <ShopField key={field.path} path={field.path.replace('*', id)} of={called.one(k + 1)} />
              ))}
            </div>
            <button type="button" aria-label={says.removeOne(called.one(k + 1))} onClick={() => remove(id)}>
              {says.remove}
            </button>
          </li>
        ))}
        {items.length < most ? (
          <NewItem list={list} toAdd={called.toAdd} label={called.label} />
        ) : (
          <li>{says.most(most)}</li>
        )}
      </ul>
    </section>
  );
};
