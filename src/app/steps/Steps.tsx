import { type RefObject, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { StepList } from './StepList.tsx';

/** A step back or forth, with the name of what it takes back or does again; on a phone that is only heard, as there is no room for it. */
const Step = ({
  button,
  does,
  step,
  onPress,
}: {
  button: RefObject<HTMLButtonElement | null>;
  does: string;
  /** Undefined while there is none to go by. */
  step: string | undefined;
  onPress: () => void;
}) => {
  const of = step === undefined ? '' : words.bar.ofStep(step);
  return (
    <button ref={button} type="button" aria-label={`${does}${of}`} disabled={step === undefined} onClick={onPress}>
      {does}
      <span className="of">{of}</span>
    </button>
  );
};

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
      <Step button={undo} does={words.bar.undo} step={last} onPress={() => press(bench.undo, undo, redo)} />
      <Step button={redo} does={words.bar.redo} step={next} onPress={() => press(bench.redo, redo, undo)} />
      <button type="button" className="all" onClick={() => setListed(true)}>
        {words.steps.button}
      </button>
      {isListed && <StepList onClose={() => setListed(false)} />}
    </div>
  );
};
