import { type ChangeEvent, useRef, useState } from 'react';
import { starters } from '../../jobs/index.ts';
import { saveJob } from '../save/job-file.ts';
import { openFiles } from '../shelf/opening.ts';
import { useKeep } from '../shelf/use-keep.ts';
import { useBench } from '../use-bench.ts';
import { words } from '../words.ts';
import { BarField } from './BarField.tsx';
import { today } from './today.ts';
import { Lengths, OtherUnits } from './Units.tsx';

const says = words.bar;
/** What the job is, in which units, and the ways in and out of it: in cells, as in a drawing's title block. */
export const Bar = ({ onTemplates, onShelf }: { onTemplates: () => void; onShelf: (() => void) | undefined }) => {
  const bench = useBench();
  const keep = useKeep();
  const picker = useRef<HTMLInputElement>(null);

  const [chosen, setChosen] = useState('');
  const starter = starters.find(({ id }) => id === chosen);
  const open = ({ target }: ChangeEvent<HTMLInputElement>) => {
    const files = [...(target.files ?? [])];
    // So that the same file can be chosen again.
    target.value = '';
    void openFiles(bench, keep, files);
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
        <input ref={picker} type="file" accept=".json,application/json" hidden multiple onChange={open} />
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
