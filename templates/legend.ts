import type { LineType, Primitive, Purpose, Stroke } from '../geometry/drawing.ts';
import { circle } from '../geometry/shape/index.ts';
import type { Point } from '../geometry/shape/types.ts';
import { capHeight } from '../geometry/text.ts';
import { line, straight } from './primitive.ts';
import { wrap } from './wrap.ts';

/** One kind of line that a legend explains. */
export interface LegendEntry {
  readonly line: LineType;
  readonly purpose: Purpose;
}

const purposes: readonly Purpose[] = ['cut', 'drill', 'fold', 'show'];
const lineTypes: readonly LineType[] = ['outline', 'thin', 'hidden', 'centre', 'phantom'];

/** What is only shown, by line types after ISO 128-2: narrow, all of them, as a wide line is to be worked. A sheet of its own, such as the measuring sheet's, may show wide edges; it has no legend. */
const shown: Readonly<Record<LineType, string>> = {
  outline: 'edge, only shown',
  thin: 'edge or measure, shown',
  hidden: 'hidden edge, shown',
  centre: 'centre line, shown',
  phantom: 'place, only shown',
};

const words = ({ purpose, line: type }: LegendEntry): string =>
  ({ cut: 'cut', drill: 'drill', fold: 'fold', show: shown[type] })[purpose];

const proof = 'Measure the check bars before you cut: print at 100\u00a0%, no fit to page.';
const cautions = [
  'Bone, ebony and rosewood dust harms: use extraction and a respirator.',
  'Hold small parts in a clamp at a bandsaw or belt sander, never in the fingers.',
  'Slacken the strings before work and protect your eyes.',
  'Follow local rules; if in doubt, ask a qualified repairer.',
];

const size = 2.7;
const leading = 3.7;
const pitch = 4.4;
const sample = 11;
const column = 43;

/** The kinds of line that strokes are drawn with, each once, what is worked first; filled arrowheads are no lines. */
export const legendEntries = (strokes: readonly Stroke[]): readonly LegendEntry[] =>
  purposes.flatMap((purpose) =>
    lineTypes
      .filter((type) => strokes.some((s) => s.purpose === purpose && s.line === type && s.matter !== 'ink'))
      .map((type) => ({ purpose, line: type })),
  );

/**
 * A legend in a column of a width (mm), its top left corner at `at`: each kind of line drawn with the line itself, and the cautions. Returns
 * its primitives and its height, mm.
 */
export const legend = (
  at: Point,
  width: number,
  entries: readonly LegendEntry[],
): { readonly primitives: readonly Primitive[]; readonly height: number } => {
  const columns = Math.max(1, Math.floor(width / column));
  const lines = entries.flatMap((entry, i) => {
    const x = at.x + (i % columns) * column;
    const y = at.y + Math.floor(i / columns) * pitch + pitch / 2;
    const id = `legend.${entry.purpose}.${entry.line}`;
    return [
      swatch(id, { x, y }, entry),
      line(`${id}.words`, { x: x + sample + 1.5, y: y + (size * capHeight) / 2 }, words(entry), size),
    ];
  });
  const top = Math.ceil(entries.length / columns) * pitch + 1;
  const sentences = [
    ...wrap(proof, width, size, true).map((text) => ({ text, bold: true })),
    ...cautions.flatMap((caution) => wrap(caution, width, size)).map((text) => ({ text, bold: false })),
  ];
  const texts = sentences.map(({ text, bold }, i) =>
    line(`legend.caution${i}`, { x: at.x, y: at.y + top + i * leading + size }, text, size, bold),
  );
  return { primitives: [...lines, ...texts], height: top + sentences.length * leading };
};

/** A hole is drawn as the circle that it is, all else as a straight piece of its line. None of it is there to be worked. */
const swatch = (id: string, { x, y }: Point, { purpose, line: type }: LegendEntry): Stroke =>
  purpose === 'drill'
    ? { kind: 'stroke', id, path: circle({ x: x + sample / 2, y }, 1.6), line: type, purpose: 'show' }
    : straight(id, { x, y }, { x: x + sample, y }, type);
