import { path, segmentEnd, segmentStart } from '../shape/path.ts';
import type { Path, Segment } from '../shape/types.ts';
import { joined } from './graph.ts';
import type { Ground } from './section.ts';

/** What bounds a section of the bridge as it stands on the top, mm, y DOWN. */
export interface Counter {
  /** From a foot before the wood, along the top, up and over the wood, to a foot beyond it; open, in the sense of +x. */
  readonly over: Path;
  /** Where the wood lies on the top, piece by piece; open. */
  readonly under: readonly Path[];
}

/** A section's counter-profile: the line on which a gauge ends that stands on the top with feet of a length on either side, mm, and the wood's underside. `wood` as `Section` has it; undefined where there is none. */
export const counterOf = (wood: readonly Path[], ground: Ground, foot: number): Counter | undefined => {
  const [first, last] = [wood[0]?.segments[0], wood.at(-1)?.segments.at(-1)];
  if (first === undefined || last === undefined) return undefined;
  const pieces = wood.map(({ segments }) => ({ over: segments.slice(0, -1), under: segments.at(-1) as Segment }));
  const from = segmentStart(first).x;
  const to = segmentStart(last).x;
  const between = pieces.flatMap(({ over }, k): readonly Segment[] => {
    const before = pieces[k - 1];
    if (before === undefined) return over;
    return [ground(segmentStart(before.under).x, segmentStart(over[0] as Segment).x), ...over];
  });
  return {
    over: path(joined([ground(from - foot, from), ...between, ground(to, to + foot)]), false),
    under: pieces.map(({ under }) => path([under], false)),
  };
};

/** The closed outline of a gauge that stands over a counter-profile, its back so far above the highest wood, mm. */
export const gaugeOver = ({ over }: Counter, top: number): Path => {
  const [from, to] = [segmentStart(over.segments[0] as Segment), segmentEnd(over.segments.at(-1) as Segment)];
  return path(
    [
      ...over.segments,
      { kind: 'line', from: to, to: { x: to.x, y: top } },
      { kind: 'line', from: { x: to.x, y: top }, to: { x: from.x, y: top } },
      { kind: 'line', from: { x: from.x, y: top }, to: from },
    ],
    true,
  );
};
