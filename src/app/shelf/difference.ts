import { changesBetween } from '../../../geometry/changes.ts';
import { applies, fieldAt, getAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import { cleanName, quote } from '../../../geometry/names.ts';
import { shownPath } from '../../../geometry/read-json.ts';
import { fieldTitle } from '../strings.ts';
import { stands } from '../typing.ts';
import { words } from '../words.ts';

/** At most so many differences are told one by one. */
const most = 12;

/** In what a job differs from another one, each in a line: the field, and what stands there in both. What does not count in either is left out. */
export const differenceOf = (here: Job, there: Job): readonly string[] => {
  const lines = changesBetween(there, here).flatMap(({ path, order }) => {
    if (order !== undefined) return [];
    const at = path.join('.');
    const field = fieldAt(at);
    if (field === undefined) return [words.shelf.differs(shownPath(at))];
    if (![here, there].some((job) => applies(field, job))) return [];
    const value = (job: Job) => {
      const found = getAt(job, at);
      if (found === undefined) return words.shelf.nothing;
      return field.kind === 'text' ? quote(String(found)) : stands(field, found, job.show);
    };
    return [words.shelf.differsBy(cleanName(fieldTitle(here, at)), value(here), value(there))];
  });
  return lines.length <= most ? lines : [...lines.slice(0, most), words.shelf.differsMore(lines.length - most)];
};
