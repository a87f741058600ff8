import { placesAcross } from '../instrument/spacing.ts';
import type { Job } from '../job.ts';
import type { Point } from '../shape/types.ts';
import type { SaddleLine } from './slot.ts';

/** Middles of the pin holes from above (x across, y the distance from the nut), mm, bass first, equally spaced. */
export const pinCentres = (job: Job, line: SaddleLine): readonly Point[] => {
  const { pins, strings } = job;
  const places = placesAcross(
    pins.spread,
    strings.list.map((string) => string.gauge),
    'centres',
  );
  const slant = pins.row === 'slanted' ? line.slant : 0;
  return places.map((y) => ({ x: y, y: line.x + pins.fromSaddle + slant * y }));
};
