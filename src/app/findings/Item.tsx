import { memo, useState } from 'react';
import type { Advice, Finding } from '../../../geometry/checks/check.ts';
import { usualRanges } from '../../../geometry/checks/ranges.ts';
import { useBench } from '../use-bench.ts';
import { words } from '../words.ts';
import { Mark } from './Mark.tsx';
import { RangeOf } from './RangeOf.tsx';

const says = words.findings;

/** One way out, and a button that goes it. */
const Way = ({ way, title }: { way: Advice; title: string }) => {
  const bench = useBench();
  const worse = way.worsens.map((id) => usualRanges[id].title.toLowerCase());
  return (
    <li>
      <span>
        {way.says} {worse.length > 0 && <em>{says.worsens(worse)}</em>}
      </span>
      <button
        type="button"
        aria-label={says.doIt(way.says)}
        onClick={() => bench.putAll(way.changes, says.step(title))}
      >
        {says.doItShort}
      </button>
    </li>
  );
};

/** One finding. One that is right is told in a line; the others say what they mean, where the range comes from, and what would bring them right. */
export const Item = memo(
  ({ finding, advice, isKnown }: { finding: Finding; advice: readonly Advice[] | undefined; isKnown: boolean }) => {
    const { check, level, title, means, range, source } = finding;
    const [isRangeOpen, setRangeOpen] = useState(false);
    return (
      <li className="finding" data-check={check} data-level={level}>
        <Mark level={level} />
        <div>
          <p>
            <strong>{finding.says}</strong>
          </p>
          <p className="range">
            {range}; {source}.{' '}
            <button
              type="button"
              className="link"
              aria-expanded={isRangeOpen}
              aria-label={says.changeRangeOf(title)}
              onClick={() => setRangeOpen(!isRangeOpen)}
            >
              {says.changeRange}
            </button>
          </p>
          {isRangeOpen && <RangeOf check={check} />}
          {level !== 'right' && (
            <>
              {means !== '' && <p>{means}</p>}
              {advice === undefined ? (
                <p className="small">{isKnown ? '' : says.looking}</p>
              ) : advice.length === 0 ? (
                <p>{says.noWay}</p>
              ) : (
                <ul className="ways" aria-label={says.ways(title)}>
                  {advice.map((way) => (
                    <Way key={way.says} way={way} title={title} />
                  ))}
                </ul>
              )}
            </>
          )}
        </div>
      </li>
    );
  },
);
