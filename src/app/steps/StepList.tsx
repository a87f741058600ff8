import { useEffect, useRef } from 'react';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';

const says = words.steps;

/** How the bench stood after each step of this sitting, the newest first; the drawing beside it shows the one that is gone to. */
export const StepList = ({ onClose }: { onClose: () => void }) => {
  const bench = useBench();
  const dialog = useRef<HTMLDialogElement>(null);
  const now = useRef<HTMLButtonElement>(null);
  const past = useBenchState((state) => state.past);
  const future = useBenchState((state) => state.future);
  useEffect(() => {
    dialog.current?.showModal();
    now.current?.focus();
  }, []);
  const names = [says.first, ...[...past, ...future.toReversed()].map(({ name }) => name || says.unnamed)];
  return (
    <dialog className="step-list" ref={dialog} aria-labelledby="steps-title" onClose={onClose}>
      <h2 id="steps-title">{says.title}</h2>
      <p className="small">{past.length + future.length === 0 ? says.none : says.about}</p>
      <ol reversed>
        {names
          .map((name, k) => ({ name, k, isNow: k === past.length }))
          .toReversed()
          .map(({ name, k, isNow }) => (
            <li key={k}>
              <button
                ref={isNow ? now : undefined}
                type="button"
                aria-current={isNow ? 'step' : undefined}
                onClick={() => bench.goBy(k - past.length)}
              >
                {name}
                {isNow && <em> {says.now}</em>}
              </button>
            </li>
          ))}
      </ol>
      <p className="end">
        <button type="button" onClick={() => dialog.current?.close()}>
          {says.close}
        </button>
      </p>
    </dialog>
  );
};
