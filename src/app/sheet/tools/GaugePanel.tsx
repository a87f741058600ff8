import { useId } from 'react';
import { lightAt, type Rest } from '../../../../geometry/gauge/rest.ts';
import { type SurfaceName, surfaceNames } from '../../../../geometry/gauge/surfaces.ts';
import { shortName } from '../../../../geometry/names.ts';
import { gaugeRadii } from '../../../../geometry/saddle/gauges.ts';
import { end, start } from '../../../../geometry/shape/path.ts';
import { formatQuantity, type ShowUnits, unitFor } from '../../../../geometry/units.ts';
import type { Built } from '../../store.ts';
import { words } from '../../words.ts';
import { type GaugeChosen, type GaugeLaid, gaugeMark } from './gauge.ts';

const says = words.measuring;

type Say = (length: number) => string;

const isMm = (show: ShowUnits): boolean => unitFor('length', show) === 'mm';

const lengthIn = (show: ShowUnits, unit: boolean): Say => {
  const digits = isMm(show) ? 2 : 3;
  return (value) => formatQuantity(value, 'length', show, { unit, digits });
};

const touches = ({ touches: [left, right] }: Rest, length: Say): string =>
  left === undefined || right === undefined
    ? says.rests.one
    : says.rests.two(length(Math.abs(left.x)), length(Math.abs(right.x)));

/** The light at every string and at both ends, in one row from bass to treble. */
const Light = ({ laid: { surface, rest }, show }: { laid: GaugeLaid & { readonly ok: true }; show: ShowUnits }) => {
  const { line, strings } = surface;
  const [bass, treble] = [start(line).x, end(line).x];
  const places = [
    { id: 'bass', name: says.ends[0], across: bass },
    ...strings.map(({ id, name, across }) => ({ id: `string.${id}`, name: shortName(name), across })),
    { id: 'treble', name: says.ends[1], across: treble },
  ];
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by the keyboard
    <section className="scroll" tabIndex={0} aria-label={says.lightTable}>
      <table>
        <thead>
          <tr>
            <td />
            {places.map(({ id, name }) => (
              <th key={id} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">
              {says.light} <small>{isMm(show) ? 'mm' : 'in'}</small>
            </th>
            {places.map(({ id, across }) => (
              // Where it touches there is none: what is left of it by reckoning is no light.
              <td key={id} data-light={id}>
                {lengthIn(show, false)(Math.max(0, lightAt(line, rest, across)))}
              </td>
            ))}
          </tr>
        </tbody>
      </table>
    </section>
  );
};

interface Props {
  readonly built: Built;
  readonly chosen: GaugeChosen;
  readonly onChosen: (chosen: GaugeChosen) => void;
  readonly laid: GaugeLaid;
}

/** Which gauge is laid on what, and the light under it. */
export const GaugePanel = ({ built, chosen, onChosen, laid }: Props) => {
  const id = useId();
  const { show } = built.job;
  const mark = (radius: number | 'flat') => gaugeMark(radius, show);
  return (
    <section className="panel" aria-label={words.sheet.gauge}>
      <label>
        {says.layOn}
        <select value={chosen.on} onChange={({ target }) => onChosen({ ...chosen, on: target.value as SurfaceName })}>
          {(Object.keys(surfaceNames) as SurfaceName[]).map((name) => (
            <option key={name} value={name}>
              {says.surfaces[name]}
            </option>
          ))}
        </select>
      </label>
      <label>
        {says.radius}
        <input
          type="text"
          value={chosen.text}
          aria-invalid={!laid.ok}
          aria-describedby={`${id}says`}
          onChange={({ target }) => onChosen({ ...chosen, text: target.value })}
        />
      </label>
      <select aria-label={says.gauges} value="" onChange={({ target }) => onChosen({ ...chosen, text: target.value })}>
        <option value="">{says.chooseGauge}</option>
        {gaugeRadii.map((radius) => (
          <option key={radius} value={mark(radius)}>
            {mark(radius)}
          </option>
        ))}
      </select>
      <div id={`${id}says`} role="status" className="reading">
        {laid.ok ? <p>{touches(laid.rest, lengthIn(show, true))}</p> : <p className="says">{laid.says}</p>}
      </div>
      {laid.ok && <Light laid={laid} show={show} />}
    </section>
  );
};
