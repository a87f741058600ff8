import type { Database } from '../../../src/app/keep/database.ts';
import { follow } from '../../../src/app/keep/follow.ts';
import type { Keep } from '../../../src/app/keep/keep.ts';
import { createBench } from '../../../src/app/store.ts';
import { workedExample } from '../../solved.ts';

/** A bench with the worked example on it, kept in this database by the one window that there is; what cannot be kept is thrown. */
export const keptBench = (db: Database) => {
  const bench = createBench({ job: workedExample() });
  const keep: Keep = {
    ...follow(bench, {
      db,
      channel: undefined,
      now: () => 1,
      nameFirst: 'first',
      nameForeign: () => 'elsewhere',
      onTrouble: (why) => {
        if (why !== undefined) throw why;
      },
    }),
    db,
  };
  return { bench, keep };
};
