import type { Point } from '../../../../geometry/shape/types.ts';

/** A way is halved so often: a hand’s whole way over a sheet to less than the finest step. */
const halvings = 14;

/** Takes the farthest place on the straight way to another that will be taken; gives what is in the way, where it is not that one itself. `take` gives what keeps a place from being taken. */
export const asFarAs = <Why>(from: Point, to: Point, take: (at: Point) => Why | undefined): Why | undefined => {
  let why = take(to);
  if (why === undefined) return undefined;
  let [taken, barred] = [0, 1];
  for (let k = 0; k < halvings; k += 1) {
    const share = (taken + barred) / 2;
    const here = take({ x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share });
    if (here === undefined) taken = share;
    else [barred, why] = [share, here];
  }
  return why;
};
