import type { Job } from '../../../geometry/job.ts';
import { firstWords as words } from '../first-words.ts';
import { lookKey, openKey } from '../keys.ts';
import { reason } from './reason.ts';

const says = words.wreck;

interface WreckProps {
  readonly error: unknown;
  /** The job at the bench; nothing where none was there yet. */
  readonly job: Job | undefined;
  /** Keeps at once what is not safe yet. Where it cannot, what it says is of no use here: the job's file is offered beside. */
  readonly flush?: (() => Promise<void>) | undefined;
}

/** The job as a file's text without the reader and writer of files: nothing of the rest of the page may be needed here. */
const save = (job: Job) => {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([`${JSON.stringify(job, null, 2)}\n`], { type: 'application/json' }));
  link.download = 'job.json';
  link.click();
};

/** Makes the next visit begin with the demo; the job stays where it is kept. */
const leaveJob = () => {
  try {
    window.sessionStorage.setItem(openKey, '');
    window.sessionStorage.setItem(lookKey, 'null');
  } catch {
    // A browser that keeps nothing begins with the demo anyway.
  }
};

/** Stands in the place of the whole page when it cannot go on. */
export const Wreck = ({ error, job, flush }: WreckProps) => {
  const reload = async () => {
    await flush?.();
    window.location.reload();
  };
  return (
    <main className="wreck" role="alert">
      <h1>{says.title}</h1>
      <p>{says.why(reason(error))}</p>
      {job && <p>{says.job}</p>}
      <p>
        {job && (
          <button type="button" className="primary" onClick={() => save(job)}>
            {says.save}
          </button>
        )}
        <button type="button" onClick={reload}>
          {says.reload}
        </button>
        <button
          type="button"
          onClick={() => {
            leaveJob();
            void reload();
          }}
        >
          {says.demo}
        </button>
      </p>
    </main>
  );
};
