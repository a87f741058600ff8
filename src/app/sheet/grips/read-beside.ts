import type { Point } from '../../../../geometry/shape/types.ts';
import { textWidth } from '../../../../geometry/text.ts';
import { wrap } from '../../../../templates/wrap.ts';
import type { Fitted } from '../fit.ts';

/** Text height, and the room round it, px. */
export const size = 13;
const pad = 6;
/** How near it comes to the drawing's sides, and how wide its lines may be, px. */
const edge = 2;
const widest = 420;

/** What is read beside a grip: its rows, px from the grip, and the frame round them. */
export interface Beside {
  readonly frame: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  readonly rows: readonly { readonly text: string; readonly x: number; readonly y: number }[];
}

/** Lines beside a grip, so many px off it: over it where there is room, else under it, and never beyond the drawing's sides. */
export const readBeside = (at: Point, lines: readonly string[], { scale, view }: Fitted, off: number): Beside => {
  const room = Math.min(widest, view.width * scale - 2 * edge - 2 * pad);
  const rows = lines.flatMap((line) => wrap(line, room, size));
  const width = Math.max(...rows.map((row) => textWidth(row, size))) + 2 * pad;
  const height = rows.length * size * 1.3 + 2 * pad - 2;
  const [left, right] = [(view.left - at.x) * scale, (view.left + view.width - at.x) * scale];
  const x = Math.max(left + edge, Math.min(-width / 2, right - width - edge));
  const y = (view.top - at.y) * scale < -off - height ? -off - height : off;
  return {
    frame: { x, y, width, height },
    rows: rows.map((text, k) => ({ text, x: x + pad, y: y + pad + size * (0.85 + 1.3 * k) })),
  };
};

/** How far it stands off its grip, px: clear of a finger, where one holds it. */
export const off = { fine: 20, coarse: 36 };
