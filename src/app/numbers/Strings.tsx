import { memo } from 'react';
import { applies, type FieldInfo, stringFields } from '../../../geometry/fields.ts';
import { stringCount } from '../../../geometry/job.ts';
import { fieldTitle, type Side } from '../strings.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { fieldId, saysId, useField } from './use-field.ts';

/** The fields of each string, made once: what is drawn of them is then drawn anew only when it changes. */
const made = new Map<string, readonly FieldInfo[]>();
const fieldsOf = (id: string): readonly FieldInfo[] => {
  const fields = made.get(id) ?? stringFields(id);
  made.set(id, fields);
  return fields;
};

/** One value of a string; what is said of it stands in a row of its own, as a cell has no room. */
const Cell = memo(({ field }: { field: FieldInfo }) => {
  const label = useBenchState((state) => fieldTitle(state.job, field.path));
  const counts = useBenchState((state) => applies(field, state.job));
  const { focusProps, textProps, choiceProps } = useField(field);
  if (!counts) return <span className="none">{words.strings.noWrap}</span>;
  if (field.choices === undefined) {
    return <input {...focusProps} {...textProps} aria-label={label} data-kind={field.kind} />;
  }
  return (
    <select {...focusProps} {...choiceProps} aria-label={label}>
      {Object.entries(field.choices).map(([key, called]) => (
        <option key={key} value={key}>
          {called}
        </option>
      ))}
    </select>
  );
});

/** Why what stands in a cell is refused, in a row under it. */
const SaysRow = memo(({ path, columns }: { path: string; columns: number }) => {
  const says = useBenchState(
    (state) =>
      state.drafts[path]?.says ??
      (state.solved.ok ? undefined : state.solved.problems.find((problem) => problem.path === path)?.says),
  );
  const title = useBenchState((state) => fieldTitle(state.job, path));
  if (says === undefined) return null;
  return (
    <tr>
      <td colSpan={columns}>
        <p className="says" id={saysId(path)} role="alert">
          {title}: {says}
        </p>
      </td>
    </tr>
  );
});

const Row = memo(({ id, name, canGo }: { id: string; name: string; canGo: boolean }) => {
  const bench = useBench();
  /** The button goes with its row: the focus moves on to the next row's, or back to the last. */
  const remove = (gone: string) => {
    const { list } = bench.getState().job.strings;
    const k = list.findIndex((string) => string.id === gone);
    const next = list[k + 1] ?? list[k - 1];
    bench.removeString(gone);
    const input = next && document.getElementById(fieldId(`strings.list.${next.id}.name`));
    const buttons = [...document.querySelectorAll<HTMLButtonElement>('[data-remove]')];
    const button = buttons.find(({ dataset }) => dataset.remove === next?.id);
    (button && !button.disabled && bench.getState().job.strings.list.length > stringCount.min
      ? button
      : input
    )?.focus();
  };
  const fields = fieldsOf(id);
  return (
    <>
      <tr>
        {fields.map((field) => (
          <td key={field.path}>
            <Cell field={field} />
          </td>
        ))}
        <td>
          <button
            type="button"
            disabled={!canGo}
            aria-label={words.strings.removeOne(name)}
            data-remove={id}
            onClick={() => remove(id)}
          >
            {words.strings.remove}
          </button>
        </td>
      </tr>
      {fields.map(({ path }) => (
        <SaysRow key={path} path={path} columns={fields.length + 1} />
      ))}
    </>
  );
});

/** The unit in a column's head, where the column has one. */
const headOf = (field: FieldInfo, units: Readonly<Record<'length' | 'radius' | 'gauge', 'mm' | 'in' | 'fraction'>>) => {
  const key = field.path.split('.').at(-1) ?? '';
  const unit = field.kind === 'gauge' || field.kind === 'length' ? words.numbers.unit[units[field.kind]] : '';
  return { key, title: words.strings.heads[key] ?? field.label, unit };
};

/** The strings, bass first, a row each. */
export const Strings = () => {
  const bench = useBench();
  const list = useBenchState((state) => state.job.strings.list);
  const show = useBenchState((state) => state.job.show);
  const heads = fieldsOf(list[0]?.id ?? '').map((field) => headOf(field, show));
  /** A new string is named first: its name takes the focus once its row stands. */
  const add = (side: Side) => {
    const id = bench.addString(side);
    if (id === undefined) return;
    requestAnimationFrame(() => {
      const input = document.getElementById(fieldId(`strings.list.${id}.name`));
      if (input instanceof HTMLInputElement) input.select();
      input?.focus();
    });
  };
  const isFull = list.length >= stringCount.max;
  const isLeast = list.length <= stringCount.min;
  return (
    <section className="strings" aria-labelledby="strings-title">
      <h2 id="strings-title">{words.strings.label}</h2>
      <section className="scroll" aria-label={words.strings.scroll}>
        <table>
          <thead>
            <tr>
              {heads.map(({ key, title, unit }) => (
                <th key={key} scope="col">
                  {title} {unit && <small>{unit}</small>}
                </th>
              ))}
              <td />
            </tr>
          </thead>
          <tbody>
            {list.map(({ id, name }) => (
              <Row key={id} id={id} name={name} canGo={!isLeast} />
            ))}
          </tbody>
        </table>
      </section>
      <p className="add">
        <button type="button" disabled={isFull} onClick={() => add('bass')}>
          {words.strings.addBass}
        </button>
        <button type="button" disabled={isFull} onClick={() => add('treble')}>
          {words.strings.addTreble}
        </button>
        {isFull && <span>{words.strings.most(stringCount.max)}</span>}
        {isLeast && <span>{words.strings.least(stringCount.min)}</span>}
      </p>
    </section>
  );
};
