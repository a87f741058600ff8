import { memo, useState } from 'react';
import { applies, type FieldInfo, fieldAt, stringFields } from '../../../geometry/fields.ts';
import { type StringSetId, stringSets, withSet } from '../../../geometry/instrument/sets.ts';
import { type Job, stringCount } from '../../../geometry/job.ts';

import { showAsRead } from '../decimal.ts';

import { Resting } from '../Resting.tsx';
import { heads } from '../skips/heads.ts';
import { SkipOn } from '../skips/SkipOn.tsx';
import type { Side } from '../strings.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { Cell, SaysRow } from './Cell.tsx';
import { Field, unitOf } from './Field.tsx';
import { neededText } from './needed.ts';
import { fieldId } from './use-field.ts';

/** The fields of each string, made once: what is drawn of them is then drawn anew only when it changes. */
const made = new Map<string, readonly FieldInfo[]>();
const fieldsOf = (id: string): readonly FieldInfo[] => {
  const fields = made.get(id) ?? stringFields(id);
  made.set(id, fields);
  return fields;
};

/** A column of the table: what was heard has one only where the setbacks come from it, the places only where they are typed. */
const isColumn = ({ path }: FieldInfo, { setbacks, spacing }: Pick<Job['strings'], 'setbacks' | 'spacing'>): boolean =>
  (!path.endsWith('.cents') || setbacks === 'heard') && (!path.endsWith('Place') || spacing === 'typed');

/** The setback that a string asks for, where it is computed: nothing to type. */
const Needed = ({ id, name }: { id: string; name: string }) => {
  const show = useBenchState(showAsRead);
  const needed = useBenchState(({ built }) => built?.design.strings.find((one) => one.id === id)?.neededSetback);
  return (
    <output className="figure" data-needed={id} aria-label={words.strings.needed(name)}>
      {neededText(needed ?? Number.NaN, show)}
    </output>
  );
};

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
  const { setbacks, spacing } = useBenchState(({ job }) => job.strings);
  const fields = fieldsOf(id).filter((field) => isColumn(field, { setbacks, spacing }));
  return (
    <>
      <tr>
        {fields.map((field) => (
          <td key={field.path}>
            {setbacks === 'computed' && field.path.endsWith('.setback') ? (
              <Needed id={id} name={name} />
            ) : (
              <Cell field={field} />
            )}
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

/** The unit in a column's head, where the column has one of its own for all strings. */
const headOf = (field: FieldInfo, show: Job['show']) => {
  const key = field.path.split('.').at(-1) ?? '';
  const { kind } = field;
  const unit =
    kind === 'gauge' || kind === 'length' ? unitOf(field, show[kind]) : kind === 'cents' ? unitOf(field, 'mm') : '';
  return { key, title: words.strings.heads[key] ?? field.label, unit };
};

/** Strings to begin with: a set is chosen, and put in as one step. */
const Sets = () => {
  const bench = useBench();
  const [id, setId] = useState<StringSetId>('light');
  const putIn = () =>
    bench.become(withSet(bench.getState().job, id), 'strings.list', words.strings.setStep(stringSets[id].title));
  return (
    <p className="sets">
      <label htmlFor="string-set">{words.strings.set}</label>
      <select id="string-set" value={id} onChange={({ target }) => setId(target.value as StringSetId)}>
        {Object.entries(stringSets).map(([key, { title }]) => (
          <option key={key} value={key}>
            {title}
          </option>
        ))}
      </select>
      <button type="button" onClick={putIn}>
        {words.strings.putIn}
      </button>
    </p>
  );
};

/** How the strings stand, and where their setbacks come from, above them. */
const choices = ['strings.courses', 'strings.pairGap', 'strings.setbacks', 'strings.finger'].flatMap(
  (path) => fieldAt(path) ?? [],
);
const Setbacks = () => {
  const job = useBenchState((state) => state.job);
  return (
    <div className="setbacks">
      {choices
        .filter((field) => applies(field, job))
        .map((field) => (
          <Field key={field.path} field={field} />
        ))}
    </div>
  );
};

/** The strings, bass first, a row each. */
export const Strings = () => {
  const bench = useBench();
  const list = useBenchState((state) => state.job.strings.list);
  const show = useBenchState(showAsRead);
  const strings = useBenchState((state) => state.job.strings);
  const columns = fieldsOf(list[0]?.id ?? '')
    .filter((field) => isColumn(field, strings))
    .map((field) => headOf(field, show));
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
      <SkipOn next={heads.setUp} />
      <Sets />
      <Setbacks />
      <Resting>
        <section className="scroll" aria-label={words.strings.scroll}>
          <table>
            <thead>
              <tr>
                {columns.map(({ key, title, unit }) => (
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
      </Resting>
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
