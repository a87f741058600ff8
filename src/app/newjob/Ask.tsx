import { type ReactNode, useId } from 'react';
import { fieldAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import { SketchOf } from '../numbers/SketchOf.tsx';

/** One question, with its sketch and what is said of it. */
export const Ask = ({
  path,
  job,
  label,
  help,
  says,
  children,
}: {
  path: string;
  job: Job;
  label: string;
  help?: string | undefined;
  says?: string | undefined;
  children: (props: { id: string; 'aria-describedby': string; 'aria-invalid': true | undefined }) => ReactNode;
}) => {
  const id = useId();
  return (
    <div className="question" data-ask={path}>
      <SketchOf path={path} job={job} />
      <div>
        <label htmlFor={id}>{label}</label>
        {children({
          id,
          'aria-describedby': `${id}-help ${id}-says`,
          'aria-invalid': says === undefined ? undefined : true,
        })}
        <p className="small" id={`${id}-help`}>
          {help}
        </p>
        <p className="says" id={`${id}-says`} role="alert">
          {says}
        </p>
      </div>
    </div>
  );
};

/** A question with a list of answers; named and explained as its field where it is one. */
export const AskChoice = <Key extends string>({
  path,
  label,
  help,
  job,
  value,
  choices,
  onChange,
}: {
  path: string;
  label?: string;
  help?: string;
  job: Job;
  value: Key;
  choices?: Readonly<Record<Key, string>>;
  onChange: (key: Key) => void;
}) => {
  const field = fieldAt(path);
  return (
    <Ask path={path} job={job} label={label ?? field?.label ?? path} help={help ?? field?.help}>
      {(props) => (
        <select {...props} value={value} onChange={({ target }) => onChange(target.value as Key)}>
          {Object.entries<string>(choices ?? field?.choices ?? {}).map(([key, called]) => (
            <option key={key} value={key}>
              {called}
            </option>
          ))}
        </select>
      )}
    </Ask>
  );
};
