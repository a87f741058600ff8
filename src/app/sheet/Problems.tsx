import { goToField } from '../drawer/go-to-field.ts';
import { roomy } from '../media.ts';
import { fieldTitle } from '../strings.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { useMedia } from '../use-media.ts';
import { words } from '../words.ts';
import { useStill } from './use-still.ts';

/** What keeps the numbers from being built, each with the way to its field: in one line that opens, where the room is the fields’. */
export const Problems = () => {
  const bench = useBench();
  const job = useStill((state) => state.job);
  const solved = useStill((state) => state.solved);
  const isDrawn = useBenchState((state) => state.built !== undefined);
  const isRoomy = useMedia(roomy);
  const problems = solved.ok ? [] : solved.problems;
  const head = (
    <>
      <h2>{words.sheet.problems(problems.length)}</h2>
      {isDrawn && <span className="stale">{words.sheet.stale}</span>}
    </>
  );
  const list = (
    <ul>
      {problems.map(({ path, says }) => (
        <li key={`${path} ${says}`}>
          <span>{says}</span>
          <button type="button" onClick={() => goToField(bench, path)}>
            {words.sheet.show(fieldTitle(job, path))}
          </button>
        </li>
      ))}
    </ul>
  );
  return (
    <div role="alert">
      {problems.length > 0 &&
        (isRoomy ? (
          <div className="problems">
            <div className="head">{head}</div>
            {list}
          </div>
        ) : (
          <details className="problems">
            <summary>{head}</summary>
            {list}
          </details>
        ))}
    </div>
  );
};
