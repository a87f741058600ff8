import { firstWords as words } from '../first-words.ts';
import { mostHeights } from './laying.ts';

/** How many times as large the heights in the views from the tail and along the middle are drawn. */
export const Heights = ({ value, onChange }: { value: number; onChange: (times: number) => void }) => (
  <div className="heights">
    <label htmlFor="heights">
      {words.sheet.heights[0]}
      <span className="unseen">{words.sheet.heights[1]}</span>
    </label>
    <input
      id="heights"
      type="range"
      min={1}
      max={mostHeights}
      step={1}
      value={value}
      aria-valuetext={words.sheet.times(value)}
      onChange={({ target }) => onChange(Number(target.value))}
    />
    <output htmlFor="heights">{words.sheet.times(value)}</output>
  </div>
);
