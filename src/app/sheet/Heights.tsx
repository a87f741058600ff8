import { useId } from 'react';
import { firstWords as words } from '../first-words.ts';

/** How many times as large heights are drawn at first, and at most. */
export const usualHeights = 3;
const mostHeights = 10;

/** How many times as large the heights in the views from the tail and along the middle are drawn. */
export const Heights = ({ value, onChange }: { value: number; onChange: (times: number) => void }) => {
  const id = useId();
  return (
    <div className="heights">
      <label htmlFor={id}>
        {words.sheet.heights[0]}
        <span className="unseen">{words.sheet.heights[1]}</span>
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
};
