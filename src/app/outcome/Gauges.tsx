import { shortName } from '../../../geometry/names.ts';
import { useBuilt } from '../use-bench.ts';
import { words } from '../words.ts';
import { gaugeName, missText } from './gauge-text.ts';

const says = words.outcome;

/** How far a crown of each gauge misses the wanted heights. */
export const Gauges = () => {
  const built = useBuilt();
  if (built === undefined) return null;
  const { job, design } = built;
  const { show } = job;
  const unit = show.length === 'mm' ? 'mm' : 'in';
  return (
    <details className="gauges">
      <summary>{says.gauges}</summary>
      <section
        className="scroll"
        aria-label={says.gaugesScroll}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by the keyboard
        tabIndex={0}
      >
        <table className="figures">
          <thead>
            <tr>
              <th scope="col">{says.gaugeHead}</th>
              <th scope="col">
                {says.worst} <small>{unit}</small>
              </th>
              {design.strings.map((s) => (
                <th key={s.id} scope="col">
                  {shortName(s.name)} <small>{unit}</small>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {design.gauges.map((gauge) => (
              <tr key={gauge.radius} data-nearest={gauge === design.nearestGauge}>
                <th scope="row">{gaugeName(gauge.radius, show)}</th>
                <td>{missText(gauge.worst, show, { bare: true })}</td>
                {gauge.misses.map((value, k) => (
                  <td key={design.strings[k]?.id}>{missText(value, show, { bare: true, signed: true })}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <p className="small">{says.gaugesSays}</p>
    </details>
  );
};
