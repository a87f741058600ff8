import type { Job } from '../../../geometry/job.ts';
import { cleanName } from '../../../geometry/names.ts';
import { readNewer } from '../../../geometry/newer.ts';
import { asRead } from '../decimal.ts';
import type { Keep } from '../keep/keep.ts';
import { addJobs, cardsOf, jobOf } from '../keep/shelf.ts';
import { holdsJob, jobInLink } from '../share/link.ts';
import type { Bench } from '../store.ts';
import { words } from '../words.ts';
import { differenceOf } from './difference.ts';
import { isShelf, longestShelf, readShelf } from './shelf-file.ts';

/*
 * The ways in for what someone sent: a file chosen, dropped or pasted, and a link. Nothing that is opened takes the place of anything on the shelf: it comes in beside.
 */

const says = words.opening;

/** The page is free between two jobs of a large file. */
const pause = () => new Promise<void>((done) => setTimeout(done));

/** In what an opened job differs from the last changed one of its name on the shelf. */
const compare = async (bench: Bench, keep: Keep, job: Job): Promise<void> => {
  await keep.flush();
  const { id, decimals } = bench.getState();
  const twin = (await cardsOf(keep.db)).find(
    (card) => card.id !== id && card.name === job.name && card.place !== 'bin',
  );
  const there = twin && (await jobOf(keep.db, twin.id));
  if (there === undefined) return;
  const details = differenceOf(asRead(job, decimals.mark), asRead(there.job, decimals.mark));
  const shown = cleanName(job.name);
  bench.note({
    id: 'beside',
    says: details.length === 0 ? says.same(shown) : says.beside(shown),
    details,
    fine: true,
  });
};

const openShelf = async (bench: Bench, keep: Keep, text: string, name: string): Promise<void> => {
  const read = await readShelf(text, pause);
  if (!read.ok) return bench.note({ id: 'open', says: words.notices.notOpened(name), details: [read.says] });
  await addJobs(keep.db, read.jobs, { now: Date.now(), name: words.opened(name) });
  bench.note({
    id: 'open',
    says: says.shelf(name, read.jobs.length),
    details: read.refused,
    fine: read.refused.length === 0,
  });
};

/** Opens what a text holds: a job, or many of a shelf's file; `from` is what the file is called. What cannot be opened is said; nothing is lost. Never rejects. */
export const openText = async (bench: Bench, keep: Keep | undefined, text: string, from: string): Promise<void> => {
  const name = cleanName(from);
  try {
    if (isShelf(text)) {
      if (keep === undefined)
        return bench.note({ id: 'open', says: words.notices.notOpened(name), details: [says.noShelf] });
      return await openShelf(bench, keep, text, name);
    }
    const read = bench.open(text, name);
    if (read.ok) {
      if (keep) await compare(bench, keep, read.job);
      return;
    }
    const newer = readNewer(text);
    if (newer === undefined) return;
    // Read only as far as it is understood: so only where the person says so.
    bench.note({
      id: 'open',
      says: says.newer(name, newer.version),
      details: newer.replaced.map((path) => says.replaced(path)),
      act: {
        says: says.openNewer,
        run: () => void bench.bring({ ok: true, job: newer.job, unknown: newer.unknown }, name),
      },
    });
  } catch (error) {
    bench.note({
      id: 'open',
      says: words.notices.notOpened(name),
      details: [error instanceof Error ? error.message : String(error)],
    });
  }
};

/** Opens files one after another, as `openText` does. One that is larger than any of Sagitta's is not even read. */
export const openFiles = async (bench: Bench, keep: Keep | undefined, files: readonly File[]): Promise<void> => {
  for (const file of files) {
    if (file.size > longestShelf) {
      bench.note({
        id: 'open',
        says: words.notices.notOpened(cleanName(file.name)),
        details: [says.tooLarge(file.size, longestShelf, bench.getState().decimals.mark)],
      });
    } else await openText(bench, keep, await file.text(), file.name);
  }
};

/** Opens the job that the page's address holds, and takes it out of the address, so that it comes in once. */
export const openLink = async (bench: Bench, keep: Keep | undefined): Promise<void> => {
  const { hash } = window.location;
  if (!holdsJob(hash)) return;
  window.history.replaceState(null, '', window.location.pathname + window.location.search);
  const read = bench.bring(await jobInLink(hash), says.link);
  try {
    if (read.ok && keep) await compare(bench, keep, read.job);
  } catch {
    // It is open; that it could not be compared is told by the shelf's own trouble.
  }
};
