import { type ComponentProps, memo, useCallback, useRef, useState } from 'react';
import type { Finding, Level } from '../../../geometry/checks/check.ts';
import type { CheckId } from '../../../geometry/checks/ranges.ts';
import { jobAsRead } from '../decimal.ts';
import { neckOf } from '../outcome/neck-of.ts';
import { Resting } from '../Resting.tsx';
import { Refused } from '../sheet/Refused.tsx';
import { useStill } from '../sheet/use-still.ts';
import { heads } from '../skips/heads.ts';
import { SkipOn } from '../skips/SkipOn.tsx';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { findingsOf } from './findings-of.ts';
import { type HeldFindings, inOrder } from './held-findings.ts';
import { Item } from './Item.tsx';
import { type Advised, useAdvice } from './use-advice.ts';
import { useFindings, useHeldFindings } from './use-findings.ts';

const says = words.findings;

const ofLevel = (findings: readonly Finding[], level: Level) => findings.filter((finding) => finding.level === level);
/** The list that a finding belongs in: while a hand drags a number it stays among those that are not right. */
const listOf = ({ level, check }: Finding, held?: HeldFindings) =>
  level === 'right' && held?.open.has(check) !== true ? 'right' : 'open';

const none: readonly Finding[] = [];

interface ItemsProps extends Pick<ComponentProps<typeof Item>, 'isStale' | 'isHeld' | 'onRange' | 'onDone'> {
  readonly list: 'right' | 'open';
  /** Whether it is not folded away. */
  readonly isSeen: boolean;
  /** The findings whose range is typed at, and the list that each stays in meanwhile. */
  readonly ranged: Readonly<Partial<Record<CheckId, 'right' | 'open'>>>;
  /** The order in which they stay meanwhile. */
  readonly order: readonly CheckId[] | undefined;
  readonly advised: Advised;
}

/** The findings of one list. */
const Items = memo(({ list, isSeen, ranged, order, advised, ...item }: ItemsProps) => {
  const findings = useFindings(isSeen);
  const held = useHeldFindings(isSeen);
  return inOrder(findings, order ?? held?.order ?? [])
    .filter((finding) => (ranged[finding.check] ?? listOf(finding, held)) === list)
    .map((finding) => (
      <Item
        key={finding.check}
        {...item}
        finding={finding}
        advice={advised.of[finding.check]}
        isKept={finding.level === 'right' && held?.open.has(finding.check) === true}
        isRangeOpen={ranged[finding.check] !== undefined}
      />
    ));
});

const List = ({ isStale }: { isStale: boolean }) => {
  const bench = useBench();
  const findings = useFindings();
  // Advice is looked for once a hand lets go of its number.
  const asked = useStill(jobAsRead);
  const found = useStill(({ built, solved }) => (built === undefined || !solved.ok ? none : findingsOf(built)));
  const isHeld = useBenchState(({ held }) => held !== undefined);
  const advised = useAdvice(asked, found);
  const counts = useRef<HTMLParagraphElement>(null);
  const [isRightOpen, setRightOpen] = useState(false);
  // While its range is typed at, a finding stays where it was, whatever it becomes.
  const [ranged, setRanged] = useState<Readonly<Partial<Record<CheckId, 'right' | 'open'>>>>({});
  const [order, setOrder] = useState<readonly CheckId[]>([]);
  const isTyped = Object.values(ranged).some((list) => list !== undefined);
  const toCounts = useCallback(() => counts.current?.focus(), []);
  const onRange = useCallback(
    (check: CheckId) => {
      const { built } = bench.getState();
      const now = built === undefined ? none : findingsOf(built);
      const finding = now.find((one) => one.check === check);
      if (finding === undefined) return;
      const list = listOf(finding);
      // Closed, it goes to the list that it belongs in now, and its button with it.
      if ((ranged[check] ?? list) !== list) toCounts();
      if (!isTyped) setOrder(now.map((one) => one.check));
      setRanged({ ...ranged, [check]: ranged[check] === undefined ? list : undefined });
    },
    [bench, ranged, isTyped, toCounts],
  );
  const items = {
    ranged,
    order: isTyped ? order : undefined,
    advised,
    isStale,
    isHeld,
    onRange,
    onDone: toCounts,
  };
  const hasRight = findings.some((finding) => (ranged[finding.check] ?? listOf(finding)) === 'right');
  const [wrong, doubtful, fine] = (['wrong', 'doubtful', 'right'] as const).map(
    (level) => ofLevel(findings, level).length,
  ) as [number, number, number];
  return (
    <>
      <p className="counts" ref={counts} tabIndex={-1}>
        {says.counts(wrong, doubtful, fine)}
      </p>
      <ul className="open">
        <Items list="open" isSeen {...items} />
      </ul>
      {hasRight && (
        <details className="right" onToggle={({ currentTarget }) => setRightOpen(currentTarget.open)}>
          <summary>{says.right(fine)}</summary>
          <ul>
            <Resting>
              <Items list="right" isSeen={isRightOpen} {...items} />
            </Resting>
          </ul>
        </details>
      )}
      <p className="small">{says.source}</p>
    </>
  );
};

/** What the checks say of the last numbers that could be built: worst first, with ways out. */
export const Findings = () => {
  const isBuilt = useBenchState((state) => state.built !== undefined);
  const isStale = useBenchState((state) => !state.solved.ok);
  const verdict = useBenchState((state) => {
    const neck = neckOf(jobAsRead(state));
    return neck && neck.neck.says !== 'bridge' ? neck.says : undefined;
  });
  return (
    <section className="findings" aria-labelledby="findings-title" data-stale={isStale}>
      <h2 id="findings-title">{says.label}</h2>
      <SkipOn next={heads.outcome} />
      {verdict !== undefined && <p className="verdict">{verdict}</p>}
      {isStale && <p className="stale">{isBuilt ? words.outcome.stale : says.none}</p>}
      {isStale && isBuilt && <p>{says.waysLater}</p>}
      <Refused />
      {isBuilt && <List isStale={isStale} />}
    </section>
  );
};
