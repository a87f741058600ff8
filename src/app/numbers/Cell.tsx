import { memo } from 'react';
import { applies, type FieldInfo } from '../../../geometry/fields.ts';
import { fieldTitle } from '../strings.ts';
import { useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { saysId, useField } from './use-field.ts';

/** One value in a table; what is said of it stands in a row of its own, as a cell has no room. */
export const Cell = memo(({ field }: { field: FieldInfo }) => {
  const label = useBenchState((state) => fieldTitle(state.job, field.path));
  const counts = useBenchState((state) => applies(field, state.job));
  const { focusProps, textProps, choiceProps } = useField(field);
  if (!counts) return <span className="none">{words.strings.noWrap}</span>;
  if (field.choices === undefined) {
    return <input {...focusProps} {...textProps} aria-label={label} data-kind={field.kind} />;
  }
  return (
    <select {...focusProps} {...choiceProps} aria-label={label}>
      {Object.entries(field.choices).map(([key, called]) => (
        <option key={key} value={key}>
          {called}
        </option>
      ))}
    </select>
  );
});

/** Why what stands in a cell is refused, in a row under it. */
export const SaysRow = memo(({ path, columns }: { path: string; columns: number }) => {
  const says = useBenchState(
    (state) =>
      state.drafts[path]?.says ??
      (state.solved.ok ? undefined : state.solved.problems.find((problem) => problem.path === path)?.says),
  );
  const title = useBenchState((state) => fieldTitle(state.job, path));
  if (says === undefined) return null;
  return (
    <tr>
      <td colSpan={columns}>
        <p className="says" id={saysId(path)} role="alert">
          {title}: {says}
        </p>
      </td>
    </tr>
  );
});
