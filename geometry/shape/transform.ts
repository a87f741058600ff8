import { rotate } from './point.ts';
import type { Path, Point, Segment } from './types.ts';

/** Where a shape goes: mirrored first (x → −x), then turned about the origin (radians, + from +x towards +y), then moved (mm). */
export interface Placing {
  readonly mirror?: boolean;
  readonly turn?: number;
  readonly dx?: number;
  readonly dy?: number;
}

/** The point, placed. */
export const placePoint = (p: Point, { mirror = false, turn = 0, dx = 0, dy = 0 }: Placing): Point => {
  const m = mirror ? { x: -p.x, y: p.y } : p;
  const t = turn === 0 ? m : rotate(m, turn);
  return { x: t.x + dx, y: t.y + dy };
};

/** The segment, placed: a line stays a line, an arc an arc, a cubic a cubic. */
export const placeSegment = (s: Segment, placing: Placing): Segment => {
  const move = (p: Point): Point => placePoint(p, placing);
  switch (s.kind) {
    case 'line':
      return { kind: 'line', from: move(s.from), to: move(s.to) };
    case 'arc': {
      const turn = placing.turn ?? 0;
      return placing.mirror
        ? { ...s, centre: move(s.centre), start: Math.PI - s.start + turn, sweep: -s.sweep }
        : { ...s, centre: move(s.centre), start: s.start + turn };
    }
    case 'cubic':
      return { kind: 'cubic', from: move(s.from), c1: move(s.c1), c2: move(s.c2), to: move(s.to) };
  }
};

/** The path, placed; it keeps its order of segments. */
export const place = (p: Path, placing: Placing): Path => ({
  segments: p.segments.map((s) => placeSegment(s, placing)),
  closed: p.closed,
});

export const translateSegment = (s: Segment, dx: number, dy: number): Segment => placeSegment(s, { dx, dy });

/** The path moved by dx, dy mm. */
export const translate = (p: Path, dx: number, dy: number): Path => place(p, { dx, dy });

/** The path mirrored left to right, x → −x; arcs stay arcs, their sweep flips. */
export const mirrorX = (p: Path): Path => place(p, { mirror: true });

/** The path turned by an angle in radians, + from +x towards +y, about a point or about the origin. */
export const turnPath = (p: Path, angle: number, about: Point = { x: 0, y: 0 }): Path => {
  const still = rotate({ x: -about.x, y: -about.y }, angle);
  return place(p, { turn: angle, dx: about.x + still.x, dy: about.y + still.y });
};

const scaledSegment = (s: Segment, k: number): Segment => {
  const at = (p: Point): Point => ({ x: p.x * k, y: p.y * k });
  switch (s.kind) {
    case 'line':
      return { kind: 'line', from: at(s.from), to: at(s.to) };
    case 'arc':
      return { ...s, centre: at(s.centre), radius: s.radius * k };
    case 'cubic':
      return { kind: 'cubic', from: at(s.from), c1: at(s.c1), c2: at(s.c2), to: at(s.to) };
  }
};

/** The path k times as large about the origin, k > 0: for sketches; nothing that is cut is ever scaled. */
export const scaled = (p: Path, k: number): Path => ({
  segments: p.segments.map((s) => scaledSegment(s, k)),
  closed: p.closed,
});
