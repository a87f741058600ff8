import type { Point } from '../shape/types.ts';
import type { ViewName } from './index.ts';

/** A place that is measured from or to, in its view's own true mm. */
export interface Spot {
  readonly view: ViewName;
  readonly point: Point;
}

/** How far two places lie apart, mm, never negative: straight, where one view shows both; across the guitar, along it and in height as far as both views show it. */
export interface Measured {
  readonly distance?: number;
  readonly across?: number;
  readonly along?: number;
  readonly height?: number;
}

type Shown = Omit<Measured, 'distance'>;

/** What a view shows of a place. From above there is no height, from the tail nothing along the guitar, and the section along it has nothing across. */
const shownOf = ({ view, point: { x, y } }: Spot): Shown => {
  switch (view) {
    case 'above':
      return { across: x, along: y };
    case 'tail':
      return { across: x, height: -y };
    case 'middle':
      return { along: -x, height: -y };
  }
};

/** Two places measured against each other, as a rule and calipers would; places in two views by what these share. */
export const measured = (a: Spot, b: Spot): Measured => {
  const [from, to] = [shownOf(a), shownOf(b)];
  const apart = (key: keyof Shown): Measured => {
    const [here, there] = [from[key], to[key]];
    return here === undefined || there === undefined ? {} : { [key]: Math.abs(there - here) };
  };
  return {
    ...(a.view === b.view && { distance: Math.hypot(b.point.x - a.point.x, b.point.y - a.point.y) }),
    ...apart('across'),
    ...apart('along'),
    ...apart('height'),
  };
};
