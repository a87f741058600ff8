import type { Design } from '../design.ts';
import type { Settled } from '../settle.ts';
import type { Check, Finding } from './check.ts';
import { checks } from './index.ts';
import { levelAt, rank, sideOf, worstFirst } from './level.ts';
import { rangeOf } from './ranges.ts';
import { type InWords, inWords, rangeText, sayer } from './say.ts';

/** What is worked out when it is first asked for. */
const lazy = <T>(of: () => T): (() => T) => {
  let known: { readonly value: T } | undefined;
  return () => {
    known ??= { value: of() };
    return known.value;
  };
};

const findingOf = (check: Check, job: Settled, design: Design): readonly Finding[] => {
  const { range, own, isOwn, kind, title } = rangeOf(job, check.id);
  const facts = worstFirst(range, check.facts(job, design));
  const [worst] = facts;
  if (worst === undefined) return [];
  const level = levelAt(range, worst.value);
  const side = sideOf(range, worst.value);
  // A number that is dragged makes all findings anew many times a second; few of them are read.
  const worded = lazy((): InWords => {
    const values = facts.map(({ value }) => value);
    return kind === 'length' ? inWords(job.show, range, own, values) : { show: job.show, range };
  });
  const says = lazy(() => {
    const { show, range: shown } = worded();
    return check.says({
      worst,
      level,
      facts,
      range,
      say: sayer(shown, kind, show),
      job: { ...job, show },
      design,
    });
  });
  const rangeSays = lazy(() => {
    const { show, range: shown } = worded();
    return rangeText(shown, kind, show, isOwn);
  });
  return [
    {
      check: check.id,
      title,
      level,
      get says() {
        return says();
      },
      means: (side && check.means[side]) ?? '',
      get range() {
        return rangeSays();
      },
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
