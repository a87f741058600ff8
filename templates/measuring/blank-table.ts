import { fitText } from '../../geometry/text.ts';
import type { ShowUnits } from '../../geometry/units.ts';
import type { Row } from '../text-pages.ts';
import { wrap } from '../wrap.ts';
import { knownField, unitWord } from './field-row.ts';
import { frame, helpLeading, helpSize, nameSize, put } from './words.ts';

const rowHeight = 7;
const pad = 1;

/** What a column's field is called, and its unit. */
const headOf = (path: string, show: ShowUnits): string => {
  const { kind, label } = knownField(path);
  const unit = kind === 'word' || kind === 'text' ? '' : unitWord(kind, show);
  return unit === '' ? label : `${label}, ${unit}`;
};

/** A table to fill in, whole on one page: a column for each field at these paths, a row for each name, which may be empty; `first` heads the column of names, where there is one. */
export const blankTable = (
  first: string | undefined,
  paths: readonly string[],
  names: readonly string[],
  show: ShowUnits,
  width: number,
): readonly Row[] => {
  const heads = [...(first === undefined ? [] : [first]), ...paths.map((path) => headOf(path, show))];
  const column = width / heads.length;
  const words = heads.map((head) => wrap(head, column - 2 * pad, helpSize));
  const lines = Math.max(...words.map((one) => one.length));
  return [
    {
      height: lines * helpLeading + 0.8,
      keeps: true,
      draw: (y, id) =>
        words.flatMap((one, k) =>
          one.map((line, n) =>
            put(
              `${id}.head.${k}.${n}`,
              { x: k * column + pad, y: y + helpSize + (lines - one.length + n) * helpLeading },
              line,
              helpSize,
            ),
          ),
        ),
    },
    ...names.map(
      (name, n): Row => ({
        height: rowHeight,
        ...(n < names.length - 1 && { keeps: true }),
        draw: (y, id) => [
          ...heads.map((_, k) => frame(`${id}.cell.${k}`, { x: k * column, y }, column, rowHeight)),
          ...(first === undefined
            ? []
            : [
                put(
                  `${id}.name`,
                  { x: pad, y: y + rowHeight / 2 + nameSize * 0.36 },
                  fitText(name, column - 2 * pad, nameSize, true),
                  nameSize,
                  { bold: true },
                ),
              ]),
        ],
      }),
    ),
    { height: 4, draw: () => [] },
  ];
};
