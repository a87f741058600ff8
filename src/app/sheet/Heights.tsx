import { words } from '../words.ts';

/** How many times as large heights may be drawn. */
export const heightSteps = [1, 2, 3, 5] as const;
export type HeightStep = (typeof heightSteps)[number];

/** How many times as large the heights in the views from the tail and along the middle are drawn. */
export const Heights = ({ value, onChange }: { value: HeightStep; onChange: (step: HeightStep) => void }) => (
  <fieldset className="heights">
    <legend>{words.sheet.heights}</legend>
    <span className="choices">
      {heightSteps.map((step) => (
        <label key={step}>
          <input type="radio" name="heights" value={step} checked={step === value} onChange={() => onChange(step)} />
          <span>{words.sheet.times(step)}</span>
        </label>
      ))}
    </span>
  </fieldset>
);
