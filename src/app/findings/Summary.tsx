import type { Level } from '../../../geometry/checks/check.ts';
import { goToHead, heads } from '../skips/heads.ts';
import type { State } from '../state.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { findingsOf } from './findings-of.ts';

const says = words.findings;

const countOf =
  (level: Level) =>
  ({ built }: State): number =>
    built === undefined ? 0 : findingsOf(built).filter((finding) => finding.level === level).length;

/** How many checks are not right, and the way to them: for where they lie out of sight. */
export const Summary = () => {
  const bench = useBench();
  const wrong = useBenchState(countOf('wrong'));
  const doubtful = useBenchState(countOf('doubtful'));
  return (
    <p className="summary">
      <a
        href={`#${heads.findings.id}`}
        onClick={(event) => {
          event.preventDefault();
          goToHead(bench, heads.findings.id);
        }}
      >
        {says.summary(wrong, doubtful)}
      </a>
    </p>
  );
};
