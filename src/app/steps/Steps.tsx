import { useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { StepList } from './StepList.tsx';

/** A step's name; where there is little room only its first word is seen, and the rest is heard. */
const Named = ({ by, isShort }: { by: string; isShort: boolean }) => {
  const [first, ...rest] = by.split(/(?=:)/);
  return isShort ? (
    <>
      {first}
      <span className="unseen">{rest.join('')}</span>
    </>
  ) : (
    by
  );
};

/** Undo and redo, each named by what it takes back, where there is little room the name is only heard; and the list of all steps. */
export const Steps = ({ isShort = false }: { isShort?: boolean }) => {
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
    <div className="steps" role="group" aria-label={words.steps.label} data-short={isShort}>
      <button ref={undo} type="button" disabled={last === undefined} onClick={() => press(bench.undo, undo, redo)}>
        <Named by={words.bar.undo(last)} isShort={isShort} />
      </button>
      <button ref={redo} type="button" disabled={next === undefined} onClick={() => press(bench.redo, redo, undo)}>
        <Named by={words.bar.redo(next)} isShort={isShort} />
      </button>
      <button type="button" className="all" onClick={() => setListed(true)}>
        {words.steps.button}
      </button>
      {isListed && <StepList onClose={() => setListed(false)} />}
    </div>
  );
};
