import { saveJob } from '../save/job-file.ts';
import { useBench } from '../use-bench.ts';
import { words } from '../words.ts';
import { reason } from './reason.ts';

export type BrokenPart = keyof typeof words.crash.parts;

interface BrokenProps {
  readonly part: BrokenPart;
  readonly error: unknown;
  readonly onAgain: () => void;
}

/** Stands in the place of a part of the page that could not be shown. */
export const Broken = ({ part, error, onAgain }: BrokenProps) => {
  const bench = useBench();
  return (
    <div className="notice broken" data-part={part} role="alert">
      <p>{words.crash.says(words.crash.parts[part], reason(error))}</p>
      <button type="button" onClick={onAgain}>
        {part === 'dialog' ? words.notices.close : words.crash.again}
      </button>
      <button type="button" onClick={() => saveJob(bench)}>
        {words.crash.save}
      </button>
    </div>
  );
};
