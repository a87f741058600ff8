import { useMemo, useRef } from 'react';
import { setUp } from '../../../geometry/saddle/setup.ts';
import { fieldId } from '../numbers/use-field.ts';
import { useStill } from '../sheet/use-still.ts';
import { heads } from '../skips/heads.ts';
import { SkipOn } from '../skips/SkipOn.tsx';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { fieldAtReading, Pass } from './Pass.tsx';
import { mostPasses } from './passes.ts';

const says = words.setUp;

/** The set-up of the strung guitar: a reading after each pass at the saddle, and what each asks for. The last one stands first. */
export const SetUp = () => {
  const bench = useBench();
  const adder = useRef<HTMLButtonElement>(null);
  const log = useBenchState((state) => state.job.setup.log);
  const built = useStill((state) => state.built);
  const isStale = useStill((state) => !state.solved.ok);
  const outcomes = useMemo(() => (built === undefined ? [] : setUp(built.job, built.design)), [built]);
  /** A new reading begins with its first string. */
  const add = () => {
    const id = bench.addPass();
    const string = bench.getState().job.strings.list[0];
    if (id === undefined || string === undefined) return;
    requestAnimationFrame(() =>
      document.getElementById(fieldId(fieldAtReading(id, string.id, 'action').path))?.focus(),
    );
  };
  const last = outcomes.findLast(({ ok }) => ok);
  const isLast = (id: string) => last?.ok === true && last.advice.id === id;
  const isFull = log.length >= mostPasses;
  return (
    <section className="setup" aria-labelledby="setup-title">
      <h2 id="setup-title">{says.label}</h2>
      <SkipOn next={heads.findings} />
      <p>
        {says.about} <strong>{says.caution}</strong>
      </p>
      {isStale && built !== undefined && log.length > 0 && <p className="stale">{says.stale}</p>}
      <p className="add">
        <button ref={adder} type="button" disabled={isFull} onClick={add}>
          {says.add}
        </button>
        {isFull && <span>{says.most(mostPasses)}</span>}
      </p>
      {log
        .map((pass, k) => (
          <Pass
            key={pass.id}
            pass={pass}
            n={k + 1}
            isLast={k === log.length - 1}
            asked={isLast(pass.id) ? built : undefined}
            outcome={outcomes.find((one) => (one.ok ? one.advice.id : one.id) === pass.id)}
            // The button is gone with its reading: the focus goes on to what can be done next.
            onRemove={() => adder.current?.focus()}
          />
        ))
        .reverse()}
    </section>
  );
};
