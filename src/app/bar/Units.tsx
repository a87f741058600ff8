import { type FieldInfo, fieldAt, getAt } from '../../../geometry/fields.ts';
import { type DecimalChoice, decimalChoices, decimalsFor, keepDecimals, markOf } from '../decimal.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { Drop } from './Drop.tsx';

const says = words.bar.decimal;

/** Radii and string gauges have units of their own, as many take them in inches while they measure in mm. */
const paths = ['show.length', 'show.radius', 'show.gauge'] as const;

/** One unit out of three. */
const UnitChoice = ({ path }: { path: (typeof paths)[number] }) => {
  const bench = useBench();
  const { label, choices = {} } = fieldAt(path) as FieldInfo;
  const now = useBenchState((state) => getAt(state.job, path));
  return (
    <fieldset className="cell units">
      <legend>{label}</legend>
      <span className="choices">
        {Object.entries(choices).map(([key, called]) => (
          <label key={key}>
            <input type="radio" name={path} value={key} checked={now === key} onChange={() => bench.put(path, key)} />
            <span>{called}</span>
          </label>
        ))}
      </span>
    </fieldset>
  );
};

/** The decimal mark: as the browser's language has it, or one of the two. It is no change of the job, and no step to take back. */
const Decimals = () => {
  const bench = useBench();
  const { chosen } = useBenchState(({ decimals }) => decimals);
  const choose = (now: DecimalChoice) => {
    keepDecimals(now, () => window.localStorage);
    bench.read(decimalsFor(now, navigator.languages));
  };
  return (
    <fieldset className="cell units">
      <legend>{says.label}</legend>
      <span className="choices">
        {decimalChoices.map((choice) => (
          <label key={choice}>
            <input
              type="radio"
              name="decimal"
              value={choice}
              checked={chosen === choice}
              onChange={() => choose(choice)}
            />
            <span>{says.choices[choice](markOf(navigator.languages))}</span>
          </label>
        ))}
      </span>
      <p className="small">{says.says}</p>
    </fieldset>
  );
};

/** The units behind one button. */
export const Units = () => (
  <Drop title={words.bar.units}>
    {paths.map((path) => (
      <UnitChoice key={path} path={path} />
    ))}
    <Decimals />
  </Drop>
);
