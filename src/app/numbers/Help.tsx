import { fieldAt, usualText } from '../../../geometry/fields.ts';
import { fieldTitle } from '../strings.ts';
import { useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { helpId } from './use-field.ts';

/** What the field in focus means and where it is taken; before any has been in focus, what this page is. It never moves anything. */
export const Help = () => {
  const path = useBenchState((state) => state.lastFocus);
  const job = useBenchState((state) => state.job);
  const field = path === undefined ? undefined : fieldAt(path);
  const usual = field && usualText(field, job.show);
  return (
    <div className="help" id={helpId}>
      {field && path ? (
        <>
          <strong>{fieldTitle(job, path)}</strong> <span>{field.help}</span>{' '}
          {usual && <span className="usual">{words.numbers.usual(usual)}</span>}
        </>
      ) : (
        words.intro.map((sentence) => <span key={sentence}>{sentence} </span>)
      )}
    </div>
  );
};
