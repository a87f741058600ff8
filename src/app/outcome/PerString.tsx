import { figureAt } from '../../../geometry/figures/index.ts';
import { shortName } from '../../../geometry/names.ts';
import { lifeLeft } from '../../../geometry/saddle/life.ts';
import { FigureValue } from '../figures/Figure.tsx';
import type { Built } from '../store.ts';
import { useBuilt } from '../use-bench.ts';
import { words } from '../words.ts';

const says = words.outcome;

/** What stands under a column's head: the unit of what is in it. */
const unitOf = (kind: string, { job: { show } }: Built): string =>
  kind === 'length' ? words.numbers.unit[show.length] : kind === 'angle' ? '°' : kind === 'force' ? 'N' : '';

/** A table of figures with a row for each string, bass first; each can be asked how it came about. */
export const PerString = ({
  title,
  ids,
  sums,
}: {
  title: string;
  ids: readonly string[];
  sums?: readonly string[];
}) => {
  const built = useBuilt();
  if (built === undefined) return null;
  const columns = ids.flatMap((id) => figureAt(id) ?? []);
  const limits = ids.includes('lifeLeft') ? lifeLeft(built.job, built.design).map(({ limit }) => limit) : [];
  return (
    <>
      <h3>{title}</h3>
      <section
        className="scroll"
        aria-label={says.table(title)}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by the keyboard
        tabIndex={0}
      >
        <table className="figures">
          <thead>
            <tr>
              <th scope="col">
                <span className="unseen">{says.heads.string}</span>
              </th>
              {columns.map((figure) => (
                <th key={figure.id} scope="col">
                  {says.heads[figure.id] ?? figure.title} <small>{unitOf(figure.kind, built)}</small>
                </th>
              ))}
              {limits.length > 0 && <th scope="col">{says.heads.lifeLimit}</th>}
            </tr>
          </thead>
          <tbody>
            {built.design.strings.map((s, k) => (
              <tr key={s.id} data-string={s.id}>
                <th scope="row">{shortName(s.name)}</th>
                {columns.map((figure) => (
                  <td key={figure.id}>
                    <FigureValue
                      figure={figure}
                      built={built}
                      k={k}
                      form={figure.id === 'lifeLeft' ? 'life' : 'bare'}
                    />
                  </td>
                ))}
                {limits[k] && (
                  <td className="limit" data-limit={k}>
                    {says.limits[limits[k]]}
                  </td>
                )}
              </tr>
            ))}
          </tbody>
          {sums && (
            <tfoot>
              <tr>
                <th scope="row">{says.sum}</th>
                {sums.map((id) => {
                  const figure = figureAt(id);
                  return <td key={id}>{figure && <FigureValue figure={figure} built={built} form="bare" />}</td>;
                })}
              </tr>
            </tfoot>
          )}
        </table>
      </section>
    </>
  );
};
