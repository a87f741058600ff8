import type { Berth, NoteMark, Primitive, Stroke, Text } from './drawing.ts';
import { leader } from './leader.ts';
import { bounds, joinBounds } from './shape/bounds.ts';
import { pathIntersections } from './shape/intersect.ts';
import type { Bounds, Path, Point } from './shape/types.ts';
import { stretchesWithin } from './shape/within.ts';
import { textBox, wordBox } from './text-box.ts';

/*
 * Where the notes go that have a choice of places. A note goes to the first place at which it stands over no other word and is crossed by no line; where there is none, to the first at which only narrow
 * lines cross it, which are then broken under it. The choice knows nothing of the drawing before: the same marks always lie alike.
 */

/** Roaming notes keep off shapes up to this size, in ems, and stand this far beside their point; they look for a place over so many rows up and down. */
const smallShape = 4;
const beside = 0.7;
const mostRows = 2;
/** How far they go with a leader line, in rows up and down and in steps to either side, and a step, in ems. */
const farRows = 12;
const farSteps = 5;
const step = 2;
/** From row to row, in text heights. */
const rowPitch = 1.25;
/** What a note keeps between itself and the words and lines that stand there already, in ems. */
const clear = 0.2;
const offLines = 0.15;
/** What it keeps between itself and a place where a hand takes hold, in ems. */
const offHands = 0.9;

/** Where a roaming note may stand, nearest first: beside its point, then over and under it, row by row. */
const near: readonly { readonly anchor: Text['anchor']; readonly dx: number; readonly row: number }[] = Array.from(
  { length: 2 * mostRows + 1 },
  (_, k) => (k % 2 === 1 ? -(k + 1) / 2 : k / 2),
).flatMap((row) => [
  ...(row === 0 ? [] : [{ anchor: 'middle' as const, dx: 0, row }]),
  { anchor: 'start' as const, dx: beside, row },
  { anchor: 'end' as const, dx: -beside, row },
]);

/** Where it may stand with a leader line, nearest first. */
const far: typeof near = Array.from({ length: 2 * farRows + 1 }, (_, k) => k - farRows)
  .flatMap((row) =>
    Array.from({ length: 2 * farSteps + 1 }, (_, k) => ({ row, dx: (k - farSteps) * step })).map(({ dx }) => ({
      anchor: dx < 0 ? ('end' as const) : dx > 0 ? ('start' as const) : ('middle' as const),
      dx,
      row,
    })),
  )
  .filter(({ row, dx }) => Math.hypot(row * rowPitch, dx) > 2)
  .sort((a, b) => Math.hypot(a.row * rowPitch, a.dx) - Math.hypot(b.row * rowPitch, b.dx));

/** How many of these have a short leader line: of up to 6 ems. */
const short = far.filter(({ row, dx }) => Math.hypot(row * rowPitch, dx) <= 6).length;

interface Drawn {
  readonly box: Bounds;
  readonly path: Path;
  /** A narrow line that is only shown: it may be broken under a word. */
  readonly breaks: boolean;
}

/** Whether a line may be broken where a word stands over it: narrow, and nothing that is cut, drilled or filled. */
export const breaks = ({ line, purpose, matter }: Stroke): boolean =>
  purpose === 'show' && line !== 'outline' && matter === undefined;

/** What a note with a choice of places keeps off: words always, then small shapes, then all lines. */
interface InTheWay {
  readonly words: Bounds[];
  readonly shapes: readonly Bounds[];
  readonly lines: Drawn[];
  readonly leaders: Path[];
  /** Around all of it. */
  readonly within: Bounds;
}

const nowhere: Bounds = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };

const drawnOf = (stroke: Stroke): Drawn => ({ box: bounds(stroke.path), path: stroke.path, breaks: breaks(stroke) });

