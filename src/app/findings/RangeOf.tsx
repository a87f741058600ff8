import { useRef } from 'react';
import { type CheckId, rangeOf, roundRange, usualRanges } from '../../../geometry/checks/ranges.ts';
import { fieldAt } from '../../../geometry/fields.ts';
import { formatQuantity } from '../../../geometry/units.ts';
import { showAsRead } from '../decimal.ts';
import { unitOf } from '../numbers/Field.tsx';
import { saysId, useField } from '../numbers/use-field.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';

const says = words.findings;
const bounds = ['doubtfulFrom', 'from', 'to', 'doubtfulTo'] as const;
type Bound = (typeof bounds)[number];

/** One limit of a range: empty while the usual one holds, which stands there in grey. */
const Limit = ({ check, bound }: { check: CheckId; bound: Bound }) => {
  const path = `limits.${check}.${bound}`;
  const field = fieldAt(path);
  if (field === undefined) throw new RangeError(`${path} is no field.`);
  const { says: refused, focusProps, textProps, value, unit } = useField(field);
  const usual = useBenchState((state) => {
    const { range, kind } = rangeOf({ ...state.job, limits: {} }, check);
    const show = showAsRead(state);
    const limit = (kind === 'length' ? roundRange(range, show) : range)[bound];
    return limit === undefined ? '' : formatQuantity(limit, kind, show);
  });
  const isUsual = value === undefined || value === 'usual';
  return (
    <label>
      <span>{says.bounds[bound]}</span>
      <span className="value">
        <input
          {...focusProps}
          {...textProps}
          value={textProps.value === 'usual' ? '' : textProps.value}
          placeholder={isUsual ? usual : ''}
          aria-label={field.label}
          data-kind={field.kind}
        />
        <span className="unit">{unitOf(field, unit)}</span>
      </span>
      {refused !== undefined && (
        <span className="says" id={saysId(path)} role="alert">
          {refused}
        </span>
      )}
    </label>
  );
};

/** The four limits that a check goes by, to be changed for this job. */
export const RangeOf = ({ check }: { check: CheckId }) => {
  const bench = useBench();
  const limits = useRef<HTMLFieldSetElement>(null);
  const usual = useBenchState(({ job }) => rangeOf({ ...job, limits: {} }, check).range);
  const isOwn = useBenchState(({ job }) => job.limits[check] !== undefined);
  const { title } = usualRanges[check];
  return (
    <fieldset className="limits" ref={limits}>
      <legend>{says.rangeFor(title)}</legend>
      {bounds
        .filter((bound) => usual[bound] !== undefined)
        .map((bound) => (
          <Limit key={bound} check={check} bound={bound} />
        ))}
      {isOwn && (
        <button
          type="button"
          onClick={() => {
            bench.clear(`limits.${check}`, says.usualAgain(title));
            // The button is gone with what it undid.
            limits.current?.querySelector('input')?.focus();
          }}
        >
          {says.backToUsual}
        </button>
      )}
    </fieldset>
  );
};
