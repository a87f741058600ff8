import { dimensionParts } from './dimension.ts';
import type { Berth, Label, Mark, NoteMark, PathMark, Primitive, Stroke, Text } from './drawing.ts';
import { bounds, joinBounds } from './shape/bounds.ts';
import { hatch } from './shape/hatch.ts';
import { pathIntersections } from './shape/intersect.ts';
import { polyline } from './shape/path.ts';
import { translate } from './shape/transform.ts';
import type { Bounds, Path } from './shape/types.ts';
import { textBox } from './text-box.ts';
import { formatQuantity, type ShowUnits, unitFor } from './units.ts';

export interface LayOut {
  /** The text height in the drawing's mm: 3.5 on paper; on screen whatever shows at the size wanted. */
  readonly em: number;
  /** The label in words, its quantities in the reader's units. */
  readonly say: (label: Label) => string;
}

/** Between hatching lines, in ems, and their direction in degrees where a mark gives none (ISO 128-3: preferably 45°). */
const hatchSpacing = 0.9;
const hatchAngle = 45;
/** From row to row of staggered notes, and the least gap between two in one row, in ems. */
const rowPitch = 1.25;
const noteGap = 0.4;

/**
 * Says labels in the reader's units. A length that stands alone is bare, as ISO 129-1 has it: the drawing states their unit once. Every other quantity carries its
 * unit, and with `unit` every one does.
 */
export const sayWith =
  (show: ShowUnits, options: { readonly unit?: boolean } = {}) =>
  (label: Label): string => {
    const [only] = label;
    const alone = label.length === 1 && typeof only === 'object' && only.kind === 'length';
    const unit = options.unit ?? !alone;
    return label
      .map((part) => {
        if (typeof part === 'string') return part;
        const digits = part.fixed ? { digits: unitFor(part.kind, show) === 'mm' ? 2 : 3 } : {};
        return formatQuantity(part.value, part.kind, show, { unit, ...digits });
      })
      .join('');
  };

const pathParts = (mark: PathMark, em: number): Stroke[] => {
  const { hatch: hatching, kind: _, ...rest } = mark;
  const outline: Stroke = { kind: 'stroke', ...rest };
  if (!hatching) return [outline];
  // Rising to the right, as hatching is drawn by hand: turned from +x against +y.
  const angle = (-(hatching.angle ?? hatchAngle) * Math.PI) / 180;
  const lines = hatch(mark.path, hatching.holes, hatchSpacing * em, angle);
  return [
    outline,
    ...lines.map(
      (line, n): Stroke => ({
        kind: 'stroke',
        id: `${mark.id}.hatch.${n + 1}`,
        path: { segments: [line], closed: false },
        line: 'thin',
        purpose: 'show',
        ...(mark.jobPath !== undefined && { jobPath: mark.jobPath }),
      }),
    ),
  ];
};

const noteText = (mark: NoteMark, { em, say }: LayOut): Text => ({
  kind: 'text',
  id: mark.id,
  at: { x: mark.at.x + (mark.shift?.dx ?? 0) * em, y: mark.at.y + (mark.shift?.dy ?? 0) * em },
  text: say(mark.label),
  size: em * (mark.scale ?? 1),
  anchor: mark.anchor,
  turn: mark.turn ?? 0,
  bold: mark.bold ?? false,
  ...(mark.jobPath !== undefined && { jobPath: mark.jobPath }),
  ...(mark.alternative !== undefined && { alternative: mark.alternative }),
});

const overlap = (a: Bounds, b: Bounds, gap: number): boolean =>
  a.minX < b.maxX + gap && b.minX < a.maxX + gap && a.minY < b.maxY && b.minY < a.maxY;

/** The text raised row by row until it clears every one placed before it. */
const raise = (text: Text, placed: readonly Text[], em: number): Text => {
  let raised = text;
  for (let row = 1; placed.some((other) => overlap(textBox(raised), textBox(other), noteGap * em)); row++) {
    raised = { ...text, at: { x: text.at.x, y: text.at.y - row * rowPitch * text.size } };
  }
  return raised;
};

/** Roaming notes keep off shapes up to this size, in ems, and stand this far beside their point; they look for a place over so many rows up and down. */
const smallShape = 4;
const beside = 0.7;
const mostRows = 4;
/** How many rows farther off a roaming note goes rather than be crossed by a line. */
const crossing = 2.5;
/** What a roaming note keeps between itself and what stands there already, in ems. */
const clear = 0.2;

/** Where a roaming note may stand, nearest first: beside its point, then over and under it, row by row. */
const berths: readonly { readonly anchor: Text['anchor']; readonly dx: number; readonly row: number }[] = Array.from(
  { length: 2 * mostRows + 1 },
  (_, k) => (k % 2 === 1 ? -(k + 1) / 2 : k / 2),
).flatMap((row) => [
  ...(row === 0 ? [] : [{ anchor: 'middle' as const, dx: 0, row }]),
  { anchor: 'start' as const, dx: beside, row },
  { anchor: 'end' as const, dx: -beside, row },
]);

/** What a note with a choice of places keeps off: words and shapes that are small against them, always; other lines, where it can. */
interface InTheWay {
  readonly words: readonly Bounds[];
  readonly shapes: readonly Drawn[];
  readonly lines: readonly Drawn[];
}

interface Drawn {
  readonly box: Bounds;
  readonly path: Path;
}

