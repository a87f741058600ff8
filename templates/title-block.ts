import type { Primitive } from '../geometry/drawing.ts';
import { cleanName } from '../geometry/names.ts';
import type { Settled } from '../geometry/settle.ts';
import type { Point } from '../geometry/shape/types.ts';
import { capHeight, fitText, textWidth } from '../geometry/text.ts';
import type { DecimalMark } from '../geometry/units.ts';
import { box, line, straight } from './primitive.ts';

/** What a sheet says of where it comes from. */
export interface SheetInfo {
  readonly job: string;
  /** As year-month-day. */
  readonly date: string;
  readonly hand: string;
  /** The unit of the bare numbers on it, which are all lengths. */
  readonly units: string;
  /** The decimal mark of its numbers; a point where none is named. */
  readonly decimal?: DecimalMark | undefined;
  /** The program's version. */
  readonly version: string;
}

const hands = { right: 'right hand', left: 'left hand' } as const;
const unitNames = { mm: 'mm', in: 'inch', fraction: 'inch, 1/64' } as const;

/** What every sheet of a job says of it; the name is cleaned for any writer. */
export const sheetInfo = (job: Pick<Settled, 'name' | 'date' | 'hand' | 'show'>, version: string): SheetInfo => ({
  job: cleanName(job.name),
  date: job.date,
  hand: hands[job.hand],
  units: unitNames[job.show.length],
  decimal: job.show.decimal,
  version,
});

export const titleBlockWidth = 104;
export const titleBlockHeight = 42.5;

interface Field {
  readonly id: string;
  readonly label: string;
  readonly width: number;
  readonly says?: string;
  readonly bold?: boolean;
}

const pad = 1.2;
const labelSize = 2.1;
const valueSize = 3.2;

/** Words that fill a row of the title block: the name between the others is cut short if they need the room. */
export const wholeRow = (before: string, name: string, after: string): string => {
  const room = titleBlockWidth - 2 * pad - textWidth(before + after, valueSize);
  return `${before}${fitText(cleanName(name), room, valueSize)}${after}`;
};

/** What a title block says of its own sheet. */
export interface SheetWords {
  readonly titles: readonly string[];
  /** Which face of the work lies up; none where the sheet holds no template. */
  readonly faces: readonly string[];
  /** The paper's name and how it lies. */
  readonly paper: string;
  /** The printer that it was corrected for, and by how much. */
  readonly print: string;
  readonly number: number;
  readonly of: number;
}

const faceUp = (faces: readonly string[]): string => {
  const [first, ...others] = [...new Set(faces)];
  return first === undefined ? 'the printed one' : others.length === 0 ? first : 'as named over each piece';
};

/**
 * A title block in the manner of ISO 7200, its top left corner at `at`, 104 × 42.5 mm: titles, job, date, which face is up, program, hand, units, scale, paper,
 * sheet, the correction for the printer, and four empty cells for what the check bars measure on the print. Texts too long for their cell are cut short.
 */
export const titleBlock = (at: Point, words: SheetWords, info: SheetInfo): readonly Primitive[] => {
  const rows: readonly (readonly Field[])[] = [
    [{ id: 'title', label: 'Template', width: 104, says: words.titles.map(cleanName).join(' · '), bold: true }],
    [
      { id: 'job', label: 'Job', width: 78, says: info.job },
      { id: 'date', label: 'Date', width: 26, says: info.date },
    ],
    [
      { id: 'face', label: 'Face up', width: 78, says: faceUp(words.faces) },
      { id: 'program', label: 'Drawn with', width: 26, says: `Sagitta ${info.version}` },
    ],
    [
      { id: 'hand', label: 'Guitar for', width: 22, says: info.hand },
      { id: 'units', label: 'Bare numbers in', width: 24, says: info.units },
      { id: 'scale', label: 'Scale', width: 12, says: '1:1', bold: true },
      { id: 'paper', label: 'Paper', width: 29, says: words.paper },
      { id: 'sheet', label: 'Sheet', width: 17, says: `${words.number} of ${words.of}` },
    ],
    [{ id: 'print', label: 'Print at 100 %', width: 104, says: words.print }],
    ['100 mm/4 in across', 'long bar across', '100 mm/4 in down', 'long bar down'].map((label, i) => ({
      id: `reads${i}`,
      label,
      width: 26,
    })),
  ];
  const height = titleBlockHeight / rows.length;
  return [
    box('title.frame', at, titleBlockWidth, titleBlockHeight, 'outline'),
    ...rows.flatMap((fields, i) => {
      const y = at.y + i * height;
      const rule = i === 0 ? [] : [straight(`title.row${i}`, { x: at.x, y }, { x: at.x + titleBlockWidth, y })];
      return [...rule, ...row(fields, { x: at.x, y }, height)];
    }),
  ];
};

const row = (fields: readonly Field[], at: Point, height: number): readonly Primitive[] => {
  let x = at.x;
  return fields.flatMap(({ id, label, width, says, bold = false }, i) => {
    const left = x;
    x += width;
    const rule = i === 0 ? [] : [straight(`title.${id}.rule`, { x: left, y: at.y }, { x: left, y: at.y + height })];
    const room = width - 2 * pad;
    const labelAt = { x: left + pad, y: at.y + pad + labelSize * capHeight };
    const valueAt = { x: left + pad, y: at.y + height - pad };
    const value =
      says === undefined ? [] : [line(`title.${id}`, valueAt, fitText(says, room, valueSize, bold), valueSize, bold)];
    return [...rule, line(`title.${id}.label`, labelAt, fitText(label, room, labelSize), labelSize), ...value];
  });
};
