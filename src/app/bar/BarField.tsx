import { type FieldInfo, fieldAt } from '../../../geometry/fields.ts';
import { fieldId, saysId, useField } from '../numbers/use-field.ts';

/** A text of the job in a cell of the bar. */
export const BarField = ({ path }: { path: 'name' | 'date' }) => {
  const field = fieldAt(path) as FieldInfo;
  const { says, focusProps, textProps } = useField(field);
  return (
    <div className="cell" data-path={path}>
      <label htmlFor={fieldId(path)}>{field.label}</label>
      <input {...focusProps} {...textProps} />
      {says !== undefined && (
        <p className="says" id={saysId(path)} role="alert">
          {says}
        </p>
      )}
    </div>
  );
};
