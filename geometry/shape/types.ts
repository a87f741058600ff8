/** A point on the drawing plane, mm. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Line {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
}

/**
 * An exact circular arc, mm and radians. `start` is the angle of its first point seen from the centre, measured from
 * +x towards +y; `sweep` is how far it turns (+ from +x towards +y), at most one full turn.
 */
export interface Arc {
  readonly kind: 'arc';
  readonly centre: Point;
  readonly radius: number;
  readonly start: number;
  readonly sweep: number;
}

/** A cubic Bézier curve, mm. */
export interface Cubic {
  readonly kind: 'cubic';
  readonly from: Point;
  readonly c1: Point;
  readonly c2: Point;
  readonly to: Point;
}

export type Segment = Line | Arc | Cubic;

/** A run of segments, each beginning where the one before it ends. A closed path ends where it began. */
export interface Path {
  readonly segments: readonly Segment[];
  readonly closed: boolean;
}

export interface Bounds {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}
