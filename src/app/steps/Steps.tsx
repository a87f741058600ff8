import { useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { StepList } from './StepList.tsx';

/** Undo and redo, each named by what it takes back, and the list of all steps. */
export const Steps = () => {
  const bench = useBench();
  const undo = useRef<HTMLButtonElement>(null);
  const redo = useRef<HTMLButtonElement>(null);
  const last = useBenchState((state) => state.past.at(-1)?.name);
  const next = useBenchState((state) => state.future.at(-1)?.name);
  const [isListed, setListed] = useState(false);
  /** A button that is used up cannot hold the focus: it goes to the other one. */
  const press = (step: () => void, here: typeof undo, there: typeof undo) => {
    flushSync(step);
    if (here.current?.disabled) there.current?.focus();
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: these buttons are no fields of a form
    <div className="steps" role="group" aria-label={words.steps.label}>
      <button ref={undo} type="button" disabled={last === undefined} onClick={() => press(bench.undo, undo, redo)}>
        {words.bar.undo(last)}
      </button>
      <button ref={redo} type="button" disabled={next === undefined} onClick={() => press(bench.redo, redo, undo)}>
        {words.bar.redo(next)}
      </button>
      <button type="button" className="all" onClick={() => setListed(true)}>
        {words.steps.button}
      </button>
      {isListed && <StepList onClose={() => setListed(false)} />}
    </div>
  );
};
