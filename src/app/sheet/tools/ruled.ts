import type { Point } from '../../../../geometry/shape/types.ts';
import type { ViewName } from '../../../../geometry/views/index.ts';
import type { Spot } from '../../../../geometry/views/ruler.ts';
import type { Snap, SnapKind } from '../../../../geometry/views/snap.ts';
import type { Built } from '../../store.ts';

/** A place that the ruler is laid to: where it was pointed at, in a view's own true mm, and what it may be caught by, of which one is taken. */
export interface Picked {
  readonly view: ViewName;
  readonly at: Point;
  readonly snaps: readonly Snap[];
  readonly index: number;
}

/** What the ruler measures of one design: from one place to another, and the place that is aimed at. */
export interface Ruled {
  readonly of: Built | undefined;
  readonly from?: Picked | undefined;
  readonly to?: Picked | undefined;
  readonly aim?: Picked | undefined;
  /** Whether it is aimed by the keys: what catches the cross is then read out. */
  readonly byKeys?: boolean;
}

export const spotOf = ({ view, at, snaps, index }: Picked): Spot => ({ view, point: snaps[index]?.point ?? at });

export const kindOf = ({ snaps, index }: Picked): SnapKind | 'free' => snaps[index]?.kind ?? 'free';

/** One more place: the first, the second, or a new beginning. */
export const picked = ({ from, to, ...ruled }: Ruled, place: Picked): Ruled =>
  from === undefined || to !== undefined ? { ...ruled, from: place } : { ...ruled, from, to: place };

const turned = (place: Picked): Picked => ({
  ...place,
  index: place.snaps.length === 0 ? 0 : (place.index + 1) % place.snaps.length,
});

/** The next of what is near takes the place that is aimed at, else the one that was picked last. */
export const next = (ruled: Ruled): Ruled => {
  const last = (['aim', 'to', 'from'] as const).find((key) => ruled[key] !== undefined);
  return last === undefined ? ruled : { ...ruled, [last]: turned(ruled[last] as Picked) };
};
