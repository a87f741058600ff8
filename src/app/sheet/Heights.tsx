import { firstWords as words } from '../first-words.ts';
import { mostHeights } from './laying.ts';

interface HeightsProps {
  readonly value: number;
  readonly onChange: (times: number) => void;
  /** Its element's id, and what it is called: what is seen, and what is only heard. */
  readonly id?: string;
  readonly called?: readonly [string, string];
}

/** How many times as large heights are drawn: on the sheet in the views from the tail and along the middle, where nothing else is said. */
export const Heights = ({ value, onChange, id = 'heights', called = words.sheet.heights }: HeightsProps) => (
  <div className="heights">
    <label htmlFor={id}>
      {called[0]}
      <span className="unseen">{called[1]}</span>
    </label>
    <input
      id={id}
      type="range"
      min={1}
      max={mostHeights}
      step={1}
      value={value}
      aria-valuetext={words.sheet.times(value)}
      onChange={({ target }) => onChange(Number(target.value))}
    />
    <output htmlFor={id}>{words.sheet.times(value)}</output>
  </div>
);