const inTheWay = (primitives: readonly Primitive[], em: number): InTheWay => {
  const strokes = primitives.flatMap((p) => (p.kind === 'stroke' ? [{ box: bounds(p.path), path: p.path }] : []));
  const isSmall = ({ minX, minY, maxX, maxY }: Bounds) => Math.max(maxX - minX, maxY - minY) <= smallShape * em;
  return {
    words: primitives.flatMap((p) => (p.kind === 'text' ? [textBox(p)] : [])),
    shapes: strokes.filter(({ box }) => isSmall(box)),
    lines: strokes.filter(({ box }) => !isSmall(box)),
  };
};

const boxPath = ({ minX, minY, maxX, maxY }: Bounds): Path =>
  polyline(
    [
      { x: minX, y: minY },
      { x: maxX, y: minY },
      { x: maxX, y: maxY },
      { x: minX, y: maxY },
    ],
    true,
  );

/** A place for a note, and how far it is from the best one, in rows. */
interface Try {
  readonly away: number;
  readonly one: Text;
}

/** The places of a roaming note, nearest first. */
const roamingTries = (mark: NoteMark, options: LayOut): readonly Try[] => {
  const { shift: _, ...bare } = mark;
  const text = noteText(bare, options);
  // A line of text stands with the middle of its small letters on the point's level.
  const level = 0.35 * text.size;
  return berths.map(({ anchor, dx, row }) => ({
    away: Math.abs(row),
    one: { ...text, anchor, at: { x: mark.at.x + dx * options.em, y: mark.at.y + level + row * rowPitch * text.size } },
  }));
};

/** The places of a note that names others, its own first; each counts as a row farther off than the one before it. */
const namedTries = (mark: NoteMark, others: readonly Partial<Berth>[], options: LayOut): readonly Try[] =>
  [{}, ...others].map((other, away) => ({ away, one: noteText({ ...mark, ...other }, options) }));

/** A note in the nearest place that is free, a little farther off where it is crossed by no line; where none is free, in the first. */
const berthed = (mark: NoteMark, options: LayOut, { words, shapes, lines }: InTheWay): Text => {
  const { em } = options;
  const tries = mark.or ? namedTries(mark, mark.or, options) : roamingTries(mark, options);
  // What names its places knows the shapes round it.
  const offBoxes = mark.or ? words : [...words, ...shapes.map(({ box }) => box)];
  const offLines = mark.or ? [...shapes, ...lines] : lines;
  const isFree = (one: Text) => !offBoxes.some((box) => overlap(textBox(one), box, clear * em));
  const isCrossed = (one: Text) => {
    const room = textBox(one);
    return offLines.some(({ box, path }) => overlap(room, box, 0) && pathIntersections(boxPath(room), path).length > 0);
  };
  let best: { readonly one: Text; readonly cost: number } | undefined;
  for (const { one, away } of tries) {
    // They come nearest first.
    if (best !== undefined && away >= best.cost) break;
    if (!isFree(one)) continue;
    const cost = away + (isCrossed(one) ? crossing : 0);
    if (best === undefined || cost < best.cost) best = { one, cost };
  }
  return best?.one ?? (tries[0]?.one as Text);
};

/** The notes that have a choice of places put down one by one, each clear of all that is laid already. */
const berth = (laid: readonly (readonly Primitive[] | NoteMark)[], options: LayOut): Primitive[] => {
  const fixed = laid.flatMap((part) => ('kind' in part ? [] : part));
  if (!laid.some((part) => 'kind' in part)) return fixed;
  const { words, ...rest } = inTheWay(fixed, options.em);
  const taken = [...words];
  return laid.flatMap((part) => {
    if (!('kind' in part)) return part;
    const text = berthed(part, options, { words: taken, ...rest });
    taken.push(textBox(text));
    return [text];
  });
};

/**
 * Marks lowered to what a writer draws: strokes and texts at true mm, in the marks' order. A path gives its stroke and, if hatched, one
 * thin stroke a hatching line; a note a text, spread upwards within its stagger group in the order given, or put where there is room if it roams or names other places; a dimension its
 * lines, arrowheads and value. Every part's id begins with its mark's, and carries its job path.
 */
export const layOut = (marks: readonly Mark[], options: LayOut): Primitive[] => {
  const groups = new Map<string, Text[]>();
  const laid = marks.map((mark): readonly Primitive[] | NoteMark => {
    if (mark.kind === 'note' && (mark.roams || mark.or)) return mark;
    if (mark.kind === 'path') return pathParts(mark, options.em);
    if (mark.kind === 'dimension') return dimensionParts(mark, options.say(mark.label), options.em);
    const text = noteText(mark, options);
    if (mark.stagger === undefined) return [text];
    const group = groups.get(mark.stagger) ?? [];
    const raised = raise(text, group, options.em);
    groups.set(mark.stagger, [...group, raised]);
    return [raised];
  });
  return berth(laid, options);
};

/** The same strokes and texts moved, mm, their ids put under `prefix`. */
export const movedPrimitives = (
  primitives: readonly Primitive[],
  dx: number,
  dy: number,
  prefix: string,
): readonly Primitive[] =>
  primitives.map((p) =>
    p.kind === 'stroke'
      ? { ...p, id: prefix + p.id, path: translate(p.path, dx, dy) }
      : { ...p, id: prefix + p.id, at: { x: p.at.x + dx, y: p.at.y + dy } },
  );

/** The upright box (mm) around all that is drawn, texts included, line widths left out. Throws RangeError when nothing is drawn. */
export const boundsOfPrimitives = (primitives: readonly Primitive[]): Bounds => {
  if (primitives.length === 0) throw new RangeError('Nothing is drawn, so it has no bounds; give at least one mark.');
  return primitives
    .map((primitive) => (primitive.kind === 'text' ? textBox(primitive) : bounds(primitive.path)))
    .reduce(joinBounds);
};
