import type { Design, SolvedString } from '../design.ts';
import type { Settled } from '../settle.ts';
import { pathIntersections } from '../shape/intersect.ts';
import { bounds } from '../shape/measure.ts';
import { polyline } from '../shape/path.ts';
import type { Path } from '../shape/types.ts';
import { coverBetween, scarOutline } from './cover.ts';
import { footprintOutline } from './outline.ts';
import { saddleLineAt } from './slot.ts';

/** How far the saddle line lies from the nut and from fret 12 at one string, mm, along the guitar: square to both. */
export interface AtString {
  readonly id: string;
  readonly fromNut: number;
  readonly fromFret12: number;
}

/** By how much the footprint reaches beyond the scar on each side, mm; negative where it falls short. Front and rear are taken on the centre line, the tips square to it. */
export interface Overlap {
  readonly front: number;
  readonly rear: number;
  readonly bassTip: number;
  readonly trebleTip: number;
  /** How far bare scar shows at most, square to the footprint's edge, anywhere round it; 0 where all of it is covered. */
  readonly bare: number;
}

export interface Position {
  readonly bass: AtString;
  readonly treble: AtString;
  /** Undefined where no old scar was measured. */
  readonly overlap: Overlap | undefined;
}

/** The saddle line's place at a string. */
export const saddleAt = ({ saddleLine, fret12 }: Design, { id, acrossAtSaddle }: SolvedString): AtString => {
  const fromNut = saddleLineAt(saddleLine, acrossAtSaddle);
  return { id, fromNut, fromFret12: fromNut - fret12 };
};

/** The outline's first and last place on the centre line, as distances from the nut; those of the whole where it keeps clear of that line. */
const onCentre = (outline: Path): { readonly front: number; readonly rear: number } => {
  const { minY, maxY } = bounds(outline);
  const centre = polyline(
    [
      { x: 0, y: minY - 1 },
      { x: 0, y: maxY + 1 },
    ],
    false,
  );
  const hits = pathIntersections(centre, outline).map(({ y }) => y);
  return hits.length === 0 ? { front: minY, rear: maxY } : { front: Math.min(...hits), rear: Math.max(...hits) };
};

/** The footprint's reach: on the centre line, and to its tips, mm across. */
export const reachOf = (job: Settled, design: Design) => {
  const outline = footprintOutline(job, design);
  const { minX, maxX } = bounds(outline);
  return { ...onCentre(outline), bassTip: -minX, trebleTip: maxX };
};

const overlapOf = (job: Settled, design: Design): Overlap | undefined => {
  const old = scarOutline(job);
  if (old === undefined) return undefined;
  const { fromNut, length, depth } = job.scar;
  const { front, rear, bassTip, trebleTip } = reachOf(job, design);
  const covers = coverBetween(footprintOutline(job, design), old, design.datum.x);
  return {
    front: fromNut - front,
    rear: rear - (fromNut + depth),
    bassTip: bassTip - length / 2,
    trebleTip: trebleTip - length / 2,
    bare: Math.max(0, ...covers.map(({ least }) => -least)),
  };
};

/** Where the bridge sits: by nut and fret 12 at both outer strings, and against the old scar. */
export const position = (job: Settled, design: Design): Position => ({
  bass: saddleAt(design, design.strings[0] as SolvedString),
  treble: saddleAt(design, design.strings.at(-1) as SolvedString),
  overlap: overlapOf(job, design),
});
