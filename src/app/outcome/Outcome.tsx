import type { ReactNode } from 'react';
import { nearestGauge } from '../../../geometry/saddle/gauges.ts';
import { formatQuantity, type QuantityKind, type ShowUnits } from '../../../geometry/units.ts';
import { Refused } from '../sheet/Refused.tsx';
import { useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { Gauges } from './Gauges.tsx';
import { gaugeText, isOwn, missText, ownUnit } from './gauge-text.ts';
import { PerString } from './PerString.tsx';

const says = words.outcome;

const Fact = ({ name, value, children }: { name: string; value: string; children?: ReactNode }) => (
  <div className="fact">
    <dt>{name}</dt>
    <dd>
      <strong>{value}</strong> {children && <span>{children}</span>}
    </dd>
  </div>
);

/** A quantity as people read it, its unit with it. */
export const withUnit =
  (show: ShowUnits) =>
  (value: number | string, kind: QuantityKind): string =>
    formatQuantity(value, kind, show, { unit: true });

/** What comes of the numbers; of the last that could be built, where these cannot. */
export const Outcome = () => {
  const built = useBenchState((state) => state.built);
  const isStale = useBenchState((state) => !state.solved.ok);
  if (built === undefined) {
    return (
      <section className="outcome" aria-labelledby="outcome-title">
        <h2 id="outcome-title">{says.label}</h2>
        <p className="stale">{says.none}</p>
      </section>
    );
  }
  const { job, design } = built;
  const say = withUnit(job.show);
  const { straightedgeClearance: light, crown, nearestGauge: gauge } = design;
  const own = nearestGauge(design.gauges.filter(({ radius }) => isOwn(radius, job.show)));
  return (
    <section className="outcome" aria-labelledby="outcome-title" data-stale={isStale}>
      <h2 id="outcome-title">{says.label}</h2>
      {isStale && <p className="stale">{says.stale}</p>}
      <Refused />
      <dl>
        <Fact name={says.clearance} value={say(Math.abs(light), 'length')}>
          {light < 0 ? says.clearanceHigh : says.clearanceLight}
        </Fact>
        <Fact name={says.crown} value={say(crown.radius, 'radius')}>
          {says.crownMiss(missText(crown.worst, job.show))}
        </Fact>
        <Fact name={says.gauge} value={gaugeText(gauge.radius, job.show)}>
          {says.gaugeMiss(missText(gauge.worst, job.show))}
        </Fact>
        {own && own !== gauge && (
          <Fact name={says.ownGauge[ownUnit(job.show)]} value={gaugeText(own.radius, job.show)}>
            {says.gaugeMiss(missText(own.worst, job.show))}
          </Fact>
        )}
        <Fact name={says.woodUnder} value={say(design.woodUnderSlot, 'length')} />
        <Fact name={says.fromNut} value={say(design.saddleLine.x, 'length')}>
          {says.fromNutSays}
        </Fact>
        <Fact name={says.tension} value={say(design.totalTension, 'force')} />
        <Fact name={says.downforce} value={say(design.totalDownforce, 'force')} />
      </dl>
      <PerString built={built} />
      <Gauges built={built} />
    </section>
  );
};
