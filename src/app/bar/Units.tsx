import { type FieldInfo, fieldAt, getAt } from '../../../geometry/fields.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { Drop } from './Drop.tsx';

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

/** The units behind one button. */
export const Units = () => (
  <Drop title={words.bar.units}>
    {paths.map((path) => (
      <UnitChoice key={path} path={path} />
    ))}
  </Drop>
);
