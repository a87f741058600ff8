import { useRef } from 'react';
import type { Letter } from '../../../geometry/alternatives.ts';
import { fieldAt } from '../../../geometry/fields.ts';
import { solvedAlternatives } from '../alternatives.ts';
import { jobAsRead } from '../decimal.ts';
import { saysId, useField } from '../numbers/use-field.ts';
import { Sample } from '../sheet/Alternatives.tsx';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';

const says = words.compare;

/** The name of a design, typed where it stands. */
const Name = ({ path, label }: { path: string; label: string }) => {
  const field = fieldAt(path);
  if (field === undefined) throw new RangeError(`${path} is no field of a job.`);
  const { says: refused, isRefused, focusProps, textProps } = useField(field);
  return (
    <span className="name">
      <input {...focusProps} {...textProps} data-kind="text" aria-label={label} placeholder={says.unnamed} />
      {refused !== undefined && (
        <span className="says" id={saysId(path)} role={isRefused ? 'alert' : undefined}>
          {refused}
        </span>
      )}
    </span>
  );
};

/** What keeps a design from being built, where something does. */
const Unbuilt = ({ letter }: { letter: Letter | undefined }) => {
  const problems = useBenchState((state) => {
    const own =
      letter === undefined
        ? state.solved
        : solvedAlternatives(jobAsRead(state)).find((one) => one.letter === letter)?.solved;
    return own?.ok === false ? own.problems : undefined;
  });
  return (
    problems && (
      <div className="why">
        <p>{says.unbuilt}</p>
        <ul>
          {problems.map(({ path, says: why }) => (
            <li key={`${path} ${why}`}>{why}</li>
          ))}
        </ul>
      </div>
    )
  );
};

/** Every design by its letter, to be named, put in the present one's place or removed; what keeps one from being built stands with it. */
export const List = () => {
  const bench = useBench();
  const others = useBenchState(({ job }) => job.alternatives.list);
  const list = useRef<HTMLUListElement>(null);
  /** What was pressed may be gone: the focus goes to the present design’s name. */
  const done = () => list.current?.querySelector('input')?.focus();
  return (
    <ul className="designs" ref={list}>
      {[undefined, ...others.map(({ id }) => id)].map((letter) => (
        <li key={letter ?? ''} data-now={letter === undefined}>
          <strong className="head">
            {letter ?? says.presentHead} {letter !== undefined && <Sample letter={letter} />}
          </strong>
          <Name
            path={letter === undefined ? 'alternatives.present' : `alternatives.list.${letter}.name`}
            label={letter === undefined ? says.nameOfPresent : says.nameOf(letter)}
          />
          {letter !== undefined && (
            <span className="doing">
              <button type="button" aria-label={says.makePresentOf(letter)} onClick={() => bench.makePresent(letter)}>
                {says.makePresent}
              </button>
              <button
                type="button"
                aria-label={says.removeOf(letter)}
                onClick={() => {
                  bench.removeAlternative(letter);
                  done();
                }}
              >
                {says.remove}
              </button>
            </span>
          )}
          <Unbuilt letter={letter} />
        </li>
      ))}
    </ul>
  );
};
