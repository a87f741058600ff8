import type { Drawing } from '../geometry/drawing.ts';
import { boundsOfPrimitives, type LayOut, layOut } from '../geometry/layout.ts';
import { cleanName } from '../geometry/names.ts';
import { fitText } from '../geometry/text.ts';
import { em, faceOf, faceSize, titleSize } from './block.ts';
import { barsDepth, barsLead, checkBars, longestBar } from './check-bars.ts';
import { barEm, gap, pad } from './form.ts';
import type { Template } from './pieces/piece.ts';
import { line, placePrimitive } from './primitive.ts';
import type { Sheet } from './sheets.ts';
import type { SheetInfo } from './title-block.ts';

type Say = LayOut['say'];

/** One piece on a page of its own, cropped to it, its title over it and check bars in both directions beside it. */
export const pieceSheet = (piece: Template, info: SheetInfo, say: Say): Sheet =>
  cropped(piece, faceOf(piece), info, say);

/** A drawing of several views on a page of its own, as `pieceSheet` lays a piece; it says how the views are arranged. */
export const viewSheet = (drawing: Drawing, info: SheetInfo, say: Say): Sheet =>
  cropped(drawing, 'third-angle projection (ISO 5456-2)', info, say);

const cropped = (piece: Drawing, remark: string, info: SheetInfo, say: Say): Sheet => {
  const inside = layOut(piece.marks, { em, say });
  const bounds = boundsOfPrimitives(inside);
  const left = gap + barsDepth + gap;
  const top = gap + titleSize + 2 * faceSize + 2.6 * pad;
  const width = Math.max(bounds.maxX - bounds.minX, longestBar);
  const height = Math.max(bounds.maxY - bounds.minY, longestBar);
  const below = top + height + gap;
  const name = [piece.title, '1:1', info.job].map(cleanName).join(' · ');
  const about = [remark, [info.units, info.hand, info.date, `Sagitta ${info.version}`].join(' · ')];
  const page = { width: left + width + gap, height: below + barsDepth + gap };
  const room = page.width - 2 * gap;
  const bars = checkBars({ x: left, y: below + barsLead }, { x: gap + barsLead, y: top });
  return {
    ...page,
    title: piece.title,
    primitives: [
      line('sheet.title', { x: gap, y: gap + pad }, fitText(name, room, titleSize, true), titleSize, true),
      ...about.map((says, k) =>
        line(`sheet.about.${k}`, { x: gap, y: gap + (2.7 + 1.3 * k) * pad }, fitText(says, room, faceSize), faceSize),
      ),
      ...layOut(bars, { em: barEm, say }),
      ...inside.map((p) => placePrimitive(p, { dx: left - bounds.minX, dy: top - bounds.minY })),
    ],
  };
};
