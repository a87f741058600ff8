import type { Mark } from '../geometry/drawing.ts';
import { note, showLine } from '../geometry/marks.ts';
import type { Point } from '../geometry/shape/types.ts';
import { MM_PER_INCH } from '../geometry/units.ts';

/** The bars' lengths, mm: 100 mm for a metric rule, 4 in for an inch rule. */
const bars = [
  { key: '100', length: 100, says: '100 mm' },
  { key: '4in', length: 4 * MM_PER_INCH, says: '4 in' },
] as const;

/** The longer bar, mm. */
export const longestBar = 4 * MM_PER_INCH;

/** From one bar to the next beside it, mm. */
const pitch = 6;
/** How far a bar's end ticks reach to either side, mm. */
const tick = 1.5;
/** The room that two bars take beside their own length, mm: above (or left of) the first one for its label, and in all. */
export const barsLead = 4;
export const barsDepth = barsLead + pitch + tick;

/**
 * The marks by which a print is proved: two bars along the page's x, the first from `x` to the right and the second below it, and two
 * along its y, the first from `y` down and the second to its right. Each bar is one straight line of exactly its length, with the ids
 * `check.x100`, `check.x4in`, `check.y100` and `check.y4in`; ticks stand at its ends.
 */
export const checkBars = (x: Point, y: Point): readonly Mark[] =>
  bars.flatMap(({ key, length, says }, i) => {
    const a: Point = { x: x.x, y: x.y + i * pitch };
    const b: Point = { x: y.x + i * pitch, y: y.y };
    return [
      showLine(`check.x${key}`, a, { x: a.x + length, y: a.y }),
      ...[0, length].map((u) =>
        showLine(`check.x${key}.end${u}`, { x: a.x + u, y: a.y - tick }, { x: a.x + u, y: a.y + tick }),
      ),
      note(`check.x${key}.label`, { x: a.x + length / 2, y: a.y }, [says], { shift: { dx: 0, dy: -0.3 } }),
      showLine(`check.y${key}`, b, { x: b.x, y: b.y + length }),
      ...[0, length].map((v) =>
        showLine(`check.y${key}.end${v}`, { x: b.x - tick, y: b.y + v }, { x: b.x + tick, y: b.y + v }),
      ),
      note(`check.y${key}.label`, { x: b.x, y: b.y + length / 2 }, [says], { shift: { dx: -0.3, dy: 0 }, turn: -90 }),
    ];
  });
