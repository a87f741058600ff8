import { berthed, overlap } from './berths.ts';
import { brokenUnderWords } from './broken-lines.ts';
import { dimensionParts } from './dimension.ts';
import type { DimensionMark, Label, Mark, NoteMark, PathMark, Primitive, Stroke, Text } from './drawing.ts';
import { once } from './once.ts';
import { bounds, joinBounds } from './shape/bounds.ts';
import { hatch } from './shape/hatch.ts';
import { translate } from './shape/transform.ts';
import type { Bounds } from './shape/types.ts';
import { textBox } from './text-box.ts';
import { alikeIn, formatQuantity, type ShowUnits, unitFor } from './units.ts';

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
        const read = part.beside ? alikeIn(show, part.beside) : show;
        const shown = unitFor(part.kind, read);
        const isFixed = part.fixed && !(part.beside && shown === 'fraction');
        return formatQuantity(part.value, part.kind, read, {
          unit,
          ...(isFixed && { digits: shown === 'mm' ? 2 : 3 }),
        });
      })
      .join('');
  };

const pathParts = once((mark: PathMark, em: number): readonly Stroke[] => {
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
});

const sizedParts = once((mark: DimensionMark, em: number, say: LayOut['say']) =>
  dimensionParts(mark, say(mark.label), em),
);

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

const fixedText = once((mark: NoteMark, em: number, say: LayOut['say']) => noteText(mark, { em, say }));

/** The text raised row by row until it clears every one placed before it. */
const raise = (text: Text, placed: readonly Text[], em: number): Text => {
  let raised = text;
  for (let row = 1; placed.some((other) => overlap(textBox(raised), textBox(other), noteGap * em)); row++) {
    raised = { ...text, at: { x: text.at.x, y: text.at.y - row * rowPitch * text.size } };
  }
  return raised;
};

/**
 * Marks lowered to what a writer draws: strokes and texts at true mm, in the marks' order. A path gives its stroke and, if hatched, one
 * thin stroke a hatching line; a note a text, spread upwards within its stagger group in the order given, or put where there is room if it roams, has other places, or stands off what it names; a dimension its
 * lines, arrowheads and value. Every part's id begins with its mark's, and carries its job path.
 */
export const layOut = (marks: readonly Mark[], options: LayOut): Primitive[] => {
  const groups = new Map<string, Text[]>();
  const laid = marks.map((mark): readonly Primitive[] | NoteMark => {
    if (mark.kind === 'note' && (mark.roams || mark.or || mark.names)) return mark;
    if (mark.kind === 'path') return pathParts(mark, options.em);
    if (mark.kind === 'dimension') return sizedParts(mark, options.em, options.say);
    const text = fixedText(mark, options.em, options.say);
    if (mark.stagger === undefined) return [text];
    const group = groups.get(mark.stagger) ?? [];
    const raised = raise(text, group, options.em);
    groups.set(mark.stagger, [...group, raised]);
    return [raised];
  });
  return brokenUnderWords(berthed(laid, options.em, (mark) => noteText(mark, options)));
};

/** The same strokes and texts moved, mm, their ids put under `prefix`. */
export const movedPrimitives = (
  primitives: readonly Primitive[],
  dx: number,
  dy: number,
  prefix: string,
): readonly Primitive[] => primitives.map((p) => movedPrimitive(p, dx, dy, prefix));

const movedPrimitive = once(
  (p: Primitive, dx: number, dy: number, prefix: string): Primitive =>
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
