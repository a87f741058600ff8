import type { Job } from '../../../geometry/job.ts';
import { type ReadJob, readJob, writeJob } from '../../../geometry/job-file.ts';
import { longestFile } from '../../../geometry/read-json.ts';
import { words } from '../words.ts';
import { pack, unpack } from './pack.ts';

const { broken } = words.share;

/** What stands before the job in an address: behind the #, so that no server is ever sent it. */
const begins = '#job=';
/** The longest fragment that is made or read, characters: mail programs and chats cut longer addresses [practice]. */
export const longestLink = 8000;
/** The longest job that a link may unpack to, bytes. */
const longestJob = longestFile;

export type Link = { readonly ok: true; readonly address: string } | { readonly ok: false; readonly length: number };

/** The address that opens a copy of this job wherever it is followed; refused with its length where it would be too long. `page` is the program's own address. */
export const linkTo = async (job: Job, page: string): Promise<Link> => {
  const address = `${page.replace(/#.*$/s, '')}${begins}${await pack(JSON.stringify(JSON.parse(writeJob(job))))}`;
  return address.length > longestLink ? { ok: false, length: address.length } : { ok: true, address };
};

/** Whether an address's fragment says that it holds a job. */
export const holdsJob = (fragment: string): boolean => fragment.startsWith(begins);

/** The job that a fragment holds, or what keeps it from being read. Never rejects. */
export const jobInLink = async (fragment: string): Promise<ReadJob> => {
  const refuse = (why: string): ReadJob => ({
    ok: false,
    problems: [{ path: '', value: '…', says: words.share.refused(why) }],
  });
  if (!holdsJob(fragment)) return refuse(broken.none);
  if (fragment.length > longestLink) return refuse(broken.long(fragment.length, longestLink));
  try {
    return readJob(await unpack(fragment.slice(begins.length), longestJob));
  } catch (error) {
    return refuse(error instanceof Error ? error.message : String(error));
  }
};
