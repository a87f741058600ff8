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

/** What a card shows of a job: its bridge with the slot from above, as SVG path data in mm and the box it fills, where it can be built; else how many things keep it from that. */
export const pictureOf = (job: Job): Pick<Card, 'picture' | 'problems'> => {
  const built = build(job);
  if (!built.ok) return { problems: built.problems.length };
  const { job: settled, design } = built;
  const outline = footprintOutline(settled, design);
  const { minX, maxX, minY, maxY } = bounds(outline);
  const placed = (path: Path) => {
    const moved = translate(path, 0, -minY);
    return settled.hand === 'left' ? mirrorX(moved) : moved;
  };
  const half = Math.max(maxX, -minX) + pad;
  const d = [outline, slotCut(settled, design.saddleLine)].map((path) => pathData(placed(path))).join('');
  const box = [-half, -pad, 2 * half, maxY - minY + 2 * pad].map((n) => n.toFixed(1)).join(' ');
  return { picture: { d, box }, problems: 0 };
};
