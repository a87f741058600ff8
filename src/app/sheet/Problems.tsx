import { useState } from 'react';
import { fieldId } from '../numbers/use-field.ts';
import { fieldTitle } from '../strings.ts';
import { useBenchState } from '../use-bench.ts';
import { roomy, useMedia } from '../use-media.ts';
import { words } from '../words.ts';

const goTo = (path: string) => {
  const input = document.getElementById(fieldId(path));
  input?.scrollIntoView({ block: 'center' });
  input?.focus({ preventScroll: true });
};

/** What keeps the numbers from being built, each with the way to its field. */
export const Problems = () => {
  const job = useBenchState((state) => state.job);
  const solved = useBenchState((state) => state.solved);
  const isRoomy = useMedia(roomy);
  const [isOpen, setIsOpen] = useState(false);
  const problems = solved.ok ? [] : solved.problems;
  return (
    <div role="alert">
      {problems.length > 0 && (
        <div className="problems">
          <h2>{words.sheet.problems(problems.length)}</h2>
          <ul hidden={!isRoomy && !isOpen}>
            {problems.map(({ path, says }) => (
              <li key={`${path} ${says}`}>
                <span>{says}</span>
                <button type="button" onClick={() => goTo(path)}>
                  {words.sheet.show(fieldTitle(job, path))}
                </button>
              </li>
            ))}
          </ul>
          {!isRoomy && (
            <button type="button" className="unfold" aria-expanded={isOpen} onClick={() => setIsOpen(!isOpen)}>
              {isOpen ? words.sheet.less : words.sheet.more}
            </button>
          )}
        </div>
      )}
    </div>
  );
};
