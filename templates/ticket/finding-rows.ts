import type { Finding } from '../../geometry/checks/check.ts';
import { findings } from '../../geometry/checks/findings.ts';
import type { Design } from '../../geometry/design.ts';
import type { Settled } from '../../geometry/settle.ts';
import { heading, paragraph, type Row } from '../text-pages.ts';

const levels = { wrong: 'WRONG', doubtful: 'DOUBTFUL', right: 'right' } as const;

/** Where a range comes from is said once for all that are usual. */
const usualSource = 'common practice, from memory';

const rangeOf = ({ range, source }: Finding): string =>
  [range.endsWith(' none') ? '' : range, source === usualSource ? '' : source].filter(Boolean).join(', ');

/** What the checks say, worst first: what was found with the range that is right, and what it means where it is not. */
export const findingRows = (job: Settled, design: Design, width: number): readonly Row[] => [
  heading('What the checks say'),
  paragraph(`Usual ranges are ${usualSource}.`, width),
  ...findings(job, design).flatMap((finding) => {
    const { level, says, means } = finding;
    const range = rangeOf(finding);
    const found = paragraph(`${levels[level]}: ${says}${range === '' ? '' : ` (${range})`}.`, width, {
      bold: level !== 'right',
    });
    return level === 'right' || means === ''
      ? [found]
      : [{ ...found, keeps: true as const }, paragraph(means, width, { inward: true })];
  }),
];
