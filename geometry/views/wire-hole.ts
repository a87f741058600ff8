import type { Design } from '../design.ts';
import type { Mark } from '../drawing.ts';
import { stroke } from '../marks.ts';
import type { Settled } from '../settle.ts';
import { circle } from '../shape/arc.ts';

/** The hole in the slot's floor for the wire of what lies under the saddle, from above; nothing where there is none. Its place is measured along the slot from the centre line. */
export const wireHole = ({ saddle }: Settled, { saddleLine }: Design): readonly Mark[] => {
  if (saddle.wireHole === 'none') return [];
  const cos = 1 / Math.hypot(1, saddleLine.slant);
  const middle = { x: saddle.wireAcross * cos, y: saddleLine.x + saddle.wireAcross * saddleLine.slant * cos };
  return [
    stroke('wireHole', circle(middle, saddle.wireHole / 2), {
      line: 'outline',
      purpose: 'drill',
      matter: 'hole',
      jobPath: 'saddle.wireHole',
    }),
  ];
};
