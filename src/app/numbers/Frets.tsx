import { type FocusEvent, useRef, useState } from 'react';
import { type FieldInfo, fieldAt } from '../../../geometry/fields.ts';
import { fewestFrets, fitScale } from '../../../geometry/instrument/scale.ts';
import { formatQuantity } from '../../../geometry/units.ts';
import { readField } from '../typing.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { Cell, SaysRow } from './Cell.tsx';
import { unitOf } from './Field.tsx';
import { Fold } from './Fold.tsx';
import { mostFrets, nextFret } from './measured.ts';
import { fieldId } from './use-field.ts';

const says = words.numbers.frets;
const fieldsOf = (id: string): readonly FieldInfo[] =>
  ['fret', 'distance'].flatMap((key) => fieldAt(`guitar.measured.${id}.${key}`) ?? []);
const [fretField, distanceField] = fieldsOf('*') as [FieldInfo, FieldInfo];

/** One measured fret. */
const Row = ({ id, fret, miss }: { id: string; fret: number; miss: number | undefined }) => {
  const bench = useBench();
  const show = useBenchState((state) => state.job.show);
  const fields = fieldsOf(id);
  const off = miss === undefined ? '' : formatQuantity(miss, 'length', show, { digits: show.length === 'mm' ? 2 : 3 });
  /** The button goes with its row: the focus moves on to the next row's fret, or to the one to be added. */
  const remove = () => {
    const { measured } = bench.getState().job.guitar;
    const next = measured[measured.findIndex((one) => one.id === id) + 1];
    bench.removeFret(id);
    document.getElementById(next === undefined ? newId : fieldId(`guitar.measured.${next.id}.distance`))?.focus();
  };
  return (
    <>
      <tr>
        {fields.map((field) => (
          <td key={field.path}>
            <Cell field={field} />
          </td>
        ))}
        <td className="miss">{off}</td>
        <td>
          <button type="button" aria-label={says.removeOne(fret)} onClick={remove}>
            {says.remove}
          </button>
        </td>
      </tr>
      {fields.map(({ path }) => (
        <SaysRow key={path} path={path} columns={4} />
      ))}
    </>
  );
};

const newId = 'new-fret-distance';

/** What is typed of a fret to add. It is no part of the job until its distance is read: a distance that nobody measured would count in the fit. */
const NewRow = () => {
  const bench = useBench();
  const job = useBenchState((state) => state.job);
  const distance = useRef<HTMLInputElement>(null);
  const [typedFret, setFret] = useState<string>();
  const [typed, setTyped] = useState('');
  const [refused, setRefused] = useState<string>();
  const fretText = typedFret ?? String(nextFret(job));

  /** Puts it into the list; the next one can be typed at once. */
  const add = () => {
    const fret = readField(fretField, fretText, job.show);
    const far = readField(distanceField, typed, job.show);
    if (!fret.ok || !far.ok) return setRefused([fret, far].flatMap((read) => (read.ok ? [] : read.says)).join(' '));
    bench.addFret(Number(fret.value), Number(far.value));
    setFret(undefined);
    setTyped('');
    setRefused(undefined);
  };
  const press = () => {
    if (typed.trim() !== '') add();
    distance.current?.focus();
  };
  /** Whoever goes on to another number has not called it off. */
  const onBlur = ({ currentTarget, relatedTarget }: FocusEvent<HTMLTableRowElement>) => {
    if (typed.trim() !== '' && !(relatedTarget instanceof Node && currentTarget.contains(relatedTarget))) add();
  };
  const keys = ({ key }: { key: string }) => {
    if (key === 'Enter') press();
    if (key === 'Escape') {
      setTyped('');
      setRefused(undefined);
    }
  };
  const common = {
    type: 'text',
    autoComplete: 'off',
    spellCheck: false,
    onKeyDown: keys,
    'aria-invalid': refused !== undefined ? (true as const) : undefined,
    'aria-describedby': refused !== undefined ? `${newId}-says` : undefined,
  };
  return (
    <>
      <tr onBlur={onBlur}>
        <td>
          <input
            {...common}
            inputMode="numeric"
            data-kind="count"
            aria-label={says.newFret}
            value={fretText}
            onChange={({ target }) => setFret(target.value)}
          />
        </td>
        <td>
          <input
            {...common}
            ref={distance}
            id={newId}
            inputMode={job.show.length === 'mm' ? 'decimal' : 'text'}
            data-kind="length"
            aria-label={says.newDistance}
            value={typed}
            onChange={({ target }) => setTyped(target.value)}
          />
        </td>
        <td colSpan={2}>
          <button type="button" onClick={press}>
            {says.add}
          </button>
        </td>
      </tr>
      {refused !== undefined && (
        <tr>
          <td colSpan={4}>
            <p className="says" id={`${newId}-says`} role="alert">
              {refused}
            </p>
          </td>
        </tr>
      )}
    </>
  );
};

/** The frets that were measured, the scale that they give and how sure it is. */
export const Frets = () => {
  const bench = useBench();
  const { guitar, show } = useBenchState((state) => state.job);
  const isHeld = useBenchState(({ drafts }) =>
    Object.entries(drafts).some(([path, draft]) => path.startsWith('guitar.measured.') && draft.says !== undefined),
  );
  const { measured } = guitar;
  const fitted = fitScale(measured);
  const say = (value: number) => formatQuantity(value, 'length', show, { unit: true });
  return (
    <Fold
      id="frets"
      title={says.label}
      about={says.about}
      state={measured.length === 0 ? says.none : says.count(measured.length)}
      isOpenAtFirst={measured.length > 0}
      isHeld={isHeld}
    >
      <table className="frets">
        <thead>
          <tr>
            <th scope="col">{says.fret}</th>
            <th scope="col">
              {says.distance} <small>{unitOf(distanceField, show.length)}</small>
            </th>
            <th scope="col">{fitted && says.miss}</th>
            <td />
          </tr>
        </thead>
        <tbody>
          {measured.map(({ id, fret }, k) => (
            <Row key={id} id={id} fret={fret} miss={fitted?.misses[k]} />
          ))}
          {measured.length < mostFrets && <NewRow />}
        </tbody>
      </table>
      {measured.length >= mostFrets && <p>{says.most(mostFrets)}</p>}
      {fitted ? (
        <p className="fitted" role="status">
          {says.fitted(measured.length, say(fitted.scale), say(fitted.error))}
        </p>
      ) : (
        measured.length > 0 && <p className="fitted">{says.more(fewestFrets - measured.length)}</p>
      )}
      {fitted && guitar.scale !== 'frets' && (
        <button type="button" onClick={() => bench.put('guitar.scale', 'frets')}>
          {says.take}
        </button>
      )}
    </Fold>
  );
};
