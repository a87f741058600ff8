import { firstWords as words } from '../first-words.ts';
import { Heights } from './Heights.tsx';
import { type PictureName, viewNames } from './laying.ts';

interface Props {
  /** Which picture is shown, where that can be chosen here. */
  readonly name?: PictureName | undefined;
  readonly onName: (name: PictureName) => void;
  readonly heights: number;
  readonly onHeights: (times: number) => void;
  /** Whether the drawing is seen whole. */
  readonly isFitted: boolean;
  readonly onFit: () => void;
  /** One step closer, or farther. */
  readonly onStep: (way: 1 | -1) => void;
}

/** What is shown and how closely: one row over the drawing. */
export const Toolbar = ({ name, onName, heights, onHeights, isFitted, onFit, onStep }: Props) => (
  <section className="toolbar" aria-label={words.sheet.toolsLabel}>
    {name !== undefined && (
      <select
        aria-label={words.sheet.shown}
        value={name}
        onChange={({ target }) => {
          const chosen = (['three', ...viewNames] as const).find((one) => one === target.value);
          if (chosen !== undefined) onName(chosen);
        }}
      >
        {(['three', ...viewNames] as const).map((one) => (
          <option key={one} value={one}>
            {words.sheet[one]}
          </option>
        ))}
      </select>
    )}
    <Heights value={heights} onChange={onHeights} />
    <span className="together">
      <button type="button" onClick={() => onStep(-1)}>
        {words.sheet.farther}
      </button>
      <button type="button" aria-pressed={isFitted} onClick={onFit}>
        {words.sheet.fit}
      </button>
      <button type="button" onClick={() => onStep(1)}>
        {words.sheet.closer}
      </button>
    </span>
  </section>
);
