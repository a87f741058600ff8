import { useId, useState } from 'react';
import { freeLetters } from '../../../geometry/alternatives.ts';
import { gaugesAbout } from '../../../geometry/saddle/gauges.ts';
import { jobAsRead } from '../decimal.ts';
import { useStill } from '../sheet/use-still.ts';
import { useBench } from '../use-bench.ts';
import { words } from '../words.ts';
import { readRow, rowText } from './radius-row.ts';

const says = words.compare;

/** How many gauges are offered, where there are letters for them. */
const offered = 4;

/** Radius against radius: the same bridge at a row of top radii, in one step. What is offered are the gauges that span the present radius. */
export const Radii = () => {
  const bench = useBench();
  // What is offered waits for a hand that holds a number.
  const job = useStill(jobAsRead);
  const id = useId();
  const [typed, setTyped] = useState<string | undefined>();
  const [refused, setRefused] = useState<string | undefined>();
  const room = freeLetters(job).length;
  const { topRadius } = job.bridge;
  const already = job.alternatives.list.map(({ bridge }) => bridge.topRadius);
  const gauges = gaugesAbout(topRadius, job.show.radius, Math.min(offered, room), already);
  const text = typed ?? rowText(gauges, job.show);
  const add = () => {
    const read = readRow(text, job.show, room, topRadius);
    setRefused(read.ok ? undefined : read.says);
    if (!read.ok) return;
    bench.addRadii(read.radii);
    setTyped(undefined);
  };
  return (
    <form
      className="radii"
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <label htmlFor={id}>{says.radii(job.show.radius === 'mm' ? 'mm' : 'in')}</label>
      <input
        id={id}
        type="text"
        autoComplete="off"
        spellCheck={false}
        data-kind="text"
        value={text}
        aria-invalid={refused === undefined ? undefined : true}
        aria-describedby={refused === undefined ? undefined : `${id}-says`}
        onChange={({ target }) => {
          setTyped(target.value);
          setRefused(undefined);
        }}
      />
      <button type="submit">{says.addRadii}</button>
      {refused !== undefined && (
        <p className="says" id={`${id}-says`} role="alert">
          {refused}
        </p>
      )}
    </form>
  );
};
