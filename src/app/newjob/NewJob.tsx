import { useEffect, useRef, useState } from 'react';
import { fitScale } from '../../../geometry/instrument/scale.ts';
import { stringSets } from '../../../geometry/instrument/sets.ts';
import { formatQuantity } from '../../../geometry/units.ts';
import { today } from '../bar/today.ts';
import { asRead } from '../decimal.ts';
import { unitOf } from '../numbers/Field.tsx';
import { nextFret } from '../numbers/measured.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { Ask, AskChoice } from './Ask.tsx';
import {
  type Asked,
  fieldOf,
  fretPath,
  inUnit,
  measures,
  nothingAsked,
  readAsked,
  standIn,
  type TypedFret,
} from './asked.ts';
import { Starters } from './Starters.tsx';

const says = words.newJob;
/** More are added once the job stands. */
const mostFrets = 8;
const setTitles = Object.fromEntries(Object.entries(stringSets).map(([id, { title }]) => [id, title])) as Record<
  Asked['set'],
  string
>;

/** What a new job begins with: what was measured, or a starter. */
export const NewJob = ({ onClose }: { onClose: () => void }) => {
  const bench = useBench();
  const { mark } = useBenchState(({ decimals }) => decimals);
  const dialog = useRef<HTMLDialogElement>(null);
  const [way, setWay] = useState<'asked' | 'starter'>('asked');
  const [asked, setAsked] = useState(nothingAsked);
  /** The fields that were left: what is refused there is said; at first nothing is, as typing has hardly begun. */
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  useEffect(() => {
    dialog.current?.showModal();
  }, []);

  const day = today(new Date());
  const { job, refused, assumed } = readAsked(asked, day, mark);
  const read = asRead(job, mark);
  const saysAt = (path: string) => (left.has(path) ? refused[path] : undefined);
  const leave = (path: string) => setLeft((now) => new Set(now).add(path));
  const change = (changed: Partial<Asked>) => setAsked((now) => ({ ...now, ...changed }));
  const close = () => dialog.current?.close();
  const { length } = asked;

  const begin = () => {
    const [first] = Object.keys(refused);
    if (first === undefined) {
      bench.startNew(job, assumed);
      return close();
    }
    setLeft(new Set(Object.keys(refused)));
    dialog.current?.querySelector<HTMLElement>(`[data-ask="${first}"] input`)?.focus();
  };

  const text = (path: string, value: string, onChange: (text: string) => void) => ({
    type: 'text' as const,
    autoComplete: 'off',
    spellCheck: false,
    value,
    onChange: ({ target }: { target: { value: string } }) => onChange(target.value),
    onBlur: () => leave(path),
  });
  const measure = (path: (typeof measures)[number]) => {
    const field = fieldOf(path);
    return (
      <Ask key={path} path={path} job={job} label={field.label} help={field.help} says={saysAt(path)}>
        {(props) => (
          <span className="with-unit">
            <input
              {...props}
              {...text(path, asked.typed[path], (typed) => change({ typed: { ...asked.typed, [path]: typed } }))}
              placeholder={standIn(path, read)}
            />
            <span className="unit">{unitOf(field, field.kind === 'radius' ? job.show.radius : length)}</span>
          </span>
        )}
      </Ask>
    );
  };

  const typeFret = (k: number, typed: Partial<TypedFret>) =>
    change({ frets: asked.frets.map((one, at) => (at === k ? { ...one, ...typed } : one)) });
  const addFret = () => {
    const measured = asked.frets.map(({ fret }, k) => ({ id: fretPath(k), fret: Number(fret), distance: 0 }));
    const fret = String(nextFret({ ...job, guitar: { ...job.guitar, measured } }));
    change({ frets: [...asked.frets, { fret, distance: '' }] });
  };
  const fitted = fitScale(job.guitar.measured);
  const say = (value: number) => formatQuantity(value, 'length', read.show, { unit: true });
  const frets = (
    <fieldset className="asked-frets" data-ask="guitar.scale">
      <legend>{words.numbers.frets.label}</legend>
      <p className="small">{words.numbers.frets.about}</p>
      {asked.frets.map((one, k) =>
        (['fret', 'distance'] as const).map((key) => {
          const path = `${fretPath(k)}.${key}`;
          const field = fieldOf(`guitar.measured.*.${key}`);
          return (
            <Ask key={path} path={path} job={job} label={says.fretLabel(field.label, k + 1)} says={saysAt(path)}>
              {(props) => (
                <span className="with-unit">
                  <input {...props} {...text(path, one[key], (typed) => typeFret(k, { [key]: typed }))} />
                  <span className="unit">{key === 'fret' ? '' : unitOf(field, length)}</span>
                </span>
              )}
            </Ask>
          );
        }),
      )}
      <p role="status">
        {fitted
          ? words.numbers.frets.fitted(job.guitar.measured.length, say(fitted.scale), say(fitted.error))
          : refused['guitar.scale']}
      </p>
      <button type="button" onClick={addFret} disabled={asked.frets.length >= mostFrets}>
        {words.numbers.lists['guitar.measured'].add}
      </button>
    </fieldset>
  );

  return (
    <dialog className="new-job" ref={dialog} aria-labelledby="new-job-title" onClose={onClose}>
      <h2 id="new-job-title">{says.title}</h2>
      <fieldset className="choices ways">
        <legend className="unseen">{says.way}</legend>
        {(['asked', 'starter'] as const).map((one) => (
          <label key={one}>
            <input type="radio" name="new-job-way" checked={way === one} onChange={() => setWay(one)} />
            <span>{says.ways[one]}</span>
          </label>
        ))}
      </fieldset>
      {way === 'starter' ? (
        <Starters
          onOpen={({ text: file, title }) => {
            bench.open(file, title, { isStarter: true });
            close();
          }}
        />
      ) : (
        <form
          noValidate
          onSubmit={(event) => {
            event.preventDefault();
            begin();
          }}
        >
          <p>{says.about}</p>
          <div className="asks">
            <Ask path="name" job={job} label={fieldOf('name').label} help={fieldOf('name').help} says={saysAt('name')}>
              {(props) => (
                <input {...props} {...text('name', asked.name, (name) => change({ name }))} placeholder={job.name} />
              )}
            </Ask>
            <AskChoice path="hand" job={job} value={asked.hand} onChange={(hand) => change({ hand })} />
            <AskChoice
              path="show.length"
              job={job}
              value={length}
              onChange={(unit) => setAsked((now) => inUnit(now, unit, day, mark))}
            />
            <div className="asked-scale">
              <label className="check">
                <input
                  type="checkbox"
                  checked={asked.isByFrets}
                  onChange={({ target }) => change({ isByFrets: target.checked })}
                />
                <span>{says.byFrets}</span>
              </label>
              {asked.isByFrets ? frets : measure('guitar.scale')}
            </div>
            {measures.filter((path) => path !== 'guitar.scale').map(measure)}
            <AskChoice
              path="strings.list.*.gauge"
              label={words.strings.label}
              help={says.setHelp}
              job={job}
              value={asked.set}
              choices={setTitles}
              onChange={(set) => change({ set })}
            />
            <AskChoice
              path="bridge.footprint"
              job={job}
              value={asked.footprint}
              onChange={(footprint) => change({ footprint })}
            />
          </div>
          <p>{says.rest}</p>
          <p className="ends">
            <button type="submit" className="primary">
              {says.begin}
            </button>
            <button type="button" onClick={close}>
              {says.close}
            </button>
          </p>
        </form>
      )}
      {way === 'starter' && (
        <p className="ends">
          <button type="button" onClick={close}>
            {says.close}
          </button>
        </p>
      )}
    </dialog>
  );
};
