import { nearestGauge } from '../../../geometry/saddle/gauges.ts';
import { Fact, Row } from '../figures/Fact.tsx';
import { useStill } from '../sheet/use-still.ts';
import { useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { Gauges } from './Gauges.tsx';
import { gaugeText, isOwn, missText, ownUnit } from './gauge-text.ts';
import { Load } from './Load.tsx';
import { Neck } from './Neck.tsx';
import { PerString } from './PerString.tsx';

const says = words.outcome;

const stock = [
  'bridgeBlankLength',
  'bridgeBlankDepth',
  'bridgeBlankThickness',
  'bridgeVolume',
  'bridgeWeight',
  'capBlankLength',
  'capBlankDepth',
  'capBlankThickness',
  'capApart',
  'capStagger',
];
const overScar = ['overFront', 'overRear', 'overBass', 'overTreble', 'bareScar'];

/** What comes of the numbers; of the last that could be built, where these cannot. Every figure can be asked how it came about. Neck or bridge alone is always of the numbers as they are. */
export const Outcome = () => {
  const built = useStill(useBenchState((state) => state.built));
  const isStale = useStill(useBenchState((state) => !state.solved.ok));
  if (built === undefined) {
    return (
      <section className="outcome" aria-labelledby="outcome-title">
        <h2 id="outcome-title">{says.label}</h2>
        <Neck built={undefined} />
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
      {isStale && (
        <>
          <Neck built={undefined} />
          <p className="stale">{says.stale}</p>
        </>
      )}
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
      {!isStale && <Neck built={built} />}
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
      <h3>{says.stock}</h3>
      <dl>
        {stock.map((id) => (
          <Fact key={id} id={id} built={built} />
        ))}
      </dl>
      <PerString built={built} title={says.position} ids={['fret12ToSaddle', 'nutToSaddle']} />
      <dl>
        {overScar.map((id) => (
          <Fact key={id} id={id} built={built} />
        ))}
      </dl>
      <Gauges built={built} />
    </section>
  );
};
