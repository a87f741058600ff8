import { footprintOutline } from '../bridge/outline.ts';
import { pinHoles } from '../bridge/pins.ts';
import { distanceTo } from '../shape/nearest.ts';
import type { Check } from './check.ts';
import { listed } from './say.ts';

/** Wood between each pin hole and the bridge's edge. */
export const pinEdge: Check = {
  id: 'pinEdge',
  path: 'bridge.depth',
  facts: (job, design) => {
    const holes = pinHoles(job, design);
    if (holes.length === 0) return [];
    const outline = footprintOutline(job, design);
    return holes.map(({ at, diameter }, k) => ({
      where: design.strings[k]?.name ?? '',
      value: distanceTo(outline, at) - diameter / 2,
    }));
  },
  says: (found) => `Wood between pin holes and the bridge’s edge: ${listed(found)}`,
  means: { low: 'The edge breaks out behind the pins.' },
  fixes: [['bridge.depth'], ['pins.fromSaddle'], ['bridge.frontToSaddle'], ['bridge.depth', 'pins.fromSaddle']],
};
