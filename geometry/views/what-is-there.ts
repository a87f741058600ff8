import { type Brace, type Hole, isKept, isMet, placeOf, type Rise } from '../bridge/existing.ts';
import type { Label, Mark } from '../drawing.ts';
import { length, lengthsAlike, note, showLine, stroke } from '../marks.ts';
import type { Settled } from '../settle.ts';
import { circle } from '../shape/arc.ts';
import { distance, lerp } from '../shape/point.ts';
import type { Bounds, Point } from '../shape/types.ts';
import { stretchesWithin } from '../shape/within.ts';

/** How far round the bridge what is there already is drawn, mm. */
const around = 5;
/** Half the length of the cross at a reading of the top, mm. */
const CROSS = 1;

/** The part of a straight line that lies in a box; undefined where none does. */
const clipped = (from: Point, to: Point, box: Bounds): readonly [Point, Point] | undefined => {
  const [part] = stretchesWithin({ kind: 'line', from, to }, box);
  return part && [lerp(from, to, part[0]), lerp(from, to, part[1])];
};

/** A word beside what it names, wherever there is room for it. */
const beside = (id: string, at: Point, label: Label, jobPath: string): Mark =>
  note(id, at, label, { roams: true, jobPath });

const holeMarks = (job: Settled, hole: Hole): readonly Mark[] => {
  const id = `hole.${hole.id}`;
  const jobPath = `top.holes.${hole.id}.diameter`;
  const at = placeOf(hole);
  const r = hole.diameter / 2;
  const ring = circle(at, r);
  if (!isKept(hole)) {
    const d = r * Math.SQRT1_2;
    return [
      { ...stroke(id, ring, { line: 'thin', purpose: 'show' }), jobPath },
      showLine(`${id}.falling`, { x: at.x - d, y: at.y - d }, { x: at.x + d, y: at.y + d }),
      showLine(`${id}.rising`, { x: at.x - d, y: at.y + d }, { x: at.x + d, y: at.y - d }),
    ];
  }
  const isRegister = hole.plan === 'register';
  const words: readonly Mark[] = isRegister
    ? [beside(`${id}.name`, at, ['register ⌀ ', length(hole.diameter)], jobPath)]
    : isMet(job, hole)
      ? []
      : [beside(`${id}.name`, at, ['⌀ ', length(hole.diameter)], jobPath)];
  return [
    isMet(job, hole)
      ? stroke(id, ring, { line: 'thin', purpose: 'show', jobPath })
      : stroke(id, ring, { line: 'outline', purpose: 'drill', matter: 'hole', jobPath }),
    ...words,
  ];
};

const riseMarks = (rise: Rise): readonly Mark[] => {
  const id = `rise.${rise.id}`;
  const jobPath = `top.rises.${rise.id}.height`;
  const { x, y } = placeOf(rise);
  return [
    { ...showLine(`${id}.across`, { x: x - CROSS, y }, { x: x + CROSS, y }), jobPath },
    { ...showLine(`${id}.along`, { x, y: y - CROSS }, { x, y: y + CROSS }), jobPath },
    beside(`${id}.height`, { x, y }, [rise.height > 0 ? '+' : '', length(rise.height)], jobPath),
  ];
};

/** A brace's two edges in hidden line, as far as they come near the bridge, and its name at the end that lies farther out. */
export const braceMarks = (brace: Brace, box: Bounds): readonly Mark[] => {
  const [from, to] = [placeOf(brace), { x: brace.acrossTo, y: brace.fromNutTo }];
  const seen = clipped(from, to, box);
  if (seen === undefined) return [];
  const far = distance(from, to);
  const aside = { x: (-(to.y - from.y) / far) * (brace.width / 2), y: ((to.x - from.x) / far) * (brace.width / 2) };
  const id = `brace.${brace.id}`;
  const jobPath = `top.braces.${brace.id}.width`;
  const edges = [-1, 1].flatMap((side, k): Mark[] => {
    const at = (p: Point): Point => ({ x: p.x + side * aside.x, y: p.y + side * aside.y });
    const edge = clipped(at(from), at(to), box);
    return edge ? [{ ...showLine(`${id}.edge.${k + 1}`, edge[0], edge[1], 'hidden'), jobPath }] : [];
  });
  const [outer, inner] = Math.abs(seen[0].x) > Math.abs(seen[1].x) ? seen : [seen[1], seen[0]];
  return [
    ...edges,
    ...(brace.name.trim() === '' ? [] : [beside(`${id}.name`, lerp(outer, inner, 0.15), [brace.name], jobPath)]),
  ];
};

/** Round a box, as far as what is there already is drawn. */
export const roundAbout = ({ minX, minY, maxX, maxY }: Bounds): Bounds => ({
  minX: minX - around,
  minY: minY - around,
  maxX: maxX + around,
  maxY: maxY + around,
});

/** Old holes, the top's rises and its braces from above, in the box `within` (x across, y the distance from the nut, mm). */
export const whatIsThere = (job: Settled, within: Bounds): readonly Mark[] => {
  const { minX, minY, maxX, maxY } = within;
  const isNear = (p: { readonly across: number; readonly fromNut: number }) =>
    p.across >= minX && p.across <= maxX && p.fromNut >= minY && p.fromNut <= maxY;
  const { holes, rises, braces } = job.top;
  return [
    ...braces.flatMap((brace) => braceMarks(brace, within)),
    ...holes.filter(isNear).flatMap((hole) => holeMarks(job, hole)),
    ...rises.filter(isNear).flatMap(riseMarks),
  ];
};

/** What the marks of old holes mean, as a short clause each: “crossed: old hole, plug”. */
export const whatIsThereSays = (job: Settled): readonly Label[] => {
  const { holes } = job.top;
  const met = holes.filter((hole) => isMet(job, hole) && hole.plan === 'keep').map(({ diameter }) => diameter);
  const [least, most] = [Math.min(...met), Math.max(...met)];
  const [from, to] = lengthsAlike(least, most);
  return [
    ...(met.length === 0
      ? []
      : [['thin circles: old pin holes ⌀ ', from, ...(most > least ? [' to ', to] : [])] satisfies Label]),
    ...(holes.some((hole) => !isKept(hole)) ? [['crossed: old hole, plug'] satisfies Label] : []),
  ];
};
