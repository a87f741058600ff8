import type { Point } from '../../../../geometry/shape/types.ts';
import { textWidth } from '../../../../geometry/text.ts';
import { wrap } from '../../../../templates/wrap.ts';
import { coarse } from '../../media.ts';
import { useMedia } from '../../use-media.ts';
import type { Fitted } from '../fit.ts';

/** Text height, and the room round it, px. */
const size = 13;
const pad = 6;
/** How near it comes to the drawing's sides, and how wide its lines may be, px. */
const edge = 2;
const widest = 420;
/** How far it stands off its grip, px: clear of a finger, where one holds it. */
const offFine = 20;
const offCoarse = 36;

/** What a grip holds, beside it: over it where there is room, else under it, and never beyond the drawing's sides. */
export const Readout = ({ at, lines, fitted }: { at: Point; lines: readonly string[]; fitted: Fitted }) => {
  const { scale, view } = fitted;
  const off = useMedia(coarse) ? offCoarse : offFine;
  const room = Math.min(widest, view.width * scale - 2 * edge - 2 * pad);
  const rows = lines.flatMap((line) => wrap(line, room, size));
  const width = Math.max(...rows.map((row) => textWidth(row, size))) + 2 * pad;
  const height = rows.length * size * 1.3 + 2 * pad - 2;
  const [left, right] = [(view.left - at.x) * scale, (view.left + view.width - at.x) * scale];
  const x = Math.max(left + edge, Math.min(-width / 2, right - width - edge));
  const y = (view.top - at.y) * scale < -off - height ? -off - height : off;
  return (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: nothing in it takes the focus; the grip says the same
    <g className="readout" transform={`translate(${at.x} ${at.y}) scale(${1 / scale})`} aria-hidden="true">
      <rect x={x} y={y} width={width} height={height} />
      {rows.map((row, k) => (
        <text key={row} x={x + pad} y={y + pad + size * (0.85 + 1.3 * k)} fontSize={size}>
          {row}
        </text>
      ))}
    </g>
  );
};
