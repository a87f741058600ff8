import { footprintOutline } from '../../../geometry/bridge/outline.ts';
import { slotCut } from '../../../geometry/bridge/slot.ts';
import { build } from '../../../geometry/build.ts';
import type { Job } from '../../../geometry/job.ts';
import { pathData } from '../../../geometry/path-data.ts';
import { bounds } from '../../../geometry/shape/measure.ts';
import { mirrorX, translate } from '../../../geometry/shape/transform.ts';
import type { Path } from '../../../geometry/shape/types.ts';
import type { Card } from './database.ts';

/** Around the outline, mm. */
const pad = 2;

/** A job's bridge with its slot from above, small enough for a card, as SVG path data in mm and the box it fills; nothing where it cannot be built. */
export const pictureOf = (job: Job): Card['picture'] => {
  const built = build(job);
  if (!built.ok) return undefined;
  const { job: settled, design } = built;
  const outline = footprintOutline(settled, design);
  const { minX, maxX, minY, maxY } = bounds(outline);
  const placed = (path: Path) => {
    const moved = translate(path, 0, -minY);
    return settled.hand === 'left' ? mirrorX(moved) : moved;
  };
  const half = Math.max(maxX, -minX) + pad;
  const d = [outline, slotCut(settled, design.saddleLine)].map((path) => pathData(placed(path))).join('');
  return { d, box: [-half, -pad, 2 * half, maxY - minY + 2 * pad].map((n) => n.toFixed(1)).join(' ') };
};
