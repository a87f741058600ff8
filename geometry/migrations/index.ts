import { fromVersion1 } from './from-1.ts';
import { fromVersion2 } from './from-2.ts';

type Bag = Readonly<Record<string, unknown>>;

/** One small step for each version that a job file has had: the step under n makes version n + 1 of it. A new version is a file beside this one and a line here. */
const steps: Readonly<Record<number, (job: Bag) => Bag>> = { 1: fromVersion1, 2: fromVersion2 };

/** A job of an earlier version, step by step as one of `version`; undefined where no step leads on. */
export const migrate = (job: Bag, version: number): Bag | undefined => {
  let at: Bag = job;
  while (at.version !== version) {
    const step = typeof at.version === 'number' ? steps[at.version] : undefined;
    if (step === undefined) return undefined;
    at = step(at);
  }
  return at;
};
