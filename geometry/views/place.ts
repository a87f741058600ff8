import type { Bounds, Point } from '../shape/types.ts';

/** Where a view stands in a drawing of several: its origin, mm, how many times as large its heights are drawn, and the room that it takes with its texts, mm, where it is not alone. */
export interface Place extends Point {
  readonly heights: number;
  readonly room?: Bounds;
}

/** A view's own point, true mm, as it stands in the drawing. */
export const onDrawing = (place: Place, p: Point): Point => ({ x: place.x + p.x, y: place.y + p.y * place.heights });

/** A point of the drawing as the view has it, true mm: its heights are no longer stretched. */
export const inView = (place: Place, p: Point): Point => ({ x: p.x - place.x, y: (p.y - place.y) / place.heights });

const beyond = (value: number, least: number, most: number): number => Math.max(least - value, value - most, 0);

/** The view that a point of the drawing lies in, or is nearest to. Throws a RangeError where no view is placed. */
export const viewUnder = <Name extends string>(places: Readonly<Partial<Record<Name, Place>>>, p: Point): Name => {
  const away = ({ room }: Place): number =>
    room === undefined ? 0 : Math.hypot(beyond(p.x, room.minX, room.maxX), beyond(p.y, room.minY, room.maxY));
  const all = Object.entries<Place | undefined>(places).flatMap(([name, place]) =>
    place === undefined ? [] : [{ name: name as Name, away: away(place) }],
  );
  const [first, ...rest] = all;
  if (first === undefined) throw new RangeError('No view is placed on this drawing; place at least one.');
  return rest.reduce((best, one) => (one.away < best.away ? one : best), first).name;
};