const inTheWay = (primitives: readonly Primitive[], em: number): InTheWay => {
  const lines = primitives.flatMap((p) => (p.kind === 'stroke' ? [drawnOf(p)] : []));
  const isSmall = ({ minX, minY, maxX, maxY }: Bounds) => Math.max(maxX - minX, maxY - minY) <= smallShape * em;
  const words = primitives.flatMap((p) => (p.kind === 'text' ? [textBox(p)] : []));
  return {
    words,
    within: [...words, ...lines.map(({ box }) => box)].reduce(joinBounds, nowhere),
    shapes: lines.filter(({ box }) => isSmall(box)).map(({ box }) => box),
    lines,
    leaders: [],
  };
};

export const overlap = (a: Bounds, b: Bounds, gap: number): boolean =>
  a.minX < b.maxX + gap && b.minX < a.maxX + gap && a.minY < b.maxY && b.minY < a.maxY;

export const grown = ({ minX, minY, maxX, maxY }: Bounds, by: number): Bounds => ({
  minX: minX - by,
  minY: minY - by,
  maxX: maxX + by,
  maxY: maxY + by,
});

const runsThrough = (path: Path, box: Bounds): boolean =>
  path.segments.some((segment) => stretchesWithin(segment, box).length > 0);

/** A note's text at one of its places, with the box of its line, that of its word, which no line is to cross, and what a leader line leads to from there. */
interface Place {
  readonly text: Text;
  readonly box: Bounds;
  readonly room: Bounds;
  readonly leads: Point | undefined;
  /** It makes the drawing larger, or its leader line long. */
  readonly isLast: boolean;
}

const shifted = ({ minX, minY, maxX, maxY }: Bounds, { x, y }: Point): Bounds => ({
  minX: minX + x,
  minY: minY + y,
  maxX: maxX + x,
  maxY: maxY + y,
});

/** Puts a note's text where a berth says; how large it is is measured once for each anchor. */
const putting = (mark: NoteMark, bare: Text, em: number): ((berth: Partial<Berth>) => Place) => {
  const boxes = new Map<Text['anchor'], Pick<Place, 'box' | 'room'>>();
  const boxesOf = (anchor: Text['anchor']) => {
    const known = boxes.get(anchor);
    if (known) return known;
    const text = { ...bare, anchor, at: { x: 0, y: 0 } };
    const measured = { box: textBox(text), room: grown(wordBox(text), offLines * em) };
    boxes.set(anchor, measured);
    return measured;
  };
  return (berth) => {
    const { anchor, at: from, shift } = { ...mark, ...berth };
    const at = { x: from.x + (shift?.dx ?? 0) * em, y: from.y + (shift?.dy ?? 0) * em };
    const { box, room } = boxesOf(anchor);
    return {
      text: { ...bare, anchor, at },
      box: shifted(box, at),
      room: shifted(room, at),
      leads: berth.leads,
      isLast: false,
    };
  };
};

const leaderOf = ({ text, leads }: Place, em: number): readonly Stroke[] =>
  leads === undefined ? [] : leader(text, leads, em);

/** A line of text so many rows under a point; at none the middle of its small letters stands on the point's level. */
const berthAt = (
  { anchor, dx, row }: (typeof near)[number],
  { at, scale = 1 }: Pick<NoteMark, 'at' | 'scale'>,
): Required<Omit<Berth, 'leads'>> => ({
  at,
  anchor,
  shift: { dx, dy: (0.35 + row * rowPitch) * scale },
});

/** By how much a place would make a drawing larger: not at all, only higher, or wider. */
const widens = ({ box }: Place, { minX, minY, maxX, maxY }: Bounds): 0 | 1 | 2 => {
  if (box.minX < minX || box.maxX > maxX) return 2;
  return box.minY < minY || box.maxY > maxY ? 1 : 0;
};

/** The places of a note that names something, off one of its points with a leader line to it; last those with a long one, and those that make the drawing larger. */
function* placesOff(
  points: readonly [Point, ...Point[]],
  { anchor, scale }: NoteMark,
  put: (berth: Partial<Berth>) => Place,
  within: Bounds,
): Generator<Place> {
  const led = [
    ...points.map((at) => ({ at, some: far.slice(0, short), isLong: false })),
    { at: points[0], some: far.slice(short), isLong: true },
  ];
  for (const larger of [0, 1, 2] as const)
    for (const { at, some, isLong } of led)
      for (const one of some) {
        const place = put({ ...berthAt(one, { at, scale }), anchor, leads: at });
        if (widens(place, within) === larger) yield { ...place, isLast: isLong || larger > 0 };
      }
}

