import { advise } from '../../geometry/checks/advise.ts';
import type { Advice } from '../../geometry/checks/check.ts';
import type { CheckId } from '../../geometry/checks/ranges.ts';
import type { Job } from '../../geometry/job.ts';

/** What is asked of the worker: ways out for some findings of a job. */
export interface AdviceAsk {
  readonly turn: number;
  readonly job: Job;
  readonly checks: readonly CheckId[];
}

/** What it answers, a check at a time. */
export interface AdviceWord {
  readonly turn: number;
  readonly check: CheckId;
  readonly advice: readonly Advice[];
}

let latest = 0;
const breath = () => new Promise((resolve) => setTimeout(resolve));

self.onmessage = async ({ data: { turn, job, checks } }: MessageEvent<AdviceAsk>) => {
  latest = turn;
  for (const check of checks) {
    // A newer question may have come in meanwhile: then nobody waits for this one.
    await breath();
    if (turn !== latest) return;
    const word: AdviceWord = { turn, check, advice: advise(job, check) };
    self.postMessage(word);
  }
};
