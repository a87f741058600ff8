import { cleanName } from '../../geometry/names.ts';
import { ownRoom } from '../form.ts';
import { pagesOf, paragraph } from '../text-pages.ts';
import { designRows } from '../ticket/design-rows.ts';
import { findingRows } from '../ticket/finding-rows.ts';
import { jobRows } from '../ticket/job-rows.ts';
import { workRows } from '../ticket/work-rows.ts';
import type { ManyPiece } from './piece.ts';

const id = 'bench-ticket';
const title = 'Bench ticket';

/** All that is to be known of a job at the bench, in words and numbers that can be read at arm's length. */
export const benchTicket: ManyPiece = {
  id,
  title,
  faceUp: 'the printed one',
  use: 'Keep it beside the work: what the checks say, the order of work to tick off, and every number of the job.',
  usually: 0,
  ownPage: true,
  draw: (job, design, shop) => {
    const room = ownRoom(shop, job.show.decimal);
    const { width } = room;
    const pages = pagesOf(
      [
        paragraph(`${title}: ${cleanName(job.name)}, ${job.date}`, width, { bold: true }),
        ...findingRows(job, design, width),
        ...workRows(job, design, width),
        ...jobRows(job, width),
        ...designRows(job, design, width),
      ],
      room,
    );
    return pages.map((marks, i) => ({
      id: `${id}-${i + 1}`,
      title: `${title}, page ${i + 1} of ${pages.length}`,
      marks,
    }));
  },
};
