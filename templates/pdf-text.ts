import { PDFHexString } from '@cantoo/pdf-lib';
import type { Text } from '../geometry/drawing.ts';
import { digits } from '../geometry/path-data.ts';
import type { PdfFont } from './pdf-font.ts';
import type { Face, GlyphPart, PicturePart, SetLine } from './set-line.ts';
import type { TextPicture } from './text-picture.ts';

/** What a page's texts are written with. */
export interface Pen {
  readonly set: (text: string, bold: boolean) => SetLine;
  readonly fontOf: (face: Face) => PdfFont;
  /** The name of a picture among the page's resources. */
  readonly imageOf: (picture: TextPicture) => string;
}

/** A stretch as marked content that says what was typed to whoever copies, searches or hears it (ISO 32000-1, 14.9.4). */
const asTyped = (text: string, operators: string): string =>
  `/Span <</ActualText ${PDFHexString.fromText(text)}>> BDC\n${operators}EMC\n`;

/** Glyphs one after the other. Where one stands off its place the pen is moved for it, in thousandths of an em to the left, and raised. */
const shown = (part: GlyphPart, font: PdfFont, size: number): string => {
  const rows: { rise: number; moves: (string | number)[] }[] = [];
  const move = (by: number, moves: (string | number)[]) => {
    const thousandths = Number(digits(-1000 * by));
    if (thousandths !== 0) moves.push(thousandths);
  };
  for (const set of part.glyphs) {
    const code = font.codeOf(set, part.toLeft);
    let row = rows.at(-1);
    if (row?.rise !== set.dy) {
      row = { rise: set.dy, moves: [] };
      rows.push(row);
    }
    const { moves } = row;
    move(set.dx, moves);
    const last = moves.at(-1);
    if (typeof last === 'string') moves[moves.length - 1] = last + code;
    else moves.push(code);
    move(set.advance - set.dx - set.glyph.advanceWidth / part.face.font.unitsPerEm, moves);
  }
  let rise = 0;
  return rows
    .map((row) => {
      const raised = row.rise === rise ? '' : `${digits(row.rise * size)} Ts `;
      rise = row.rise;
      const [only, ...others] = row.moves;
      if (typeof only === 'string' && others.length === 0) return `${raised}<${only}> Tj `;
      return `${raised}[${row.moves.map((m) => (typeof m === 'string' ? `<${m}>` : digits(m))).join(' ')}] TJ `;
    })
    .join('')
    .concat(rise === 0 ? '' : '0 Ts ');
};

/** A picture's corner and sides put where its text stands. */
const drawn = ({ picture, scale }: PicturePart, name: string, size: number, matrix: readonly number[]): string => {
  const px = (size * scale) / picture.perEm;
  const [right, below] = [picture.width * px, (picture.height - picture.above) * px];
  const [a = 1, b = 0, c = 0, d = -1, e = 0, f = 0] = matrix;
  const [left, height] = [picture.left * px, picture.height * px];
  const corner = [e + a * left - c * below, f + b * left - d * below];
  const sides = [a * right, b * right, c * height, d * height, ...corner];
  return `q ${sides.map(digits).join(' ')} cm /${name} Do Q\n`;
};

/** Whether its glyphs, read from left to right, do not say what was typed. */
const needsSaying = (part: GlyphPart | PicturePart): boolean =>
  part.kind === 'picture' || part.toLeft || part.glyphs.map((set) => set.text).join('') !== part.text;

/**
 * The operators that write a text under a matrix of mm with y down. Where letters run to the left, join or are drawn as a picture, the file says beside them what
 * was typed, since not every reader finds it from the glyphs.
 */
export const textOperators = (text: Text, pen: Pen): string => {
  const { groups, ems, scale } = pen.set(text.text, text.bold);
  const size = text.size * scale;
  const back = text.anchor === 'start' ? 0 : text.anchor === 'middle' ? (ems * size) / 2 : ems * size;
  const angle = (text.turn * Math.PI) / 180;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const stretch = (part: GlyphPart | PicturePart): string => {
    const along = part.x * size - back;
    const matrix = [cos, sin, sin, -cos, text.at.x + along * cos, text.at.y + along * sin];
    if (part.kind === 'picture') return drawn(part, pen.imageOf(part.picture), size, matrix);
    const font = pen.fontOf(part.face);
    return `BT /${font.name} ${digits(size)} Tf ${matrix.map(digits).join(' ')} Tm ${shown(part, font, size)}ET\n`;
  };
  return groups
    .map(({ text: typed, parts }) => {
      const operators = parts.map(stretch).join('');
      return parts.some(needsSaying) ? asTyped(typed, operators) : operators;
    })
    .join('');
};
