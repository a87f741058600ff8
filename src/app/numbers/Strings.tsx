import { type FieldInfo, stringFields } from '../../../geometry/fields.ts';
import { stringCount } from '../../../geometry/job.ts';
import { fieldsOfString, fieldTitle } from '../strings.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { saysId, useField } from './use-field.ts';

/** One value of a string; what is said of it stands in a row of its own, as a cell has no room. */
const Cell = ({ field }: { field: FieldInfo }) => {
  const job = useBenchState((state) => state.job);
  const { focusProps, textProps, choiceProps } = useField(field);
  const label = fieldTitle(job, field.path);
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
};

const Row = ({ id, name, canGo }: { id: string; name: string; canGo: boolean }) => {
  const bench = useBench();
  const job = useBenchState((state) => state.job);
  const drafts = useBenchState((state) => state.drafts);
  const fields = fieldsOfString(job, id);
  const said = fields.flatMap(({ field: { path } }) => {
    const says = drafts[path]?.says;
    return says === undefined ? [] : [{ path, says }];
  });
  return (
    <>
      <tr>
        {fields.map(({ field, counts }) => (
          <td key={field.path}>
            {counts ? <Cell field={field} /> : <span className="none">{words.strings.noWrap}</span>}
          </td>
        ))}
        <td>
          <button
            type="button"
            disabled={!canGo}
            aria-label={words.strings.removeOne(name)}
            onClick={() => bench.removeString(id)}
          >
            {words.strings.remove}
          </button>
        </td>
      </tr>
      {said.map(({ path, says }) => (
        <tr key={path}>
          <td colSpan={fields.length + 1}>
            <p className="says" id={saysId(path)} role="alert">
              {says}
            </p>
          </td>
        </tr>
      ))}
    </>
  );
};

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
  const heads = stringFields(list[0]?.id ?? '').map((field) => headOf(field, show));
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
        <button type="button" disabled={isFull} onClick={() => bench.addString('bass')}>
          {words.strings.addBass}
        </button>
        <button type="button" disabled={isFull} onClick={() => bench.addString('treble')}>
          {words.strings.addTreble}
        </button>
        {isFull && <span>{words.strings.most(stringCount.max)}</span>}
        {isLeast && <span>{words.strings.least(stringCount.min)}</span>}
      </p>
    </section>
  );
};
