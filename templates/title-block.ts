import type { Primitive } from '../geometry/drawing.ts';
import type { Job } from '../geometry/job.ts';
import { cleanName } from '../geometry/names.ts';
import type { Point } from '../geometry/shape/types.ts';
import { capHeight, fitText } from '../geometry/text.ts';
import { box, line, straight } from './primitive.ts';

/** What a sheet says of where it comes from. */
export interface SheetInfo {
  readonly job: string;
  /** As year-month-day. */
  readonly date: string;
  readonly hand: string;
  /** The unit of the bare numbers on it, which are all lengths. */
  readonly units: string;
  /** The program's version. */
  readonly version: string;
}

const hands = { right: 'right hand', left: 'left hand' } as const;
const unitNames = { mm: 'mm', in: 'inch', fraction: 'inch, 1/64' } as const;

/** What every sheet of a job says of it; the name is cleaned for any writer. */
export const sheetInfo = (job: Job, version: string): SheetInfo => ({
  job: cleanName(job.name),
  date: job.date,
  hand: hands[job.hand],
  units: unitNames[job.show.length],
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

/**
 * A title block in the manner of ISO 7200, its top left corner at `at`, 104 × 42.5 mm: titles, job, date, which face is up, hand, units, scale,
 * sheet, program, and four empty cells for what the check bars measure on the print. Texts too long for their cell are cut short.
 */
export const titleBlock = (
  at: Point,
  titles: readonly string[],
  info: SheetInfo,
  sheet: { readonly number: number; readonly of: number },
): readonly Primitive[] => {
  const rows: readonly (readonly Field[])[] = [
    [{ id: 'title', label: 'Template', width: 104, says: titles.map(cleanName).join(' · '), bold: true }],
    [
      { id: 'job', label: 'Job', width: 78, says: info.job },
      { id: 'date', label: 'Date', width: 26, says: info.date },
    ],
    [
      { id: 'face', label: 'Face up', width: 78, says: 'as named over each piece' },
      { id: 'program', label: 'Drawn with', width: 26, says: `Sagitta ${info.version}` },
    ],
    [
      { id: 'hand', label: 'Guitar for', width: 32, says: info.hand },
      { id: 'units', label: 'Bare numbers in', width: 26, says: info.units },
      { id: 'scale', label: 'Scale', width: 20, says: '1:1', bold: true },
      { id: 'sheet', label: 'Sheet', width: 26, says: `${sheet.number} of ${sheet.of}` },
    ],
    ['100 mm across reads', '4 in across reads', '100 mm down reads', '4 in down reads'].map((label, i) => ({
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
    const valueAt = { x: left + pad, y: at.y + height - pad - 0.3 };
    const value =
      says === undefined ? [] : [line(`title.${id}`, valueAt, fitText(says, room, valueSize, bold), valueSize, bold)];
    return [...rule, line(`title.${id}.label`, labelAt, fitText(label, room, labelSize), labelSize), ...value];
  });
};
