import type { ReactNode } from 'react';
import { figureAt } from '../../../geometry/figures/index.ts';
import type { NeckOrBridge } from '../../../geometry/instrument/neck.ts';
import { jobAsRead } from '../decimal.ts';
import { Fact, Row } from '../figures/Fact.tsx';
import { valueText } from '../figures/figure-text.ts';
import { useBenchState, useBuilt } from '../use-bench.ts';
import { words } from '../words.ts';
import { neckOf, unread } from './neck-of.ts';

const says = words.outcome;

/** The figures of neck or bridge, by their ids. */
const values = {
  suitsFrom: ({ suits }: NeckOrBridge) => suits.from,
  suitsTo: ({ suits }: NeckOrBridge) => suits.to,
  resetRaise: ({ reset }: NeckOrBridge) => reset.raise,
  resetAngle: ({ reset }: NeckOrBridge) => reset.angle,
  resetOffHeel: ({ reset }: NeckOrBridge) => reset.offHeel,
};

/** Neck or bridge: what suits the neck as it is, and what a reset would take. Its numbers can be asked how they came about where the numbers typed could be built. */
export const Neck = ({ isStale }: { isStale: boolean }) => {
  const lastBuilt = useBuilt();
  const built = isStale ? undefined : lastBuilt;
  const job = useBenchState(jobAsRead);
  const found = neckOf(job);
  const missing = unread(job);
  if (found === undefined && missing.length === 0) return null;
  const one = (id: keyof typeof values, { neck }: { neck: NeckOrBridge }, said?: ReactNode) => {
    const figure = figureAt(id);
    if (figure === undefined) return null;
    return built !== undefined ? (
      <Fact id={id} built={built}>
        {said}
      </Fact>
    ) : (
      <Row name={figure.title} value={valueText(values[id](neck), figure.kind, job.show)}>
        {said}
      </Row>
    );
  };
  return (
    <>
      <h3>{says.neck}</h3>
      {found && (
        <>
          <p>{found.says}</p>
          <dl>
            {one('suitsFrom', found)}
            {one('suitsTo', found)}
          </dl>
          <details open={found.neck.says !== 'bridge'}>
            <summary>{says.reset}</summary>
            <dl>
              {one('resetRaise', found, says.resetFor(valueText(found.neck.reset.forThickness, 'length', job.show)))}
              {one('resetAngle', found)}
              {one('resetOffHeel', found, says.resetOffHeel)}
            </dl>
          </details>
        </>
      )}
      {missing.length > 0 && <p className="small">{says.unread(missing)}</p>}
    </>
  );
};
