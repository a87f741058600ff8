import { words } from '../words.ts';

/** How many times as large heights may be drawn. */
export const heightSteps = [1, 2, 3, 5] as const;
export type HeightStep = (typeof heightSteps)[number];

interface Chosen {
  readonly value: HeightStep;
  readonly onChange: (step: HeightStep) => void;
}

/** The same choice where there is little room. */
export const HeightsSelect = ({ value, onChange }: Chosen) => (
  <select
    aria-label={words.sheet.heights}
    value={value}
    onChange={({ target }) => onChange(heightSteps.find((step) => String(step) === target.value) ?? value)}
  >
    {heightSteps.map((step) => (
      <option key={step} value={step}>
        {words.sheet.times(step)}
      </option>
    ))}
  </select>
);

/** How many times as large the heights in the views from the tail and along the middle are drawn. */
export const Heights = ({ value, onChange }: Chosen) => (
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
