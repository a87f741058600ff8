import { useEffect, useRef, useState } from 'react';
import type { Advice, Finding } from '../../../geometry/checks/check.ts';
import type { CheckId } from '../../../geometry/checks/ranges.ts';
import type { Job } from '../../../geometry/job.ts';
import type { AdviceAsk, AdviceWord } from '../advice.worker.ts';
import { adviceWorker } from '../workers.ts';
import { openOf } from './held-findings.ts';

/** Advice is worked out once the job has rested this long, ms. */
const rest = 250;

export interface Advised {
  /** The job that the advice is for. */
  readonly job: Job | undefined;
  readonly of: Readonly<Partial<Record<CheckId, readonly Advice[]>>>;
}

const nothing: Advised = { job: undefined, of: {} };

/** What was found of the job that the page began with. */
let begun = nothing;
/** The longest that the page's beginning waits for it, ms. */
const patience = 1000;

/** Has ways looked for as soon as the page begins, so that they come with what they are for and move nothing. Done once all are found, or it takes too long: then they are looked for again, and come later. */
export const adviseFirst = (job: Job, findings: readonly Finding[]): Promise<void> =>
  new Promise((done) => {
    const checks = openOf(findings);
    if (checks.length === 0) return done();
    const worker = adviceWorker();
    const end = () => {
      clearTimeout(timer);
      worker.terminate();
      done();
    };
    const timer = setTimeout(end, patience);
    let found: Advised = { job, of: {} };
    worker.onmessage = ({ data: { check, advice } }: MessageEvent<AdviceWord>) => {
      found = { job, of: { ...found.of, [check]: advice } };
      if (Object.keys(found.of).length < checks.length) return;
      begun = found;
      end();
    };
    worker.postMessage({ turn: 1, job, checks } satisfies AdviceAsk);
  });

/** Ways to bring the findings right, as a worker finds them; for another job than the one asked about there are none yet. */
export const useAdvice = (job: Job, findings: readonly Finding[]): Advised => {
  const [advised, setAdvised] = useState(() => begun);
  const worker = useRef<Worker | undefined>(undefined);
  const turn = useRef(0);
  useEffect(() => () => worker.current?.terminate(), []);
  useEffect(() => {
    const checks = openOf(findings);
    turn.current += 1;
    if (checks.length === 0) return setAdvised({ job, of: {} });
    if (begun.job === job) return setAdvised(begun);
    const ask: AdviceAsk = { turn: turn.current, job, checks };
    const timer = setTimeout(() => {
      worker.current ??= adviceWorker();
      worker.current.onmessage = ({ data }: MessageEvent<AdviceWord>) => {
        if (data.turn !== turn.current) return;
        setAdvised((before) => ({
          job,
          of: { ...(before.job === job ? before.of : {}), [data.check]: data.advice },
        }));
      };
      worker.current.postMessage(ask);
    }, rest);
    return () => clearTimeout(timer);
  }, [job, findings]);
  return advised.job === job ? advised : nothing;
};
