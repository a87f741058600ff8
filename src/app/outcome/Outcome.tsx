import { jobAsRead } from '../decimal.ts';
import { Fact, Row } from '../figures/Fact.tsx';
import { settledFrom } from '../numbers/settled.ts';
import { Resting } from '../Resting.tsx';
import { SkipOn } from '../skips/SkipOn.tsx';
import { useBenchState, useBuilt } from '../use-bench.ts';
import { words } from '../words.ts';
import { factSays, ownGauge } from './fact-says.ts';
import { Gauges } from './Gauges.tsx';
import { gaugeText, ownUnit } from './gauge-text.ts';
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

const saddle = ['saddleThickness', 'saddleLength', 'saddleThicknessNeeded', 'blankLength', 'blankHeight'];
const readings = [
  'scale',
  'scaleByFrets',
  'scaleError',
  'neckPlaneHeight',
  'neckPlaneStrung',
  'neckPlaneStraightedge',
  'rise',
];

/** The crown, the straightedge and the slot. */
const Main = () => {
  const built = useBuilt();
  if (built === undefined) return null;
  const own = ownGauge(built);
  const fact = (id: string) => (
    <Fact key={id} id={id} built={built}>
      {factSays[id]?.(built)}
    </Fact>
  );
  return (
    <dl>
      {['straightedgeClearance', 'bestRadius', 'nearestGauge'].map(fact)}
      {own && own !== built.design.nearestGauge && (
        <Row id="ownGauge" name={says.ownGauge[ownUnit(built.job.show)]} value={gaugeText(own.radius, built.job.show)}>
          {factSays.ownGauge?.(built)}
        </Row>
      )}
      {['woodUnderSlot', 'saddleLineFromNut', 'saddleSlant'].map(fact)}
    </dl>
  );
};

/** Figures of the whole job, one under the other. */
const Facts = ({ ids }: { ids: readonly string[] }) => {
  const built = useBuilt();
  return (
    built && (
      <dl>
        {ids.map((id) => (
          <Fact key={id} id={id} built={built} />
        ))}
      </dl>
    )
  );
};

/** What was read off the guitar, each with where it comes from where a word stands in its field. */
const Readings = () => {
  const built = useBuilt();
  const job = useBenchState(jobAsRead);
  return (
    built && (
      <dl>
        {readings.map((id) => (
          <Fact key={id} id={id} built={built}>
            {settledFrom(job, `guitar.${id}`)}
          </Fact>
        ))}
      </dl>
    )
  );
};

/** What comes of the numbers; of the last that could be built, where these cannot. Every figure can be asked how it came about. Neck or bridge alone is always of the numbers as they are. */
export const Outcome = () => {
  const isBuilt = useBenchState((state) => state.built !== undefined);
  const isStale = useBenchState((state) => !state.solved.ok);
  if (!isBuilt) {
    return (
      <section className="outcome" aria-labelledby="outcome-title">
        <h2 id="outcome-title">{says.label}</h2>
        <SkipOn />
        <Neck isStale />
        <p className="stale">{says.none}</p>
      </section>
    );
  }
  return (
    <section className="outcome" aria-labelledby="outcome-title" data-stale={isStale}>
      <h2 id="outcome-title">{says.label}</h2>
      <SkipOn />
      {isStale && (
        <>
          <Neck isStale />
          <p className="stale">{says.stale}</p>
        </>
      )}
      <p className="small">{says.askThem}</p>
      <Resting>
        <Main />
      </Resting>
      <Resting>
        <PerString title={says.perString} ids={['exposure', 'breakAngle', 'saddleHeight', 'lifeLeft']} />
      </Resting>
      <Resting>
        <PerString title={says.breakPoints} ids={['neededSetback', 'setback', 'fromFront', 'fromBassEnd']} />
      </Resting>
      <Resting>
        <h3>{says.saddle}</h3>
        <Facts ids={saddle} />
      </Resting>
      <Resting>
        <PerString title={says.pull} ids={['tension', 'downforce']} sums={['totalTension', 'totalDownforce']} />
        <Load />
      </Resting>
      <Resting isSlow>
        {!isStale && <Neck isStale={false} />}
        <h3>{says.readings}</h3>
        <Readings />
      </Resting>
      <Resting>
        <h3>{says.stock}</h3>
        <Facts ids={stock} />
        <PerString title={says.position} ids={['fret12ToSaddle', 'nutToSaddle']} />
        <Facts ids={overScar} />
      </Resting>
      <Resting isSlow>
        <Gauges />
      </Resting>
    </section>
  );
};
