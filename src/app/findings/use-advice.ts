import { useEffect, useRef, useState } from 'react';
import type { Advice, Finding } from '../../../geometry/checks/check.ts';
import type { CheckId } from '../../../geometry/checks/ranges.ts';
import type { Job } from '../../../geometry/job.ts';
import type { AdviceAsk, AdviceWord } from '../advice.worker.ts';
import { adviceWorker } from '../workers.ts';

/** Advice is worked out once the job has rested this long, ms. */
const rest = 250;

export interface Advised {
  /** The job that the advice is for. */
  readonly job: Job | undefined;
  readonly of: Readonly<Partial<Record<CheckId, readonly Advice[]>>>;
}

const nothing: Advised = { job: undefined, of: {} };

/** Ways to bring the findings right, as a worker finds them; for another job than the one asked about there are none yet. */
export const useAdvice = (job: Job, findings: readonly Finding[]): Advised => {
  const [advised, setAdvised] = useState<Advised>(nothing);
  const worker = useRef<Worker | undefined>(undefined);
  const turn = useRef(0);
  useEffect(() => () => worker.current?.terminate(), []);
  useEffect(() => {
    const checks = findings.filter(({ level }) => level !== 'right').map(({ check }) => check);
    turn.current += 1;
    if (checks.length === 0) return setAdvised({ job, of: {} });
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
