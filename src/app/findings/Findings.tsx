import { useMemo } from 'react';
import type { Finding, Level } from '../../../geometry/checks/check.ts';
import { Refused } from '../sheet/Refused.tsx';
import type { Built } from '../store.ts';
import { useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { findingsOf } from './findings-of.ts';
import { Item } from './Item.tsx';
import { useAdvice } from './use-advice.ts';

const says = words.findings;

const ofLevel = (findings: readonly Finding[], level: Level) => findings.filter((finding) => finding.level === level);

const List = ({ built }: { built: Built }) => {
  const asked = useBenchState((state) => state.job);
  const findings = useMemo(() => findingsOf(built), [built]);
  const advised = useAdvice(asked, findings);
  const right = ofLevel(findings, 'right');
  const open = findings.filter(({ level }) => level !== 'right');
  const counts = says.counts(ofLevel(open, 'wrong').length, ofLevel(open, 'doubtful').length, right.length);
  return (
    <>
      <p className="counts" role="status">
        {counts}
      </p>
      <ul className="open">
        {open.map((finding) => (
          <Item
            key={finding.check}
            finding={finding}
            advice={advised.of[finding.check]}
            isKnown={advised.job !== undefined}
          />
        ))}
      </ul>
      {right.length > 0 && (
        <details className="right">
          <summary>{says.right(right.length)}</summary>
          <ul>
            {right.map((finding) => (
              <Item key={finding.check} finding={finding} advice={undefined} isKnown={false} />
            ))}
          </ul>
        </details>
      )}
      <p className="small">{says.source}</p>
    </>
  );
};

/** What the checks say of the last numbers that could be built: worst first, with ways out. */
export const Findings = () => {
  const built = useBenchState((state) => state.built);
  const isStale = useBenchState((state) => !state.solved.ok);
  return (
    <section className="findings" aria-labelledby="findings-title" data-stale={isStale}>
      <h2 id="findings-title">{says.label}</h2>
      {isStale && <p className="stale">{built ? words.outcome.stale : says.none}</p>}
      <Refused />
      {built && <List built={built} />}
    </section>
  );
};
