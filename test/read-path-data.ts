import type { Path, Point, Segment } from '../geometry/shape/types.ts';

const vectorAngle = (x: number, y: number) => Math.atan2(y, x);

/** The centre of a circular arc from its ends, radius and flags: SVG 2, appendix B.2.4, for rx = ry. */
const arcFromEnds = (from: Point, to: Point, radius: number, large: boolean, sweep: boolean): Segment => {
  const hx = (from.x - to.x) / 2;
  const hy = (from.y - to.y) / 2;
  const half = Math.hypot(hx, hy);
  const r = Math.max(radius, half);
  const k = (large === sweep ? -1 : 1) * Math.sqrt(Math.max(0, (r * r - half * half) / (half * half)));
  const centre = { x: k * hy + (from.x + to.x) / 2, y: -k * hx + (from.y + to.y) / 2 };
  const start = vectorAngle(from.x - centre.x, from.y - centre.y);
  let turn = vectorAngle(to.x - centre.x, to.y - centre.y) - start;
  if (sweep && turn < 0) turn += 2 * Math.PI;
  if (!sweep && turn > 0) turn -= 2 * Math.PI;
  return { kind: 'arc', centre, radius: r, start, sweep: turn };
};

/**
 * The sub-paths of an SVG `d` attribute in absolute M, L, A, C and Z commands; throws on any other command and on elliptical arcs.
 * A closing line is not added: the last point of a closed path is where it was drawn to.
 */
export const readPathData = (d: string): Path[] => {
  const paths: { segments: Segment[]; closed: boolean }[] = [];
  let at: Point = { x: 0, y: 0 };
  for (const [, command, rest] of d.matchAll(/([A-Za-z])([^A-Za-z]*)/g)) {
    const numbers = (rest?.match(/-?\d*\.?\d+/g) ?? []).map(Number);
    const points = (from = 0): Point[] => {
      const list: Point[] = [];
      for (let n = from; n + 1 < numbers.length; n += 2) list.push({ x: numbers[n] ?? 0, y: numbers[n + 1] ?? 0 });
      return list;
    };
    const path = paths.at(-1);
    if (command === 'M') {
      const [to] = points();
      if (!to || numbers.length !== 2) throw new Error(`bad M in ${d}`);
      paths.push({ segments: [], closed: false });
      at = to;
      continue;
    }
    if (!path) throw new Error(`${d} does not begin with M`);
    if (command === 'L') {
      const [to] = points();
      if (!to || numbers.length !== 2) throw new Error(`bad L in ${d}`);
      path.segments.push({ kind: 'line', from: at, to });
      at = to;
    } else if (command === 'C') {
      const [c1, c2, to] = points();
      if (!c1 || !c2 || !to || numbers.length !== 6) throw new Error(`bad C in ${d}`);
      path.segments.push({ kind: 'cubic', from: at, c1, c2, to });
      at = to;
    } else if (command === 'A') {
      const [rx = 0, ry = 0, , large, sweep] = numbers;
      const [to] = points(5);
      if (!to || numbers.length !== 7 || rx !== ry) throw new Error(`bad A in ${d}`);
      path.segments.push(arcFromEnds(at, to, rx, large === 1, sweep === 1));
      at = to;
    } else if (command === 'Z') path.closed = true;
    else throw new Error(`unknown command ${command} in ${d}`);
  }
  return paths;
};
