import type { Point } from '../../../../geometry/shape/types.ts';
import { textWidth } from '../../../../geometry/text.ts';
import { coarse } from '../../media.ts';
import { useMedia } from '../../use-media.ts';
import type { Fitted } from '../fit.ts';

/** Text height, and the room round it, px. */
const size = 13;
const pad = 6;
/** How far it stands off its grip, px: clear of a finger, where one holds it. */
const offFine = 20;
const offCoarse = 36;

/** What a grip holds, beside it: over it where there is room, else under it, and never beyond the drawing's sides. */
export const Readout = ({ at, lines, fitted }: { at: Point; lines: readonly string[]; fitted: Fitted }) => {
  const { scale, view } = fitted;
  const off = useMedia(coarse) ? offCoarse : offFine;
  const width = Math.max(...lines.map((line) => textWidth(line, size))) + 2 * pad;
  const height = lines.length * size * 1.3 + 2 * pad - 2;
  const [left, right] = [(view.left - at.x) * scale, (view.left + view.width - at.x) * scale];
  const x = Math.max(left + 2, Math.min(-width / 2, right - width - 2));
  const y = (view.top - at.y) * scale < -off - height ? -off - height : off;
  return (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: nothing in it takes the focus; the grip says the same
    <g className="readout" transform={`translate(${at.x} ${at.y}) scale(${1 / scale})`} aria-hidden="true">
      <rect x={x} y={y} width={width} height={height} />
      {lines.map((line, k) => (
        <text key={line} x={x + pad} y={y + pad + size * (0.85 + 1.3 * k)} fontSize={size}>
          {line}
        </text>
      ))}
    </g>
  );
};
