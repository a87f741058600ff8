import type { Job } from '../../../geometry/job.ts';
import { readJob } from '../../../geometry/job-file.ts';
import { starters } from '../../jobs/index.ts';
import { oldKeys as keys } from '../stored-keys.ts';

/*
 * What earlier versions kept in the browser's small storage: what can be read moves to the shelf; what cannot stays where it is.
 */

/** What an earlier version left: the job that stood at the bench last, and those put aside. */
export interface Left {
  readonly job: Job | undefined;
  readonly aside: readonly Job[];
  /** To be called once all of it is safe elsewhere. */
  readonly clear: () => void;
}

const texts = (list: string | null): readonly string[] => {
  try {
    const read: unknown = JSON.parse(list ?? '[]');
    return Array.isArray(read) ? read.map(String) : [];
  } catch {
    return [];
  }
};

const read = (text: string): readonly Job[] => {
  const answer = readJob(text);
  return answer.ok ? [answer.job] : [];
};

/** What an earlier version left in this storage; undefined where it left nothing that can be read. Never throws. */
export const leftIn = (getStorage: () => Storage): Left | undefined => {
  try {
    const storage = getStorage();
    const [text, kept] = [storage.getItem(keys.job), storage.getItem(keys.kept)];
    // The demo, or a starter, as it came is nothing that anybody made.
    const own = text !== null && !starters.some((starter) => starter.text === text) ? read(text) : [];
    const aside = texts(kept).map((one) => ({ one, jobs: read(one) }));
    const torn = aside.filter(({ jobs }) => jobs.length === 0).map(({ one }) => one);
    if (own.length === 0 && torn.length === aside.length) return undefined;
    return {
      job: own[0],
      aside: aside.flatMap(({ jobs }) => jobs),
      clear: () => {
        if (own.length > 0) for (const key of [keys.job, keys.built, keys.folds]) storage.removeItem(key);
        if (torn.length === 0) storage.removeItem(keys.kept);
        else storage.setItem(keys.kept, JSON.stringify(torn));
      },
    };
  } catch {
    return undefined;
  }
};
