import { differences } from '../../../geometry/alternatives.ts';
import type { Job } from '../../../geometry/job.ts';
import type { ShowUnits } from '../../../geometry/units.ts';
import { Sample } from '../sheet/Alternatives.tsx';
import { stands } from '../typing.ts';
import { words } from '../words.ts';
import type { Compared } from './designs.ts';
import { outcomeRows } from './outcomes.ts';

const says = words.compare;

type Values = ReturnType<typeof differences>[number];

const cellText = ({ field }: Values, value: number | string | undefined, show: ShowUnits): string =>
  value === undefined ? says.none : stands(field, value, show);

/** What differs between the designs, and only that; then what comes of each. The present one's column is marked. */
export const Table = ({ job, designs }: { job: Job; designs: readonly Compared[] }) => {
  const rows = differences(job);
  return (
    <section
      className="scroll"
      aria-label={says.tableScroll}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by the keyboard
      tabIndex={0}
    >
      <table className="figures beside">
        <caption>{says.table}</caption>
        <thead>
          <tr>
            <th scope="col">
              <span className="unseen">{says.what}</span>
            </th>
            {designs.map(({ letter, name }) => (
              <th key={letter ?? ''} scope="col" data-now={letter === undefined}>
                {letter === undefined ? (
                  <span className="head">{says.presentHead}</span>
                ) : (
                  <span className="head">
                    {letter} <Sample letter={letter} />
                  </span>
                )}
                {name !== '' && <small>{name}</small>}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="rowgroup" colSpan={designs.length + 1} className="part">
              {rows.length === 0 ? says.nothingDiffers : says.differs}
            </th>
          </tr>
          {rows.map((row) => (
            <tr key={row.field.path} data-path={row.field.path}>
              <th scope="row">
                {row.field.label} <small>{row.point === undefined ? row.group : says.point(row.point)}</small>
              </th>
              {row.values.map((value, k) => (
                <td key={designs[k]?.letter ?? ''} data-now={k === 0}>
                  {cellText(row, value, job.show)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
        <tbody>
          <tr>
            <th scope="rowgroup" colSpan={designs.length + 1} className="part">
              {says.comesOfIt}
            </th>
          </tr>
          {outcomeRows(job).map(({ id, title, text }) => (
            <tr key={id} data-outcome={id}>
              <th scope="row">{title}</th>
              {designs.map(({ letter, solved }) => (
                <td key={letter ?? ''} data-now={letter === undefined}>
                  {solved.ok ? text(solved) : says.none}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
};
