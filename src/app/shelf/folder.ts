import { writeJob } from '../../../geometry/job-file.ts';
import { fileName } from '../../../geometry/names.ts';
import { chooseFolder } from '../folder.ts';
import type { Keep } from '../keep/keep.ts';
import { cardsOf, jobOf } from '../keep/shelf.ts';

/** Names for files, one for each job: made of its name, and numbered where several would have the same. */
export const namesFor = (names: readonly string[]): readonly string[] => {
  const given = new Map<string, number>();
  return names.map((name) => {
    const stem = fileName(name);
    const count = (given.get(stem) ?? 0) + 1;
    given.set(stem, count);
    return count === 1 ? `${stem}.json` : `${stem}-${count}.json`;
  });
};

/** Writes every job that is not in the bin as a file of its own into a folder that the person chooses; undefined where they choose none. Rejects with what the browser rejects with. */
export const saveIntoFolder = async (
  keep: Keep,
): Promise<{ readonly count: number; readonly folder: string } | undefined> => {
  const folder = await chooseFolder();
  if (folder === undefined) return undefined;
  await keep.flush();
  const cards = (await cardsOf(keep.db)).filter(({ place }) => place !== 'bin');
  const names = namesFor(cards.map(({ name }) => name));
  for (const [k, { id }] of cards.entries()) {
    const known = await jobOf(keep.db, id);
    const name = names[k];
    if (known === undefined || name === undefined) continue;
    await folder.write(name, writeJob(known.job));
  }
  return { count: cards.length, folder: folder.name };
};
