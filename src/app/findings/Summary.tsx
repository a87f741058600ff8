import type { Level } from '../../../geometry/checks/check.ts';
import { goToHead, heads } from '../skips/heads.ts';
import { useBench } from '../use-bench.ts';
import { words } from '../words.ts';
import { useFindings } from './use-findings.ts';

const says = words.findings;

/** How many checks are not right, and the way to them: for where they lie out of sight. */
export const Summary = () => {
  const bench = useBench();
  const findings = useFindings();
  const countOf = (level: Level) => findings.filter((finding) => finding.level === level).length;
  return (
    <p className="summary">
      <a
        href={`#${heads.findings.id}`}
        onClick={(event) => {
          event.preventDefault();
          goToHead(bench, heads.findings.id);
        }}
      >
        {says.summary(countOf('wrong'), countOf('doubtful'))}
      </a>
    </p>
  );
};
