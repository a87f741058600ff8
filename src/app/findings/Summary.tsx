import type { Built } from '../store.ts';
import { words } from '../words.ts';
import { findingsOf } from './findings-of.ts';

const says = words.findings;

/** How many checks are not right, and the way to them: for where they lie out of sight. */
export const Summary = ({ built }: { built: Built }) => {
  const findings = findingsOf(built);
  const count = (level: string) => findings.filter((finding) => finding.level === level).length;
  return (
    <p className="summary">
      <a href="#findings-title">{says.summary(count('wrong'), count('doubtful'))}</a>
    </p>
  );
};
