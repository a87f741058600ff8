import { memo, useState } from 'react';
import type { Advice, Finding } from '../../../geometry/checks/check.ts';
import { type CheckId, usualRanges } from '../../../geometry/checks/ranges.ts';
import { useBench } from '../use-bench.ts';
import { words } from '../words.ts';
import { Mark } from './Mark.tsx';
import { RangeOf } from './RangeOf.tsx';
import { isReading } from './reading.ts';

const says = words.findings;

/** One way out, and a button that goes it; what is measured has none, as it is read on the guitar and not made by typing. */
const Way = ({ way, title, onDone }: { way: Advice; title: string; onDone: () => void }) => {
  const bench = useBench();
  const isRead = way.changes.some(({ path }) => isReading(path));
  const worse = way.worsens.map((id) => usualRanges[id].title.toLowerCase());
  return (
    <li>
      <span>
        {way.says} {worse.length > 0 && <em>{says.worsens(worse)}</em>}
        {isRead && <small> {says.thenMeasure}</small>}
      </span>
      {!isRead && (
        <button
          type="button"
          aria-label={says.doIt(way.says)}
          onClick={() => {
            bench.putAll(way.changes, says.step(title));
            onDone();
          }}
        >
          {says.doItShort}
        </button>
      )}
    </li>
  );
};

interface ItemProps {
  readonly finding: Finding;
  /** Undefined while it is looked for. */
  readonly advice: readonly Advice[] | undefined;
  /** The numbers typed cannot be built: no way out is looked for. */
  readonly isStale: boolean;
  /** A hand holds a number: the ways out are those from before it was moved, till it lets go. */
  readonly isHeld: boolean;
  /** It has become right under a hand, which may yet make it doubtful again: it keeps its room. */
  readonly isKept: boolean;
  readonly isRangeOpen: boolean;
  /** Opens or closes the range of a check. */
  readonly onRange: (check: CheckId) => void;
  /** After a way out was gone, whose button is gone with it. */
  readonly onDone: () => void;
}

/** Whether two findings read alike. */
const readsAlike = (a: Finding, b: Finding): boolean =>
  a.says === b.says && a.level === b.level && a.range === b.range && a.means === b.means && a.source === b.source;

/** A finding is made anew with each change of the job; its item only where it reads otherwise. */
const isAlike = ({ finding: a, ...before }: ItemProps, { finding: b, ...now }: ItemProps): boolean =>
  readsAlike(a, b) && (Object.keys(now) as (keyof typeof now)[]).every((key) => before[key] === now[key]);

/** One finding. One that is right is told in a line; the others say what they mean, where the range comes from, and what would bring them right. */
export const Item = memo(({ finding, advice, isStale, isHeld, isKept, isRangeOpen, onRange, onDone }: ItemProps) => {
  const { check, level, title, range, source } = finding;
  // What is right means nothing more.
  const [means, setMeans] = useState(finding.means);
  if (level !== 'right' && finding.means !== means) setMeans(finding.means);
  return (
    <li className="finding" data-check={check} data-level={level}>
      <Mark level={level} />
      <div>
        <p>
          <strong>{finding.says}</strong>
        </p>
        <p className="range">
          {range.endsWith(' none') ? '' : `${range}; `}
          {source}.{' '}
          <button
            type="button"
            className="link"
            aria-expanded={isRangeOpen}
            aria-label={says.changeRangeOf(title)}
            onClick={() => onRange(check)}
          >
            {says.changeRange}
          </button>
        </p>
        {isRangeOpen && <RangeOf check={check} />}
        {(level !== 'right' || isKept) && (
          <div className="more" data-void={isKept}>
            {means !== '' && <p>{means}</p>}
            {isStale ? null : advice === undefined ? (
              <p className="small">{says.looking}</p>
            ) : advice.length === 0 ? (
              <p>{says.noWay}</p>
            ) : (
              <ul className="ways" aria-label={says.ways(title)} data-wait={isHeld}>
                {advice.map((way) => (
                  <Way key={way.says} way={way} title={title} onDone={onDone} />
                ))}
              </ul>
            )}
          </div>
        )}
      </div>
    </li>
  );
}, isAlike);
