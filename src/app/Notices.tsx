import { saveText } from './save/files.ts';
import { saveJob } from './save/job-file.ts';
import type { Bench, Notice } from './store.ts';
import { useBench, useBenchState } from './use-bench.ts';
import { words } from './words.ts';

const save = (bench: Bench, { name, text }: NonNullable<Notice['file']>) => {
  if (text === undefined) saveJob(bench);
  else saveText(text, 'application/json', name ?? 'job.json');
};

/** What is to be said to the person, until they put it away. */
export const Notices = () => {
  const bench = useBench();
  const notices = useBenchState((state) => state.notices);
  return (
    <div className="notices" role="status" aria-label={words.notices.label}>
      {notices.map(({ id, says, details, fine, file, act }) => (
        <div className="notice" key={id} data-fine={fine}>
          <div>
            <p>{says}</p>
            {details.length > 0 && (
              <ul>
                {details.map((detail) => (
                  <li key={detail}>{detail}</li>
                ))}
              </ul>
            )}
          </div>
          {act && (
            <button
              type="button"
              onClick={() => {
                bench.dismiss(id);
                act.run();
              }}
            >
              {act.says}
            </button>
          )}
          {file && (
            <button type="button" onClick={() => save(bench, file)}>
              {file.says ?? words.keep.saveJob}
            </button>
          )}
          <button type="button" onClick={() => bench.dismiss(id)}>
            {words.notices.close}
          </button>
        </div>
      ))}
    </div>
  );
};
