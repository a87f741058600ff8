import { scarOutline } from '../bridge/cover.ts';
import type { Mark } from '../drawing.ts';
import { note, stroke } from '../marks.ts';
import type { Settled } from '../settle.ts';

/** The outline that the old bridge left on the top, from above, with its name behind its bass tip; nothing where it was not measured. */
export const oldScar = (job: Settled): readonly Mark[] => {
  const outline = scarOutline(job);
  if (outline === undefined) return [];
  const { scar } = job;
  // The tips of a belly behind end before the rear edge; those of the others reach it.
  const behindTip = scar.fromNut + (scar.outline === 'belly' ? scar.wingDepth : scar.depth);
  return [
    stroke('scar', outline, { line: 'phantom', purpose: 'show', jobPath: 'scar.outline' }),
    note('scar.name', { x: -scar.length / 2, y: behindTip }, ['old scar'], {
      anchor: 'start',
      shift: { dx: 0.6, dy: 1.1 },
      or: [{ at: { x: scar.length / 2, y: behindTip }, anchor: 'end', shift: { dx: -0.6, dy: 1.1 } }],
      roams: true,
      jobPath: 'scar.outline',
    }),
  ];
};
