import { footprints } from '../bridge/footprints/index.ts';
import type { Mark } from '../drawing.ts';
import { note, stroke } from '../marks.ts';
import type { Settled } from '../settle.ts';
import { translate } from '../shape/transform.ts';

/** The outline that the old bridge left on the top, from above, with its name behind its bass tip; nothing where it was not measured, or where its numbers draw none. */
export const oldScar = ({ scar, bridge }: Settled): readonly Mark[] => {
  if (scar.outline === 'none') return [];
  const { outline: style, fromNut, length, depth } = scar;
  const wingDepth = style === 'belly' ? scar.wingDepth : depth;
  const asBridge = { ...bridge, length, depth, wingDepth, bellyWidth: scar.bellyWidth };
  const footprint = footprints[style];
  if (footprint.problems(asBridge, String).length > 0) return [];
  return [
    stroke('scar', translate(footprint.outline(asBridge), 0, fromNut), {
      line: 'phantom',
      purpose: 'show',
      jobPath: 'scar.outline',
    }),
    note('scar.name', { x: -length / 2, y: fromNut + wingDepth }, ['old scar'], {
      anchor: 'start',
      shift: { dx: 0.6, dy: 1.1 },
      jobPath: 'scar.outline',
    }),
  ];
};
