import { useDeferredValue, useEffect, useMemo, useState } from 'react';
import { freeLetters } from '../../../geometry/alternatives.ts';
import { letters } from '../../../geometry/schema/alternatives.ts';
import { fieldId } from '../numbers/use-field.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { Chart } from './Chart.tsx';
import './compare.css';
import { designsOf } from './designs.ts';
import { List } from './List.tsx';
import { Radii } from './Radii.tsx';
import { Smalls } from './Smalls.tsx';
import { Table } from './Table.tsx';

const says = words.compare;

/** The alternatives: kept, named and exchanged; beside each other; in a table of what differs; and as gaps along the saddle. */
export const Compare = () => {
  const bench = useBench();
  const job = useBenchState((state) => state.job);
  const solved = useBenchState((state) => state.solved);
  const designs = useMemo(() => designsOf({ job, solved }), [job, solved]);
  // What is typed comes first; what stands beside each other follows as soon as there is time.
  const seen = useDeferredValue(designs);
  const seenJob = useDeferredValue(job);
  const isFull = freeLetters(job).length === 0;
  const hasOthers = designs.length > 1;
  const [added, setAdded] = useState<{ readonly letter: string | undefined }>();
  // What was just kept is named next.
  useEffect(() => {
    if (added) document.getElementById(fieldId(`alternatives.list.${added.letter}.name`))?.focus();
  }, [added]);
  return (
    <section className="compare" aria-labelledby="compare-title">
      <h2 id="compare-title">{says.label}</h2>
      {!hasOthers && <p>{says.about}</p>}
      <div className="making">
        <button type="button" disabled={isFull} onClick={() => setAdded({ letter: bench.addAlternative() })}>
          {says.add}
        </button>
        {isFull ? <p>{says.full(letters.length)}</p> : <Radii />}
      </div>
      {hasOthers && (
        <>
          <List designs={designs} />
          <h3>{says.beside}</h3>
          <Smalls designs={seen} />
          <Table job={seenJob} designs={seen} />
          <Chart designs={seen} />
        </>
      )}
    </section>
  );
};
