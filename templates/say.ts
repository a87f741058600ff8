import type { Label } from '../geometry/drawing.ts';
import { type LayOut, sayWith } from '../geometry/layout.ts';
import type { ShowUnits } from '../geometry/units.ts';

/** How labels are worded on paper: a length that stands alone is bare, as ISO 129-1 has it, every other quantity carries its unit. */
export const sayOnPaper = (show: ShowUnits): LayOut['say'] => {
  const bare = sayWith(show);
  const full = sayWith(show, { unit: true });
  return (label) => (isBareLength(label) ? bare(label) : full(label));
};

const isBareLength = ([only, ...rest]: Label): boolean =>
  rest.length === 0 && typeof only === 'object' && only.kind === 'length';