/** The places of a note, the better first: off what it names; else its own and its others, or near its point; then, if it roams, those farther off with a leader line that make the drawing no larger; last those that do. */
function* placesOf(mark: NoteMark, put: (berth: Partial<Berth>) => Place, within: Bounds): Generator<Place> {
  if (mark.names) return yield* placesOff(mark.names, mark, put, within);
  const own = mark.or ? [{}, ...mark.or] : near.map((one) => berthAt(one, mark));
  for (const berth of own) yield put(berth);
  if (!mark.roams) return;
  const led = far.map((one) => put({ ...berthAt(one, mark), leads: mark.at }));
  for (const larger of [0, 1, 2] as const)
    for (const place of led)
      if (widens(place, within) === larger) yield larger > 0 ? { ...place, isLast: true } : place;
}

const isInside = ({ x, y }: Point, { minX, minY, maxX, maxY }: Bounds): boolean =>
  x > minX && x < maxX && y > minY && y < maxY;

/** How badly a place will do: 0 with nothing in the way, 1 crossed by narrow lines only, 2 crossed by others, or its leader line by another, or where a hand takes hold; 3 over words, over small shapes that it has to keep off, or with its leader line over a word. Once it is no better than `least` it is looked at no farther. */
const hindered = (
  place: Place,
  { words, shapes, lines, leaders }: InTheWay,
  em: number,
  { or, keepsOff = [] }: NoteMark,
  least: number,
): number => {
  const { box, room } = place;
  if (words.some((word) => overlap(box, word, clear * em))) return 3;
  if (or === undefined && shapes.some((shape) => overlap(box, shape, clear * em))) return 3;
  let worst = keepsOff.some((p) => isInside(p, grown(room, offHands * em))) ? 2 : 0;
  for (const line of lines) {
    if (worst >= least) return worst;
    const would = line.breaks ? 1 : 2;
    if (would > worst && overlap(room, line.box, 0) && runsThrough(line.path, room)) worst = would;
  }
  if (worst >= least) return worst;
  const led = leaderOf(place, em);
  if (led.some(({ path }) => words.some((word) => runsThrough(path, word)))) return 3;
  const isCrossed = led.some(({ path }) => leaders.some((other) => pathIntersections(path, other).length > 0));
  return isCrossed ? 2 : worst;
};

const best = (mark: NoteMark, bare: Text, em: number, way: InTheWay): Place => {
  let found: Place | undefined;
  let least = 3;
  for (const place of placesOf(mark, putting(mark, bare, em), way.within)) {
    found ??= place;
    // Better a broken line than a larger, so a smaller drawing.
    if (place.isLast && least === 1) break;
    const how = hindered(place, way, em, mark, least);
    if (how >= least) continue;
    [found, least] = [place, how];
    if (how === 0) break;
  }
  return found as Place;
};

/** The notes that have a choice of places put down one by one among all that is laid already, each where it stands best, with its leader line if it has one. */
export const berthed = (
  laid: readonly (readonly Primitive[] | NoteMark)[],
  em: number,
  textOf: (mark: NoteMark) => Text,
): readonly Primitive[] => {
  const fixed = laid.flatMap((part) => ('kind' in part ? [] : part));
  if (!laid.some((part) => 'kind' in part)) return fixed;
  const way = inTheWay(fixed, em);
  return laid.flatMap((part) => {
    if (!('kind' in part)) return part;
    const place = best(part, textOf(part), em, way);
    const led = leaderOf(place, em);
    way.words.push(place.box);
    way.lines.push(...led.map(drawnOf));
    way.leaders.push(...led.map(({ path }) => path));
    return [...led, place.text];
  });
};
