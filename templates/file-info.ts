import { paperOf } from './paper.ts';
import type { PdfOptions } from './pdf.ts';
import type { Shop } from './shop/index.ts';
import type { SheetInfo } from './title-block.ts';

/** What a file of templates says of itself: whose job's they are, what wrote them, what they are, and their day, which is the job's own and not the clock's: the same job gives the same file. */
export const fileInfo = (
  { job, date, version, decimal }: SheetInfo,
  shop: Shop,
): Pick<PdfOptions, 'title' | 'author' | 'subject' | 'date'> => ({
  title: job || 'Templates',
  author: `Sagitta ${version}`,
  subject: `Bridge and saddle templates, 1:1, on ${paperOf(shop, decimal).name}`,
  date: new Date(`${date}T00:00:00Z`),
});
