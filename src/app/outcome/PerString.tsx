import { shortName } from '../../../geometry/names.ts';
import { formatQuantity } from '../../../geometry/units.ts';
import type { Built } from '../store.ts';
import { words } from '../words.ts';

const { heads, ...says } = words.outcome;

/** What comes of it at each string, and the sums. */
export const PerString = ({ built: { job, design } }: { built: Built }) => {
  const { show } = job;
  const unit = words.numbers.unit[show.length];
  const length = (value: number) => formatQuantity(value, 'length', show, { digits: show.length === 'mm' ? 2 : 3 });
  const columns = [
    [heads.exposure, unit],
    [heads.breakAngle, '°'],
    [heads.tension, 'N'],
    [heads.downforce, 'N'],
    [heads.saddleHeight, unit],
  ] as const;
  return (
    <>
      <h3>{says.perString}</h3>
      <section
        className="scroll"
        aria-label={says.perStringScroll}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by the keyboard
        tabIndex={0}
      >
        <table className="figures">
          <thead>
            <tr>
              <th scope="col">
                <span className="unseen">{heads.string}</span>
              </th>
              {columns.map(([head, of]) => (
                <th key={head} scope="col">
                  {head} <small>{of}</small>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {design.strings.map((s) => (
              <tr key={s.id} data-string={s.id}>
                <th scope="row">{shortName(s.name)}</th>
                <td>{length(s.exposure)}</td>
                <td>{formatQuantity(s.breakAngle, 'angle', show)}</td>
                <td>{formatQuantity(s.tension, 'force', show)}</td>
                <td>{formatQuantity(s.downforce, 'force', show)}</td>
                <td>{length(s.saddleHeight)}</td>
              </tr>
            ))}
          </tbody>
          <tfoot>
            <tr>
              <th scope="row">{says.sum}</th>
              <td />
              <td />
              <td>{formatQuantity(design.totalTension, 'force', show)}</td>
              <td>{formatQuantity(design.totalDownforce, 'force', show)}</td>
              <td />
            </tr>
          </tfoot>
        </table>
      </section>
      <p className="small">{says.notes}</p>
    </>
  );
};
