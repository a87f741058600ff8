import { polyline } from '../../shape/path.ts';
import type { Path } from '../../shape/types.ts';

/** A rectangle with sharp corners, about the centre line, from the front edge back, mm. */
export const oblong = ({ length, depth }: { readonly length: number; readonly depth: number }): Path => {
  const half = length / 2;
  return polyline(
    [
      { x: -half, y: 0 },
      { x: half, y: 0 },
      { x: half, y: depth },
      { x: -half, y: depth },
    ],
    true,
  );
};
