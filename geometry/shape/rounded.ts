import { pen } from './path.ts';
import type { Path, Point } from './types.ts';

/** A rectangle about a middle, closed: `at` gives the place so far along it and square to that from there, `corner` is the radius of its corners, 0 for sharp ones; mm. */
export const rounded = (at: (u: number, v: number) => Point, length: number, width: number, corner: number): Path => {
  const [x, y, r] = [length / 2, width / 2, corner];
  if (r === 0) return pen(at(-x, -y)).line(at(x, -y)).line(at(x, y)).line(at(-x, y)).close();
  return pen(at(r - x, -y))
    .line(at(x - r, -y))
    .arc(at(x, r - y), r, 1)
    .line(at(x, y - r))
    .arc(at(x - r, y), r, 1)
    .line(at(r - x, y))
    .arc(at(-x, y - r), r, 1)
    .line(at(-x, r - y))
    .arc(at(r - x, -y), r, 1)
    .close();
};
