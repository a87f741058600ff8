import { slotCut } from '../bridge/slot.ts';
import type { Design } from '../design.ts';
import type { Settled } from '../settle.ts';
import { contains } from '../shape/measure.ts';
import { distanceTo } from '../shape/nearest.ts';
import type { Path, Point } from '../shape/types.ts';
import type { Check } from './check.ts';
import { listed } from './say.ts';
import { fromLine, slotSpine } from './slot-walls.ts';

/** How far a point lies from a slot with round ends, mm; negative inside it. */
const toRound = (job: Settled, design: Design) => {
  const { spine, off } = slotSpine(job, design);
  return (p: Point) => fromLine(spine, p) - off;
};

/** How far a point lies from an outline, mm; negative inside it. */
const toOutline = (outline: Path) => (p: Point) => distanceTo(outline, p) * (contains(outline, p) ? -1 : 1);

/** The wood between the slot's outline and the edge of each hole behind it; a tie block's holes stand in no deck. */
export const pinWood: Check = {
  id: 'pinWood',
  path: 'pins.fromSaddle',
  facts: (job, design) => {
    if (job.pins.hold === 'tied') return [];
    const toSlot = job.slot.ends === 'round' ? toRound(job, design) : toOutline(slotCut(job, design.saddleLine));
    return design.strings.map(({ name, pin }) => ({ where: name, value: toSlot(pin) - job.pins.hole / 2 }));
  },
  says: (found) => `Wood between slot and ${found.job.pins.hold === 'pins' ? 'pin holes' : 'holes'}: ${listed(found)}`,
  means: { low: 'The bridge may split along its holes.' },
  fixes: [
    ['pins.fromSaddle'],
    ['pins.hole'],
    ['slot.width'],
    ['pins.fromSaddle', 'bridge.depth'],
    ['pins.fromSaddle', 'bridge.thickness'],
  ],
};
