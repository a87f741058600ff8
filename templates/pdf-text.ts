import type { PDFFont } from '@cantoo/pdf-lib';
import type { Text } from '../geometry/drawing.ts';
import { digits } from '../geometry/path-data.ts';
import { textWidth } from '../geometry/text.ts';
import { drawable } from './drawable.ts';
import { visualRuns } from './visual-order.ts';

/** An embedded face: its name among the page's resources and the characters it can draw. */
export interface Face {
  readonly name: string;
  readonly font: PDFFont;
  readonly characters: ReadonlySet<number>;
  /** The lines that were set with it before: the same words stand on many sheets, and fontkit takes its time. */
  readonly known: Map<string, Line>;
}

/** A line of text as it is written: its glyphs' codes, and its width in ems. */
interface Line {
  readonly glyphs: string;
  readonly ems: number;
}

const lineOf = (words: string, { font, known }: Face): Line => {
  const before = known.get(words);
  if (before) return before;
  const runs = visualRuns(words);
  const line = {
    glyphs: runs.map((run) => font.encodeText(run).asString()).join(''),
    ems: runs.reduce((sum, run) => sum + font.widthOfTextAtSize(run, 1), 0),
  };
  known.set(words, line);
  return line;
};

/**
 * The operators that write a text under a matrix of mm with y down. Where codes stand in for characters the whole is set smaller, so
 * that it stays within the room that was measured for it.
 */
export const textOperators = (text: Text, face: Face): string => {
  const words = drawable(text.text, face.characters);
  const { glyphs, ems } = lineOf(words, face);
  if (ems === 0) return '';
  const room = textWidth(text.text, 1, text.bold);
  const size = words.includes('[U+') ? text.size * Math.min(1, room / ems) : text.size;
  const back = text.anchor === 'start' ? 0 : text.anchor === 'middle' ? (ems * size) / 2 : ems * size;
  const angle = (text.turn * Math.PI) / 180;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const x = text.at.x - back * cos;
  const y = text.at.y - back * sin;
  const matrix = [cos, sin, sin, -cos, x, y].map(digits).join(' ');
  return `BT /${face.name} ${digits(size)} Tf ${matrix} Tm <${glyphs}> Tj ET\n`;
};
