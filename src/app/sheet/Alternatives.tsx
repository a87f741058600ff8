import { overKey, solvedAlternatives } from '../alternatives.ts';
import { jobAsRead } from '../decimal.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';

/** Which alternatives lie over the drawing: the key to their lines, and the way to show and hide each. */
export const Alternatives = () => {
  const bench = useBench();
  const list = useBenchState((state) => state.job.alternatives.list);
  const folds = useBenchState((state) => state.folds);
  const unbuilt = useBenchState((state) =>
    solvedAlternatives(jobAsRead(state))
      .filter(({ solved }) => !solved.ok)
      .map(({ letter }) => letter)
      .join(),
  ).split(',');
  if (list.length === 0) return null;
  return (
    <fieldset className="over">
      <legend>{words.compare.over}</legend>
      {list.map(({ id: letter, name }) => (
        <label key={letter} title={words.compare.called(letter, name)}>
          <input
            type="checkbox"
            checked={!unbuilt.includes(letter) && folds[overKey(letter)] !== false}
            disabled={unbuilt.includes(letter)}
            aria-label={words.compare.showOver(letter, name)}
            onChange={({ target }) => bench.fold(overKey(letter), target.checked)}
          />
          <Sample letter={letter} />
          <span>{letter}</span>
        </label>
      ))}
    </fieldset>
  );
};

/** A piece of an alternative's line. */
export const Sample = ({ letter }: { letter: string }) => (
  <svg className="sample" viewBox="0 0 34 8" width="34" height="8" aria-hidden="true">
    <path d="M1 4H33" data-alternative={letter} className="casing" />
    <path d="M1 4H33" data-alternative={letter} />
  </svg>
);
