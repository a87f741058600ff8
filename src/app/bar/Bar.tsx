import { type ChangeEvent, useRef, useState } from 'react';
import { starters } from '../../jobs/index.ts';
import { saveJob } from '../save/job-file.ts';
import { useBench } from '../use-bench.ts';
import { words } from '../words.ts';
import { BarField } from './BarField.tsx';
import { Lengths, OtherUnits } from './Units.tsx';

const says = words.bar;
const pad = (n: number) => String(n).padStart(2, '0');

/** This day where the person is, as year-month-day. */
export const today = (now: Date): string => `${now.getFullYear()}-${pad(now.getMonth() + 1)}-${pad(now.getDate())}`;

/** What the job is, in which units, and the ways in and out of it: in cells, as in a drawing's title block. */
export const Bar = ({ onTemplates, onShelf }: { onTemplates: () => void; onShelf: (() => void) | undefined }) => {
  const bench = useBench();
  const picker = useRef<HTMLInputElement>(null);

  const [chosen, setChosen] = useState('');
  const starter = starters.find(({ id }) => id === chosen);
  const openFile = async ({ target }: ChangeEvent<HTMLInputElement>) => {
    const file = target.files?.[0];
    if (file === undefined) return;
    const text = await file.text();
    // So that the same file can be chosen again.
    target.value = '';
    bench.open(text, file.name);
  };

  return (
    <header className="bar">
      <h1>{words.name}</h1>
      <BarField path="name" />
      <BarField path="date" />
      <Lengths />
      <OtherUnits />
      <div className="cell starters">
        <label htmlFor="starters">{says.starters}</label>
        <span>
          <select id="starters" value={chosen} onChange={({ target }) => setChosen(target.value)}>
            <option value="" disabled>
              {says.chooseStarter}
            </option>
            {starters.map(({ id, title, about }) => (
              <option key={id} value={id}>
                {says.starter(title, about)}
              </option>
            ))}
          </select>
          {/* A list that opened what it names would replace the job at each press of an arrow key. */}
          <button
            type="button"
            disabled={!starter}
            onClick={() => starter && bench.open(starter.text, starter.title, { isStarter: true })}
          >
            {says.openStarter}
          </button>
        </span>
      </div>
      <nav className="files" aria-label={says.label}>
        {onShelf && (
          <button type="button" onClick={onShelf}>
            {words.shelf.button}
          </button>
        )}
        <button type="button" onClick={() => bench.startNew(today(new Date()))}>
          {says.newJob}
        </button>
        <button type="button" onClick={() => picker.current?.click()}>
          {says.open}
        </button>
        <input ref={picker} type="file" accept=".json,application/json" hidden onChange={openFile} />
        <button type="button" onClick={() => saveJob(bench)}>
          {says.save}
        </button>
        <button type="button" className="primary" onClick={onTemplates}>
          {says.templates}
        </button>
      </nav>
    </header>
  );
};
