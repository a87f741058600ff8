import { type ChangeEvent, useRef } from 'react';
import { drawer, narrow } from '../media.ts';
import { saveJob } from '../save/job-file.ts';
import { openFiles } from '../shelf/opening.ts';
import { useKeep } from '../shelf/use-keep.ts';
import { heads } from '../skips/heads.ts';
import { Steps } from '../steps/Steps.tsx';
import { useBench } from '../use-bench.ts';
import { useMedia } from '../use-media.ts';
import { words } from '../words.ts';
import { BarField } from './BarField.tsx';
import { Drop } from './Drop.tsx';
import { Units } from './Units.tsx';

const says = words.bar;

interface BarProps {
  readonly onTemplates: () => void;
  readonly onNew: () => void;
  /** Undefined where the browser keeps no jobs. */
  readonly onShelf: (() => void) | undefined;
}

/** What the job is, in which units, the steps back and forth, and the ways in and out of it: in cells, as in a drawing's title block. */
export const Bar = ({ onTemplates, onNew, onShelf }: BarProps) => {
  const bench = useBench();
  const keep = useKeep();
  const picker = useRef<HTMLInputElement>(null);
  // Where there is little room, the steps stand at the sheet, which stays in sight.
  const isNarrow = useMedia(narrow);
  const hasSteps = !useMedia(drawer);
  const open = ({ target }: ChangeEvent<HTMLInputElement>) => {
    const files = [...(target.files ?? [])];
    // So that the same file can be chosen again.
    target.value = '';
    void openFiles(bench, keep, files);
  };

  const files = (
    <>
      <button type="button" onClick={onNew}>
        {says.newJob}
      </button>
      {onShelf && (
        <button type="button" onClick={onShelf}>
          {words.shelf.button}
        </button>
      )}
      <button type="button" onClick={() => picker.current?.click()}>
        {says.open}
      </button>
      <input ref={picker} type="file" accept=".json,application/json" hidden multiple onChange={open} />
      <button type="button" onClick={() => saveJob(bench)}>
        {says.save}
      </button>
    </>
  );

  return (
    <header className="bar">
      <p className="brand" aria-hidden="true">
        {words.name}
      </p>
      <BarField path="name" />
      <BarField path="date" />
      <Units />
      {hasSteps && <Steps />}
      <nav className="files" aria-label={says.label}>
        {isNarrow ? <Drop title={says.jobs}>{files}</Drop> : files}
        <button type="button" className="primary" id={heads.templates.id} onClick={onTemplates}>
          {says.templates}
        </button>
      </nav>
    </header>
  );
};
