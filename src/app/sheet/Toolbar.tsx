import { firstWords as words } from '../first-words.ts';
import { Heights } from './Heights.tsx';
import { type PictureName, viewNames } from './laying.ts';
import type { Tool } from './tools/tools.ts';

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
  readonly tool: Tool | undefined;
  readonly onTool: (tool: Tool | undefined) => void;
  /** Whether the drawing is as large as the bridge. */
  readonly isTrue: boolean;
  readonly onTrue: () => void;
}

const tools = ['ruler', 'gauge'] as const;

/** What is shown and how closely, and the tools to measure it with: one row over the drawing. */
export const Toolbar = ({ name, onName, tool, onTool, ...props }: Props) => (
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
    <Heights value={props.heights} onChange={props.onHeights} />
    <span className="together">
      <button type="button" onClick={() => props.onStep(-1)}>
        {words.sheet.farther}
      </button>
      <button type="button" aria-pressed={props.isFitted} onClick={props.onFit}>
        {words.sheet.fit}
      </button>
      <button type="button" onClick={() => props.onStep(1)}>
        {words.sheet.closer}
      </button>
      <button type="button" aria-pressed={props.isTrue} onClick={props.onTrue}>
        {words.sheet.trueSize}
      </button>
    </span>
    <span className="together">
      {tools.map((one) => (
        <button
          key={one}
          type="button"
          aria-pressed={tool === one}
          onClick={() => onTool(tool === one ? undefined : one)}
        >
          {words.sheet[one]}
        </button>
      ))}
    </span>
  </section>
);
