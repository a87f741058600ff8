import type { ReactNode } from 'react';
import { figureAt } from '../../../geometry/figures/index.ts';
import { neckOrBridge } from '../../../geometry/instrument/neck.ts';
import { nearestGauge } from '../../../geometry/saddle/gauges.ts';
import { formatQuantity } from '../../../geometry/units.ts';
import { FigureValue } from '../figures/Figure.tsx';
import type { Built } from '../store.ts';
import { useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { Gauges } from './Gauges.tsx';
import { gaugeText, isOwn, missText, ownUnit } from './gauge-text.ts';
import { Load } from './Load.tsx';
import { PerString } from './PerString.tsx';

const says = words.outcome;

const Row = ({ name, value, children }: { name: string; value: ReactNode; children?: ReactNode }) => (
  <div className="fact">
    <dt>{name}</dt>
    <dd>
      <strong>{value}</strong> {children && <span>{children}</span>}
    </dd>
  </div>
);

/** A figure of the whole job, by its id; nothing where it does not apply. */
const Fact = ({ id, built, text, children }: { id: string; built: Built; text?: string; children?: ReactNode }) => {
  const figure = figureAt(id);
  if (figure === undefined || figure.value(built.job, built.design, 0) === undefined) return null;
  return (
    <Row
      name={figure.title}
      value={<FigureValue figure={figure} built={built} {...(text !== undefined && { text })} />}
    >
      {children}
    </Row>
  );
};

/** Neck or bridge: what suits the neck as it is, and what a reset would take. */
const Neck = ({ built }: { built: Built }) => {
  const { says: verdict, reset } = neckOrBridge(built.job);
  const say = (value: number) => formatQuantity(Math.abs(value), 'length', built.job.show, { unit: true });
  return (
    <>
      <h3>{says.neck}</h3>
      <p>{says.neckSays[verdict]}</p>
      <dl>
        <Fact id="suitsFrom" built={built} />
        <Fact id="suitsTo" built={built} />
      </dl>
      <details open={verdict !== 'bridge'}>
        <summary>{says.reset}</summary>
        <dl>
          <Fact id="resetRaise" built={built}>
            {says.resetFor(say(reset.forThickness))}
          </Fact>
          <Fact id="resetAngle" built={built} />
          <Fact id="resetOffHeel" built={built}>
            {says.resetOffHeel}
          </Fact>
        </dl>
      </details>
    </>
  );
};

/** What comes of the numbers; of the last that could be built, where these cannot. Every figure can be asked how it came about. */
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
  const { crown, nearestGauge: gauge } = design;
  const own = nearestGauge(design.gauges.filter(({ radius }) => isOwn(radius, job.show)));
  return (
    <section className="outcome" aria-labelledby="outcome-title" data-stale={isStale}>
      <h2 id="outcome-title">{says.label}</h2>
      {isStale && <p className="stale">{says.stale}</p>}
      <p className="small">{says.askThem}</p>
      <dl>
        <Fact id="straightedgeClearance" built={built}>
          {design.straightedgeClearance < 0 ? says.clearanceHigh : says.clearanceLight}
        </Fact>
        <Fact id="bestRadius" built={built}>
          {says.crownMiss(missText(crown.worst, job.show))}
        </Fact>
        <Fact id="nearestGauge" built={built} text={gaugeText(gauge.radius, job.show)}>
          {says.gaugeMiss(missText(gauge.worst, job.show))}
        </Fact>
        {own && own !== gauge && (
          <Row name={says.ownGauge[ownUnit(job.show)]} value={gaugeText(own.radius, job.show)}>
            {says.gaugeMiss(missText(own.worst, job.show))}
          </Row>
        )}
        <Fact id="woodUnderSlot" built={built} />
        <Fact id="saddleLineFromNut" built={built}>
          {says.fromNutSays}
        </Fact>
        <Fact id="saddleSlant" built={built}>
          {says.slantSays}
        </Fact>
      </dl>
      <PerString built={built} title={says.perString} ids={['exposure', 'breakAngle', 'saddleHeight', 'lifeLeft']} />
      <PerString
        built={built}
        title={says.breakPoints}
        ids={['neededSetback', 'setback', 'fromFront', 'fromBassEnd']}
      />
      <h3>{says.saddle}</h3>
      <dl>
        {['saddleThickness', 'saddleLength', 'saddleThicknessNeeded', 'blankLength', 'blankHeight'].map((id) => (
          <Fact key={id} id={id} built={built} />
        ))}
      </dl>
      <PerString
        built={built}
        title={says.pull}
        ids={['tension', 'downforce']}
        sums={['totalTension', 'totalDownforce']}
      />
      <Load built={built} />
      <Neck built={built} />
      <h3>{says.readings}</h3>
      <dl>
        {[
          'scale',
          'scaleByFrets',
          'scaleError',
          'neckPlaneHeight',
          'neckPlaneStrung',
          'neckPlaneStraightedge',
          'rise',
        ].map((id) => (
          <Fact key={id} id={id} built={built} />
        ))}
      </dl>
      <Gauges built={built} />
    </section>
  );
};
