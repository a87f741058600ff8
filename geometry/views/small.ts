import type { Design } from '../design.ts';
import type { Drawing, Mark } from '../drawing.ts';
import type { Settled } from '../settle.ts';
import { above } from './above.ts';
import { stretched } from './stretch.ts';
import { tail } from './tail.ts';

/** The outlines alone, without hatching, of which the marks' ids begin so. */
const outlinesOf = ({ marks }: Drawing, beginnings: readonly string[]): readonly Mark[] =>
  marks.flatMap((mark) => {
    if (mark.kind !== 'path' || !beginnings.some((begin) => mark.id.startsWith(begin))) return [];
    const { hatch: _, ...plain } = mark;
    return [plain];
  });

/** The bridge's own edge again, dashed over the saddle that stands before it: it tells one top radius from another. */
const behindSaddle = (marks: readonly Mark[]): readonly Mark[] =>
  marks.flatMap((mark) => {
    if (mark.kind !== 'path' || mark.id !== 'bridge.profile') return [];
    const { matter: _, ...edge } = mark;
    return [{ ...edge, id: 'deck', line: 'hidden' as const }];
  });

/**
 * Two drawings of a design without words or dimensions, small enough to stand beside others: across at the saddle line with its crown, heights drawn so many times as large; and from above. In the views'
 * own mm.
 */
export const smallViews = (
  job: Settled,
  design: Design,
  heights: number,
): { readonly across: Drawing; readonly above: Drawing } => {
  const atSaddle: Settled = { ...job, show: { ...job.show, sectionAlong: 'saddle' } };
  const across = tail(atSaddle, design);
  const outlines = outlinesOf(across, ['bridge.profile', 'saddle', 'element', 'string.']);
  const from = above(job, design);
  return {
    across: stretched({ ...across, marks: [...outlines, ...behindSaddle(outlines)] }, heights),
    above: { ...from, marks: outlinesOf(from, ['bridge.', 'slot', 'pin.', 'ramp.', 'way.']) },
  };
};
