import type { Design } from '../../geometry/design.ts';
import { figures } from '../../geometry/figures/index.ts';
import { shortName } from '../../geometry/names.ts';
import type { Settled } from '../../geometry/settle.ts';
import { heading, pairs, type Row, table } from '../text-pages.ts';
import { figureText, unitText } from './value-text.ts';

/** Every number that was worked out and applies to the job: those of the whole job, then a table of the strings'. */
export const designRows = (job: Settled, design: Design, width: number): readonly Row[] => {
  const whole = figures
    .filter(({ per }) => per === 'job')
    .flatMap(({ title, kind, value }) => {
      const found = value(job, design, 0);
      return found === undefined ? [] : [[title, figureText(found, kind, job.show, true)] as const];
    });
  const perString = figures
    .filter(({ per }) => per === 'string')
    .flatMap(({ title, kind, value }) => {
      const found = design.strings.map((_, k) => value(job, design, k));
      if (found.every((one) => one === undefined)) return [];
      const unit = unitText(kind, job.show);
      return [
        {
          label: unit === '' ? title : `${title}, ${unit}`,
          cells: found.map((one) => figureText(one, kind, job.show, false)),
        },
      ];
    });
  const heads = design.strings.map(({ name, id }) => shortName(name || id));
  return [
    heading('Worked out'),
    ...pairs(whole, width),
    heading('Worked out, string by string'),
    ...table(heads, perString, width),
  ];
};
