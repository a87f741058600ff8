import { useEffect, useRef } from 'react';
import { type FieldInfo, fieldAt, getAt } from '../../../geometry/fields.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';

type UnitPath = 'show.length' | 'show.radius' | 'show.gauge';

/** One unit out of three. */
const UnitChoice = ({ path }: { path: UnitPath }) => {
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

export const Lengths = () => <UnitChoice path="show.length" />;

/** The units of radii and string gauges, which many take in inches while they measure in mm. */
export const OtherUnits = () => {
  const details = useRef<HTMLDetailsElement>(null);
  // It lies over the page while it is open: a press beside it, or Escape, closes it.
  useEffect(() => {
    const close = () => details.current?.removeAttribute('open');
    const onPress = ({ target }: PointerEvent) => {
      if (target instanceof Node && !details.current?.contains(target)) close();
    };
    const onKey = ({ key }: KeyboardEvent) => {
      if (key === 'Escape') close();
    };
    document.addEventListener('pointerdown', onPress);
    document.addEventListener('keydown', onKey);
    return () => {
      document.removeEventListener('pointerdown', onPress);
      document.removeEventListener('keydown', onKey);
    };
  }, []);
  return (
    <details className="other-units" ref={details}>
      <summary>{words.bar.otherUnits}</summary>
      <div>
        <UnitChoice path="show.radius" />
        <UnitChoice path="show.gauge" />
      </div>
    </details>
  );
};
