import { useCallback, useMemo, useRef, useState } from 'react';
import type { Finding, Level } from '../../../geometry/checks/check.ts';
import type { CheckId } from '../../../geometry/checks/ranges.ts';
import { neckOf } from '../outcome/neck-of.ts';
import { Refused } from '../sheet/Refused.tsx';
import { useStill } from '../sheet/use-still.ts';
import type { Built } from '../store.ts';
import { useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { findingsOf } from './findings-of.ts';
import { Item } from './Item.tsx';
import { useAdvice } from './use-advice.ts';

const says = words.findings;

const ofLevel = (findings: readonly Finding[], level: Level) => findings.filter((finding) => finding.level === level);
/** The list that a finding belongs in. */
const listOf = ({ level }: Finding) => (level === 'right' ? 'right' : 'open');

const none: readonly Finding[] = [];

const List = ({ built, isStale }: { built: Built; isStale: boolean }) => {
  const asked = useStill(useBenchState((state) => state.job));
  const findings = useMemo(() => findingsOf(built), [built]);
  const advised = useAdvice(asked, isStale ? none : findings);
  const counts = useRef<HTMLParagraphElement>(null);
  // While its range is typed at, a finding stays where it was, whatever it becomes.
  const [ranged, setRanged] = useState<Readonly<Partial<Record<CheckId, 'right' | 'open'>>>>({});
  const [order, setOrder] = useState<readonly CheckId[]>([]);
  const isHeld = Object.values(ranged).some((list) => list !== undefined);
  const toCounts = useCallback(() => counts.current?.focus(), []);
  const onRange = useCallback(
    (check: CheckId) => {
      const finding = findings.find((one) => one.check === check);
      if (finding === undefined) return;
      const list = listOf(finding);
      // Closed, it goes to the list that it belongs in now, and its button with it.
      if ((ranged[check] ?? list) !== list) toCounts();
      if (!isHeld) setOrder(findings.map((one) => one.check));
      setRanged({ ...ranged, [check]: ranged[check] === undefined ? list : undefined });
    },
    [findings, ranged, isHeld, toCounts],
  );
  const itemsOf = (list: 'right' | 'open') =>
    (isHeld ? [...findings].sort((a, b) => order.indexOf(a.check) - order.indexOf(b.check)) : findings)
      .filter((finding) => (ranged[finding.check] ?? listOf(finding)) === list)
      .map((finding) => (
        <Item
          key={finding.check}
          finding={finding}
          advice={advised.of[finding.check]}
          isStale={isStale}
          isRangeOpen={ranged[finding.check] !== undefined}
          onRange={onRange}
          onDone={toCounts}
        />
      ));
  const right = itemsOf('right');
  const [wrong, doubtful, fine] = (['wrong', 'doubtful', 'right'] as const).map(
    (level) => ofLevel(findings, level).length,
  ) as [number, number, number];
  return (
    <>
      <p className="counts" role="status" ref={counts} tabIndex={-1}>
        {says.counts(wrong, doubtful, fine)}
      </p>
      <ul className="open">{itemsOf('open')}</ul>
      {right.length > 0 && (
        <details className="right">
          <summary>{says.right(fine)}</summary>
          <ul>{right}</ul>
        </details>
      )}
      <p className="small">{says.source}</p>
    </>
  );
};

/** What the checks say of the last numbers that could be built: worst first, with ways out. */
export const Findings = () => {
  const built = useStill(useBenchState((state) => state.built));
  const isStale = useStill(useBenchState((state) => !state.solved.ok));
  const neck = useBenchState((state) => neckOf(state.job));
  return (
    <section className="findings" aria-labelledby="findings-title" data-stale={isStale}>
      <h2 id="findings-title">{says.label}</h2>
      {neck && neck.neck.says !== 'bridge' && <p className="verdict">{neck.says}</p>}
      {isStale && <p className="stale">{built ? words.outcome.stale : says.none}</p>}
      {isStale && built && <p>{says.waysLater}</p>}
      <Refused />
      {built && <List built={built} isStale={isStale} />}
    </section>
  );
};
