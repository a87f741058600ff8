import type { Design } from '../design.ts';
import type { Settled } from '../settle.ts';
import type { Check, Finding } from './check.ts';
import { checks } from './index.ts';
import { levelAt, rank, sideOf, worstFirst } from './level.ts';
import { rangeOf } from './ranges.ts';
import { rangeText, sayer } from './say.ts';

const findingOf = (check: Check, job: Settled, design: Design): readonly Finding[] => {
  const { range, isOwn, kind, title } = rangeOf(job, check.id);
  const facts = worstFirst(range, check.facts(job, design));
  const [worst] = facts;
  if (worst === undefined) return [];
  const level = levelAt(range, worst.value);
  const side = sideOf(range, worst.value);
  const say = sayer(range, kind, job.show);
  return [
    {
      check: check.id,
      title,
      level,
      says: check.says({ worst, level, facts, range, say, job, design }),
      means: (side && check.means[side]) ?? '',
      range: rangeText(range, kind, job.show, isOwn),
      source: isOwn ? 'set for this job' : 'common practice, from memory',
      isOwnRange: isOwn,
      path: check.path,
      facts,
    },
  ];
};

/** What every check finds in a solved job, worst first, equally grave ones in the checks' own order; checks that do not apply are left out. */
export const findings = (job: Settled, design: Design): readonly Finding[] =>
  checks
    .flatMap((check) => findingOf(check, job, design))
    .map((finding, order) => ({ finding, order }))
    .sort((a, b) => rank[b.finding.level] - rank[a.finding.level] || a.order - b.order)
    .map(({ finding }) => finding);
