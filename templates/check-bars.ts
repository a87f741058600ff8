import type { Mark } from '../geometry/drawing.ts';
import { note, showLine } from '../geometry/marks.ts';
import type { Point } from '../geometry/shape/types.ts';
import { MM_PER_INCH } from '../geometry/units.ts';

/** The near bars' lengths, mm: 100 mm for a metric rule, 4 in for an inch rule. */
const bars = [
  { key: '100', length: 100, says: '100 mm' },
  { key: '4in', length: 4 * MM_PER_INCH, says: '4 in' },
] as const;

/** The longer near bar, mm. */
export const longestBar = 4 * MM_PER_INCH;

/** The lengths that a far bar may have, mm: 150 mm is as far as a common caliper reaches [practice], 200 mm is for a rule. */
const farLengths = [100, 150, 200] as const;

/** The two longest far bars that a stretch of so many mm has room for. */
export const farBars = (room: number): readonly number[] => farLengths.filter((length) => length <= room).slice(-2);

/** From one bar to the next beside it, mm. */
const pitch = 6;
/** How far a bar's end ticks reach to either side, mm. */
const tick = 1.5;
/** The room that two near bars take beside their own length, mm: above (or left of) the first one for its label, and in all. */
export const barsLead = 4;
export const barsDepth = barsLead + pitch + tick;
/** The same for the far ones, which lie along one line. */
export const farLead = 4.5;
export const farDepth = farLead + tick;

const across = (id: string, at: Point, length: number): readonly Mark[] => [
  showLine(id, at, { x: at.x + length, y: at.y }),
  ...[0, length].map((u) =>
    showLine(`${id}.end${u}`, { x: at.x + u, y: at.y - tick }, { x: at.x + u, y: at.y + tick }),
  ),
];

const down = (id: string, at: Point, length: number): readonly Mark[] => [
  showLine(id, at, { x: at.x, y: at.y + length }),
  ...[0, length].map((v) =>
    showLine(`${id}.end${v}`, { x: at.x - tick, y: at.y + v }, { x: at.x + tick, y: at.y + v }),
  ),
];

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
      ...across(`check.x${key}`, a, length),
      note(`check.x${key}.label`, { x: a.x + length / 2, y: a.y }, [says], { shift: { dx: 0, dy: -0.3 } }),
      ...down(`check.y${key}`, b, length),
      note(`check.y${key}.label`, { x: b.x, y: b.y + length / 2 }, [says], { shift: { dx: -0.3, dy: 0 }, turn: -90 }),
    ];
  });

/**
 * Longer bars for the opposite edges, so that a scale that changes over the page shows: as many of 100, 150 and 200 mm as there is room for, at most two, along one line from `x` to the
 * right and from `y` down. All begin at the same tick, and each length stands at its own end, as running dimensions do (ISO 129-1). Their ids are `check.far.x150` and so on.
 */
export const farCheckBars = (
  x: { readonly at: Point; readonly room: number },
  y: { readonly at: Point; readonly room: number },
): readonly Mark[] => [
  ...farBars(x.room).flatMap((length): readonly Mark[] => {
    const id = `check.far.x${length}`;
    const end = { x: x.at.x + length, y: x.at.y };
    return [
      ...across(id, x.at, length),
      note(`${id}.label`, end, [`0 to ${length} mm`], { anchor: 'end', shift: { dx: -0.3, dy: -0.3 } }),
    ];
  }),
  ...farBars(y.room).flatMap((length): readonly Mark[] => {
    const id = `check.far.y${length}`;
    const end = { x: y.at.x, y: y.at.y + length };
    return [
      ...down(id, y.at, length),
      note(`${id}.label`, end, [`0 to ${length} mm`], {
        anchor: 'start',
        shift: { dx: -0.3, dy: -0.3 },
        turn: -90,
      }),
    ];
  }),
];
