import { type ComponentProps, type ComponentType, useEffect, useMemo, useState } from 'react';
import { freeLetters } from '../../../geometry/alternatives.ts';
import type { Job } from '../../../geometry/job.ts';
import { letters } from '../../../geometry/schema/alternatives.ts';
import { jobAsRead } from '../decimal.ts';
import { fieldId } from '../numbers/use-field.ts';
import { Resting } from '../Resting.tsx';
import { heads } from '../skips/heads.ts';
import { SkipOn } from '../skips/SkipOn.tsx';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { Chart } from './Chart.tsx';
import './compare.css';
import { type Compared, designsOf } from './designs.ts';
import { List } from './List.tsx';
import { Radii } from './Radii.tsx';
import { Smalls } from './Smalls.tsx';
import { Table } from './Table.tsx';

const says = words.compare;

/** One way to see the designs beside each other. */
const Shown = ({ of: Part }: { of: ComponentType<{ job: Job; designs: readonly Compared[] }> }) => {
  const job = useBenchState(jobAsRead);
  const solved = useBenchState((state) => state.solved);
  const designs = useMemo(() => designsOf({ job, solved }), [job, solved]);
  return <Part job={job} designs={designs} />;
};

const Beside = ({ of }: ComponentProps<typeof Shown>) => (
  <Resting isSlow>
    <Shown of={of} />
  </Resting>
);

/** The alternatives: kept, named and exchanged; beside each other; in a table of what differs; and as gaps along the saddle. */
export const Compare = () => {
  const bench = useBench();
  const isFull = useBenchState(({ job }) => freeLetters(job).length === 0);
  const hasOthers = useBenchState(({ job }) => job.alternatives.list.length > 0);
  const [added, setAdded] = useState<{ readonly letter: string | undefined }>();
  // What was just kept is named next.
  useEffect(() => {
    if (added) document.getElementById(fieldId(`alternatives.list.${added.letter}.name`))?.focus();
  }, [added]);
  return (
    <section className="compare" aria-labelledby="compare-title">
      <h2 id="compare-title">{says.label}</h2>
      <SkipOn next={heads.strings} />
      {!hasOthers && <p>{says.about}</p>}
      <div className="making">
        <button type="button" disabled={isFull} onClick={() => setAdded({ letter: bench.addAlternative() })}>
          {says.add}
        </button>
        {isFull ? <p>{says.full(letters.length)}</p> : <Radii />}
      </div>
      {hasOthers && (
        <>
          <List />
          <h3>{says.beside}</h3>
          <Beside of={Smalls} />
          <Beside of={Table} />
          <Beside of={Chart} />
        </>
      )}
    </section>
  );
};
