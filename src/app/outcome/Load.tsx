import { helds } from '../../../geometry/bridge/held.ts';
import { figureAt } from '../../../geometry/figures/index.ts';
import { formatQuantity } from '../../../geometry/units.ts';
import { FigureValue } from '../figures/Figure.tsx';
import { useBuilt } from '../use-bench.ts';
import { words } from '../words.ts';

const says = words.outcome;
const capital = (text: string) => `${text[0]?.toUpperCase()}${text.slice(1)}`;
/** Tension across the grain at which spruce gives way, MPa [memory]. */
const spruce = 2.6;
const rows = ['down', 'moment', 'meanStress', 'rearStress', 'meanShear'] as const;

/** The load on the glue line, for each way in which the strings can be held; the job's own marked. */
export const Load = () => {
  const built = useBuilt();
  if (built === undefined) return null;
  const now = built.job.plate.state === 'worn' ? 'wornPlate' : 'pins';
  return (
    <>
      <h3>{says.load}</h3>
      <section
        className="scroll"
        aria-label={says.table(says.load)}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by the keyboard
        tabIndex={0}
      >
        <table className="figures load">
          <thead>
            <tr>
              <th scope="col">
                <span className="unseen">{says.loadWhat}</span>
              </th>
              {helds.map((held) => (
                <th key={held} scope="col" data-now={held === now}>
                  {says.held[held]} {held === now && <small>{says.asItIs}</small>}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={row}>
                <th scope="row">{says.loads[row]}</th>
                {helds.map((held) => {
                  const figure = figureAt(`load${capital(held)}${capital(row)}`);
                  return <td key={held}>{figure && <FigureValue figure={figure} built={built} form="bare" />}</td>;
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <p className="small">
        {says.loadSays(formatQuantity(spruce, 'stress', built.job.show, { unit: true, digits: 1 }))}
      </p>
    </>
  );
};
